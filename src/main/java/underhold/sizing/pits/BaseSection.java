package underhold.sizing.pits;

import static underhold.sizing.pits.PitsFact.*;

import java.util.Optional;
import java.util.OptionalDouble;
import underhold.mechanics.soil.Water;
import underhold.mechanics.soil.bearing.BearingCapacity;
import underhold.mechanics.soil.bearing.BearingCase;
import underhold.mechanics.soil.bearing.BearingGround;
import underhold.mechanics.soil.bearing.DepthEffect;
import underhold.mechanics.soil.bearing.Footing;
import underhold.mechanics.soil.bearing.PresumptiveBearing;
import underhold.mechanics.soil.bearing.VesicBearing;
import underhold.mechanics.soil.settlement.SteinbrennerSettlement;
import underhold.sizing.Amount;
import underhold.sizing.Basis;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;

/** Bearing and settlement at the pit base, and of the soil between open pits. */
final class BaseSection {
  private static final double POISSON = 0.3;
  private static final double LAYER_WIDTHS = 4;
  private static final Source INVESTIGATION =
      new Source("ground investigation, as stated", Basis.SITE_FACT);

  private final PitsCase site;
  private final SheetBuilder sheet;

  private BaseSection(PitsCase site, SheetBuilder sheet) {
    this.site = site;
    this.sheet = sheet;
  }

  /**
   * Writes the section and returns the allowable gross pressure at the base, kPa; empty where
   * nothing allows one.
   */
  static OptionalDouble write(PitsCase site, SheetBuilder sheet, Layout layout) {
    BaseSection section = new BaseSection(site, sheet);
    double net = section.netPressure();
    double gross = section.grossPressure(net);
    OptionalDouble listed = section.listed(net);
    OptionalDouble reckoned = section.reckoned(gross);
    section.settlement(net, layout);
    section.betweenOpenPits();
    return site.has(BASE_ALLOWABLE) || reckoned.isEmpty() ? listed : reckoned;
  }

  private double netPressure() {
    return sheet
        .step(
            "base-net", "Pressure at the pit base without the weight of the pier", "q = {w} / {t}")
        .with("w", "working line load", site.amount(WALL_LINE_LOAD))
        .with("t", "thickness of the pier", Amount.length(site.pierThickness()))
        .gives(Amount.pressure(site.get(WALL_LINE_LOAD) / site.pierThickness()));
  }

  private double grossPressure(double net) {
    return sheet
        .step(
            "base-gross",
            "Pressure at the pit base with the weight of the pier",
            "qg = {q} + {gc} × {D}")
        .with("q", "without the pier", Amount.pressure(net))
        .with("gc", "unit weight of concrete", site.amount(PitsSetting.CONCRETE_WEIGHT))
        .with("D", "pit depth below the footing", site.amount(PIT_DEPTH))
        .gives(Amount.pressure(net + site.get(PitsSetting.CONCRETE_WEIGHT) * site.get(PIT_DEPTH)));
  }

  /** Stated or presumptive value against the pressure without the pier, which replaces soil. */
  private OptionalDouble listed(double net) {
    Optional<PresumptiveBearing> row =
        site.baseSoil.value().presumptiveClass().flatMap(PresumptiveBearing::find);
    boolean stated = site.has(BASE_ALLOWABLE);
    if (!stated && row.isEmpty()) {
      sheet.verdict(
          "bearing-listed",
          "Presumptive bearing at the pit base",
          Amount.pressure(net),
          Amount.pressure(0),
          Verdict.REFER,
          Sources.IBC_1806,
          Phrase.of(
              "No presumptive value serves this ground: the ground investigation must give one."));
      return OptionalDouble.empty();
    }
    double allowable = stated ? site.get(BASE_ALLOWABLE) : row.orElseThrow().verticalKilopascals();
    sheet.check(
        "bearing-listed",
        "Bearing at the pit base, without the pier's weight, against the "
            + (stated ? "stated" : "presumptive")
            + " value",
        Amount.pressure(net),
        Amount.pressure(allowable),
        stated ? Verdict.FAILS : Verdict.REFER,
        stated ? INVESTIGATION : Sources.IBC_1806,
        Phrase.of(
            stated
                ? ""
                : "Above a presumptive value the ground investigation must justify the pressure."));
    return OptionalDouble.of(allowable);
  }

  private OptionalDouble reckoned(double gross) {
    if (site.baseSoil.value() == SoilClass.ROCK) {
      return OptionalDouble.empty();
    }
    boolean clay = site.baseSoil.value().clay();
    double overburden = overburden();
    double weight = clay ? 0 : weightBelow();
    BearingGround ground =
        clay
            ? BearingGround.undrained(site.get(BASE_UNDRAINED_STRENGTH), overburden)
            : new BearingGround(site.get(BASE_FRICTION_ANGLE), 0, overburden, weight);
    BearingCase question =
        BearingCase.centred(Footing.strip(site.pierThickness(), 0), ground, DepthEffect.IGNORED);
    Optional<BearingCapacity> found =
        VesicBearing.ultimate(question, VesicBearing.CohesionDepthFactor.LINEAR).value();
    if (found.isEmpty()) {
      return OptionalDouble.empty();
    }
    BearingCapacity capacity = found.get();
    double ultimate =
        clay ? clayCapacity(capacity, overburden) : sandCapacity(capacity, overburden, weight);
    double allowable =
        sheet
            .step("bearing-allowable", "Allowable gross pressure", "qa = {qu} / {F}")
            .with("qu", "ultimate pressure", Amount.pressure(ultimate))
            .with("F", "factor of safety", site.amount(PitsSetting.BEARING_FACTOR))
            .from(Sources.UFC)
            .gives(Amount.pressure(ultimate / site.get(PitsSetting.BEARING_FACTOR)));
    sheet.check(
        "bearing-reckoned",
        "Bearing at the pit base, with the pier's weight, against ultimate over "
            + site.amount(PitsSetting.BEARING_FACTOR).in(underhold.quantity.UnitSystem.SI),
        Amount.pressure(gross),
        Amount.pressure(allowable),
        site.otherwise(site.baseStrength()),
        Sources.VESIC,
        Phrase.of(
            "Strip, no depth factor, overburden counted from the lower side, the bottom of the excavation."
                + (site.otherwise(site.baseStrength()) == Verdict.REFER
                    ? " The strength is assumed: the ground investigation must give it."
                    : "")));
    return OptionalDouble.of(allowable);
  }

  /** From the bottom of the excavation, the lower side. */
  private double overburden() {
    double cover = Math.max(0, site.get(PIT_DEPTH) - site.get(EXCAVATION_BELOW_FOOTING));
    double weight =
        buoyant()
            ? site.get(BASE_UNIT_WEIGHT) - Water.KILONEWTONS_PER_CUBIC_METRE
            : site.get(BASE_UNIT_WEIGHT);
    boolean clay = site.baseSoil.value().clay();
    double used = clay ? site.get(BASE_UNIT_WEIGHT) : Math.max(0, weight);
    return sheet
        .step(
            "bearing-overburden",
            "Overburden at the base, lower side",
            "s = {g} × max({D} - {De}, 0)")
        .with(
            "g",
            buoyant() && !clay ? "buoyant unit weight" : "unit weight",
            Amount.unitWeight(used))
        .with("D", "pit depth below the footing", site.amount(PIT_DEPTH))
        .with("De", "excavation below the footing", site.amount(EXCAVATION_BELOW_FOOTING))
        .gives(Amount.pressure(used * cover));
  }

  private boolean buoyant() {
    return Math.max(site.get(WATER_ABOVE_PIT_BASE), site.get(LASTING_WATER_ABOVE_PIT_BASE))
        > -site.pierThickness();
  }

  private double weightBelow() {
    double full = site.get(BASE_UNIT_WEIGHT);
    return buoyant() ? Math.max(0, full - Water.KILONEWTONS_PER_CUBIC_METRE) : full;
  }

  private double clayCapacity(BearingCapacity capacity, double overburden) {
    return sheet
        .step("bearing-ultimate", "Ultimate pressure, undrained", "qu = {su} × {Nc} + {s}")
        .with("su", "undrained strength", site.amount(BASE_UNDRAINED_STRENGTH))
        .with("Nc", "bearing factor at angle 0", Amount.ratio(capacity.factors().cohesion()))
        .with("s", "overburden", Amount.pressure(overburden))
        .from(Sources.VESIC)
        .note("Short term. The long-term, drained case needs the ground investigation.")
        .gives(Amount.pressure(capacity.ultimateKilopascals()));
  }

  private double sandCapacity(BearingCapacity capacity, double overburden, double weight) {
    double tangent = Math.tan(Math.toRadians(site.get(BASE_FRICTION_ANGLE)));
    if (tangent > 0) {
      sheet
          .step(
              "bearing-nq",
              "Bearing factor Nq",
              "Nq = exp(3.14159265 × tan({f})) × tan(45 + {f} / 2)^2")
          .with("f", "friction angle", site.amount(BASE_FRICTION_ANGLE))
          .from(Sources.UFC)
          .gives(Amount.ratio(capacity.factors().surcharge()));
      sheet
          .step("bearing-ng", "Bearing factor Ng", "Ng = 2 × ({Nq} + 1) × tan({f})")
          .with("Nq", "bearing factor", Amount.ratio(capacity.factors().surcharge()))
          .with("f", "friction angle", site.amount(BASE_FRICTION_ANGLE))
          .from(Sources.VESIC)
          .gives(Amount.ratio(capacity.factors().weight()));
    }
    return sheet
        .step(
            "bearing-ultimate",
            "Ultimate pressure, drained, no cohesion",
            "qu = {s} × {Nq} + 0.5 × {g} × {t} × {Ng}")
        .with("s", "overburden", Amount.pressure(overburden))
        .with("Nq", "bearing factor", Amount.ratio(capacity.factors().surcharge()))
        .with(
            "g",
            buoyant()
                ? "buoyant unit weight, water within the pier's thickness below"
                : "unit weight",
            Amount.unitWeight(weight))
        .with("t", "thickness of the pier", Amount.length(site.pierThickness()))
        .with("Ng", "bearing factor", Amount.ratio(capacity.factors().weight()))
        .from(Sources.VESIC)
        .gives(Amount.pressure(capacity.ultimateKilopascals()));
  }

  private void settlement(double net, Layout layout) {
    double shortening =
        sheet
            .step("pier-shortening", "Elastic shortening of the pier", "d = {q} × {D} / {E}")
            .with("q", "stress in the pier", Amount.pressure(net))
            .with("D", "height of the pier", site.amount(PIT_DEPTH))
            .with("E", "modulus of concrete", Amount.stress(concreteModulus()))
            .gives(Amount.thickness(net * site.get(PIT_DEPTH) / concreteModulus()));
    double elastic = site.has(BASE_MODULUS) ? elastic(net, layout) : 0;
    if (!site.has(MOVEMENT_LIMIT)) {
      return;
    }
    double expected = Math.max(site.get(PitsSetting.EXPECTED_MOVEMENT), elastic + shortening);
    sheet.check(
        "movement",
        "Settlement to expect against what the structure may suffer",
        Amount.thickness(expected),
        site.amount(MOVEMENT_LIMIT),
        Verdict.REFER,
        Sources.FHWA_MOVEMENT,
        Phrase.of(
            site.has(BASE_MODULUS)
                ? "The greater of the experience value and the reckoned settlement. Jacks in the gap take up movement."
                : "The experience value; no modulus of the base soil is known. Jacks in the gap take up movement."));
  }

  /** 57,000 sqrt(f'c) psi, ACI 318-19 19.2.2.1 (from memory), kPa. */
  private double concreteModulus() {
    double psi = 6.894757293168361;
    return 57_000 * Math.sqrt(site.get(PitsSetting.PIER_STRENGTH) / psi) * psi;
  }

  private double elastic(double net, Layout layout) {
    double width = site.pierThickness();
    double length = Math.max(width, layout.row().lengthMetres());
    SteinbrennerSettlement.Case footing =
        new SteinbrennerSettlement.Case(
            net, width, length, LAYER_WIDTHS * width, site.get(BASE_MODULUS), POISSON, 1);
    double influence =
        SteinbrennerSettlement.influence(length / width, LAYER_WIDTHS * 2).combined(POISSON);
    return sheet
        .step(
            "base-settlement",
            "Elastic settlement of the finished row of piers",
            "S = 0.93 × 4 × {q} × ({t} / 2) × (1 - {v}^2) / {E} × {Is}")
        .with("q", "pressure without the pier's weight", Amount.pressure(net))
        .with("t", "thickness of the pier", Amount.length(width))
        .with("v", "Poisson's ratio, assumed", Amount.ratio(POISSON))
        .with("E", "modulus of the soil", site.amount(BASE_MODULUS))
        .with(
            "Is",
            "influence factor of the whole length on a layer of four thicknesses",
            Amount.ratio(influence))
        .from(
            Source.memory(
                "Steinbrenner 1934, in the form of Bowles, Foundation Analysis and Design"))
        .gives(Amount.thickness(SteinbrennerSettlement.rigidMetres(footing)));
  }

  /** While pits are open the soil between them carries their share. */
  private void betweenOpenPits() {
    SoilClass soil = site.faceSoil.value();
    double raised = site.raisedFootingPressure();
    if (soil == SoilClass.ROCK) {
      return;
    }
    double overburden = site.get(FACE_UNIT_WEIGHT) * site.get(FOUNDING_DEPTH);
    double ultimate = soil.clay() ? clayBetween(overburden) : sandBetween(overburden);
    double factor = site.get(PitsSetting.TEMPORARY_BEARING_FACTOR);
    sheet.check(
        "between-pits",
        "Soil under the footing between open pits, ultimate over the temporary factor",
        Amount.pressure(raised),
        Amount.pressure(ultimate / factor),
        Verdict.REFER,
        PitsSetting.TEMPORARY_BEARING_FACTOR.setting().source(),
        Phrase.of(
            "Strength of the soil at the faces, factor {F}. Where the wall has stood for long the true strength may be higher: the engineer decides.",
            "F",
            site.amount(PitsSetting.TEMPORARY_BEARING_FACTOR)));
  }

  private double clayBetween(double overburden) {
    double factor = VesicBearing.factors(0).cohesion();
    return sheet
        .step(
            "between-ultimate",
            "Ultimate pressure of that soil, undrained",
            "qu = {su} × {Nc} + {g} × {Df}")
        .with("su", "undrained strength at the faces", site.amount(FACE_UNDRAINED_STRENGTH))
        .with("Nc", "bearing factor at angle 0", Amount.ratio(factor))
        .with("g", "unit weight", site.amount(FACE_UNIT_WEIGHT))
        .with("Df", "founding depth", site.amount(FOUNDING_DEPTH))
        .from(Sources.VESIC)
        .gives(Amount.pressure(site.get(FACE_UNDRAINED_STRENGTH) * factor + overburden));
  }

  private double sandBetween(double overburden) {
    double angle = site.get(FACE_FRICTION_ANGLE);
    double nq = VesicBearing.factors(angle).surcharge();
    double ng = VesicBearing.factors(angle).weight();
    return sheet
        .step(
            "between-ultimate",
            "Ultimate pressure of that soil, drained",
            "qu = {g} × {Df} × {Nq} + 0.5 × {g} × {B} × {Ng}")
        .with("g", "unit weight", site.amount(FACE_UNIT_WEIGHT))
        .with("Df", "founding depth", site.amount(FOUNDING_DEPTH))
        .with("Nq", "bearing factor at the friction angle of the faces", Amount.ratio(nq))
        .with("B", "footing width", site.amount(FOOTING_WIDTH))
        .with("Ng", "bearing factor at that angle", Amount.ratio(ng))
        .from(Sources.VESIC)
        .gives(
            Amount.pressure(
                overburden * nq + 0.5 * site.get(FACE_UNIT_WEIGHT) * site.get(FOOTING_WIDTH) * ng));
  }
}
