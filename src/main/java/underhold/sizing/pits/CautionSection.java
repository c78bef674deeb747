package underhold.sizing.pits;

import static underhold.sizing.pits.PitsFact.*;

import java.util.Map;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.zone.SoilClass;

/** Hazards, who decides, and what the sheet leaves out. */
final class CautionSection {
  private static final String COMPETENT = "the competent person";
  private static final String ENGINEER = "the engineer of record";

  private CautionSection() {}

  static void write(PitsCase site, SheetBuilder sheet, boolean braced) {
    sheet.caution(
        "cave-in",
        Phrase.of(
            "Nobody stands in a pit of {h} or more without its boards, nor in a lower one that shows any sign of cave-in; boards follow the digging down and under the footing.",
            "h",
            Amount.length(5 * 0.3048)),
        COMPETENT,
        Sources.OSHA_652);
    sheet.caution(
        "shoring tables",
        Phrase.of(
            "The OSHA timber tables end where a structure within one trench depth loads the ground by more than 2 ft of soil, so beside a footing they seldom apply: the boards here are designed and the table row is a floor."),
        "a registered professional engineer",
        Sources.OSHA_APP_C);
    sheet.caution(
        "digging below the footing",
        Phrase.of(
            "No digging below the base of a footing unless it is underpinned, on stable rock, or an engineer approves."),
        ENGINEER,
        Sources.OSHA_651_I);
    sheet.caution(
        "egress",
        Phrase.of(
            "From a depth of {h} a ladder stands in every pit, reaching {up} above its top; no way to it over {way}.",
            distances(
                Amount.length(4 * 0.3048), Amount.length(3 * 0.3048), Amount.length(25 * 0.3048))),
        COMPETENT,
        Sources.OSHA_651);
    sheet.caution(
        "air",
        Phrase.of(
            "Below {h} test the air where it may be bad (oxygen at least 19.5 %) and ventilate.",
            "h", Amount.length(4 * 0.3048)),
        COMPETENT,
        Sources.OSHA_651);
    sheet.caution(
        "rescue",
        Phrase.of(
            "A worker in a deep confined footing pit wears a harness with a lifeline of its own, attended all the time."),
        COMPETENT,
        Source.memory("29 CFR 1926.651(g)(2)"));
    sheet.caution(
        "working under a load that hangs",
        Phrase.of(
            "The wall over an open pit is held by its own span alone: nobody works under cracked or loose masonry before it is tied or propped."),
        ENGINEER,
        Source.judgement());
    sheet.caution(
        "spoil and plant at the edge",
        Phrase.of(
            "Spoil, plant and hoists stay {d} from the edge or behind a stop.",
            "d",
            Amount.length(2 * 0.3048)),
        COMPETENT,
        Sources.OSHA_651);
    sheet.caution(
        "undermined neighbours",
        Phrase.of(
            "Pits beside a party wall dig under the neighbour too: notice, survey and consent come first."),
        "the owner of the neighbouring property, with the engineer of record",
        Source.judgement());
    sheet.caution(
        "water",
        Phrase.of(
            "A sump in sand or silt pumps soil from under the footing, and drawdown settles neighbours; inflow stops the work."),
        ENGINEER,
        Sources.CALTRANS_HEAVE);
    sheet.caution(
        "movement",
        Phrase.of("Level readings at every pit, every shift; the agreed limit stops the work."),
        ENGINEER,
        Sources.FHWA_MOVEMENT);
    sheet.caution(
        "heading under the footing",
        Phrase.of(
            "A pit driven sideways under a footing may count as underground construction (29 CFR 1926 subpart S): ask before work."),
        COMPETENT,
        Source.judgement());
    if (braced) {
      sheet.caution(
          "unbraced piers",
          Phrase.of(
              "No pier is uncovered below the level of its brace or tie before that is set; loss of one brace must not lose the wall."),
          ENGINEER,
          Sources.NYC_1817);
    }
    if (site.faceSoil.value() == SoilClass.FILL || site.faceSoil.value() == SoilClass.PEAT) {
      sheet.caution(
          "fill or organic soil",
          Phrase.of("Expect gas, contamination and buried works; test before people go down."),
          COMPETENT,
          Source.judgement());
    }
    notCovered(sheet);
  }

  private static Map<String, Amount> distances(Amount depth, Amount above, Amount way) {
    return Map.of("h", depth, "up", above, "way", way);
  }

  private static void notCovered(SheetBuilder sheet) {
    sheet.notCovered("design of braces, ties, cleats and hoists; only the brace force is given");
    sheet.notCovered(
        "isolated footings, piled or rafted buildings, and walls with large openings at the base");
    sheet.notCovered("earthquake and wind on the building while pits are open");
    sheet.notCovered(
        "long-term consolidation of clay below the pit base and drained strength of clay");
    sheet.notCovered(
        "ground movement at a distance from the wall, and damage of the building by it");
    sheet.notCovered(
        "reinforcement of piers and the joint between them where they must be watertight");
    sheet.notCovered("pits cut in rock: splitting, line drilling, overbreak");
    sheet.notCovered("permits, notices to neighbours and special inspections of the place");
  }
}
