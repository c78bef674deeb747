package underhold.sizing;

import java.util.List;
import java.util.Optional;

/** What a stage counts, beside its words. */
public sealed interface StageDetail {

  /** Nothing is counted. */
  record None() implements StageDetail {}

  /**
   * A round of pits. A pit counts as open from its first cut until it carries.
   *
   * @param pits their numbers along the wall, from 1
   * @param widthsMetres the width of each, in the same order
   * @param wallMetres length of the wall
   * @param mayBeOpenMetres length of it that may be open at once
   * @param crews pits that are dug at one time
   * @param crewDays working days of digging and concrete for one pit
   * @param openDays working days from first cut until it carries
   */
  record PitRound(
      List<Integer> pits,
      List<Double> widthsMetres,
      double wallMetres,
      double mayBeOpenMetres,
      int crews,
      double crewDays,
      double openDays)
      implements StageDetail {
    public PitRound {
      pits = List.copyOf(pits);
      widthsMetres = List.copyOf(widthsMetres);
      if (pits.isEmpty() || pits.size() != widthsMetres.size()) {
        throw new IllegalArgumentException("a round has pits, each with its width");
      }
    }

    /** Length of wall open when all its pits are, m. */
    public double openMetres() {
      return widthsMetres.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** Working days from the first cut of the round until its last pit carries. */
    public double days() {
      int turns = (pits.size() + crews - 1) / crews;
      return (turns - 1) * crewDays + openDays;
    }
  }

  /** At its end a brace, tie or waler is set, which holds sideways what the stage laid bare. */
  record Brace() implements StageDetail {}

  /** What was built hardens and is tested; nobody builds meanwhile. */
  record Curing() implements StageDetail {}

  /** Designed and built by others, or not designed yet: the plan holds its release alone. */
  record ByOthers() implements StageDetail {}

  /**
   * Steps in which load is put on. They stand among the work of their stage: what stands before
   * them there holds for all of them, what stands after them is done when the last is held.
   *
   * @param steps what is done at each
   * @param lift upward movement of the structure that stops the jacking; empty where none is given
   */
  record LoadSteps(List<Phrase> steps, Optional<Amount> lift) implements StageDetail {
    public LoadSteps {
      steps = List.copyOf(steps);
      if (steps.isEmpty()) {
        throw new IllegalArgumentException("load is put on in at least one step");
      }
    }

    /** Steps with the upward movement that stops them. */
    public LoadSteps(List<Phrase> steps, Amount lift) {
      this(steps, Optional.of(lift));
    }
  }
}
