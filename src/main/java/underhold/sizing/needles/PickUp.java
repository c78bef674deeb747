package underhold.sizing.needles;

import static underhold.sizing.needles.NeedleInput.*;

import underhold.mechanics.steel.BearingOnConcrete;
import underhold.mechanics.steel.DesignMethod;
import underhold.mechanics.steel.RolledSection;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;

/** How the load gets out of the structure into the needles. */
final class PickUp {
  private static final String ID = "pick-up-bearing";

  private final NeedleCase site;
  private final SheetBuilder sheet;
  private final LoadSection.Load load;

  private PickUp(NeedleCase site, SheetBuilder sheet, LoadSection.Load load) {
    this.site = site;
    this.sheet = sheet;
    this.load = load;
  }

  static void write(
      NeedleCase site,
      SheetBuilder sheet,
      LoadSection.Load load,
      NeedleBeam beam,
      RolledSection section) {
    PickUp pickUp = new PickUp(site, sheet, load);
    if (site.row()) {
      pickUp.wall(beam, section);
    } else {
      pickUp.column(section);
    }
  }

  /** Allowable bearing stress of the material, kPa; 0 where none is reckoned here. */
  static double allowableStress(NeedleCase site) {
    return switch (site.get(MATERIAL)) {
      case "reinforced-concrete" ->
          BearingOnConcrete.of(site.get(SupportSettings.OLD_CONCRETE), 1, 1)
              .available(DesignMethod.ASD);
      case "unreinforced-masonry", "reinforced-masonry", "rubble" ->
          site.get(SupportSettings.MASONRY);
      default -> 0;
    };
  }

  private void wall(NeedleBeam beam, RolledSection section) {
    double area = site.get(SupportSettings.PACK) * site.get(WALL_THICKNESS);
    double stress =
        sheet
            .step("pack-stress", "Bearing of the wall on a pack", "f = {N} / ({p} × {t})")
            .with("N", "load on the needle", Amount.force(beam.load()))
            .with("p", "length of the pack along the wall", site.amount(SupportSettings.PACK))
            .with("t", "thickness of the wall", site.amount(WALL_THICKNESS))
            .gives(Amount.stress(beam.load() / area));
    check(
        Amount.stress(stress),
        Amount.stress(allowableStress(site)),
        Verdict.FAILS,
        site.get(MATERIAL).equals("reinforced-concrete") ? Sources.AISC_CONCRETE : Sources.MASONRY,
        "Plate or pack on the needle, bedded in dry pack or grout of proven strength, wedged in"
            + " steel.");
    double hole = section.plates().flangeWidthMetres() + site.get(SupportSettings.HOLE);
    double left =
        sheet
            .step(
                "wall-left",
                "Share of the wall left between the holes",
                "r = max(1 - ({bf} + {c}) / {s}, 0)")
            .with(
                "bf",
                "flange of the needle",
                Amount.thickness(section.plates().flangeWidthMetres()))
            .with("c", "clearance of its hole", site.amount(SupportSettings.HOLE))
            .with("s", "spacing", Amount.length(load.spacing()))
            .gives(Amount.ratio(Math.max(0, 1 - hole / load.spacing())));
    double bearing =
        left > 0
            ? site.get(LINE_LOAD)
                * site.get(BeamSettings.UNCERTAINTY)
                / (left * site.get(WALL_THICKNESS))
            : 0;
    if (left > 0) {
      sheet
          .step(
              "wall-left-stress",
              "Stress in the wall left between the holes",
              "f = {w} × {u} / ({r} × {t})")
          .with("w", "line load", site.amount(LINE_LOAD))
          .with("u", "factor on the stated load", site.amount(BeamSettings.UNCERTAINTY))
          .with("r", "share left", Amount.ratio(left))
          .with("t", "thickness", site.amount(WALL_THICKNESS))
          .gives(Amount.stress(bearing));
    }
    sheet.verdict(
        "wall-between-holes",
        "Wall left between the holes while they are cut",
        Amount.stress(bearing),
        Amount.stress(allowableStress(site)),
        left > 0 && bearing <= allowableStress(site) ? Verdict.PASSES : Verdict.REFER,
        Sources.MASONRY,
        Phrase.of(
            left > 0
                ? "Cut and pack every second hole first."
                : "The holes meet: there is no wall left between them."));
  }

  private void column(RolledSection section) {
    switch (site.get(MATERIAL)) {
      case "reinforced-concrete" -> keys();
      case "steel" -> angles(section);
      case "unreinforced-masonry", "reinforced-masonry", "rubble" -> pier();
      default ->
          check(
              Amount.force(load.lifted()),
              Amount.force(0),
              Verdict.REFER,
              Source.judgement(),
              "Timber and cast iron give a poor grip: an engineer designs the pick-up, or another"
                  + " way is chosen.");
    }
  }

  private void keys() {
    double width = site.get(SupportSettings.COLUMN_WIDTH);
    double area =
        sheet
            .step("key-area", "Bearing area of one row of keys, on two faces", "A1 = 2 × {c} × {k}")
            .with("c", "width of the column", site.amount(SupportSettings.COLUMN_WIDTH))
            .with("k", "depth of a key", site.amount(SupportSettings.KEY_DEPTH))
            .gives(BeamSettings.steelArea(2 * width * site.get(SupportSettings.KEY_DEPTH)));
    double each =
        sheet
            .step(
                "key-capacity",
                "Allowable bearing of one row of keys",
                "B = 0.85 × {fc} × {A1} / {F}")
            .with("fc", "strength of the old concrete", site.amount(SupportSettings.OLD_CONCRETE))
            .with("A1", "bearing area", BeamSettings.steelArea(area))
            .with("F", "Omega", Amount.ratio(BearingOnConcrete.OMEGA))
            .from(Sources.AISC_CONCRETE)
            .note("No gain from a wider support is counted.")
            .gives(
                Amount.force(
                    BearingOnConcrete.of(site.get(SupportSettings.OLD_CONCRETE), area, area)
                        .available(DesignMethod.ASD)));
    double wanted = Math.max(1, Math.ceil(load.lifted() / each - 1e-9));
    double fit =
        site.has(SHAFT)
            ? Math.floor(site.get(SHAFT) / site.get(SupportSettings.KEY_PITCH) + 1e-9)
            : wanted;
    double rows = Math.min(wanted, fit);
    clamp();
    check(
        Amount.force(load.lifted()),
        Amount.force(rows * each),
        site.has(SHAFT) ? Verdict.FAILS : Verdict.REFER,
        Sources.AISC_CONCRETE,
        (site.has(SHAFT)
                ? "Rows of keys, as many as are needed and as the clear shaft has room for."
                : "As many rows of keys as are needed; nobody stated the clear height of column"
                    + " for them.")
            + " Not covered: shear and bending of the collar, splitting of the column, its bars"
            + " cut by the keys.",
        rows);
  }

  /** What friction alone would need. */
  private void clamp() {
    sheet
        .step(
            "clamp-force",
            "Clamp that would carry by friction alone, on two faces",
            "C = {P} × {F} / (2 × {m})")
        .with("P", "load of the column", Amount.force(load.lifted()))
        .with("F", "factor of safety", site.amount(SupportSettings.CLAMP_FACTOR))
        .with("m", "friction", site.amount(SupportSettings.CLAMP_FRICTION))
        .from(Sources.CLAMP)
        .note("It shows why keys beat friction.")
        .gives(
            Amount.force(
                load.lifted()
                    * site.get(SupportSettings.CLAMP_FACTOR)
                    / (2 * site.get(SupportSettings.CLAMP_FRICTION))));
  }

  private void angles(RolledSection section) {
    double width =
        Math.min(site.get(BeamSettings.SEAT_BEARING), section.plates().flangeWidthMetres());
    double contact = width * section.plates().flangeThicknessMetres();
    double capacity =
        sheet
            .step(
                "seat-angle-contact",
                "Contact of a seat angle on the needle, allowable",
                "B = 1.8 × {Fy} × {l} × {tf} / 2")
            .with("Fy", "yield strength", site.amount(BeamSettings.YIELD))
            .with("l", "length of contact, no more than a flange's width", Amount.thickness(width))
            .with(
                "tf",
                "its depth, no more than the flange's thickness",
                Amount.thickness(section.plates().flangeThicknessMetres()))
            .from(Sources.AISC_STIFFENER)
            .gives(Amount.force(1.8 * site.get(BeamSettings.YIELD) * contact / 2));
    boolean enough = load.perNeedle() <= capacity;
    sheet.verdict(
        ID,
        "Seat angles of a steel column on the needle",
        Amount.force(load.perNeedle()),
        Amount.force(capacity),
        enough ? Verdict.REFER : Verdict.FAILS,
        Sources.AISC_STIFFENER,
        Phrase.of(
            "Contact alone is reckoned. Not covered: the welds or bolts of the seat angles, the"
                + " column's flange and web behind them, the moment of their eccentricity: an"
                + " engineer designs them for the whole share of one needle."));
  }

  private void pier() {
    double width = site.get(SupportSettings.COLUMN_WIDTH);
    double area = 2 * site.get(SupportSettings.PACK) * width;
    double stress =
        sheet
            .step(
                "pack-stress",
                "Bearing of the pier on the packs of two needles",
                "f = {P} / (2 × {p} × {c})")
            .with("P", "load of the pier", Amount.force(load.lifted()))
            .with("p", "length of a pack", site.amount(SupportSettings.PACK))
            .with("c", "width of the pier", site.amount(SupportSettings.COLUMN_WIDTH))
            .gives(Amount.stress(load.lifted() / area));
    check(
        Amount.stress(stress),
        Amount.stress(allowableStress(site)),
        Verdict.REFER,
        Sources.MASONRY,
        "A masonry pier gives a poor grip: case it in a bolted or cast collar before it is cut.");
  }

  private void check(
      Amount demand, Amount capacity, Verdict otherwise, Source source, String note) {
    check(demand, capacity, otherwise, source, note, 0);
  }

  private void check(
      Amount demand, Amount capacity, Verdict otherwise, Source source, String note, double rows) {
    Phrase words =
        rows > 0
            ? Phrase.of(note + " Rows of keys: {n}.", "n", Amount.count(rows))
            : Phrase.of(note);
    boolean weak = site.has(SHAFT) || rows == 0;
    if (weak) {
      sheet.check(ID, "Bearing at the pick-up", demand, capacity, otherwise, source, words);
    } else {
      sheet.verdict(ID, "Bearing at the pick-up", demand, capacity, Verdict.REFER, source, words);
    }
  }
}
