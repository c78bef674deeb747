package underhold.sizing.pits;

import static underhold.sizing.pits.PitsFact.*;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import underhold.mechanics.soil.Water;
import underhold.mechanics.soil.bearing.ContactPressure;
import underhold.mechanics.soil.pressure.RankinePressure;
import underhold.mechanics.soil.stability.PierAsRetainingWall;
import underhold.mechanics.soil.stability.PierAsRetainingWall.Case;
import underhold.mechanics.soil.stability.PierAsRetainingWall.Cases;
import underhold.mechanics.soil.stability.PierAsRetainingWall.Holding;
import underhold.mechanics.soil.stability.PierAsRetainingWall.LateralForce;
import underhold.mechanics.soil.stability.PierAsRetainingWall.Pier;
import underhold.mechanics.soil.stability.PierAsRetainingWall.VerticalForce;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Verdict;

/** The finished pier as a retaining wall, alone, with and without the building's load. */
final class PierSection {
  private final PitsCase site;
  private final SheetBuilder sheet;
  private final double height;
  private final double thickness;

  private PierSection(PitsCase site, SheetBuilder sheet) {
    this.site = site;
    this.sheet = sheet;
    this.height = site.get(RETAINED_HEIGHT);
    this.thickness = site.pierThickness();
  }

  /** Writes the section; returns whether the piers must be braced or tied. */
  static boolean write(PitsCase site, SheetBuilder sheet, Layout layout, OptionalDouble allowable) {
    if (site.get(RETAINED_HEIGHT) <= 0) {
      return false;
    }
    return new PierSection(site, sheet).write(layout, allowable);
  }

  private boolean write(Layout layout, OptionalDouble allowable) {
    double above =
        sheet
            .step("pier-surcharge", "Surcharge behind the pier at its top", "qs = {g} × {Df} + {q}")
            .with("g", "unit weight of the soil", site.amount(FACE_UNIT_WEIGHT))
            .with("Df", "soil above the underside of the footing", site.amount(FOUNDING_DEPTH))
            .with("q", "surcharge", site.amount(SURCHARGE))
            .gives(
                Amount.pressure(
                    site.get(FACE_UNIT_WEIGHT) * site.get(FOUNDING_DEPTH) + site.get(SURCHARGE)));
    double active =
        sheet
            .step("pier-ka", "Active pressure coefficient", "Ka = tan(45 - {f} / 2)^2")
            .with("f", "friction angle", site.amount(FACE_FRICTION_ANGLE))
            .from(Sources.UFC)
            .note("Long term: cohesion is not counted.")
            .gives(Amount.ratio(RankinePressure.activeCoefficient(site.get(FACE_FRICTION_ANGLE))));
    Cases cases = PierAsRetainingWall.check(pier(active, above));
    double push = PierThrust.write(site, sheet, "pier", active, above, "Ka");
    double overturning = overturning(active, above);
    double weight = weight();
    boolean brace = site.bracePossible.value();
    Verdict otherwise = brace ? Verdict.REFER : PitsCase.otherwise(site.bracePossible);
    boolean with =
        stability(
            "with",
            "with the building's load",
            cases.withBuilding(),
            weight,
            push,
            overturning,
            otherwise);
    boolean without =
        stability(
            "without",
            "without the building's load",
            cases.withoutBuilding(),
            weight,
            push,
            overturning,
            otherwise);
    boolean bearing = toePressure(cases.withBuilding(), allowable, otherwise);
    PierConcreteSection.write(site, sheet, push, overturning);
    boolean barred = !site.material.value().concrete() && !site.lateralStabilityVerified.value();
    boolean needed = barred || !(with && without && bearing);
    if (needed) {
      BraceSection.write(site, sheet, layout, new BraceSection.Need(barred, above));
    }
    return needed;
  }

  private Pier pier(double active, double above) {
    List<LateralForce> forces = new ArrayList<>();
    forces.add(
        new LateralForce(
            "soil", active * site.get(FACE_UNIT_WEIGHT) * height * height / 2, height / 3));
    forces.add(new LateralForce("surcharge", active * above * height, height / 2));
    double head = Math.min(height, Math.max(0, site.get(LASTING_WATER_ABOVE_PIT_BASE)));
    forces.add(
        new LateralForce("water", Water.KILONEWTONS_PER_CUBIC_METRE * head * head / 2, head / 3));
    return new Pier(
        site.get(PIT_DEPTH),
        thickness,
        site.get(PitsSetting.CONCRETE_WEIGHT),
        new VerticalForce(site.get(WALL_LINE_LOAD), thickness / 2),
        new VerticalForce(Water.KILONEWTONS_PER_CUBIC_METRE * head * thickness, thickness / 2),
        forces,
        Holding.friction(friction()));
  }

  private double head() {
    return Math.min(height, Math.max(0, site.get(LASTING_WATER_ABOVE_PIT_BASE)));
  }

  private double friction() {
    return Math.tan(Math.toRadians(site.baseSoil.value().baseFrictionDegrees()));
  }

  private double overturning(double active, double above) {
    double gw = Water.KILONEWTONS_PER_CUBIC_METRE;
    double h = head();
    double moment =
        active
                * (site.get(FACE_UNIT_WEIGHT) * Math.pow(height, 3) / 6
                    + above * height * height / 2)
            + gw * Math.pow(h, 3) / 6
            + gw * h * thickness * thickness / 2;
    return sheet
        .step(
            "pier-overturning",
            "Overturning moment about the toe",
            "Mo = {Ka} × ({g} × {H}^3 / 6 + {qs} × {H}^2 / 2) + {gw} × {hw}^3 / 6 + {gw} × {hw} × {t}^2 / 2")
        .with("Ka", "active coefficient", Amount.ratio(active))
        .with("g", "unit weight of the soil", site.amount(FACE_UNIT_WEIGHT))
        .with("H", "retained height", site.amount(RETAINED_HEIGHT))
        .with("qs", "surcharge at the top", Amount.pressure(above))
        .with("gw", "unit weight of water", Amount.unitWeight(gw))
        .with("hw", "water above the base", Amount.length(h))
        .with("t", "thickness of the pier", Amount.length(thickness))
        .note("Uplift under the base is in the last term.")
        .gives(Amount.momentPerLength(moment));
  }

  private double weight() {
    return sheet
        .step("pier-weight", "Weight of the pier", "W = {gc} × {t} × {D}")
        .with("gc", "unit weight of concrete", site.amount(PitsSetting.CONCRETE_WEIGHT))
        .with("t", "thickness of the pier", Amount.length(thickness))
        .with("D", "height of the pier", site.amount(PIT_DEPTH))
        .gives(
            Amount.lineLoad(
                site.get(PitsSetting.CONCRETE_WEIGHT) * thickness * site.get(PIT_DEPTH)));
  }

  private boolean stability(
      String which,
      String words,
      Case one,
      double weight,
      double push,
      double overturning,
      Verdict otherwise) {
    boolean loaded = which.equals("with");
    double building = loaded ? site.get(WALL_LINE_LOAD) : 0;
    double uplift = Water.KILONEWTONS_PER_CUBIC_METRE * head() * thickness;
    double resistance =
        sheet
            .step(
                "sliding-" + which,
                "Sliding resistance " + words,
                "R = tan({d}) × max({W} + {w} - {U}, 0)")
            .with(
                "d",
                "base friction angle",
                Amount.angle(site.baseSoil.value().baseFrictionDegrees()))
            .with("W", "weight of the pier", Amount.lineLoad(weight))
            .with("w", loaded ? "working line load" : "no building load", Amount.lineLoad(building))
            .with("U", "uplift", Amount.lineLoad(uplift))
            .from(Sources.CALTRANS_SOIL)
            .note("Nothing is counted in front of the toe.")
            .gives(Amount.lineLoad(one.sliding().resistance()));
    double righting =
        sheet
            .step("righting-" + which, "Righting moment " + words, "Mr = ({W} + {w}) × {t} / 2")
            .with("W", "weight of the pier", Amount.lineLoad(weight))
            .with(
                "w",
                loaded ? "working line load, central" : "no building load",
                Amount.lineLoad(building))
            .with("t", "thickness of the pier", Amount.length(thickness))
            .gives(Amount.momentPerLength(one.overturning().resistance()));
    double factor = site.get(PitsSetting.PIER_FACTOR);
    Phrase note =
        Phrase.of(
            "Demand is {F} times the force. Where it does not pass alone, a brace or tie carries all horizontal load.",
            "F",
            site.amount(PitsSetting.PIER_FACTOR));
    boolean slides =
        !sheet.check(
            "sliding-" + which,
            "Pier alone, sliding, " + words,
            Amount.lineLoad(factor * push),
            Amount.lineLoad(resistance),
            otherwise,
            Sources.NYC_1817,
            note);
    boolean turns =
        !sheet.check(
            "overturning-" + which,
            "Pier alone, overturning, " + words,
            Amount.momentPerLength(factor * overturning),
            Amount.momentPerLength(righting),
            otherwise,
            Sources.NYC_1817,
            note);
    return !slides && !turns;
  }

  private boolean toePressure(Case loaded, OptionalDouble allowable, Verdict otherwise) {
    ContactPressure contact = loaded.contact().value().orElse(null);
    if (contact == null || allowable.isEmpty()) {
      sheet.verdict(
          "toe-pressure",
          "Pier alone, pressure under the toe, with the building's load",
          Amount.pressure(Math.max(0, loaded.normalKilonewtonsPerMetre()) / thickness),
          Amount.pressure(0),
          otherwise,
          Sources.NYC_1817,
          Phrase.of(
              contact == null
                  ? "The resultant leaves the base."
                  : "No allowable pressure is known."));
      return false;
    }
    double x = thickness / 2 - contact.eccentricityMetres();
    boolean third = contact.withinMiddleThird();
    double pressure =
        sheet
            .step(
                "toe-pressure",
                "Pressure under the toe, with the building's load",
                third
                    ? "qt = {N} / {t} × (1 + 6 × {e} / {t})"
                    : "qt = 2 × {N} / (3 × ({t} / 2 - {e}))")
            .with("N", "vertical force", Amount.lineLoad(loaded.normalKilonewtonsPerMetre()))
            .with("t", "thickness of the pier", Amount.length(thickness))
            .with("e", "eccentricity, t/2 - (Mr - Mo) / N", Amount.length(thickness / 2 - x))
            .from(Sources.UFC)
            .note(
                third
                    ? "Within the middle third."
                    : "Outside the middle third: part of the base lifts.")
            .gives(Amount.pressure(contact.largestKilopascals()));
    return sheet.check(
        "toe-pressure",
        "Pier alone, pressure under the toe, with the building's load",
        Amount.pressure(pressure),
        Amount.pressure(allowable.getAsDouble()),
        otherwise,
        Sources.NYC_1817,
        Phrase.of(
            third
                ? ""
                : "A pressure far above any soil's strength means that the resultant all but leaves the base: the pier turns over unless it is braced."));
  }
}
