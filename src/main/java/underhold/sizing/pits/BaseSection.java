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
import underhold.sizing.Amount;
import underhold.sizing.Basis;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;
import underhold.sizing.zone.SoilClass;

/** Bearing and settlement at the pit base, and of the soil between open pits. */
final class BaseSection {
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
    MovementSection.write(site, sheet, layout, net, gross);
    BetweenPitsSection.write(site, sheet);
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
            "Strip, no depth factor, overburden counted from the lower side, the bottom of the excavation. The pier is as thick as the footing: a wider base is not reckoned."
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
}
