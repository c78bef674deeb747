package underhold.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import underhold.consult.QuickSizing;
import underhold.site.Fact;
import underhold.site.FactView;
import underhold.sizing.Check;
import underhold.sizing.MissingInput;
import underhold.sizing.Verdict;

/** The quick sizing of an option in a line. */
public final class SizingWords {
  private static final int NAMES = 5;

  private SizingWords() {}

  /** What the sheet says, and the check that governs; or what it lacks. */
  public static String of(QuickSizing sizing, FactView facts) {
    if (!sizing.complete()) {
      return lacks(sizing, facts);
    }
    List<String> counts = new ArrayList<>();
    counts.add(count(sizing, Verdict.FAILS, "fail", "fails"));
    counts.add(count(sizing, Verdict.REFER, "refer to the engineer", "refers to the engineer"));
    counts.add(count(sizing, Verdict.PASSES, "pass", "passes"));
    String governs =
        sizing
            .governing()
            .map(check -> " Governs: " + check.title() + ", " + use(check) + ".")
            .orElse("");
    return "Of its checks " + String.join(", ", counts) + "." + governs;
  }

  private static String count(QuickSizing sizing, Verdict verdict, String many, String one) {
    long count = sizing.count(verdict);
    return (count == 0 ? "none" : String.valueOf(count)) + " " + (count > 1 ? many : one);
  }

  /** What is known already and still asked about is what the method does not fit. */
  private static String lacks(QuickSizing sizing, FactView facts) {
    List<String> asked =
        sizing.sheet().missing().stream().map(MissingInput::name).distinct().toList();
    List<String> unfit =
        asked.stream().filter(name -> known(name, facts)).map(name -> said(name, facts)).toList();
    if (!unfit.isEmpty()) {
      return "Not sized: its sheet does not hold for " + String.join(", ", unfit) + ".";
    }
    if (asked.isEmpty()) {
      return "Not sized.";
    }
    List<String> first = asked.subList(0, Math.min(NAMES, asked.size()));
    String more = asked.size() > NAMES ? " and " + (asked.size() - NAMES) + " more" : "";
    return "Not sized: its sheet asks about " + String.join(", ", first) + more + ".";
  }

  private static boolean known(String name, FactView facts) {
    return facts.dictionary().find(name).isPresent() && facts.fact(name).value() != null;
  }

  private static String said(String name, FactView facts) {
    Fact fact = facts.fact(name);
    return fact.definition().label() + ": " + fact.text();
  }

  private static String use(Check check) {
    OptionalDouble use = check.utilisation();
    String share =
        use.isPresent()
            ? String.format(Locale.ROOT, "%.0f %% used", 100 * use.getAsDouble())
            : "no capacity";
    return share + " (" + check.verdict().label() + ")";
  }

  /** The same for programs; null where nothing was tried. */
  static @Nullable Map<String, Object> json(@Nullable QuickSizing sizing) {
    if (sizing == null) {
      return null;
    }
    return Json.object(
        "complete", sizing.complete(),
        "fails", sizing.count(Verdict.FAILS),
        "refers", sizing.count(Verdict.REFER),
        "passes", sizing.count(Verdict.PASSES),
        "governing", sizing.governing().map(SizingWords::governing).orElse(null),
        "asks", sizing.sheet().missing().stream().map(MissingInput::name).distinct().toList());
  }

  private static Map<String, Object> governing(Check check) {
    OptionalDouble use = check.utilisation();
    return Json.object(
        "check", check.id(),
        "title", check.title(),
        "utilisation", use.isPresent() ? use.getAsDouble() : null,
        "verdict", check.verdict().label());
  }
}
