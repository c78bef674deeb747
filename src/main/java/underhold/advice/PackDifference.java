package underhold.advice;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * How a rule pack differs from another, which is the pack built in wherever an answer is shown.
 *
 * @param baseFingerprint the fingerprint of the other pack
 * @param fingerprint the fingerprint of the pack
 * @param added rules the other has not
 * @param removed rules of the other that are gone
 * @param changed rules of the same id that say another thing; the values of limits are not counted
 * @param limitsAdded limits the other has not
 * @param limitsRemoved limits of the other that are gone
 * @param limitsChanged limits of the same name with another value, basis, source or range
 * @param weights points of strengths, the gap called a tie, the order of equals
 * @param criteria causes under another criterion, and other meanings of criteria
 * @param sources sources of the same key that are described in another way, added or gone
 * @param orderChanged whether rules that both have stand in another order
 * @param circles derived facts that follow from themselves by the rules, where the other has none
 */
public record PackDifference(
    String baseFingerprint,
    String fingerprint,
    List<Rule> added,
    List<Rule> removed,
    List<RuleChange> changed,
    List<Limit> limitsAdded,
    List<Limit> limitsRemoved,
    List<LimitChange> limitsChanged,
    List<ValueChange> weights,
    List<ValueChange> criteria,
    List<ValueChange> sources,
    boolean orderChanged,
    List<String> circles) {
  public PackDifference {
    added = List.copyOf(added);
    removed = List.copyOf(removed);
    changed = List.copyOf(changed);
    limitsAdded = List.copyOf(limitsAdded);
    limitsRemoved = List.copyOf(limitsRemoved);
    limitsChanged = List.copyOf(limitsChanged);
    weights = List.copyOf(weights);
    criteria = List.copyOf(criteria);
    sources = List.copyOf(sources);
    circles = List.copyOf(circles);
  }

  /** A part of a rule. */
  public enum Part {
    SENTENCE("sentence"),
    PHASE("phase"),
    CONDITIONS("conditions"),
    ACTION("action"),
    HEADER("header");

    private final String word;

    Part(String word) {
      this.word = word;
    }

    /** The word on screens and in files. */
    public String word() {
      return word;
    }
  }

  /** A rule that says another thing than before, and the parts that do. */
  public record RuleChange(Rule was, Rule is, Set<Part> parts) {
    public RuleChange {
      parts = Set.copyOf(parts);
    }
  }

  /** A limit as it was and as it is. */
  public record LimitChange(Limit was, Limit is) {
    /** Whether the value itself is another. */
    public boolean ofValue() {
      return was.si() != is.si();
    }

    /** Whether the new value lies outside the range that was called plausible. */
    public boolean outsidePlausible() {
      return !was.plausible().isEmpty()
          && (is.si() < was.plausible().get(0).si() || is.si() > was.plausible().get(1).si());
    }
  }

  /** Anything else by its name, as it was and as it is; empty where it was or is not there. */
  public record ValueChange(String name, String was, String is) {}

  /** How a pack differs from the one built in. */
  public static PackDifference of(RulePack pack) {
    return between(BuiltInPack.pack(), pack);
  }

  /** How a pack differs from another. */
  public static PackDifference between(RulePack base, RulePack pack) {
    Map<String, Rule> was = byName(base.all(), Rule::id);
    Map<String, Rule> is = byName(pack.all(), Rule::id);
    Map<String, Limit> limitsWere = byName(base.limits().all(), Limit::name);
    Map<String, Limit> limitsAre = byName(pack.limits().all(), Limit::name);
    return new PackDifference(
        base.fingerprint(),
        pack.fingerprint(),
        without(is, was),
        without(was, is),
        common(was, is).stream()
            .flatMap(pair -> change(pair.getKey(), pair.getValue()).stream())
            .toList(),
        without(limitsAre, limitsWere),
        without(limitsWere, limitsAre),
        common(limitsWere, limitsAre).stream()
            .filter(pair -> !pair.getKey().equals(pair.getValue()))
            .map(pair -> new LimitChange(pair.getKey(), pair.getValue()))
            .toList(),
        changes(weights(base), weights(pack)),
        changes(criteria(base), criteria(pack)),
        changes(sources(base), sources(pack)),
        !ids(common(was, is)).equals(ids(common(is, was))),
        circles(pack).stream().filter(circle -> !circles(base).contains(circle)).toList());
  }

  /** Whether both say the same; their texts may still differ in comments, notes and spacing. */
  public boolean none() {
    return rules() + limits() + others() == 0 && !orderChanged;
  }

  /** Whether not even a sign differs. */
  public boolean sameTexts() {
    return baseFingerprint.equals(fingerprint);
  }

  /** How many rules are added, gone or changed. */
  public int rules() {
    return added.size() + removed.size() + changed.size();
  }

  /** How many limits are added, gone or changed. */
  public int limits() {
    return limitsAdded.size() + limitsRemoved.size() + limitsChanged.size();
  }

  private int others() {
    return weights.size() + criteria.size() + sources.size();
  }

  /** Rules that ruled an option out and are gone, or no longer do: a safety is taken away. */
  public List<Rule> ruleOutsLost() {
    List<Rule> lost = new ArrayList<>();
    removed.stream().filter(rule -> rule.effect() == Effect.RULE_OUT).forEach(lost::add);
    changed.stream()
        .filter(change -> change.was().effect() == Effect.RULE_OUT)
        .filter(
            change ->
                change.is().effect() != Effect.RULE_OUT
                    || !change.is().action().options().containsAll(change.was().action().options())
                    || change.is().hold().ordinal() < change.was().hold().ordinal())
        .forEach(change -> lost.add(change.was()));
    return lost;
  }

  /** The ids of rules that rule an option out by a limit whose value is another. */
  public List<String> ruleOutsMoved(RulePack pack) {
    Set<String> moved = new LinkedHashSet<>();
    limitsChanged.stream()
        .filter(LimitChange::ofValue)
        .forEach(change -> moved.add(change.is().name()));
    return pack.all().stream()
        .filter(rule -> rule.effect() == Effect.RULE_OUT)
        .filter(rule -> rule.conditions().stream().anyMatch(c -> c.comparesWith(moved)))
        .map(Rule::id)
        .toList();
  }

  private static <T> Map<String, T> byName(Iterable<T> all, Function<T, String> name) {
    Map<String, T> map = new LinkedHashMap<>();
    all.forEach(one -> map.put(name.apply(one), one));
    return map;
  }

  private static <T> List<T> without(Map<String, T> all, Map<String, T> others) {
    return all.entrySet().stream()
        .filter(entry -> !others.containsKey(entry.getKey()))
        .map(Map.Entry::getValue)
        .toList();
  }

  /** What both have, as the first has it and as the second has it, in the order of the first. */
  private static <T> List<Map.Entry<T, T>> common(Map<String, T> one, Map<String, T> two) {
    List<Map.Entry<T, T>> common = new ArrayList<>();
    one.forEach(
        (name, first) -> {
          T second = two.get(name);
          if (second != null) {
            common.add(Map.entry(first, second));
          }
        });
    return common;
  }

  private static List<String> ids(List<Map.Entry<Rule, Rule>> rules) {
    return rules.stream().map(pair -> pair.getKey().id()).toList();
  }

  private static Optional<RuleChange> change(Rule was, Rule is) {
    Set<Part> parts = EnumSet.noneOf(Part.class);
    put(parts, Part.SENTENCE, was.sentence(), is.sentence());
    put(parts, Part.PHASE, was.phase(), is.phase());
    put(
        parts,
        Part.CONDITIONS,
        was.conditions().stream().map(Condition::text).toList(),
        is.conditions().stream().map(Condition::text).toList());
    put(parts, Part.ACTION, was.action(), is.action());
    put(parts, Part.HEADER, header(was), header(is));
    return parts.isEmpty() ? Optional.empty() : Optional.of(new RuleChange(was, is, parts));
  }

  private static List<Object> header(Rule rule) {
    return List.of(rule.basis(), rule.citations(), rule.because(), rule.cause(), rule.hold());
  }

  private static void put(Set<Part> parts, Part part, Object was, Object is) {
    if (!was.equals(is)) {
      parts.add(part);
    }
  }

  private static Map<String, String> weights(RulePack pack) {
    Map<String, String> map = new LinkedHashMap<>();
    for (Strength strength : Strength.values()) {
      map.put(strength.word(), String.valueOf(pack.weights().of(strength)));
    }
    map.put("tie", String.valueOf(pack.weights().tie()));
    map.put(
        "costOrder",
        String.join(", ", pack.weights().costOrder().stream().map(SupportOption::id).toList()));
    return map;
  }

  private static Map<String, String> criteria(RulePack pack) {
    Map<String, String> map = new LinkedHashMap<>();
    for (Criterion criterion : Criterion.values()) {
      map.put(criterion.word(), pack.criteria().meaning(criterion));
    }
    pack.criteria().byCause().keySet().stream()
        .sorted()
        .forEach(
            cause ->
                map.put(
                    "cause " + cause,
                    Objects.requireNonNull(pack.criteria().byCause().get(cause)).word()));
    return map;
  }

  private static Map<String, String> sources(RulePack pack) {
    Map<String, String> map = new LinkedHashMap<>();
    new TreeSet<>(pack.sources().keySet())
        .forEach(
            key -> {
              Source source = pack.source(key);
              map.put(key, source.cite("") + "; read: " + source.read() + " " + source.extent());
            });
    return map;
  }

  private static List<ValueChange> changes(Map<String, String> was, Map<String, String> is) {
    Set<String> names = new LinkedHashSet<>(was.keySet());
    names.addAll(is.keySet());
    return names.stream()
        .map(name -> new ValueChange(name, was.getOrDefault(name, ""), is.getOrDefault(name, "")))
        .filter(change -> !change.was().equals(change.is()))
        .toList();
  }

  private static Set<String> circles(RulePack pack) {
    Map<String, Set<String>> reads = PackChecks.DerivedFacts.reads(pack.all());
    Set<String> circles = new TreeSet<>();
    reads.forEach(
        (made, facts) ->
            facts.stream()
                .filter(fact -> !fact.equals(made))
                .flatMap(fact -> PackChecks.DerivedFacts.path(reads, fact, made).stream())
                .forEach(path -> circles.add(made + " from " + String.join(" from ", path))));
    return circles;
  }
}
