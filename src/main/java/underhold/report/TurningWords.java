package underhold.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.advice.Rule;
import underhold.advice.SupportOption;
import underhold.advice.Wording;
import underhold.consult.turning.Change;
import underhold.consult.turning.TurningPoint;
import underhold.quantity.Quantity;
import underhold.site.Fact;
import underhold.site.FactValue;
import underhold.site.Origin;

/** Turning points in words. */
public final class TurningWords {
  private static final int MOST_REASONS = 3;
  private static final String SIZING = "sizing";

  private TurningWords() {}

  /** All changes of a turning point: {@code standing time were none instead of days, and …}. */
  public static String of(TurningPoint point) {
    return String.join(", and ", point.changes().stream().map(TurningWords::of).toList());
  }

  private static String of(Change change) {
    String now =
        change.open()
            ? " (nobody knows it yet)"
            : " instead of " + Wording.value(change.was()) + origin(change.was());
    return change.fact().label() + " were " + value(change) + now;
  }

  private static String origin(Fact was) {
    return switch (was.origin()) {
      case DERIVED -> " (as follows from other facts)";
      case ASSUMED -> " (assumed)";
      case STATED, UNKNOWN -> "";
    };
  }

  /** The value or the range of values for which the answer turns. */
  public static String value(Change change) {
    Quantity from = change.from();
    Quantity to = change.to();
    if (from != null && to != null) {
      if (from.text().equals(to.text())) {
        return from.text();
      }
      return (change.atFrom() ? "from " : "above ")
          + from.text()
          + (change.atTo() ? " up to " : " and below ")
          + to.text();
    }
    if (to != null && to.si() <= change.fact().requireRange().min()) {
      return to.text();
    }
    if (from != null) {
      return change.atFrom() ? from.text() + " or more" : "above " + from.text();
    }
    if (to != null) {
      return change.atTo() ? to.text() + " or less" : "below " + to.text();
    }
    return Words.either(
        change.alike().stream()
            .map(value -> Wording.value(new Fact(change.fact(), Origin.STATED, value, "")))
            .toList());
  }

  /** The rules that make it turn, the first few. */
  public static List<String> reasons(TurningPoint point) {
    List<String> reasons = new ArrayList<>();
    for (Rule rule : point.gained()) {
      reasons.add("Now " + Words.verb(rule.effect()) + Words.about(rule) + ": " + text(rule));
    }
    for (Rule rule : point.lost()) {
      reasons.add("No longer " + Words.verb(rule.effect()) + Words.about(rule) + ": " + text(rule));
    }
    return reasons.size() > MOST_REASONS
        ? with(reasons.subList(0, MOST_REASONS), reasons.size() - MOST_REASONS)
        : reasons;
  }

  private static List<String> with(List<String> first, int more) {
    List<String> all = new ArrayList<>(first);
    all.add("and " + more + (more == 1 ? " rule more" : " rules more"));
    return all;
  }

  private static String text(Rule rule) {
    return rule.sentence() + " [" + rule.id() + "]";
  }

  /** What else changes because it follows; empty where nothing does. */
  public static Optional<String> follows(TurningPoint point) {
    List<String> follows =
        point.follows().stream()
            .map(fact -> fact.definition().label() + " " + Wording.value(fact))
            .toList();
    return follows.isEmpty() ? Optional.empty() : Optional.of("then " + Words.list(follows));
  }

  /** Which checks of the option that would lead fail on its quick sheet; empty where none does. */
  public static Optional<String> fails(TurningPoint point) {
    String leader = point.after().leader().map(SupportOption::id).orElse("");
    List<String> failing =
        point.after().view().present().stream()
            .filter(fact -> fact.definition().group().equals(SIZING))
            .filter(fact -> fact.definition().options().contains(leader))
            .filter(fact -> fact.text().equals("fails"))
            .map(fact -> fact.definition().label())
            .toList();
    return failing.isEmpty()
        ? Optional.empty()
        : Optional.of("But its quick sizing fails: " + Words.list(failing) + ".");
  }

  /** Words of one fact that turn the answer alike, taken together. */
  public static List<TurningPoint> merged(List<TurningPoint> points) {
    Map<Object, TurningPoint> merged = new LinkedHashMap<>();
    for (TurningPoint point : points) {
      boolean alone = point.changes().size() == 1 && !point.changes().get(0).ranged();
      Object key =
          alone
              ? List.of(
                  point.changes().get(0).fact().name(),
                  point.after().leaders(),
                  point.gained(),
                  point.lost())
              : point;
      merged.merge(key, point, TurningPoint::or);
    }
    return List.copyOf(merged.values());
  }

  /** The words of a command line that try it: {@code standUp=none}. */
  public static String typed(Change change) {
    FactValue value = change.tried();
    boolean quoted = value.text().indexOf(' ') >= 0;
    String pair = change.fact().name() + "=" + value.text();
    return quoted ? "\"" + pair + "\"" : pair;
  }
}
