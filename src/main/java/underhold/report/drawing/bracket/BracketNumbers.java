package underhold.report.drawing.bracket;

import static underhold.report.drawing.numbers.SheetNumbers.si;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.report.drawing.Drawn;
import underhold.report.drawing.numbers.SheetNumbers;
import underhold.sizing.Amount;

/**
 * What a drawing needs of the sheet of mini piles with brackets. Depths are below ground, distances
 * from the axis of the pile as planned [m].
 *
 * @param footing underside of the edge or footing
 * @param base bottom of the excavation
 * @param bared whether the excavation bares the pile
 * @param casing outside diameter of the casing
 * @param hole diameter of the hole
 * @param casingBottom depth at which the casing ends and the bond begins
 * @param toe depth of the toe
 * @param fixity depth at which the pile is held; where the sheet has it
 * @param braces depths of walers
 * @param eccentricity of the seat's resultant, mislocation included
 * @param offset from the pile to the middle of the seat or the stated line of load
 * @param offsetStated whether that was stated
 * @param shift inward shift of the resultant by the shims
 * @param mislocation added until the pile is surveyed
 * @param seat depth of the seat
 * @param gap from casing to edge
 * @param plateDepth depth of the bracket plates at the pile
 * @param seatPlate thickness of the seat plate
 * @param apart from the pile to the far one that holds it down; where piles stand in pairs
 */
record BracketNumbers(
    double footing,
    double base,
    boolean bared,
    double casing,
    double hole,
    double casingBottom,
    double toe,
    Optional<Double> fixity,
    List<Double> braces,
    double eccentricity,
    double offset,
    boolean offsetStated,
    double shift,
    double mislocation,
    double seat,
    double gap,
    double plateDepth,
    double seatPlate,
    Optional<Double> apart) {

  /** Why nothing can be drawn; empty where it can. */
  static Optional<Drawn> refusal(SheetNumbers numbers) {
    Optional<Drawn> refusal =
        numbers.refusal(
            List.of(
                "bracket-load", "eccentricity", "eccentric-moment", "plate-moment", "seat-plate"),
            List.of("founding-depth", "excavation-below-footing", "seat-depth", "pile-gap"));
    if (refusal.isPresent()) {
      return refusal;
    }
    boolean placed =
        numbers.checkNoted("pile-bond", "f").isPresent()
            && numbers.checkNoted("pile-bond", "t").isPresent()
            && numbers.symbol("uncased-fhwa", "D").isPresent();
    return placed
        ? Optional.empty()
        : numbers.withheld("it does not say from where to where the bond goes");
  }

  static BracketNumbers of(SheetNumbers numbers) {
    double footing = si(numbers.input("founding-depth"));
    double below = Math.max(0, si(numbers.input("excavation-below-footing")));
    double base = footing + below;
    double hole = si(numbers.symbol("uncased-fhwa", "D"));
    double casing =
        numbers
            .symbol("eccentricity", "OD")
            .map(Amount::si)
            .orElse(hole - numbers.input("hole-overcut").map(Amount::si).orElse(0.0));
    double shift = si(numbers.symbol("eccentricity", "sh"));
    double mislocation = si(numbers.symbol("eccentricity", "m"));
    double eccentricity = si(numbers.result("eccentricity"));
    return new BracketNumbers(
        footing,
        base,
        numbers.word("bared").equals("yes"),
        casing,
        hole,
        si(numbers.checkNoted("pile-bond", "f")),
        si(numbers.checkNoted("pile-bond", "t")),
        numbers.symbol("slenderness", "f").map(depth -> base + depth.si()),
        braces(numbers, footing, below),
        eccentricity,
        eccentricity - shift - mislocation,
        numbers.symbol("eccentricity", "o").isPresent(),
        shift,
        mislocation,
        si(numbers.input("seat-depth")),
        si(numbers.input("pile-gap")),
        si(numbers.symbol("plate-moment", "d")),
        si(numbers.result("seat-plate")),
        numbers.symbol("far-pile", "L").map(Amount::si));
  }

  /** Walers stand evenly between the footing and the base of the excavation. */
  private static List<Double> braces(SheetNumbers numbers, double footing, double below) {
    int levels = (int) Math.round(numbers.input("brace-levels").map(Amount::si).orElse(0.0));
    List<Double> braces = new ArrayList<>();
    for (int i = 1; i <= levels && below > 0; i++) {
      braces.add(footing + i * below / (levels + 1));
    }
    return braces;
  }

  /**
   * Where the face of the edge lies. A stated line of load says nothing of it: then the seat is
   * drawn about that line, but never inside the pile.
   */
  double face() {
    double byGap = casing / 2 + gap;
    return offsetStated ? Math.max(offset - seat / 2, casing / 2 + gap / 4) : byGap;
  }

  /** Where the resultant of the seat lies. */
  double resultant() {
    return offset + shift;
  }
}
