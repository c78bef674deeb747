package underhold.sizing.drilledpiles;

import static underhold.sizing.drilledpiles.PileInputs.*;

import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;

/** Hazards, who decides, and what the sheet leaves out. */
final class CautionSection {
  private static final String ENGINEER = "the engineer of record";
  private static final String GEOTECHNICAL = "the geotechnical engineer";

  /** Nearer than this a pile must be proved upright, m. */
  private static final double NEAR_METRES = 1;

  private CautionSection() {}

  static void write(PileCase site, SheetBuilder sheet) {
    sheet.caution(
        "digging below the footing",
        Phrase.of(
            "No digging below the base of a footing before it is underpinned, unless it stands on stable rock or a registered engineer approves."),
        "a registered professional engineer",
        Sources.OSHA_651_I);
    sheet.caution(
        "loss of ground",
        Phrase.of(
            "Drilling takes soil from under the structure: case ahead of the bit, keep water in the hole, no air flush in loose ground; stop when spoil exceeds the hole."),
        GEOTECHNICAL,
        Source.judgement());
    sheet.caution(
        "bared piles",
        Phrase.of(
            "A bared pile is a column: dig evenly, never below a level of bracing before it is set, and keep machines off the piles. Two piles under one beam are braced along the beam only; three in a rigid cap are braced both ways."),
        ENGINEER,
        Sources.IBC_FREE);
    sheet.caution(
        "loss of a pile",
        Phrase.of(
            "Read loads or levels of every pile while digging goes on; a pile that sinks is jacked again or replaced before work goes on."),
        ENGINEER,
        Source.judgement());
    sheet.caution(
        "obstructions",
        Phrase.of(
            "Boulders and old works turn piles and lose ground: core through them, and count them as time and risk, not as cost alone."),
        GEOTECHNICAL,
        Source.judgement());
    sheet.caution(
        "vibration and noise",
        Phrase.of(
            "Rotary drilling shakes little; a down-the-hole hammer shakes brittle linings: measure, and change the tool at the limit."),
        ENGINEER,
        Source.judgement());
    sheet.caution(
        "downdrag",
        Phrase.of(
            "Where water is lowered or fill is placed after the piles are made, soft ground hangs on them: add that load to the section, do not take it off the ground."),
        GEOTECHNICAL,
        Sources.DOWNDRAG);
    sheet.caution(
        "stiff sockets",
        Phrase.of(
            "Side and base of a rock socket do not peak together, and a short socket may lose bond when over-strained: do not add them without tests."),
        GEOTECHNICAL,
        Source.judgement());
    sheet.caution(
        "jacks",
        Phrase.of(
            "A jack may drop: locking rings, packing at hand, nobody under an unlocked load; hold footing and jacks sideways."),
        ENGINEER,
        Sources.JACKING);
    sheet.caution(
        "duties in New York City",
        Phrase.of(
            "Whoever digs deeper protects the neighbour at his own cost with a licence to enter; underpinning has special inspection."),
        "the owner, with the engineer of record",
        Sources.NYC_3309);
    sheet.caution(
        "piles at a lot line",
        Phrase.of(
            "Take it that the neighbour digs to {d} below the curb one day.",
            "d",
            Amount.length(3.048)),
        ENGINEER,
        Sources.LOT_LINE);
    dependent(site, sheet);
    notCovered(sheet);
  }

  private static void dependent(PileCase site, SheetBuilder sheet) {
    if (site.is(ARTESIAN, "yes")) {
      sheet.caution(
          "water under pressure",
          Phrase.of(
              "A hole into the layer below blows in: keep a head of water or grout, and ask a specialist."),
          GEOTECHNICAL,
          Source.judgement());
    }
    if (site.inputs().has(LIVE) && site.get(LIVE) < NEAR_METRES) {
      sheet.caution(
          "live structure beside the piles",
          Phrase.of(
              "A pile passes {d} from it: guide the casing, measure its plumb at every joint, and watch the structure.",
              "d",
              site.amount(LIVE)),
          ENGINEER,
          Source.judgement());
    }
    if (site.is(UPLIFT, "yes")) {
      sheet.caution(
          "uplift",
          Phrase.of(
              "The foundation also holds down: piles and caps must be anchored for 1.5 times the uplift; nothing here checks it."),
          ENGINEER,
          Sources.CAP);
    }
    if (site.layers().stream()
        .anyMatch(one -> one.soft() && one.bottomMetres() > site.dugLevel())) {
      sheet.caution(
          "soft ground below the dug level",
          Phrase.of(
              "It neither carries nor braces much, and its base may heave into the cut with the piles in it."),
          GEOTECHNICAL,
          Source.judgement());
    }
  }

  private static void notCovered(SheetBuilder sheet) {
    sheet.notCovered("sections of beams and caps, bearings, connections and punching: forces only");
    sheet.notCovered(
        "sideways load, wind and earthquake; bending of piles by moving ground or off-plumb drilling");
    sheet.notCovered("design of bracing; only its levels and their effect on the piles");
    sheet.notCovered("threaded joints of casing in bending");
    sheet.notCovered(
        "settlement of the group beyond the rough rule of its check; creep, and consolidation below the toes");
    sheet.notCovered("downdrag, uplift and heave of the base as numbers");
    sheet.notCovered("upward seepage into the cut, which lowers the effective stress of sand");
    sheet.notCovered("stability of the excavation and of its edge");
    sheet.notCovered("forces in the structure itself when the load moves to the piles");
  }
}
