package underhold.sizing.drilledpiles;

import static underhold.sizing.drilledpiles.PileInputs.*;

import java.util.List;
import underhold.sizing.Settings;
import underhold.sizing.zone.Inputs;
import underhold.sizing.zone.WordInput;

/**
 * Where a rig stands and how large it can be.
 *
 * @param from in words
 * @param rows whether a slab is carried by rows of piles beside it
 * @param sidesNeeded places where a rig must stand
 * @param sidesReached those where it can
 * @param large whether it is a large one
 * @param headroomMetres least headroom where it stands
 */
record Access(
    String from,
    boolean rows,
    int sidesNeeded,
    int sidesReached,
    boolean large,
    double headroomMetres) {
  private static final List<String> RANK = List.of("none", "hand", "small-rig", "large-rig");
  private static final int RIG = RANK.indexOf("small-rig");
  private static final String INSIDE_ONLY = "inside";
  private static final String OUTSIDE_ONLY = "outside";
  private static final String BOTH = "both-sides";

  static Access of(Inputs inputs, Settings settings) {
    int inside = RANK.indexOf(inputs.find(INSIDE).map(one -> one.value()).orElse("none"));
    int outside = RANK.indexOf(inputs.get(OUTSIDE));
    boolean rows = rows(inputs, settings, inside);
    String from = from(inputs, settings, rows, inside);
    double insideHeadroom =
        inputs.has(INSIDE_HEADROOM) ? inputs.get(INSIDE_HEADROOM) : inputs.get(OUTSIDE_HEADROOM);
    double outsideHeadroom = inputs.get(OUTSIDE_HEADROOM);
    int rank =
        switch (from) {
          case INSIDE_ONLY -> inside;
          case OUTSIDE_ONLY -> outside;
          default -> Math.min(inside, outside);
        };
    double headroom =
        switch (from) {
          case INSIDE_ONLY -> insideHeadroom;
          case OUTSIDE_ONLY -> outsideHeadroom;
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
    boolean twoSides = rows || from.equals(BOTH);
    return new Access(
        from,
        rows,
        twoSides ? 2 : 1,
        reached(inputs, from, rows, inside, outside),
        large,
        headroom);
  }

  private static int reached(Inputs inputs, String from, boolean rows, int inside, int outside) {
    int in = inside >= RIG ? 1 : 0;
    int out = outside >= RIG ? 1 : 0;
    if (rows) {
      return yes(inputs, BOTH_SIDES) ? 2 * out : out;
    }
    boolean slab = inputs.get(PATTERN).equals(SLAB);
    return switch (from) {
      case INSIDE_ONLY -> in;
      case OUTSIDE_ONLY -> slab && !yes(inputs, FROM_ABOVE) ? 0 : out;
      default -> in + out;
    };
  }

  private static boolean yes(Inputs inputs, WordInput word) {
    return inputs.find(word).filter(given -> given.value().equals("yes")).isPresent();
  }

  private static boolean rows(Inputs inputs, Settings settings, int inside) {
    if (!inputs.get(PATTERN).equals(SLAB)) {
      return false;
    }
    return switch (settings.get(PileChoices.SLAB_LAYOUT)) {
      case "grid" -> false;
      case "rows" -> true;
      default ->
          inside < RIG
              && inputs.find(FROM_ABOVE).filter(given -> given.value().equals("no")).isPresent();
    };
  }

  private static String from(Inputs inputs, Settings settings, boolean rows, int inside) {
    String chosen = settings.get(PileChoices.DRILL_FROM);
    if (!chosen.equals(PileChoices.DRILL_FROM.fallback())) {
      return chosen;
    }
    if (rows) {
      return OUTSIDE_ONLY;
    }
    if (inputs.get(PATTERN).equals(WALL)) {
      return BOTH;
    }
    return inside >= RIG ? INSIDE_ONLY : OUTSIDE_ONLY;
  }

  /** Whether a rig can stand wherever one must. */
  boolean reached() {
    return sidesReached >= sidesNeeded;
  }

  /** In words. */
  String words() {
    if (rows) {
      return "outside, on both sides";
    }
    return from.equals(BOTH) ? "inside and outside" : from;
  }
}
