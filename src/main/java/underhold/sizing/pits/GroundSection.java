package underhold.sizing.pits;

import static underhold.sizing.pits.PitsFact.*;

import underhold.mechanics.soil.SafetyFactor;
import underhold.mechanics.soil.Water;
import underhold.mechanics.soil.stability.BjerrumEideBaseHeave;
import underhold.mechanics.soil.stability.ClayCut;
import underhold.mechanics.soil.stability.Piping;
import underhold.mechanics.soil.stability.SkemptonBearingFactor;
import underhold.mechanics.soil.stability.StabilityNumber;
import underhold.mechanics.soil.stability.VerticalCut;
import underhold.sizing.Amount;
import underhold.sizing.Given;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;
import underhold.sizing.zone.SoilClass;

/** Water, piping, heave and standing time. */
final class GroundSection {
  private final PitsCase site;
  private final SheetBuilder sheet;
  private final Layout layout;

  private GroundSection(PitsCase site, SheetBuilder sheet, Layout layout) {
    this.site = site;
    this.sheet = sheet;
    this.layout = layout;
  }

  static void write(PitsCase site, SheetBuilder sheet, Layout layout) {
    GroundSection section = new GroundSection(site, sheet, layout);
    section.water();
    if (site.baseSoil.value().clay()) {
      section.heave();
    }
    section.standUp();
    section.rock();
    section.excavation();
  }

  private void water() {
    double above = site.get(WATER_ABOVE_PIT_BASE);
    boolean runs = site.baseSoil.value().runs() || site.facesRun.value();
    sheet.check(
        "water",
        "Ground water below the pit base while pits are open",
        site.amount(PitsSetting.DRY_BASE),
        Amount.length(Math.max(0, -above)),
        runs && above > 0 ? runs() : Verdict.REFER,
        Sources.WATER_RULE,
        Phrase.of(
            runs
                ? "Any inflow in sand or silt carries soil from under the footing: stop, lower the water outside first, prove it by piezometers."
                : "A sump may do in clay or rock; the engineer decides. Lowering water can settle neighbours."));
    if (above > 0 && runs) {
      piping(above);
    }
  }

  /** Water over the base in soil that runs rules pits out, unless either is only assumed. */
  private Verdict runs() {
    Given<?> soil = site.facesRun.value() ? site.facesRun : site.baseSoil;
    return PitsCase.otherwise(soil) == Verdict.REFER
        ? Verdict.REFER
        : site.otherwise(WATER_ABOVE_PIT_BASE);
  }

  private void piping(double above) {
    double buoyant = Math.max(0, site.get(BASE_UNIT_WEIGHT) - Water.KILONEWTONS_PER_CUBIC_METRE);
    double critical =
        sheet
            .step("piping-critical", "Critical gradient", "ic = max({g} - {gw}, 0) / {gw}")
            .with("g", "unit weight below the base", site.amount(BASE_UNIT_WEIGHT))
            .with(
                "gw", "unit weight of water", Amount.unitWeight(Water.KILONEWTONS_PER_CUBIC_METRE))
            .from(Sources.PIPING)
            .gives(Amount.ratio(Piping.criticalGradient(buoyant)));
    double gradient =
        sheet
            .step("piping-gradient", "Gradient at the base of a boarded pit", "i = {h} / {l}")
            .with("h", "head above the base", Amount.length(above))
            .with(
                "l",
                "seepage path, down behind the boards, which end at the base",
                Amount.length(above))
            .from(Source.judgement())
            .gives(Amount.ratio(Piping.exitGradient(above, above)));
    double factor = site.get(PitsSetting.PIPING_FACTOR);
    sheet.check(
        "piping",
        "Piping at the base, gradient times the factor",
        Amount.ratio(factor * gradient),
        Amount.ratio(critical),
        site.otherwise(WATER_ABOVE_PIT_BASE),
        Sources.PIPING,
        Phrase.of("Boards have no embedment, so the path is no longer than the head."));
  }

  private void heave() {
    double depth = site.get(FOUNDING_DEPTH) + site.get(PIT_DEPTH);
    double width = Math.min(layout.widest(), site.pierThickness());
    double length = Math.max(layout.widest(), site.pierThickness());
    double net =
        Math.max(
            0,
            site.raisedFootingPressure() - site.get(FACE_UNIT_WEIGHT) * site.get(FOUNDING_DEPTH));
    double surcharge =
        sheet
            .step(
                "heave-surcharge",
                "Load beside the pit at its base beyond the soil's own weight",
                "q = max({qs}, max({qf} - {g} × {Df}, 0) × {B} / ({B} + {D}))")
            .with("qs", "surcharge", site.amount(SURCHARGE))
            .with(
                "qf",
                "footing pressure beside an open pit",
                Amount.pressure(site.raisedFootingPressure()))
            .with("B", "footing width", site.amount(FOOTING_WIDTH))
            .with("g", "unit weight", site.amount(FACE_UNIT_WEIGHT))
            .with("Df", "founding depth", site.amount(FOUNDING_DEPTH))
            .with("D", "pit depth below the footing", site.amount(PIT_DEPTH))
            .from(Source.judgement())
            .gives(
                Amount.pressure(
                    Math.max(
                        site.get(SURCHARGE),
                        net
                            * site.get(FOOTING_WIDTH)
                            / (site.get(FOOTING_WIDTH) + site.get(PIT_DEPTH)))));
    ClayCut cut =
        new ClayCut(
            depth,
            width,
            length,
            site.get(FACE_UNIT_WEIGHT),
            surcharge,
            site.get(BASE_UNDRAINED_STRENGTH));
    double number = StabilityNumber.of(cut).value().orElse(0.0);
    if (number > 0) {
      sheet
          .step("heave-number", "Stability number", "No = {g} × {H} / {su}")
          .with("g", "unit weight", site.amount(FACE_UNIT_WEIGHT))
          .with("H", "depth from the working level", Amount.length(depth))
          .with("su", "undrained strength below the base", site.amount(BASE_UNDRAINED_STRENGTH))
          .from(Sources.CALTRANS_HEAVE)
          .note("Above 6 the base must be checked; it is checked in any case.")
          .gives(Amount.ratio(number));
    }
    double factor =
        sheet
            .step(
                "heave-nc",
                "Bearing factor of the base",
                "Nc = 5 × (1 + 0.2 × {B} / {L}) × (1 + 0.2 × min({H} / {B}, 2.5))")
            .with("B", "shorter side of the pit", Amount.length(width))
            .with("L", "longer side of the pit", Amount.length(length))
            .with("H", "depth from the working level", Amount.length(depth))
            .from(Sources.BJERRUM_EIDE)
            .gives(Amount.ratio(SkemptonBearingFactor.of(cut)));
    SafetyFactor safety = BjerrumEideBaseHeave.factor(cut);
    double resistance =
        sheet
            .step("heave-resistance", "Resistance of the base", "R = {su} × {Nc}")
            .with("su", "undrained strength below the base", site.amount(BASE_UNDRAINED_STRENGTH))
            .with("Nc", "bearing factor", Amount.ratio(factor))
            .from(Sources.BJERRUM_EIDE)
            .note(
                "In a narrow pit Terzaghi's form has no meaning: the side adhesion passes the weight of the strip.")
            .gives(Amount.pressure(safety.resistance()));
    sheet.check(
        "heave",
        "Base heave, load at the base times the factor",
        Amount.pressure(site.get(PitsSetting.HEAVE_FACTOR) * safety.demand()),
        Amount.pressure(resistance),
        site.otherwise(BASE_UNDRAINED_STRENGTH),
        Sources.CALTRANS_HEAVE,
        Phrase.of("Load is g H + q. Boards and struts near the bottom do not stop heave."));
  }

  private void standUp() {
    double lift = site.get(PitsSetting.BOARD_HEIGHT);
    StandUp grade = site.standUp.value();
    Verdict verdict =
        switch (grade) {
          case NONE -> PitsCase.otherwise(site.standUp);
          case MINUTES -> Verdict.REFER;
          case HOURS, DAYS -> Verdict.PASSES;
        };
    double capacity = grade == StandUp.NONE ? 0 : lift;
    sheet.verdict(
        "stand-up",
        "The face stands while one board is set",
        Amount.thickness(lift),
        Amount.thickness(capacity),
        verdict,
        Source.practice(),
        Phrase.of(
            switch (grade) {
              case NONE ->
                  "Ground that runs at once cannot be boarded: treat it first (grout, drawdown) or choose another method.";
              case MINUTES ->
                  "One board at a time, packed behind at once; a trial pit proves it before the wall is touched.";
              case HOURS, DAYS -> "One board at a time; the face is never left open over a break.";
            }));
    if (site.faceSoil.value().clay()) {
      double load = site.raisedFootingPressure();
      double height =
          VerticalCut.crackedCriticalHeightMetres(
              site.get(FACE_UNDRAINED_STRENGTH), site.get(FACE_UNIT_WEIGHT), load);
      sheet
          .step(
              "stand-up-height",
              "Height at which a clay face under the footing fails",
              "Hc = max(2.67 × {su} - {q}, 0) / {g}")
          .with("su", "undrained strength", site.amount(FACE_UNDRAINED_STRENGTH))
          .with("q", "footing pressure beside an open pit", Amount.pressure(load))
          .with("g", "unit weight", site.amount(FACE_UNIT_WEIGHT))
          .from(Sources.TERZAGHI_CUT)
          .note(
              "With a tension crack; the footing pressure counts as a surcharge. No factor is in it.")
          .gives(Amount.length(height));
      sheet.check(
          "stand-up-height",
          "Exposed lift against the height at which the clay face fails",
          Amount.thickness(lift),
          Amount.thickness(height),
          Verdict.REFER,
          Sources.TERZAGHI_CUT,
          Phrase.of(
              "If it does not pass, the clay beside the open pit is overstressed by the footing: shore the load first."));
    }
  }

  private void rock() {
    if (site.faceSoil.value() == SoilClass.ROCK) {
      sheet.verdict(
          "rock",
          "Rock within the pit depth",
          site.amount(PIT_DEPTH),
          Amount.length(0),
          Verdict.REFER,
          Source.practice(),
          Phrase.of(
              "Line drilling and splitting, no blasting by the footing; boards only where the rock is broken. Not reckoned here."));
    }
  }

  private void excavation() {
    sheet.check(
        "pit-reaches",
        "Pits reach below the excavation",
        site.amount(EXCAVATION_BELOW_FOOTING),
        site.amount(PIT_DEPTH),
        Sources.OSHA_651_I,
        "A pier that ends above the bottom of the excavation is undermined.");
  }
}
