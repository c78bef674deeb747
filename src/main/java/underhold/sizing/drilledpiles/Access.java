package underhold.sizing.drilledpiles;

import static underhold.sizing.drilledpiles.PileInputs.*;

import java.util.List;
import underhold.sizing.Settings;
import underhold.sizing.zone.Inputs;

/**
 * Where a rig stands and how large it can be.
 *
 * @param from in words
 * @param reached whether a rig can stand at every row of piles
 * @param large whether it is a large one
 * @param headroomMetres least headroom where it stands
 */
record Access(String from, boolean reached, boolean large, double headroomMetres) {
  private static final List<String> RANK = List.of("none", "hand", "small-rig", "large-rig");

  static Access of(Inputs inputs, Settings settings) {
    int inside = RANK.indexOf(inputs.find(INSIDE).map(one -> one.value()).orElse("none"));
    int outside = RANK.indexOf(inputs.get(OUTSIDE));
    double insideHeadroom =
        inputs.has(INSIDE_HEADROOM) ? inputs.get(INSIDE_HEADROOM) : inputs.get(OUTSIDE_HEADROOM);
    double outsideHeadroom = inputs.get(OUTSIDE_HEADROOM);
    String from = from(inputs, settings, inside, outside);
    int rank =
        switch (from) {
          case "inside" -> inside;
          case "outside" -> outside;
          default -> Math.min(inside, outside);
        };
    double headroom =
        switch (from) {
          case "inside" -> insideHeadroom;
          case "outside" -> outsideHeadroom;
          default -> Math.min(insideHeadroom, outsideHeadroom);
        };
    boolean large =
        switch (settings.get(PileChoices.RIG)) {
          case "small" -> false;
          case "large" -> true;
          default ->
              rank == RANK.indexOf("large-rig")
                  && headroom >= settings.get(WorkNumbers.LARGE_HEADROOM);
        };
    return new Access(from, rank >= RANK.indexOf("small-rig"), large, headroom);
  }

  private static String from(Inputs inputs, Settings settings, int inside, int outside) {
    String chosen = settings.get(PileChoices.DRILL_FROM);
    if (!chosen.equals(PileChoices.DRILL_FROM.fallback())) {
      return chosen;
    }
    if (inputs.get(PATTERN).equals(WALL)) {
      return "both-sides";
    }
    return inside >= RANK.indexOf("small-rig") ? "inside" : "outside";
  }

  /** In words. */
  String words() {
    return from.equals("both-sides") ? "inside and outside" : from;
  }
}
