package underhold.sizing;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What a stage says of checks that do not pass, at the place where the thing they concern would be
 * built: a drawing or a list of stages is read on site without the table of checks beside it.
 */
public final class Unsettled {
  private static final double PERCENT = 100;

  private Unsettled() {}

  /**
   * That a part of the work is not to be used as it stands; empty where every check passes.
   *
   * @param part what the stage names, with its verb: "These boards are"
   * @param checks checks of it that do not pass
   */
  public static Optional<Phrase> warning(String part, List<Check> checks) {
    return checks.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Phrase.of(
                part
                    + " not to be used before the engineer has settled what does not pass by its numbers: "
                    + words(checks)
                    + ". Checks that refer because nobody stated what they rest on stand in the table of checks."));
  }

  /** The checks by their titles, each with how far it is used and its verdict. */
  public static String words(List<Check> checks) {
    return checks.stream().map(Unsettled::words).collect(Collectors.joining("; "));
  }

  private static String words(Check check) {
    String title = check.title();
    String used =
        check.utilisation().isPresent()
            ? String.format(Locale.ROOT, "%.0f %%", PERCENT * check.utilisation().getAsDouble())
            : "no capacity";
    boolean over = check.verdict() == Verdict.REFER && check.exceeds();
    return title + " (" + used + ", " + check.verdict().label() + (over ? ", exceeded" : "") + ")";
  }
}
