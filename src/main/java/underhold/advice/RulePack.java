package underhold.advice;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The rules with their thresholds, sources and weights.
 *
 * @param name the pack's name
 * @param version the pack's version
 * @param fingerprint SHA-256 over the pack's files, in hexadecimal
 * @param rules those that read one zone, in the order of the pack
 * @param pairRules those that read two zones together, in the order of the pack
 * @param limits the thresholds
 * @param sources the bibliography, by key
 * @param weights what each strength counts
 * @param criteria what the causes of the rules speak of, for comparing options
 * @param origin where it comes from
 */
public record RulePack(
    String name,
    String version,
    String fingerprint,
    List<Rule> rules,
    List<Rule> pairRules,
    Limits limits,
    Map<String, Source> sources,
    Weights weights,
    Criteria criteria,
    PackOrigin origin) {
  public RulePack {
    rules = List.copyOf(rules);
    pairRules = List.copyOf(pairRules);
    sources = Map.copyOf(sources);
  }

  /** The rule of that id. */
  public Optional<Rule> rule(String id) {
    return all().stream().filter(rule -> rule.id().equalsIgnoreCase(id)).findFirst();
  }

  /** Every rule, those that read two zones last. */
  public List<Rule> all() {
    return Stream.concat(rules.stream(), pairRules.stream()).toList();
  }

  /** The rules of a phase, by id, in the order of the pack. */
  Map<String, Rule> byId(Rule.Phase phase) {
    Map<String, Rule> map = new LinkedHashMap<>();
    all().stream().filter(rule -> rule.phase() == phase).forEach(rule -> map.put(rule.id(), rule));
    return map;
  }

  /** The citations of a rule in words; empty where it rests on no source. */
  public String cite(List<Rule.Citation> citations) {
    return String.join("; ", citations.stream().map(c -> source(c.key()).cite(c.place())).toList());
  }

  /** The source of that key. */
  public Source source(String key) {
    Source source = sources.get(key);
    if (source == null) {
      throw new IllegalArgumentException("the rule pack has no source " + key);
    }
    return source;
  }

  /**
   * What strengths count.
   *
   * @param points points of each strength
   * @param tie gap in points up to which two options are called a tie
   * @param costOrder which option comes first where scores are equal
   */
  public record Weights(Map<Strength, Integer> points, int tie, List<SupportOption> costOrder) {
    public Weights {
      points = Map.copyOf(points);
      costOrder = List.copyOf(costOrder);
    }

    /** The points of a strength. */
    public int of(Strength strength) {
      Integer value = points.get(strength);
      return value == null ? 0 : value;
    }
  }
}
