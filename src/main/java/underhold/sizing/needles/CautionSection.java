package underhold.sizing.needles;

import underhold.mechanics.steel.RolledSection;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;

/** Hazards, who decides, and what the sheet leaves out. */
final class CautionSection {
  private static final String COMPETENT = "the competent person";
  private static final String ENGINEER = "the engineer of record";

  private CautionSection() {}

  static void write(NeedleCase site, SheetBuilder sheet, RolledSection section) {
    sheet.caution(
        "working under a load on jacks",
        Phrase.of(
            "Nobody works under a load on jacks alone: once raised it is cribbed, blocked or"
                + " secured at once."),
        COMPETENT,
        Sources.OSHA_JACKS);
    sheet.caution(
        "jacks",
        Phrase.of(
            "Rated capacity marked and not exceeded; positive stop against over-travel; base"
                + " blocked or cribbed where not firm; a wood block where the cap could slip."),
        COMPETENT,
        Sources.OSHA_JACKS);
    sheet.caution(
        "load on oil",
        Phrase.of("Screws, lock nuts or steel shims carry for longer than the jacking itself."),
        COMPETENT,
        Sources.SCREW);
    sheet.caution(
        "sway",
        Phrase.of(
            "A support on needles is a pin: brace the structure and the needles against sway and"
                + " overturning in both directions."),
        ENGINEER,
        Source.judgement());
    sheet.caution(
        "load not known",
        Phrase.of(
            "Where the frame is stiff and the load unknown, jacking up can crack the neighbours:"
                + " readings govern, not the gauge."),
        ENGINEER,
        Sources.LOAD_KNOWN);
    sheet.caution(
        "digging below the footing",
        Phrase.of(
            "No digging below the base of a footing unless it is underpinned, on stable rock, or"
                + " an engineer approves."),
        ENGINEER,
        Sources.OSHA_FOOTING);
    sheet.caution(
        "bringing in the needles",
        Phrase.of(
            section.name()
                + " weighs {g} and is {d} deep: with jack and crib it needs headroom of 1 to 1.5 m"
                + " (3 to 5 ft) and a way in.",
            "g",
            Amount.lineLoad(section.weightKilonewtonsPerMetre()),
            "d",
            Amount.thickness(section.plates().depthMetres())),
        COMPETENT,
        Source.judgement());
    sheet.caution(
        "long hold",
        Phrase.of(
            "Timber creeps, ground freezes and thaws: do not leave needles longer than needed, and"
                + " read them every day."),
        ENGINEER,
        Source.memory("needles are drawn as soon as the new support carries, practice"));
    stated(site, sheet);
    if (site.is(BeamSettings.STIFFENERS, "none")) {
      sheet.caution(
          "ends that can roll over",
          Phrase.of(
              "Without stiffeners at its ends a needle must be held there against rolling over:"
                  + " blocks bolted to both flanges or a tie to its neighbour."),
          ENGINEER,
          Source.memory("AISC 360-16 J10.7"));
    }
    if (site.row()) {
      sheet.caution(
          "the wall itself",
          Phrase.of(
              "Rubble cores and loose mortar unravel at a pocket: consolidate first. The arch"
                  + " between needles needs an abutment at both ends of the row."),
          ENGINEER,
          Source.judgement());
    }
    if (site.cantilever()) {
      sheet.caution(
          "tail",
          Phrase.of(
              "Loss of one tail drops the structure: two independent hold-downs, proof-tested,"
                  + " guarded from digging and traffic."),
          ENGINEER,
          Source.judgement());
    }
    notCovered(sheet);
  }

  /** What the site itself says against needles. */
  private static void stated(NeedleCase site, SheetBuilder sheet) {
    if (site.inputs().find(NeedleInput.CARRIED).filter(NeedleInput.no()).isPresent()) {
      sheet.caution(
          "pick-up not possible",
          Phrase.of(
              "The site says that the column cannot be carried temporarily, and needles do just"
                  + " that: settle this before anything else."),
          ENGINEER,
          Source.judgement());
    }
    if (site.inputs().find(NeedleInput.ROOM).filter(NeedleInput.no()).isPresent()) {
      sheet.caution(
          "no room for the needles",
          Phrase.of(
              "The site says that there is no room to bring in, thread and lift the needles."),
          COMPETENT,
          Source.judgement());
    }
    boolean weak =
        site.inputs()
            .find(NeedleInput.CONDITION)
            .filter(word -> word.value().equals("poor") || word.value().equals("dangerous"))
            .isPresent();
    if (weak) {
      sheet.caution(
          "weak structure",
          Phrase.of("Tie, shore or consolidate the structure before it is picked up at points."),
          ENGINEER,
          Source.judgement());
    }
  }

  private static void notCovered(SheetBuilder sheet) {
    sheet.notCovered("welds and bolts of seats, collars, stiffeners and splices");
    sheet.notCovered("the column or wall itself where it is picked up, beyond bearing");
    sheet.notCovered("wind, earthquake and sway while the structure stands on needles");
    sheet.notCovered("the new support below and its settlement");
    sheet.notCovered("shoring of the excavation, and surcharge of the seats on it");
    sheet.notCovered("consolidation and creep of the ground under the seats; pads near each other");
    sheet.notCovered("grillages and mats between seat and pad; built-up or trussed needles");
    sheet.notCovered("permits, notices to neighbours and special inspections of the place");
  }
}
