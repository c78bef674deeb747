package underhold.classroom.making;

import java.util.List;
import java.util.Map;
import java.util.Set;
import underhold.advice.SupportOption;

/** An edge that hangs over its wall, a platform or a loading dock, with a dig along or below it. */
final class PlatformEdge implements SiteKind {
  private static final List<Scene> PLATFORMS =
      List.of(
          new Scene(
              "A passage for passengers is to be dug along a platform whose edge hangs over its"
                  + " wall.",
              "Trains stop there from early till late.",
              "platform edge",
              "the edge"),
          new Scene(
              "Below the end of a platform a room for signals is to be sunk.",
              "The platform stays in use.",
              "platform end",
              "the edge"));
  private static final List<Scene> DOCKS =
      List.of(
          new Scene(
              "The floor before a loading dock is to be lowered for longer lorries; the dock hangs"
                  + " over its wall.",
              "Half of the dock is loaded while the other half is worked on.",
              "dock edge",
              "the edge"));

  @Override
  public String name() {
    return "edge that hangs over";
  }

  @Override
  public Set<SupportOption> leaders() {
    return Set.of(SupportOption.BRACKET_PILES, SupportOption.DRILLED_PILES, SupportOption.REFER);
  }

  @Override
  public Sketch draw(Draw draw) {
    Sketch sketch = new Sketch(draw);
    boolean platform = draw.chance(0.7);
    Typing typing = draw.typing();
    Map<String, String> zone = sketch.zone(draw.pick(platform ? PLATFORMS : DOCKS));
    Common.job(sketch, platform ? "rail-yard" : "building-wall", platform ? "rail" : "occupied");
    double founding = Typing.metres(Common.founding(draw, 1.2, 2.4));
    double dig = Typing.metres(typing.length(founding + draw.between(1.2, 3.2)));
    sketch.site().put("excavationDepth", typing.length(dig));
    boolean below = draw.chance(0.4);
    zone.put("loadPattern", "cantilevered-edge");
    zone.put("excavationPosition", below ? "partly-under" : "beside");
    Common.ground(sketch, Common.ground(draw, List.of(GroundKind.values())), founding, dig);
    zone.put("structureMaterial", "reinforced-concrete");
    Common.condition(sketch, zone, platform ? 6 : 10, platform ? 10 : 18);
    double load = draw.between(35, 90);
    zone.put("lineLoad", typing.lineLoad(load));
    zone.put("clearSpan", typing.length(draw.between(1.5, 2.6)));
    zone.put("wallLength", typing.length(draw.between(10, 40)));
    zone.put("lateralDemand", "low");
    zone.put("foundationKind", "strip");
    zone.put("foundingDepth", typing.length(founding));
    zone.put("footingStrength", "strong-concrete");
    double width = load / GroundKind.pressure(sketch.layers(), founding);
    zone.put("footingWidth", typing.length(Math.max(0.6, width)));
    zone.put("wallThickness", typing.thickness(0.25 + 0.05 * draw.whole(0, 2)));
    zone.put("oldPiles", "none");
    zone.put("obstructions", draw.pick("none", "none", "occasional", "frequent"));
    if (below) {
      zone.put("underminedLength", typing.length(draw.between(4, 20)));
      zone.put("underminedWidth", typing.length(draw.between(0.5, 1.2)));
      zone.put("wallGapLength", typing.length(0));
    } else {
      zone.put("gapToExcavation", typing.length(draw.between(0.2, 1.8)));
    }
    zone.put("excavationWall", draw.pick("flexible", "flexible", "none", "stiff"));
    Common.access(
        sketch,
        zone,
        draw.pick("small-rig", "small-rig", "hand", "large-rig"),
        draw.pick("none", "hand"));
    zone.put("rigBothSides", "no");
    zone.put("drillingFromAbove", draw.pick("no", "yes"));
    zone.put("loadOffset", typing.fineLength(draw.between(0.15, 0.8)));
    zone.put("pairedPilesPossible", draw.pick("yes", "no"));
    zone.put("freeEdge", "yes");
    zone.put("landRights", "not-needed");
    Common.forecast(sketch, zone, dig);
    return sketch;
  }
}
