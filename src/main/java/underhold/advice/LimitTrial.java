package underhold.advice;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import underhold.quantity.ParsedQuantity;
import underhold.quantity.Quantity;
import underhold.site.FactDictionary;
import underhold.site.PlainText;

/**
 * A rule pack with other values of some limits, for a trial. Nobody stands for such a value: it
 * keeps neither the basis nor the source of the limit it takes the place of.
 */
public final class LimitTrial {
  private static final String OPTION = "--limit";

  private final RulePack pack;
  private final List<PackProblem> problems = new ArrayList<>();
  private final Map<String, Limit> limits = new LinkedHashMap<>();
  private final Map<String, String> texts = new TreeMap<>();

  private LimitTrial(RulePack pack) {
    this.pack = pack;
    pack.limits().all().forEach(limit -> limits.put(limit.name(), limit));
  }

  /**
   * The pack with limits changed.
   *
   * @param typed {@code NAME=VALUE} each, the value with its unit
   */
  public static PackReading of(RulePack pack, List<String> typed) {
    return typed.isEmpty() ? new PackReading.Read(pack) : new LimitTrial(pack).read(typed);
  }

  private PackReading read(List<String> typed) {
    Set<String> named = new HashSet<>();
    for (String word : typed) {
      int equals = word.indexOf('=');
      String name = equals < 0 ? word.strip() : word.substring(0, equals).strip();
      Limit was = limits.get(name);
      if (equals <= 0) {
        problem(word, "a limit is set as NAME=VALUE, such as pit-depth-easy=\"2.5 m\"");
      } else if (was == null) {
        problem(
            word,
            "there is no limit "
                + PlainText.quoted(name)
                + PackFields.nearest(name, limits.keySet())
                + " (rules limits lists them)");
      } else if (!named.add(name)) {
        problem(word, "the limit " + name + " is set twice");
      } else {
        set(word, was, word.substring(equals + 1).strip());
      }
    }
    if (!problems.isEmpty()) {
      return new PackReading.Refused(problems);
    }
    RulePack changed = changed(typed);
    List<PackProblem> found = new ArrayList<>();
    new PackChecks(changed.limits(), name -> named.contains(name) ? 1 : 0, found)
        .check(changed.all(), FactDictionary.standard());
    found.forEach(one -> problems.add(new PackProblem(OPTION, 0, one.message())));
    return problems.isEmpty() ? new PackReading.Read(changed) : new PackReading.Refused(problems);
  }

  private void set(String word, Limit was, String text) {
    Optional<Quantity> value =
        Quantity.parse(text, was.value().measure())
            .fold(
                parsed -> Optional.of(parsed.quantity()),
                (ParsedQuantity.Rejected rejected) -> {
                  problem(word, rejected.explanation());
                  return Optional.empty();
                });
    value.ifPresent(
        quantity -> {
          limits.put(
              was.name(),
              new Limit(
                  was.name(),
                  was.label(),
                  quantity,
                  was.fine(),
                  Basis.ON_TRIAL,
                  "",
                  "on trial; " + was.value().text() + " in the pack",
                  List.of()));
          texts.put(OPTION + " " + was.name(), quantity.text());
        });
  }

  private RulePack changed(List<String> typed) {
    Limits changed = new Limits(List.copyOf(limits.values()));
    texts.put("pack", pack.fingerprint());
    return new RulePack(
        pack.name(),
        pack.version(),
        Fingerprint.of(texts),
        pack.rules().stream().map(rule -> PackMerge.withLimits(rule, changed)).toList(),
        pack.pairRules().stream().map(rule -> PackMerge.withLimits(rule, changed)).toList(),
        changed,
        pack.sources(),
        pack.weights(),
        pack.criteria(),
        pack.origin().with(typed));
  }

  private void problem(String word, String message) {
    problems.add(new PackProblem(OPTION + " " + PlainText.shown(word), 0, message));
  }
}
