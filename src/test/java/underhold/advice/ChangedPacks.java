package underhold.advice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import underhold.quantity.Quantity;
import underhold.site.FactDictionary;

/** The rules built in with another limit or other points, for tests of what that changes. */
public final class ChangedPacks {
  private ChangedPacks() {}

  /** An engine whose pack has another value of one limit. */
  public static RuleEngine limit(String name, String value) {
    RulePack pack = BuiltInPack.pack();
    List<Limit> limits =
        pack.limits().all().stream()
            .map(limit -> limit.name().equals(name) ? with(limit, value) : limit)
            .toList();
    return engine(pack, new Limits(limits), pack.weights());
  }

  private static Limit with(Limit limit, String value) {
    Quantity quantity =
        Quantity.parse(value, limit.value().measure())
            .fold(
                parsed -> parsed.quantity(),
                rejected -> {
                  throw new IllegalArgumentException(value);
                });
    return new Limit(
        limit.name(),
        limit.label(),
        quantity,
        limit.fine(),
        limit.basis(),
        limit.source(),
        limit.note(),
        limit.plausible());
  }

  /** An engine whose pack counts a strength otherwise. */
  public static RuleEngine points(Strength strength, int points) {
    RulePack pack = BuiltInPack.pack();
    Map<Strength, Integer> all = new HashMap<>(pack.weights().points());
    all.put(strength, points);
    return engine(
        pack,
        pack.limits(),
        new RulePack.Weights(all, pack.weights().tie(), pack.weights().costOrder()));
  }

  /** The pack built in with one rule changed. */
  public static RulePack rule(String id, UnaryOperator<Rule> change) {
    RulePack pack = BuiltInPack.pack();
    List<Rule> rules =
        pack.rules().stream()
            .map(rule -> rule.id().equals(id) ? change.apply(rule) : rule)
            .toList();
    return pack(pack, rules, pack.limits(), pack.weights());
  }

  /** The pack built in without one rule. */
  public static RulePack without(String id) {
    RulePack pack = BuiltInPack.pack();
    List<Rule> rules = new ArrayList<>(pack.rules());
    rules.removeIf(rule -> rule.id().equals(id));
    return pack(pack, rules, pack.limits(), pack.weights());
  }

  private static RulePack pack(
      RulePack pack, List<Rule> rules, Limits limits, RulePack.Weights weights) {
    return new RulePack(
        pack.name(),
        pack.version() + " changed",
        "0".repeat(64),
        rules,
        pack.pairRules(),
        limits,
        pack.sources(),
        weights,
        pack.criteria(),
        pack.origin());
  }

  private static RuleEngine engine(RulePack pack, Limits limits, RulePack.Weights weights) {
    FactDictionary dictionary = FactDictionary.standard();
    List<Rule> rules =
        pack.rules().stream()
            .map(
                rule ->
                    rule.with(
                        rule.conditions().stream()
                            .map(condition -> condition.lookedUp(dictionary, limits))
                            .toList()))
            .toList();
    return RuleEngine.of(pack(pack, rules, limits, weights));
  }
}
