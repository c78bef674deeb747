package underhold.review.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import underhold.advice.PlainRules;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.FactValue;
import underhold.site.FactView;
import underhold.site.Site;
import underhold.site.ZoneViews;

/**
 * Searches a site that lies in a box: states what the box asks for, draws what its derived amounts
 * follow from, and keeps the site if its own checks find no contradiction and what follows from it
 * lies in the box.
 */
final class Witnesses {
  private static final List<String> REQUIRED = List.of("loadPattern", "excavationPosition");

  private final Reasoning reasoning;
  private final PlainRules rules;
  private final Trying trying;
  private final FactDictionary dictionary;
  private final long seed;
  private long tried;

  Witnesses(Reasoning reasoning, PlainRules rules, Trying trying, long seed) {
    this.reasoning = reasoning;
    this.rules = rules;
    this.trying = trying;
    this.dictionary = reasoning.dictionary();
    this.seed = seed;
  }

  /** How many sites were tried since this was last asked. */
  long drained() {
    long count = tried;
    tried = 0;
    return count;
  }

  /**
   * A site in the box.
   *
   * @param name the name of the site
   * @param tries the most sites to try
   */
  Optional<Site> find(String name, Box box, int tries) {
    return find(name, box, reasoning.alternatives(box).boxes(), tries);
  }

  private Optional<Site> find(String name, Box box, List<Box> ways, int tries) {
    if (ways.isEmpty()) {
      return Optional.empty();
    }
    Random random = new Random(seed ^ box.hashCode());
    for (int i = 0; i < tries; i++) {
      Box way = ways.get(random.nextInt(ways.size()));
      Map<String, FactValue> values = draw(way, random, i);
      tried++;
      Site site = Trying.site(name, values);
      FactView view = rules.complete(ZoneViews.known(site, site.zones().get(0), dictionary));
      if (box.has(view) && Trying.possible(site)) {
        return Optional.of(site);
      }
    }
    return Optional.empty();
  }

  private Map<String, FactValue> draw(Box way, Random random, int attempt) {
    Map<String, FactValue> values = new LinkedHashMap<>();
    for (String fact : wanted(way, attempt % 2 == 0)) {
      FactDefinition definition = dictionary.require(fact);
      if (!definition.derived()) {
        trying
            .draw(definition, way.of(definition), random)
            .ifPresent(value -> values.put(fact, value));
      }
    }
    return values;
  }

  /**
   * The facts to state: those of the box, those that no zone can do without, and those that derived
   * amounts follow from.
   */
  private Set<String> wanted(Box way, boolean sparse) {
    Set<String> wanted = new LinkedHashSet<>(REQUIRED);
    List<String> open = new ArrayList<>(way.facts().stream().sorted().toList());
    Set<String> seen = new LinkedHashSet<>(open);
    while (!open.isEmpty()) {
      String fact = open.remove(open.size() - 1);
      FactDefinition definition = dictionary.require(fact);
      FactSet set = way.of(definition);
      if (set.words().isEmpty() && set.numbers().isEmpty()) {
        continue; // to be unknown
      }
      if (!definition.derived() && (sparse || way.facts().contains(fact))) {
        wanted.add(fact);
      }
      if (definition.derived() || (!sparse && !way.facts().contains(fact))) {
        for (String source : ZoneViews.sources(fact)) {
          if (seen.add(source)) {
            open.add(source);
          }
        }
      }
    }
    return wanted;
  }
}
