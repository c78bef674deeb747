package underhold.classroom;

import java.util.List;
import underhold.quantity.Measure;
import underhold.sizing.Stage;
import underhold.sizing.StageDetail.PitRound;

/** The answer to a question, as the program reckons it from the facts known at its stage. */
public sealed interface Reckoned {

  /**
   * An amount.
   *
   * @param si in the inside unit of the measure
   * @param measure its measure
   * @param text as it reads best
   * @param how how it is found, with its source
   */
  record Amount(double si, Measure measure, String text, String how) implements Reckoned {}

  /**
   * A verdict.
   *
   * @param word passes, fails or refer
   * @param how demand and capacity, with the source
   */
  record Verdict(String word, String how) implements Reckoned {}

  /**
   * Rounds of pits.
   *
   * @param rounds the rounds of the sheet, which are one legal way
   * @param clearWidths clear distance between pits open together, in pit widths
   * @param source who says so
   */
  record Rounds(List<PitRound> rounds, double clearWidths, String source) implements Reckoned {
    public Rounds {
      rounds = List.copyOf(rounds);
    }
  }

  /**
   * Stages of the work.
   *
   * @param stages in the order of the sheet, which is one legal way
   */
  record Order(List<Stage> stages) implements Reckoned {
    public Order {
      stages = List.copyOf(stages);
    }

    /** The stages under the letters by which they are asked, in the order of their titles. */
    public List<Stage> lettered() {
      return stages.stream().sorted(java.util.Comparator.comparing(Stage::title)).toList();
    }
  }

  /**
   * Nothing: the question cannot be answered from what is known.
   *
   * @param why what is missing
   */
  record Nothing(String why) implements Reckoned {}
}
