package underhold.sizing.edgepits;

import static underhold.sizing.edgepits.EdgeInputs.*;

import java.util.OptionalDouble;
import underhold.mechanics.soil.edgewall.PresumptiveSliding;
import underhold.sizing.Amount;
import underhold.sizing.Basis;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;

/** The toe of the braced wall: first cut, sliding, bearing. */
final class ToeSection {
  private final EdgeCase site;
  private final SheetBuilder sheet;
  private final PropSection.Held held;
  private final double factor;

  private ToeSection(EdgeCase site, SheetBuilder sheet, PropSection.Held held) {
    this.site = site;
    this.sheet = sheet;
    this.held = held;
    this.factor = site.get(EdgeSetting.STABILITY_FACTOR);
  }

  /** Writes the section; returns the vertical force of the braces on the wall, kN/m. */
  static void write(EdgeCase site, SheetBuilder sheet, PropSection.Held held) {
    ToeSection section = new ToeSection(site, sheet, held);
    section.room();
    section.firstCut();
    double vertical = section.vertical();
    section.sliding(vertical);
    section.bearing(vertical);
  }

  private void room() {
    boolean possible = site.says(BRACING, "yes");
    sheet.verdict(
        "bracing-possible",
        "The wall can be braced or tied",
        Amount.count(held.forces().size()),
        Amount.count(possible ? held.forces().size() : 0),
        possible
            ? Verdict.PASSES
            : site.known(BRACING) && !held.forces().isEmpty() && !site.geometry.onRock()
                ? Verdict.FAILS
                : Verdict.REFER,
        Source.judgement(),
        Phrase.of(
            possible
                ? "Levels of braces or ties."
                : "Nobody has said that there is room and right for braces or ties: without them the wall does not stand once the piles carry the structure."));
  }

  /** The ground in front before the first brace, the wall fixed in the soil by its lower part. */
  private void firstCut() {
    double cut = held.props().firstCutMetres();
    double depth = site.height() - cut;
    double force = held.steps().force("first-cut", "the ground before the first braces", cut);
    double moment = held.steps().moment("first-cut", "the ground before the first braces", cut);
    double lateral = site.lateralBearing();
    double weight = site.wall().weight();
    double demand =
        sheet
            .step(
                "first-cut-overturning",
                "Moment about the base before the first braces",
                "Mo = {M} + {F} × {D}")
            .with("M", "moment about the ground in front", Amount.momentPerLength(moment))
            .with("F", "force above the ground in front", Amount.lineLoad(force))
            .with("D", "wall below the ground in front", Amount.length(depth))
            .note("Below the ground in front soil stands on both sides.")
            .gives(Amount.momentPerLength(moment + force * depth));
    double righting =
        sheet
            .step("first-cut-righting", "What rights it", "Mr = {S} × {D}^3 / 6 + {W} × {t} / 2")
            .with("S", "presumptive lateral bearing per depth", Amount.unitWeight(lateral))
            .with("D", "wall below the ground in front", Amount.length(depth))
            .with("W", "weight of the wall", Amount.lineLoad(weight))
            .with("t", "thickness", site.amount(EdgeSetting.WALL_THICKNESS))
            .from(Sources.IBC_1804)
            .note(
                "By the class of the soil in front, or the weakest of the table; taken net of the pressure behind: it is far below the passive limit.")
            .gives(
                Amount.momentPerLength(
                    lateral * Math.pow(depth, 3) / 6 + weight * site.thickness() / 2));
    sheet.check(
        "first-cut",
        "Wall free at its top before the first braces, overturning",
        Amount.momentPerLength(factor * demand),
        Amount.momentPerLength(righting),
        Verdict.REFER,
        Sources.NYC_1817,
        Phrase.of(
            "Demand is {F} times the moment. If it does not pass, set the first level higher or dig less below it.",
            "F",
            site.amount(EdgeSetting.STABILITY_FACTOR)));
  }

  /** Vertical part of rakers (up, negative) or ties (down). */
  private double vertical() {
    if (site.chosen(EdgeSetting.BRACE_KIND, "strut")) {
      return 0;
    }
    boolean tie = site.chosen(EdgeSetting.BRACE_KIND, "tie");
    double all = held.all();
    double size =
        sheet
            .step(
                "brace-vertical",
                tie ? "Ties press the wall down" : "Rakers lift the wall",
                "Nv = {R} × tan({a})")
            .with("R", "force of all levels per length", Amount.lineLoad(all))
            .with("a", "slope", site.amount(EdgeSetting.BRACE_ANGLE))
            .gives(
                Amount.lineLoad(all * Math.tan(Math.toRadians(site.get(EdgeSetting.BRACE_ANGLE)))));
    return tie ? size : -size;
  }

  private void sliding(double vertical) {
    if (site.geometry.onRock()) {
      return; // toe dowels
    }
    double weight = site.wall().weight();
    double lifted = Math.max(0, -vertical);
    double base =
        BaseSteps.resistance(
            site,
            sheet,
            "toe-resistance",
            "braced wall, its own weight",
            weight,
            site.wall().uplift() + lifted,
            site.thickness());
    double share = site.get(EdgeSetting.PASSIVE_SHARE);
    double lateral =
        site.presumptive().map(one -> one.row().lateralKilopascalsPerMetre()).orElse(0.0);
    double front =
        sheet
            .step("toe-front", "Lateral bearing in front of the toe", "Rp = {k} × {S} × {D}^2 / 2")
            .with("k", "share counted", site.amount(EdgeSetting.PASSIVE_SHARE))
            .with("S", "presumptive lateral bearing per depth", Amount.unitWeight(lateral))
            .with("D", "embedment", Amount.length(site.geometry.embedment()))
            .from(Sources.IBC_1804)
            .gives(
                Amount.lineLoad(
                    share
                        * site.presumptive()
                            .map(one -> one.front(site.geometry.embedment()))
                            .orElse(0.0)));
    boolean slab = site.chosen(EdgeSetting.TOE_SUPPORT, "slab");
    if (slab) {
      sheet
          .step("slab-strut", "Force in the base slab as a strut", "Ns = {F} × {T}")
          .with("F", "load factor", site.amount(underhold.sizing.pits.PitsSetting.LOAD_FACTOR))
          .with("T", "force left to the toe", Amount.lineLoad(held.toe()))
          .note("Design the slab and what it leans on for this factored force.")
          .gives(
              Amount.lineLoad(
                  site.get(underhold.sizing.pits.PitsSetting.LOAD_FACTOR) * held.toe()));
    }
    double demand = factor * held.toe();
    if (slab) {
      sheet.verdict(
          "sliding-supported",
          "Braced wall, sliding of the toe",
          Amount.lineLoad(demand),
          Amount.lineLoad(base + front),
          demand <= base + front ? Verdict.PASSES : Verdict.REFER,
          Sources.NYC_1817,
          Phrase.of(
              "A base slab holds the toe at the end. Until it is cast and hard the ground holds it: cast it in short lengths from the wall outward, the cut in front of each finished only then."));
      return;
    }
    sheet.check(
        "sliding-supported",
        "Braced wall, sliding of the toe",
        Amount.lineLoad(demand),
        Amount.lineLoad(base + front),
        site.otherwise(FACE_FRICTION, FACE_WEIGHT),
        Sources.NYC_1817,
        Phrase.of(
            "Demand is {F} times the force that the braces leave to the toe, with the larger share of the structure's load behind and none of it on the wall. If it does not pass: a lower level of braces, more embedment, a thicker wall, or a base slab as a strut.",
            "F",
            site.amount(EdgeSetting.STABILITY_FACTOR)));
  }

  private void bearing(double vertical) {
    double weight = site.wall().weight();
    double down = Math.max(0, vertical);
    double load = site.designShare() * site.structureOnWall();
    double pressure =
        sheet
            .step(
                "toe-pressure",
                "Pressure under the braced wall",
                "qt = ({W} + {s} × {V} + {Nv}) / {t}")
            .with("W", "weight of the wall", Amount.lineLoad(weight))
            .with("s", "larger share of the structure's load", Amount.ratio(site.designShare()))
            .with(
                "V", "the structure's load over the wall", Amount.lineLoad(site.structureOnWall()))
            .with("Nv", "ties, downward part", Amount.lineLoad(down))
            .with("t", "thickness", site.amount(EdgeSetting.WALL_THICKNESS))
            .note("The braces take the moment; uplift is not taken off.")
            .gives(Amount.pressure((weight + load + down) / site.thickness()));
    double set = site.get(EdgeSetting.ALLOWABLE_BEARING);
    double net =
        sheet
            .step(
                "toe-net",
                "The same beyond the soil that is left in front",
                "qn = max({qt} - {g} × {d}, 0)")
            .with("qt", "pressure under the wall", Amount.pressure(pressure))
            .with("g", "unit weight of the soil", site.amount(FACE_WEIGHT))
            .with("d", "toe below the dug level", Amount.length(site.geometry.embedment()))
            .from(Sources.UFC)
            .note("The side that is dug away bears least: the soil behind the wall does not count.")
            .gives(
                Amount.pressure(
                    Math.max(pressure - site.get(FACE_WEIGHT) * site.geometry.embedment(), 0)));
    OptionalDouble listed =
        site.presumptive()
            .map(PresumptiveSliding::row)
            .map(row -> OptionalDouble.of(row.verticalKilopascals()))
            .orElse(OptionalDouble.empty());
    sheet.check(
        "toe-bearing",
        "Bearing pressure under the wall",
        Amount.pressure(set > 0 ? pressure : net),
        Amount.pressure(set > 0 ? set : listed.orElse(0)),
        set > 0 ? site.otherwise(FACE_WEIGHT) : Verdict.REFER,
        set > 0 ? new Source("ground investigation, as set", Basis.SITE_FACT) : Sources.IBC_1804,
        Phrase.of(
            set > 0
                ? "The whole pressure against the allowable one set."
                : listed.isPresent()
                    ? "The pressure beyond the soil left in front, against the presumptive one of the table for this ground. A presumptive value takes no credit for dense ground: have it investigated."
                    : "The table gives nothing for this ground: have it investigated."));
  }
}
