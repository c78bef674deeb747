package underhold.sizing.bracketpiles;

import static underhold.sizing.bracketpiles.BracketInputs.*;

import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;

/** Hazards, when to refuse, and what the sheet leaves out. */
final class CautionSection {
  private static final String ENGINEER = "the engineer of record";
  private static final String GEOTECHNICAL = "the geotechnical engineer";

  private CautionSection() {}

  static void write(BracketCase site, PileTrial pile, SheetBuilder sheet) {
    if (!site.pathDecided()) {
      caution(
          sheet,
          "nobody resists the moment yet",
          "What carries P e is not decided (moment-path). Without an answer no bracket may be built.",
          ENGINEER,
          Source.judgement());
    }
    if (site.masonryEdge()) {
      caution(
          sheet,
          "weak edge",
          "Rubble, weak brick or a thin unreinforced slab crushes or unravels at a seat: gather it in a cast beam first, or choose another method.",
          ENGINEER,
          Source.judgement());
    }
    if (EccentricitySection.doubtful(site)) {
      caution(
          sheet,
          "soft ground at the head",
          "Soft or liquefiable ground does not hold a bent pile head over time.",
          GEOTECHNICAL,
          Source.judgement());
    }
    if (pile.bared()) {
      caution(
          sheet,
          "bared piles",
          "The excavation takes the soil from the piles: their whole length down to fixity is a column with the full moment. "
              + (site.braceLevels() > 0
                  ? "Walers must carry before the next lift."
                  : "No walers are counted on (brace-levels): nothing may push the piles sideways."),
          ENGINEER,
          Source.judgement());
    }
    if (site.path() == MomentPath.COUPLE || site.path() == MomentPath.TIED) {
      caution(
          sheet,
          "the structure carries the moment",
          "Push, pull and twist go into the edge, its slab and walls: check them, and that no later work cuts them.",
          ENGINEER,
          Source.statics());
    }
    caution(
        sheet,
        "eccentricity",
        "An eccentricity that may be off by more than 50 mm (2 in) after survey goes back to the engineer; each 25 mm (1 in) adds P times 25 mm of moment.",
        ENGINEER,
        Source.judgement());
    caution(
        sheet,
        "settling ground",
        "No battered piles in ground that settles; settling fill drags the pile down, which is not reckoned here.",
        GEOTECHNICAL,
        Source.judgement());
    caution(
        sheet,
        "small piles bend",
        "Single rows of small piles with cantilever brackets suit light strip footings only.",
        ENGINEER,
        Sources.TOMLINSON);
    caution(
        sheet,
        "drilling beside a footing",
        "Air or water flush can loosen soil under the footing: case ahead, watch levels while drilling, grout at once.",
        GEOTECHNICAL,
        Sources.IBC_CONCRETE);
    caution(
        sheet,
        "casing steel",
        "Mill-secondary casing needs coupon tests of yield and stretch; high-strength casing needs a welding procedure.",
        ENGINEER,
        Sources.CONTRACTOR);
    caution(
        sheet,
        "jacking",
        "Nobody works under a load that stands on a jack alone: shims follow the jack.",
        "the competent person",
        Source.practice());
    sheet.notCovered("uplift of the structure, earthquake and wind");
    sheet.notCovered(
        "local bending of the casing wall: use a sleeve or saddle with stiffening rings");
    sheet.notCovered(
        "strength of the structure against twist, push and pull of a couple or a held head");
    sheet.notCovered("walers, rakers and ties, and the wall that holds the excavation");
    sheet.notCovered("downdrag, scour, liquefaction, and groups in two directions");
    sheet.notCovered("the cap beam of a pair as a member, and pull-out of adhesive anchors");
    sheet.notCovered("ground movement by the excavation, and damage of the structure by it");
    sheet.notCovered(
        "load and resistance factors for the pile; allowable stress throughout, anchors factored");
  }

  private static void caution(
      SheetBuilder sheet, String hazard, String advice, String by, Source source) {
    sheet.caution(hazard, Phrase.of(advice), by, source);
  }
}
