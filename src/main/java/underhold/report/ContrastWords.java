package underhold.report;

import java.util.List;
import underhold.consult.contrast.Contrast;
import underhold.consult.contrast.CriterionContrast;

/** What a contrast comes to, in sentences. */
final class ContrastWords {
  private final String first;
  private final String second;

  ContrastWords(Contrast contrast) {
    this.first = contrast.first().option().id();
    this.second = contrast.second().option().id();
  }

  /** The verdict of a criterion: {@code Ground favours pits by 4 points}. */
  String verdict(CriterionContrast criterion) {
    String name = Words.sentence(criterion.criterion().word());
    return switch (criterion.outcome()) {
      case FAVOURS_FIRST -> name + favours(first, criterion);
      case FAVOURS_SECOND -> name + favours(second, criterion);
      case RULES_OUT_FIRST -> name + " rules out " + first + ".";
      case RULES_OUT_SECOND -> name + " rules out " + second + ".";
      case RULES_OUT_BOTH -> name + " rules out both.";
      case EVEN -> name + ": even, " + Words.score(criterion.firstPoints()) + " each.";
      case SILENT ->
          criterion.empty() ? name + " says nothing of either." : name + " counts for neither.";
    };
  }

  private String favours(String option, CriterionContrast criterion) {
    return " favours "
        + option
        + " by "
        + points(criterion.gap())
        + " ("
        + first
        + " "
        + Words.score(criterion.firstPoints())
        + ", "
        + second
        + " "
        + Words.score(criterion.secondPoints())
        + ").";
  }

  private static String points(int points) {
    return Words.count(points, "point", "points");
  }

  /** What the scores come to, and what they leave out. */
  String conclusion(Contrast contrast) {
    boolean firstOut = contrast.first().ruledOut();
    boolean secondOut = contrast.second().ruledOut();
    if (firstOut || secondOut) {
      return "Ruled out: "
          + (firstOut && secondOut ? first + " and " + second : firstOut ? first : second)
          + ". Points do not bring back what a rule rules out.";
    }
    String scores = scores(contrast.ahead());
    return contrast.tied()
        ? scores + ", a tie: a gap of up to " + points(contrast.tie()) + " decides nothing."
        : scores + ".";
  }

  private String scores(int ahead) {
    return ahead == 0
        ? "The scores are equal"
        : "The scores put "
            + (ahead > 0 ? first : second)
            + " ahead of "
            + (ahead > 0 ? second : first)
            + " by "
            + points(Math.abs(ahead));
  }

  /** The names of the options a thing is about; {@code both} where it is about both. */
  String about(boolean one, boolean other) {
    return one && other ? "both" : one ? first : second;
  }

  List<String> options(boolean one, boolean other) {
    return one && other ? List.of(first, second) : List.of(one ? first : second);
  }
}
