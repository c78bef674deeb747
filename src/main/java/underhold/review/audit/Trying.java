package underhold.review.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import underhold.advice.Condition;
import underhold.advice.Rule;
import underhold.advice.RulePack;
import underhold.consult.trial.TypedAmounts;
import underhold.quantity.Measure;
import underhold.quantity.UnitSystem;
import underhold.site.Fact;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.FactKind;
import underhold.site.FactValue;
import underhold.site.FactView;
import underhold.site.GroundProfile;
import underhold.site.Origin;
import underhold.site.Site;
import underhold.site.SiteChecks;
import underhold.site.SiteProblem;
import underhold.site.StatedFact;
import underhold.site.Zone;

/** Makes the values and the one-zone sites that an audit tries. */
final class Trying {
  static final String ZONE = "zone";
  private static final FactDictionary DICTIONARY = FactDictionary.standard();
  private static final double NEAR = 0.1;
  private static final double UPPER = 0.35;
  private static final int MOST_LEFT_OUT = 8;

  private final TypedAmounts amounts = new TypedAmounts(UnitSystem.SI);
  private final Map<String, List<Double>> numbers = new LinkedHashMap<>();

  Trying(RulePack pack) {
    Map<String, TreeSet<Double>> near = new LinkedHashMap<>();
    for (Rule rule : pack.rules()) {
      for (Condition condition : rule.conditions()) {
        if (condition.operator().isNumeric()) {
          double limit = condition.threshold();
          double step = limit == 0 ? NEAR : NEAR * Math.abs(limit);
          near.computeIfAbsent(condition.fact(), fact -> new TreeSet<>())
              .addAll(List.of(limit - step, limit, limit + step));
        }
      }
    }
    near.forEach((fact, values) -> numbers.put(fact, List.copyOf(values)));
  }

  /** The amount nearest to a number that a person would type. */
  FactValue amount(FactDefinition fact, double si) {
    return amounts.of(fact, si);
  }

  /** A value of a set, at random: often near the limits of the rules; none if only unknown. */
  Optional<FactValue> draw(FactDefinition fact, FactSet set, Random random) {
    if (fact.kind() == FactKind.SLOPE) {
      return Optional.empty();
    }
    if (!set.words().isEmpty()) {
      List<String> words = set.words().stream().sorted().toList();
      return Optional.of(new FactValue.Choice(words.get(random.nextInt(words.size()))));
    }
    if (set.numbers().isEmpty()) {
      return Optional.empty();
    }
    List<NumberSet.Part> parts = set.numbers().parts();
    NumberSet.Part part = parts.get(random.nextInt(parts.size()));
    return Optional.of(amount(fact, number(fact, part, random)));
  }

  private double number(FactDefinition fact, NumberSet.Part part, Random random) {
    FactDefinition.Range range = fact.requireRange();
    double least = Math.max(part.from().at(), range.min());
    double most = Math.min(part.to().at(), range.max());
    List<Double> near =
        numbers.getOrDefault(fact.name(), List.of()).stream()
            .filter(number -> part.has(number) && number >= range.min() && number <= range.max())
            .toList();
    if (!near.isEmpty() && random.nextInt(3) > 0) {
      return near.get(random.nextInt(near.size()));
    }
    double even = random.nextDouble();
    if (range.measure() == Measure.SPEED) {
      return least * Math.pow(most / least, even);
    }
    double number = least + (most - least) * even * even * even;
    double rounded = number < 1 ? Math.round(number * 100) / 100.0 : Math.round(number * 10) / 10.0;
    return part.has(rounded) ? rounded : least + (most - least) * (0.02 + even * UPPER);
  }

  /** A site of one zone with those facts. */
  static Site site(String name, Map<String, FactValue> values) {
    Map<String, StatedFact> facts = new LinkedHashMap<>();
    for (FactDefinition fact : DICTIONARY.all()) {
      FactValue value = values.get(fact.name());
      if (value != null) {
        facts.put(fact.name(), new StatedFact(value, ""));
      }
    }
    Zone zone = new Zone(ZONE, facts, GroundProfile.NONE, "");
    return new Site(name, UnitSystem.SI, Map.of(), GroundProfile.NONE, List.of(zone), Map.of(), "");
  }

  static boolean possible(Site site) {
    return SiteChecks.contradictions(site, DICTIONARY, "").isEmpty();
  }

  /**
   * The site without what contradicts: facts that problems name are left out one by one.
   *
   * @param kept facts that stay
   */
  static Optional<Site> settled(String name, Map<String, FactValue> values, List<String> kept) {
    Map<String, FactValue> left = new LinkedHashMap<>(values);
    for (int i = 0; i <= MOST_LEFT_OUT; i++) {
      Site site = site(name, left);
      List<SiteProblem> problems = SiteChecks.contradictions(site, DICTIONARY, "");
      if (problems.isEmpty()) {
        return Optional.of(site);
      }
      if (!leaveOut(problems, left, kept)) {
        return Optional.empty();
      }
    }
    return Optional.empty();
  }

  /** Leaves out the first fact named by each problem that may go; whether any did. */
  private static boolean leaveOut(
      List<SiteProblem> problems, Map<String, FactValue> left, List<String> kept) {
    boolean any = false;
    for (SiteProblem problem : problems) {
      for (String fact : named(problem)) {
        if (!kept.contains(fact) && left.remove(fact) != null) {
          any = true;
          break;
        }
      }
    }
    return any;
  }

  /** The facts that a problem names: in its place, and in what it suggests to leave out. */
  private static List<String> named(SiteProblem problem) {
    List<String> names = new ArrayList<>();
    names.add(problem.place().substring(problem.place().lastIndexOf('.') + 1));
    String suggestion = problem.suggestion();
    for (String word : suggestion.split("[ ,:]+", -1)) {
      if (DICTIONARY.find(word).isPresent()) {
        names.add(word);
      }
    }
    return names.stream().filter(name -> DICTIONARY.find(name).isPresent()).toList();
  }

  /** A view in which the values are known and nothing is worked out: for sweeps without a site. */
  static FactView view(Map<String, FactValue> values) {
    Map<String, Fact> facts = new LinkedHashMap<>();
    values.forEach(
        (name, value) ->
            facts.put(name, new Fact(DICTIONARY.require(name), Origin.STATED, value, "")));
    return FactView.of(DICTIONARY, facts);
  }
}
