package underhold.sizing.edgepits;

import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;

/** Hazards, who decides, and what the sheet leaves out. */
final class CautionSection {
  private static final String COMPETENT = "the competent person";
  private static final String ENGINEER = "the engineer of record";

  private final EdgeCase site;
  private final SheetBuilder sheet;

  private CautionSection(EdgeCase site, SheetBuilder sheet) {
    this.site = site;
    this.sheet = sheet;
  }

  static void write(EdgeCase site, SheetBuilder sheet) {
    CautionSection section = new CautionSection(site, sheet);
    section.wall();
    section.piles();
    section.people();
    section.ground();
    section.notCovered();
  }

  private void wall() {
    add(
        "the wall does not stand by itself",
        "Once the piles carry the structure nothing presses the pits down: the wall is a retaining wall that stands only by its braces, ties, dowels or slab. None is left out or taken away early, and the loss of one must not lose the wall.",
        Sources.NYC_1817);
    add(
        "load that comes back",
        "If a pile settles or a jack is let down, load goes back to the soil and presses on the wall: watch pile loads and levels while the edge is open.",
        Source.judgement());
    add(
        "pressure",
        "Ties and struts of this wall see water, frost, stiff clay that swells and surcharges of plant; none may come nearer than reckoned.",
        Source.judgement());
  }

  private void piles() {
    add(
        "wall on the piles",
        "The piles must not carry the wall, nor the wall the structure, unless both are designed so; the gap between is closed against soil all the same.",
        Source.judgement());
    add(
        "piles and wall together",
        "Piles behind the wall bend with it; piles in front stand exposed as columns. No side resistance or lateral support is counted in the wedge that moves with the wall.",
        Source.judgement());
    add(
        "precedent",
        "A published job built the wall beneath a live box in segments with tiebacks, after micropiles carried it, and used grouted blocks at the edge in place of pits: a wall of hand-dug pits there is judgement.",
        Sources.HYBRID);
  }

  private void people() {
    sheet.caution(
        "cave-in",
        Phrase.of(
            "Nobody stands in a pit of {h} or more without its boards, nor in any pit that shows a sign of cave-in.",
            "h",
            Amount.length(5 * 0.3048)),
        COMPETENT,
        Sources.OSHA_652);
    sheet.caution(
        "digging below the structure",
        Phrase.of(
            "No digging below the base of a foundation before it is supported: here before the piles are locked off and released."),
        ENGINEER,
        Sources.OSHA_651_I);
    sheet.caution(
        "egress and air",
        Phrase.of(
            "From {h} a ladder in every pit; below it the air is tested where it may be bad, oxygen at least 19.5 %, and moved.",
            "h", Amount.length(4 * 0.3048)),
        COMPETENT,
        Sources.OSHA_651);
    sheet.caution(
        "rescue",
        Phrase.of(
            "In a deep confined pit a harness with a lifeline of its own, attended all the time."),
        COMPETENT,
        Source.memory("29 CFR 1926.651(g)(2)"));
    sheet.caution(
        "heading under a structure",
        Phrase.of(
            "Pits driven sideways under a structure may count as underground construction (29 CFR 1926 subpart S): ask before work."),
        COMPETENT,
        Source.judgement());
  }

  private void ground() {
    if (!site.inputs.has(EdgeInputs.ROCK_DEPTH)) {
      add(
          "rock not known",
          "Nobody has said where rock lies: no rock is taken. Rock met higher changes wall, toe and piles: probe every pit.",
          Source.judgement());
    } else if (site.geometry.onRock()) {
      add(
          "rock that slopes",
          "Rock head is probed at every pit and pile; pits are stepped, dowels made longer, piles of unlike stiffness looked at. Weathered rock counts as soil.",
          Source.judgement());
    }
    if (site.geometry.rockFace() > 0) {
      add(
          "rock below the toe",
          "Piles socket below the final cut, their bond counted only below it and below any joint that comes out in the face.",
          Source.judgement());
    }
    site.inputs
        .find(EdgeInputs.APPROACH_LAYERS)
        .ifPresent(
            layers ->
                sheet.caution(
                    "soil above the structure's underside",
                    Phrase.of(
                        "The approach pits go through: "
                            + layers.value()
                            + ". Boards and soil type are taken for the layer that presses most of all that pits and approach pits meet: look at each as they are sunk; fill may hide voids, water and old works."),
                    COMPETENT,
                    Source.judgement()));
    if (site.says(EdgeInputs.FACES_RUN, "yes")) {
      add(
          "sand between the pits",
          "Fine sand runs through any gap: boards or concrete between the pits are tight down to below the bottom of the excavation.",
          Sources.FINE_SAND);
    }
    if (site.says(EdgeInputs.ARTESIAN, "yes")) {
      add(
          "water under pressure",
          "The site says that water stands under pressure below: whether it lifts the bottom of a pit or of the excavation is not checked here. Relieve it first.",
          Source.judgement());
    }
    if (site.drained()) {
      add(
          "drained ground",
          "Drawdown settles neighbours and adds drag to the piles; drains and pumps keep working as long as the wall is taken as drained. The site says of drawdown: "
              + site.inputs.get(EdgeInputs.DRAWDOWN)
              + ".",
          Source.judgement());
    }
  }

  private void add(String hazard, String advice, Source source) {
    sheet.caution(hazard, Phrase.of(advice), ENGINEER, source);
  }

  private void notCovered() {
    sheet.notCovered(
        "design of braces, walers, ties and their anchorage, base slab: only their forces are given");
    sheet.notCovered("the drilled piles: see their own sheet, with its own settings");
    sheet.notCovered(
        "bending of the wall along the edge between braces (walers), and reinforcement of the wall");
    sheet.notCovered(
        "movement of the wall and of the structure by it; stiffness of braces, preload");
    sheet.notCovered(
        "slip of the whole edge on a deep surface; uplift of the base slab; swelling of stiff clay; earthquake");
    sheet.notCovered("access to the pits: shafts, drifts and work inside a live structure");
    sheet.notCovered("joints that cross each other in rock, and rock bolts as built");
  }
}
