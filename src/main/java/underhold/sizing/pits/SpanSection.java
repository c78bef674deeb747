package underhold.sizing.pits;

import static underhold.sizing.pits.PitsFact.*;

import java.util.OptionalDouble;
import underhold.mechanics.concrete.PlainConcrete;
import underhold.mechanics.concrete.ReinforcedSection;
import underhold.mechanics.concrete.SpanOverGap;
import underhold.mechanics.masonry.ArchOverGap;
import underhold.quantity.Measure;
import underhold.sizing.Amount;
import underhold.sizing.SheetBuilder;

/** What the footing or wall can span while a pit is open. */
final class SpanSection {
  private final PitsCase site;
  private final SheetBuilder sheet;

  private SpanSection(PitsCase site, SheetBuilder sheet) {
    this.site = site;
    this.sheet = sheet;
  }

  static SpanLimit write(PitsCase site, SheetBuilder sheet) {
    return new SpanSection(site, sheet).stated(new SpanSection(site, sheet).reckoned());
  }

  private SpanLimit reckoned() {
    if (!site.has(WALL_HEIGHT) || !site.has(WALL_THICKNESS) || site.get(WALL_LINE_LOAD) <= 0) {
      return SpanLimit.UNKNOWN;
    }
    if (!site.material.value().concrete()) {
      return arch();
    }
    return reinforced() ? reinforcedStrip() : plainStrip();
  }

  /** The weaker of the engineer's own statement and the reckoning. */
  private SpanLimit stated(SpanLimit reckoned) {
    if (!site.has(CLEAR_SPAN)) {
      return reckoned;
    }
    double stated = site.get(CLEAR_SPAN);
    double span = Math.min(stated, reckoned.clearSpanMetres().orElse(stated));
    double end = Math.min(stated / 2, reckoned.cantileverMetres().orElse(stated / 2));
    return new SpanLimit(OptionalDouble.of(span), OptionalDouble.of(end));
  }

  private boolean reinforced() {
    return site.material.value() == WallMaterial.REINFORCED_CONCRETE
        && site.has(WALL_STEEL_AREA)
        && site.has(WALL_STEEL_DEPTH)
        && section().tensionControlled();
  }

  private ReinforcedSection section() {
    return new ReinforcedSection(
        site.get(WALL_THICKNESS),
        site.get(WALL_STEEL_DEPTH),
        site.get(WALL_STEEL_AREA),
        site.get(WALL_CONCRETE_STRENGTH),
        site.get(WALL_STEEL_YIELD));
  }

  private SpanLimit reinforcedStrip() {
    ReinforcedSection section = section();
    double area = site.get(WALL_STEEL_AREA);
    double depth = site.get(WALL_STEEL_DEPTH);
    double block =
        sheet
            .step(
                "span-block", "Depth of the stress block", "a = {As} × {fy} / (0.85 × {fc} × {b})")
            .with("As", "bottom steel", site.amount(WALL_STEEL_AREA))
            .with("fy", "yield strength", site.amount(WALL_STEEL_YIELD))
            .with("fc", "concrete strength", site.amount(WALL_CONCRETE_STRENGTH))
            .with("b", "width of the strip", site.amount(WALL_THICKNESS))
            .from(Sources.ACI_REINFORCED)
            .gives(Amount.thickness(section.stressBlock()));
    double moment =
        sheet
            .step(
                "span-moment",
                "Design moment of the strip",
                "M = {phi} × {As} × {fy} × ({d} - {a} / 2)")
            .with(
                "phi",
                "strength reduction, tension controlled",
                Amount.ratio(ReinforcedSection.PHI_FLEXURE))
            .with("As", "bottom steel", site.amount(WALL_STEEL_AREA))
            .with("fy", "yield strength", site.amount(WALL_STEEL_YIELD))
            .with("d", "depth to the steel", site.amount(WALL_STEEL_DEPTH))
            .with("a", "stress block", Amount.thickness(block))
            .from(Sources.ACI_REINFORCED)
            .gives(Amount.moment(section.designMoment()));
    double ratio = area / (site.get(WALL_THICKNESS) * depth);
    double size = Math.min(1, Math.sqrt(2 / (1 + depth / 0.254)));
    double stress =
        sheet
            .step(
                "span-shear-stress",
                "Nominal shear stress without stirrups",
                "v = 0.6643 × {ls} × {rho}^(1/3) × sqrt({fc})",
                "v = 8 × {ls} × {rho}^(1/3) × sqrt({fc})")
            .with("ls", "size factor, sqrt(2 / (1 + d / 10 in)), at most 1", Amount.ratio(size))
            .with("rho", "steel ratio As / (b d)", Amount.ratio(ratio))
            .with("fc", "concrete strength", site.amount(WALL_CONCRETE_STRENGTH))
            .from(Sources.ACI_REINFORCED)
            .gives(
                Amount.stress(
                    section.designShear()
                        / (ReinforcedSection.PHI_SHEAR * site.get(WALL_THICKNESS) * depth)));
    double shear =
        sheet
            .step("span-shear", "Design shear of the strip", "V = {phi} × {v} × {b} × {d}")
            .with("phi", "strength reduction, shear", Amount.ratio(ReinforcedSection.PHI_SHEAR))
            .with("v", "nominal shear stress", Amount.stress(stress))
            .with("b", "width of the strip", site.amount(WALL_THICKNESS))
            .with("d", "depth to the steel", site.amount(WALL_STEEL_DEPTH))
            .from(Sources.ACI_REINFORCED)
            .gives(Amount.force(section.designShear()));
    // Bottom steel does nothing at a free end, where the top is in tension.
    return span(moment, shear, false);
  }

  private String plainNote() {
    boolean bars = site.has(WALL_STEEL_AREA) && site.has(WALL_STEEL_DEPTH);
    return bars
        ? "The bars are not counted: the concrete would crush before they yield, or they are not in reinforced concrete."
        : "Bars that are not known are not counted.";
  }

  private SpanLimit plainStrip() {
    PlainConcrete concrete = PlainConcrete.normalWeight(site.get(WALL_CONCRETE_STRENGTH));
    double width = site.get(WALL_THICKNESS);
    double thickness =
        sheet
            .step("span-depth", "Depth that counts, cast against soil", "h = {d} - {lost}")
            .with("d", "depth of the strip", site.amount(WALL_HEIGHT))
            .with(
                "lost",
                "not counted against soil",
                Amount.thickness(PlainConcrete.LOST_AGAINST_SOIL_METRES))
            .from(Sources.ACI_PLAIN)
            .note(plainNote())
            .gives(Amount.length(PlainConcrete.effectiveThickness(site.get(WALL_HEIGHT))));
    double modulus =
        sheet
            .step("span-modulus", "Section modulus of the strip", "S = {b} × {h}^2 / 6")
            .with("b", "width of the strip", site.amount(WALL_THICKNESS))
            .with("h", "depth that counts", Amount.length(thickness))
            .gives(
                new Amount(
                    width * PlainConcrete.sectionModulus(thickness), Measure.VOLUME, "m3", "in3"));
    PlainSteps.Strengths strengths =
        PlainSteps.stresses(sheet, "span", concrete, site.amount(WALL_CONCRETE_STRENGTH));
    double moment =
        sheet
            .step("span-moment", "Design moment of the strip", "M = {phi} × {fr} × {S}")
            .with("phi", "strength reduction of plain concrete", Amount.ratio(PlainConcrete.PHI))
            .with("fr", "flexural tension at nominal strength", Amount.stress(strengths.flexure()))
            .with("S", "section modulus", new Amount(modulus, Measure.VOLUME, "m3", "in3"))
            .from(Sources.ACI_PLAIN)
            .gives(Amount.moment(concrete.designMoment(modulus)));
    double shear =
        sheet
            .step("span-shear", "Design shear of the strip", "V = {phi} × {v} × {b} × {h}")
            .with("phi", "strength reduction of plain concrete", Amount.ratio(PlainConcrete.PHI))
            .with("v", "nominal shear stress", Amount.stress(strengths.shear()))
            .with("b", "width of the strip", site.amount(WALL_THICKNESS))
            .with("h", "depth that counts", Amount.length(thickness))
            .from(Sources.ACI_PLAIN)
            .gives(Amount.force(concrete.designShear(width * thickness)));
    return span(moment, shear, true);
  }

  private SpanLimit span(double moment, double shear, boolean atFreeEnd) {
    double load =
        sheet
            .step("span-load", "Factored line load", "wu = {LF} × {w}")
            .with("LF", "load factor on all loads", site.amount(PitsSetting.LOAD_FACTOR))
            .with("w", "working line load", site.amount(WALL_LINE_LOAD))
            .from(PitsSetting.LOAD_FACTOR.setting().source())
            .gives(Amount.lineLoad(site.get(PitsSetting.LOAD_FACTOR) * site.get(WALL_LINE_LOAD)));
    SpanOverGap gap = new SpanOverGap(moment, shear, load);
    Amount wu = Amount.lineLoad(load);
    sheet
        .step(
            "span-by-moment",
            "Span that the moment allows, simple span",
            "Lm = sqrt(8 × {M} / {wu})")
        .with("M", "design moment", Amount.moment(moment))
        .with("wu", "factored load", wu)
        .gives(Amount.length(gap.byMoment()));
    sheet
        .step("span-by-shear", "Span that the shear allows", "Lv = 2 × {V} / {wu}")
        .with("V", "design shear", Amount.force(shear))
        .with("wu", "factored load", wu)
        .gives(Amount.length(gap.byShear()));
    sheet
        .step("span", "Clear span of the strip, the weaker of the two", "L = min({Lm}, {Lv})")
        .with("Lm", "by moment", Amount.length(gap.byMoment()))
        .with("Lv", "by shear", Amount.length(gap.byShear()))
        .gives(Amount.length(gap.longest()));
    if (!atFreeEnd) {
      return new SpanLimit(OptionalDouble.of(gap.longest()), OptionalDouble.empty());
    }
    sheet
        .step(
            "span-free-end",
            "Clear length past the last support at a free end",
            "a = min(sqrt(2 × {M} / {wu}), {V} / {wu})")
        .with("M", "design moment", Amount.moment(moment))
        .with("V", "design shear", Amount.force(shear))
        .with("wu", "factored load", wu)
        .gives(Amount.length(gap.longestCantilever()));
    return new SpanLimit(
        OptionalDouble.of(gap.longest()), OptionalDouble.of(gap.longestCantilever()));
  }

  private SpanLimit arch() {
    PitsSetting stress =
        site.poorWall() ? PitsSetting.POOR_MASONRY_COMPRESSION : PitsSetting.MASONRY_COMPRESSION;
    ArchOverGap arch =
        new ArchOverGap(
            site.get(WALL_LINE_LOAD),
            site.get(WALL_HEIGHT),
            site.get(WALL_THICKNESS),
            site.get(PitsSetting.ARCH_RISE),
            site.get(PitsSetting.ARCH_ZONE));
    double span = arch.longestSpan(site.get(stress));
    double thrust =
        sheet
            .step("arch-thrust", "Thrust that the wall can take", "H = {f} × {z} × {h} × {t}")
            .with("f", "allowable compression", site.amount(stress))
            .with("z", "compressed share of the height", site.amount(PitsSetting.ARCH_ZONE))
            .with("h", "height of the wall", site.amount(WALL_HEIGHT))
            .with("t", "thickness of the wall", site.amount(WALL_THICKNESS))
            .from(PitsSetting.ARCH_ZONE.setting().source())
            .note(
                "The masonry gets no bending strength. Both ends of the arch need wall to lean on.")
            .gives(
                Amount.force(
                    site.get(stress)
                        * site.get(PitsSetting.ARCH_ZONE)
                        * site.get(WALL_HEIGHT)
                        * site.get(WALL_THICKNESS)));
    double rise =
        sheet
            .step("arch-rise", "Greatest rise of the arch", "r = {k} × {h}")
            .with("k", "rise as a share of the height", site.amount(PitsSetting.ARCH_RISE))
            .with("h", "height of the wall", site.amount(WALL_HEIGHT))
            .from(PitsSetting.ARCH_RISE.setting().source())
            .gives(Amount.length(site.get(PitsSetting.ARCH_RISE) * site.get(WALL_HEIGHT)));
    boolean flat = 4 * thrust / site.get(WALL_LINE_LOAD) > 2 * rise;
    sheet
        .step(
            "span",
            "Clear span that arching allows",
            flat ? "L = sqrt(8 × {r} × {H} / {w})" : "L = 4 × {H} / {w}")
        .with("H", "thrust that the wall can take", Amount.force(thrust))
        .with("w", "working line load", site.amount(WALL_LINE_LOAD))
        .with("r", "greatest rise", Amount.length(rise))
        .note(
            flat
                ? "The rise is limited by the height of the wall."
                : "The rise is half the span, so H = w L / 4.")
        .gives(Amount.length(span));
    return new SpanLimit(OptionalDouble.of(span), OptionalDouble.empty());
  }
}
