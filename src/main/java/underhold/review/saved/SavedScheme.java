package underhold.review.saved;

import java.util.List;
import underhold.advice.SupportOption;
import underhold.consult.scheme.Combination;
import underhold.consult.scheme.PairFinding;
import underhold.consult.scheme.SchemeOutcome;

/**
 * The methods of the zones together.
 *
 * @param reason why there is none; empty where there is one
 * @param primary the zone whose method carries most; empty where none carries
 * @param methods the method of each zone
 * @param points of the zones and between them
 * @param held whether an open rule between zones holds it
 * @param findings what holds between zones
 */
public record SavedScheme(
    String reason,
    String primary,
    List<Method> methods,
    int points,
    boolean held,
    List<Between> findings) {
  public SavedScheme {
    methods = List.copyOf(methods);
    findings = List.copyOf(findings);
  }

  /** The method of a zone; empty where it is not decided. */
  public record Method(String zone, String method) {}

  /** What a rule states of two zones. */
  public record Between(String rule, String effect, String first, String second, String because) {
    static Between of(PairFinding finding) {
      return new Between(
          finding.id(),
          finding.effect().word(),
          finding.first(),
          finding.second(),
          finding.reason());
    }
  }

  static SavedScheme of(SchemeOutcome outcome) {
    if (outcome instanceof SchemeOutcome.NotMade none) {
      return new SavedScheme(none.reason(), "", List.of(), 0, false, List.of());
    }
    SchemeOutcome.Made made = (SchemeOutcome.Made) outcome;
    Combination best = made.scheme().best();
    return new SavedScheme(
        "",
        made.scheme().primary().orElse(""),
        best.zones().stream()
            .map(zone -> new Method(zone.name(), zone.method().map(SupportOption::id).orElse("")))
            .toList(),
        best.points(),
        best.held(),
        best.findings().stream().map(Between::of).toList());
  }

  /** Zone by zone, in words. */
  public String line() {
    if (!reason.isEmpty()) {
      return "none: " + reason;
    }
    return String.join(
        "; ",
        methods.stream()
            .map(one -> one.zone() + " " + (one.method().isEmpty() ? "undecided" : one.method()))
            .toList());
  }
}
