package underhold.review.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import underhold.advice.Rule;
import underhold.advice.RulePack;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.FactValue;
import underhold.site.Site;
import underhold.site.ZoneViews;

/**
 * One-zone sites at random (judgement): levels, water and bearing are drawn from small values more
 * often than from large ones and near the limits of the rules, words evenly; each fact is known
 * with a chance drawn anew for each site. What contradicts is left out. The shares of such sites
 * say nothing of real towns.
 */
final class RandomSites {
  private static final double LEAST_KNOWN = 0.5;

  /** Follow from levels that are drawn; stated only now and then. */
  private static final Set<String> FOLLOWING =
      Set.of("headAboveExcavation", "headAbovePitBase", "excavationBelowFooting");

  /** What most sites are like; drawn from these words oftener than not. */
  private static final Map<String, Set<String>> USUAL =
      Map.ofEntries(
          Map.entry("purpose", Set.of("new-excavation")),
          Map.entry("structureCondition", Set.of("good", "fair")),
          Map.entry("heritage", Set.of("none")),
          Map.entry("existingTilt", Set.of("none")),
          Map.entry("artesian", Set.of("no")),
          Map.entry("uplift", Set.of("no")),
          Map.entry("treatmentProposed", Set.of("none")),
          Map.entry("investigation", Set.of("borings-and-test-pits")),
          Map.entry("contamination", Set.of("none")),
          Map.entry("liveUse", Set.of("none", "occupied")),
          Map.entry("obstructions", Set.of("none", "occasional")),
          Map.entry("oldPiles", Set.of("none")),
          Map.entry("foundationKind", Set.of("strip", "pad")),
          Map.entry("worstSoil", Set.of("stiff-clay", "hard-clay-or-till", "dense-sand")),
          Map.entry("bracingRoom", Set.of("yes")));

  private static final double OFTEN = 0.75;
  private static final double LEAST_USUAL_LIMIT_METRES = 0.005;

  private final Trying trying;
  private final Random random;
  private final List<FactDefinition> facts = new ArrayList<>();

  RandomSites(RulePack pack, Trying trying, long seed) {
    this.trying = trying;
    this.random = new Random(seed);
    FactDictionary dictionary = FactDictionary.standard();
    Set<String> read = new LinkedHashSet<>();
    pack.rules().stream().map(Rule::facts).forEach(read::addAll);
    List<String> open = new ArrayList<>(read);
    while (!open.isEmpty()) {
      for (String source : ZoneViews.sources(open.remove(open.size() - 1))) {
        if (read.add(source)) {
          open.add(source);
        }
      }
    }
    read.add("loadPattern");
    read.add("excavationPosition");
    for (FactDefinition fact : dictionary.all()) {
      if (read.contains(fact.name()) && !fact.derived()) {
        facts.add(fact);
      }
    }
  }

  /** The facts that are drawn. */
  List<FactDefinition> facts() {
    return facts;
  }

  /** A site. */
  Site next() {
    return next(Map.of());
  }

  /**
   * A site with some facts as given; they are known.
   *
   * @param given the values that each of these facts may have
   */
  Site next(Map<String, FactSet> given) {
    List<String> kept = new ArrayList<>(given.keySet());
    kept.add("loadPattern");
    kept.add("excavationPosition");
    while (true) { // ends: few draws cannot be settled
      Optional<Site> site = Trying.settled("random site", draw(given), kept);
      if (site.isPresent()) {
        return site.get();
      }
    }
  }

  private Map<String, FactValue> draw(Map<String, FactSet> given) {
    double known = random.nextInt(2) == 0 ? 1 : LEAST_KNOWN + random.nextDouble() * LEAST_KNOWN;
    Map<String, FactValue> values = new LinkedHashMap<>();
    for (FactDefinition fact : facts) {
      FactSet set = given.get(fact.name());
      boolean follows = FOLLOWING.contains(fact.name()) && random.nextInt(4) > 0;
      if (set != null || fact.required() || (!follows && random.nextDouble() < known)) {
        trying
            .draw(fact, set == null ? usual(fact) : set, random)
            .ifPresent(value -> values.put(fact.name(), value));
      }
    }
    return values;
  }

  private FactSet usual(FactDefinition fact) {
    FactSet all = FactSet.all(fact);
    if (random.nextDouble() >= OFTEN) {
      return all;
    }
    if (fact.name().equals("movementLimit")) {
      return all.and(FactSet.numbers(NumberSet.atLeast(LEAST_USUAL_LIMIT_METRES)));
    }
    Set<String> words = USUAL.get(fact.name());
    return words == null ? all : FactSet.words(words);
  }
}
