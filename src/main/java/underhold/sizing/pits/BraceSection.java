package underhold.sizing.pits;

import static underhold.sizing.pits.PitsFact.*;

import underhold.mechanics.soil.pressure.AtRestPressure;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Verdict;

/** Force in the brace or tie of a pier. */
final class BraceSection {
  private BraceSection() {}

  /**
   * Why a brace is needed.
   *
   * @param barred whether the code bars the unbraced pier whatever the numbers
   * @param surchargeKilopascals surcharge behind the pier at its top
   */
  record Need(boolean barred, double surchargeKilopascals) {}

  static void write(PitsCase site, SheetBuilder sheet, Layout layout, Need need) {
    boolean barred = need.barred();
    double rest =
        sheet
            .step("brace-k0", "Pressure coefficient of a braced pier, at rest", "K0 = 1 - sin({f})")
            .with("f", "friction angle", site.amount(FACE_FRICTION_ANGLE))
            .from(Sources.IBC_1610)
            .gives(
                Amount.ratio(AtRestPressure.normallyConsolidated(site.get(FACE_FRICTION_ANGLE))));
    double thrust = PierThrust.write(site, sheet, "brace", rest, need.surchargeKilopascals(), "K0");
    double horizontal =
        sheet
            .step(
                "brace-horizontal",
                "Horizontal force that the brace or tie of one pier takes",
                "Fh = {P} × {b}")
            .with("P", "horizontal force on the pier", Amount.lineLoad(thrust))
            .with("b", "width of the pier", Amount.length(layout.widest()))
            .from(Sources.NYC_1817)
            .note("All horizontal load, none left to the base.")
            .gives(Amount.force(thrust * layout.widest()));
    double slope = Math.cos(Math.toRadians(site.get(PitsSetting.BRACE_ANGLE)));
    sheet
        .step("brace-force", "Force along a raker or anchor", "F = {Fh} / cos({a})")
        .with("Fh", "horizontal force", Amount.force(horizontal))
        .with("a", "slope below the horizontal", site.amount(PitsSetting.BRACE_ANGLE))
        .note("Its vertical part loads the pier and its base (anchor) or lifts them (raker).")
        .gives(Amount.force(horizontal / slope));
    boolean possible = site.bracePossible.value();
    sheet.verdict(
        "brace",
        "Brace or tie on every pier",
        Amount.force(horizontal),
        Amount.force(0),
        possible ? Verdict.REFER : PitsCase.otherwise(site.bracePossible),
        barred ? Sources.NYC_1817_MASONRY : Sources.NYC_1817,
        Phrase.of(
            (barred
                    ? "Masonry whose lateral stability is not verified gets no relief from bracing. "
                    : "The pier does not stand alone. ")
                + (possible
                    ? "Design the brace or tie for the force above."
                    : "Nobody has said that a brace or tie is possible; without one the pits cannot be kept as they are.")));
  }
}
