package underhold.sizing.pits;

import static underhold.sizing.pits.PitsFact.*;

import java.util.List;
import java.util.OptionalDouble;
import underhold.mechanics.soil.pressure.RankinePressure;
import underhold.mechanics.timber.LaggingThickness;
import underhold.mechanics.timber.OshaTimberTables;
import underhold.mechanics.timber.OshaTimberTables.Row;
import underhold.mechanics.timber.OshaTimberTables.Timber;
import underhold.sizing.Amount;
import underhold.sizing.Origin;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;

/** Pressure on the box sheeting and the boards that carry it. */
final class SheetingSection {
  /** Sheeting protective systems by table end at 20 ft. */
  private static final double DEEPEST_BY_RULE = 20 * 0.3048;

  /** Nominal boards in order, in. */
  private static final double[] NOMINAL_INCHES = {2, 3, 4};

  private static final double METRES_PER_INCH = 0.0254;

  private final PitsCase site;
  private final SheetBuilder sheet;
  private final Layout layout;

  private SheetingSection(PitsCase site, SheetBuilder sheet, Layout layout) {
    this.site = site;
    this.sheet = sheet;
    this.layout = layout;
  }

  /** Writes the section and returns the board thickness, m. */
  static double write(PitsCase site, SheetBuilder sheet, Layout layout, double openDays) {
    return new SheetingSection(site, sheet, layout).write(openDays);
  }

  private double write(double openDays) {
    double stress = greatestVerticalStress();
    double pressure = pressure(stress);
    double approach = approachPressure();
    oshaRow();
    double span = boardSpan();
    OptionalDouble table =
        LaggingThickness.recommended(site.faceSoil.value().ground(), depth(), span);
    BoardStrength strength = new BoardStrength(site, loadedHours(openDays));
    double thickness = choose(strength, pressure, span, approach, table.orElse(0));
    new BoardSteps(site, sheet, strength).write(thickness, pressure, span, approach);
    sheet.check(
        "board-lagging-table",
        "Board against the lagging table",
        Amount.thickness(table.orElse(thickness)),
        Amount.thickness(table.isPresent() ? thickness + site.get(PitsSetting.BOARD_LOSS) : 0),
        Verdict.REFER,
        Sources.LAGGING_TABLE,
        Phrase.of(
            "Nominal thickness. The table counts on arching, so here it is a floor. No capacity means that the table recommends nothing for this ground, depth and span."));
    sheet.check(
        "sheeting-depth",
        "Depth that sheeting rules cover without a registered engineer's design",
        Amount.length(depth()),
        Amount.length(DEEPEST_BY_RULE),
        Verdict.REFER,
        Sources.OSHA_652,
        Phrase.of("Measured from the working level."));
    return thickness;
  }

  private double depth() {
    return site.get(FOUNDING_DEPTH) + site.get(PIT_DEPTH);
  }

  private double greatestVerticalStress() {
    double before =
        sheet
            .step("footing-pressure", "Pressure under the existing footing", "q0 = {w} / {B}")
            .with("w", "working line load", site.amount(WALL_LINE_LOAD))
            .with("B", "footing width", site.amount(FOOTING_WIDTH))
            .gives(Amount.pressure(site.get(WALL_LINE_LOAD) / site.get(FOOTING_WIDTH)));
    double footing =
        sheet
            .step(
                "between-pits",
                "Pressure under the footing between open pits",
                "q = {q0} × (1 + 1 / {k})")
            .with("q0", "pressure before digging", Amount.pressure(before))
            .with(
                "k",
                "clear distance between open pits, in pit widths",
                site.amount(PitsSetting.CLEAR_PIT_WIDTHS))
            .note("The load over an open pit goes to the soil between it and the next.")
            .gives(Amount.pressure(site.raisedFootingPressure()));
    double weight = site.get(FACE_UNIT_WEIGHT);
    double overburden = weight * site.get(FOUNDING_DEPTH);
    double width = site.get(FOOTING_WIDTH);
    double under =
        weight * depth()
            + Math.max(footing - overburden, 0) * width / (width + site.get(PIT_DEPTH));
    double beneath =
        sheet
            .step(
                "stress-under-wall",
                "Vertical stress beside the pit at its base, under the wall",
                "s1 = {g} × ({Df} + {D}) + max({q} - {g} × {Df}, 0) × {B} / ({B} + {D})")
            .with("g", "unit weight of the soil", site.amount(FACE_UNIT_WEIGHT))
            .with("Df", "founding depth", site.amount(FOUNDING_DEPTH))
            .with("D", "pit depth below the footing", site.amount(PIT_DEPTH))
            .with("q", "footing pressure beside an open pit", Amount.pressure(footing))
            .with("B", "footing width", site.amount(FOOTING_WIDTH))
            .from(Source.judgement())
            .note(
                "Net footing pressure spread 2 down to 1 across in all. At the footing itself the stress is q.")
            .gives(Amount.pressure(under));
    double open =
        sheet
            .step(
                "stress-beside-wall",
                "Vertical stress at the base, open ground",
                "s2 = {g} × ({Df} + {D}) + {qs}")
            .with("g", "unit weight of the soil", site.amount(FACE_UNIT_WEIGHT))
            .with("Df", "founding depth", site.amount(FOUNDING_DEPTH))
            .with("D", "pit depth below the footing", site.amount(PIT_DEPTH))
            .with("qs", "surcharge", site.amount(SURCHARGE))
            .gives(Amount.pressure(weight * depth() + site.get(SURCHARGE)));
    return sheet
        .step(
            "sheeting-stress",
            "Vertical stress that governs the boards",
            "s = max({q}, {s1}, {s2})")
        .with("q", "footing pressure, at the top of the pit", Amount.pressure(footing))
        .with("s1", "under the wall, at the base", Amount.pressure(beneath))
        .with("s2", "open ground, at the base", Amount.pressure(open))
        .gives(Amount.pressure(Math.max(footing, Math.max(beneath, open))));
  }

  private double pressure(double stress) {
    double reckoned = soilPressure("sheeting", stress);
    double floor =
        oshaFloor(
            "sheeting-osha-floor", "Pressure of the OSHA tables at this depth, a floor", depth());
    return sheet
        .step("sheeting-pressure", "Pressure on the boards", "p = max({pa}, {po})")
        .with("pa", "reckoned pressure", Amount.pressure(reckoned))
        .with("po", "table pressure", Amount.pressure(floor))
        .from(Source.judgement())
        .gives(Amount.pressure(Math.max(reckoned, floor)));
  }

  private double approachPressure() {
    double below = site.get(FOUNDING_DEPTH) + site.approachBelowFooting();
    double reckoned =
        soilPressure("approach", site.get(FACE_UNIT_WEIGHT) * below + site.get(SURCHARGE));
    double floor =
        oshaFloor(
            "approach-osha-floor",
            "Pressure of the OSHA tables at the approach pit's depth",
            below);
    return sheet
        .step(
            "approach-pressure",
            "Pressure on the boards of the approach pit",
            "p = max({pa}, {po})")
        .with("pa", "reckoned pressure, open ground", Amount.pressure(reckoned))
        .with("po", "table pressure", Amount.pressure(floor))
        .from(Source.judgement())
        .gives(Amount.pressure(Math.max(reckoned, floor)));
  }

  private double soilPressure(String prefix, double stress) {
    boolean clay = site.faceSoil.value().clay();
    double arching = site.get(PitsSetting.ARCHING);
    if (clay) {
      return sheet
          .step(
              prefix + "-soil-pressure",
              "Soil pressure, undrained clay",
              "pa = {A} × max({s} - 2 × {su}, 0)")
          .with("A", "arching share", site.amount(PitsSetting.ARCHING))
          .with("s", "vertical stress", Amount.pressure(stress))
          .with("su", "undrained strength", site.amount(FACE_UNDRAINED_STRENGTH))
          .from(Sources.UFC)
          .gives(
              Amount.pressure(
                  arching * Math.max(stress - 2 * site.get(FACE_UNDRAINED_STRENGTH), 0)));
    }
    double coefficient = RankinePressure.activeCoefficient(site.get(FACE_FRICTION_ANGLE));
    return sheet
        .step(
            prefix + "-soil-pressure",
            "Soil pressure, active",
            "pa = {A} × tan(45 - {f} / 2)^2 × {s}")
        .with("A", "arching share", site.amount(PitsSetting.ARCHING))
        .with("f", "friction angle", site.amount(FACE_FRICTION_ANGLE))
        .with("s", "vertical stress", Amount.pressure(stress))
        .from(Sources.UFC)
        .note("Cohesion is not counted. Water pressure is not carried: the pit base is kept dry.")
        .gives(Amount.pressure(arching * coefficient * stress));
  }

  private double oshaFloor(String id, String title, double depth) {
    double table = site.oshaType.value().tablePressure(depth);
    return sheet
        .step(id, title, "po = {k} × {H} + {qo}")
        .with(
            "k",
            "equivalent fluid weight of type " + site.oshaType.value(),
            Amount.unitWeight(site.oshaType.value().equivalentFluidWeight()))
        .with("H", "depth from the working level", Amount.length(depth))
        .with(
            "qo",
            "2 ft of surcharge in the tables",
            Amount.pressure(underhold.mechanics.timber.SheetingSoil.surchargePressure()))
        .from(Sources.OSHA_APP_C)
        .gives(Amount.pressure(table));
  }

  private void oshaRow() {
    List<Row> rows = OshaTimberTables.rows(Timber.DOUGLAS_FIR, site.oshaType.value(), depth());
    String words =
        rows.isEmpty()
            ? "no row: the tables serve depths of 5 to 20 ft and end sooner in type C"
            : rows.get(0).table() + ": " + rows.get(0).words(site.get(PitsSetting.APPROACH_WIDTH));
    sheet.input(
        "osha-table-row",
        "OSHA timber table row, as printed, a floor only: the tables do not serve beside a footing that loads the ground within one trench depth by more than 2 ft of soil",
        words,
        Origin.DERIVED,
        Sources.OSHA_APP_C);
  }

  private double boardSpan() {
    double side = site.get(PitsSetting.APPROACH_WIDTH);
    int bays = (int) Math.max(1, Math.ceil(site.pierThickness() / side - 1e-9));
    double span = Math.max(layout.widest(), site.pierThickness() / bays);
    return sheet
        .step("board-span", "Clear span of the boards under the wall", "L = max({b}, {t} / {n})")
        .with("b", "widest pit", Amount.length(layout.widest()))
        .with("t", "thickness of the pier across the wall", Amount.length(site.pierThickness()))
        .with("n", "bays across, with posts between them where more than one", Amount.count(bays))
        .from(Source.practice())
        .gives(Amount.length(span));
  }

  /** The boards stay under load until the pit carries, weekends included. */
  private double loadedHours(double openDays) {
    double least = site.get(PitsSetting.BOARD_DURATION);
    return sheet
        .step(
            "board-duration",
            "Time the boards carry the full load",
            "T = max({To}, {d} × 24 × 7 / 5)")
        .with("To", "least time", site.amount(PitsSetting.BOARD_DURATION))
        .with("d", "working days from the first cut until the pit carries", Amount.count(openDays))
        .from(Source.judgement())
        .note("Hours; five working days to a week.")
        .gives(Amount.hours(Math.max(least, openDays * 24 * 7 / 5)));
  }

  private double choose(
      BoardStrength strength, double pressure, double span, double approach, double least) {
    double thickest = 0;
    for (double inches : NOMINAL_INCHES) {
      double nominal = inches * METRES_PER_INCH;
      thickest = nominal - site.get(PitsSetting.BOARD_LOSS);
      if (nominal >= least - 1e-9 && strength.passes(thickest, pressure, span, approach)) {
        return thickest;
      }
    }
    return thickest;
  }
}
