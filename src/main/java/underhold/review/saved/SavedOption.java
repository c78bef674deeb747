package underhold.review.saved;

import java.util.List;
import java.util.Optional;
import underhold.advice.OptionAdvice;
import underhold.consult.QuickSizing;
import underhold.quantity.UnitSystem;

/**
 * What was advised of an option of a zone.
 *
 * @param id the option
 * @param label the option in words
 * @param standing how it stood
 * @param score its points
 * @param tied whether it was tied with the leader, or led a tie
 * @param holds the safety rules that held it
 * @param sheet its calculation sheet; left out where it was not sized
 */
public record SavedOption(
    String id,
    String label,
    String standing,
    int score,
    boolean tied,
    List<SavedHold> holds,
    Optional<SavedSheet> sheet) {
  public SavedOption {
    holds = List.copyOf(holds);
  }

  static SavedOption of(OptionAdvice advice, Optional<QuickSizing> sizing, UnitSystem units) {
    return new SavedOption(
        advice.option().id(),
        advice.option().label(),
        advice.standing().word(),
        advice.score(),
        advice.tied(),
        advice.holds().stream()
            .map(hold -> new SavedHold(hold.rule().id(), hold.ask(), hold.explanation()))
            .toList(),
        sizing.map(one -> SavedSheet.of(one.sheet(), units)));
  }

  /** Standing and points in a few words. */
  public String line() {
    return standing + (tied ? ", tied" : "") + ", " + points(score);
  }

  /** Points with their sign. */
  public static String points(int score) {
    String sign = score > 0 ? "+" : "";
    return sign + score + (Math.abs(score) == 1 ? " point" : " points");
  }
}
