package underhold.sizing.edgepits;

import java.util.Map;
import underhold.mechanics.soil.Water;
import underhold.mechanics.soil.bearing.ContactPressure;
import underhold.mechanics.soil.edgewall.BackPressure;
import underhold.mechanics.soil.stability.PierAsRetainingWall.Case;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Verdict;

/** The wall without brace or tie: before, while and after the piles take the load. */
final class AloneSection {
  private final EdgeCase site;
  private final SheetBuilder sheet;

  private AloneSection(EdgeCase site, SheetBuilder sheet) {
    this.site = site;
    this.sheet = sheet;
  }

  /** What one share gives. */
  private record Result(double thrust, double resistance, double overturning, double righting) {
    double sliding() {
      return thrust > 0 ? resistance / thrust : 0;
    }

    double turning() {
      return overturning > 0 ? righting / overturning : 0;
    }
  }

  static void write(EdgeCase site, SheetBuilder sheet) {
    new AloneSection(site, sheet).write();
  }

  private void write() {
    double uplift = uplift();
    double weight = weight();
    Result before =
        at("before", "all of the structure on the soil", EdgeCase.SHARE_BEFORE, weight, uplift);
    Result partial =
        at(
            "partial",
            "while the piles take the load",
            site.get(EdgeSetting.SHARE_PARTIAL),
            weight,
            uplift);
    Result after = at("after", "the piles carry the structure", site.shareAfter(), weight, uplift);
    Phrase trap =
        Phrase.of(
            "Without brace or tie the factor on sliding is {b} with the structure standing on the wall, {p} while the piles take the load and {a} once they carry it; on overturning {bo}, {po} and {ao}. What presses an ordinary pit down and lets it hold is gone: brace or tie the wall, key it to rock or strut it by the base slab.",
            Map.of(
                "b", Amount.ratio(before.sliding()),
                "p", Amount.ratio(partial.sliding()),
                "a", Amount.ratio(after.sliding()),
                "bo", Amount.ratio(before.turning()),
                "po", Amount.ratio(partial.turning()),
                "ao", Amount.ratio(after.turning())));
    check("before", "before the piles take the load", before, Verdict.REFER, trap);
    check("partial", "while the piles take the load", partial, Verdict.REFER, trap);
    check(
        "after",
        "after the piles have taken the load",
        after,
        site.says(EdgeInputs.BRACING, "no")
            ? site.otherwise(EdgeInputs.FACE_FRICTION, EdgeInputs.FACE_WEIGHT)
            : Verdict.REFER, // the braces that follow are to carry it
        trap);
  }

  private double weight() {
    return sheet
        .step("wall-weight", "Weight of the wall", "W = {gc} × {t} × {H}")
        .with(
            "gc",
            "unit weight of concrete",
            site.amount(underhold.sizing.pits.PitsSetting.CONCRETE_WEIGHT))
        .with("t", "thickness of the wall", site.amount(EdgeSetting.WALL_THICKNESS))
        .with("H", "height of the wall", Amount.length(site.height()))
        .gives(Amount.lineLoad(site.wall().weight()));
  }

  private double uplift() {
    BackPressure back = site.wall().pressure();
    return sheet
        .step(
            "wall-uplift", "Uplift of water under the base", "U = {gw} × ({w0} + {H} - {zw}) × {t}")
        .with("gw", "unit weight of water", Amount.unitWeight(Water.KILONEWTONS_PER_CUBIC_METRE))
        .with("w0", "water above the top", Amount.length(back.waterAboveTopMetres()))
        .with("H", "height of the wall", Amount.length(site.height()))
        .with("zw", "depth of the water", Amount.length(back.waterDepthMetres()))
        .with("t", "thickness of the wall", site.amount(EdgeSetting.WALL_THICKNESS))
        .note("The full head behind acts over the whole base.")
        .gives(Amount.lineLoad(site.wall().uplift()));
  }

  private Result at(String id, String words, double share, double weight, double uplift) {
    BackPressure back = LoadSection.atShare(site, sheet, id, words, share);
    PressureSteps steps = new PressureSteps(sheet, back);
    double thrust = steps.force(id, "its base, " + words, site.height());
    double moment = steps.moment(id, "its base, " + words, site.height());
    Case one = site.wall().at(share);
    double load = share * site.structureOnWall();
    double contact = one.contact().value().map(ContactPressure::contactWidthMetres).orElse(0.0);
    double resistance = resistance(id, words, weight, load, uplift, contact);
    double righting =
        sheet
            .step(
                "righting-" + id,
                "Righting moment about the toe, " + words,
                "Mr = ({W} + {V}) × {t} / 2")
            .with("W", "weight of the wall", Amount.lineLoad(weight))
            .with("V", "share of the structure on it", Amount.lineLoad(load))
            .with("t", "thickness of the wall", site.amount(EdgeSetting.WALL_THICKNESS))
            .gives(Amount.momentPerLength(one.overturning().resistance()));
    double overturning =
        sheet
            .step(
                "overturning-" + id,
                "Overturning moment about the toe, " + words,
                "Mo = {M} + {U} × {t} / 2")
            .with("M", "moment of the pressure", Amount.momentPerLength(moment))
            .with("U", "uplift", Amount.lineLoad(uplift))
            .with("t", "thickness of the wall", site.amount(EdgeSetting.WALL_THICKNESS))
            .gives(Amount.momentPerLength(one.overturning().demand()));
    return new Result(thrust, resistance, overturning, righting);
  }

  private double resistance(
      String id, String words, double weight, double load, double uplift, double contact) {
    return BaseSteps.resistance(
        site, sheet, "sliding-resistance-" + id, words, weight + load, uplift, contact);
  }

  private void check(String id, String words, Result one, Verdict otherwise, Phrase trap) {
    double factor = site.get(EdgeSetting.STABILITY_FACTOR);
    sheet.check(
        "sliding-" + id + "-transfer",
        "Wall alone without brace or tie, sliding, " + words,
        Amount.lineLoad(factor * one.thrust()),
        Amount.lineLoad(one.resistance()),
        otherwise,
        Sources.NYC_1817,
        trap);
    sheet.check(
        "overturning-" + id + "-transfer",
        "Wall alone without brace or tie, overturning, " + words,
        Amount.momentPerLength(factor * one.overturning()),
        Amount.momentPerLength(one.righting()),
        otherwise,
        Sources.NYC_1817,
        Phrase.of(
            "Demand is {F} times the moment about the toe. Nothing is counted in front of the toe.",
            "F",
            site.amount(EdgeSetting.STABILITY_FACTOR)));
  }
}
