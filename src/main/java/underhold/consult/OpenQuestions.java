package underhold.consult;

import java.util.List;

/**
 * The open questions of a zone, and how firm its answer is against them.
 *
 * @param list those that could change anything, the weightiest first
 * @param trials how many values of unknown facts were tried, one fact at a time
 * @param kept in how many of the trials the same option, or none, still led
 */
public record OpenQuestions(List<OpenQuestion> list, int trials, int kept) {
  /** Nothing asked. */
  static final OpenQuestions NONE = new OpenQuestions(List.of(), 0, 0);

  public OpenQuestions {
    list = List.copyOf(list);
  }

  /** The share of trials that keep the leader, in per cent; 100 where nothing is open. */
  public int keptPercent() {
    return trials == 0 ? 100 : (int) Math.floor(100.0 * kept / trials);
  }
}
