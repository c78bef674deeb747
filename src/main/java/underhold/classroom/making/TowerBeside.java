package underhold.classroom.making;

import java.util.List;
import java.util.Map;
import java.util.Set;
import underhold.advice.SupportOption;

/** A tower or monument that may hardly move, with a dig some way off. */
final class TowerBeside implements SiteKind {
  private static final List<Scene> SCENES =
      List.of(
          new Scene(
              "A concert hall with rooms below ground is planned near an old bell tower.",
              "The tower is loved, and the town watches it.",
              "bell tower",
              "the tower"),
          new Scene(
              "A tramway in a cut will pass the column of a monument.",
              "The square around it stays open.",
              "monument",
              "the monument"),
          new Scene(
              "A cistern is to be sunk in the garden below a watch tower.",
              "Visitors climb the tower every day.",
              "watch tower",
              "the tower"));

  @Override
  public String name() {
    return "tower near a dig";
  }

  @Override
  public Set<SupportOption> leaders() {
    return Set.of(SupportOption.MONITOR, SupportOption.REFER, SupportOption.DRILLED_PILES);
  }

  @Override
  public Sketch draw(Draw draw) {
    Sketch sketch = new Sketch(draw);
    Typing typing = draw.typing();
    Map<String, String> zone = sketch.zone(draw.pick(SCENES));
    Common.job(sketch, "tower-or-monument", "occupied");
    sketch.site().put("heritage", draw.pick("landmark", "listed"));
    sketch.site().put("existingTilt", draw.pick("none", "none", "slight", "marked"));
    double founding = Typing.metres(Common.founding(draw, 1.8, 3.4));
    double dig = Typing.metres(typing.length(founding + draw.between(1.5, 6)));
    sketch.site().put("excavationDepth", typing.length(dig));
    Common.ground(sketch, Common.ground(draw, List.of(GroundKind.values())), founding, dig);
    zone.put("loadPattern", "area");
    zone.put("excavationPosition", "beside");
    zone.put("structureMaterial", draw.pick("unreinforced-masonry", "rubble"));
    Common.condition(sketch, zone, 2, 8);
    double pressure = GroundKind.pressure(sketch.layers(), founding);
    zone.put("areaLoad", typing.areaLoad(Math.max(60, Math.min(pressure, draw.between(110, 260)))));
    zone.put("lateralDemand", draw.pick("moderate", "high"));
    zone.put("foundationKind", "mass-rubble");
    zone.put("foundingDepth", typing.length(founding));
    zone.put("footingWidth", typing.length(draw.between(5, 9)));
    zone.put("footingStrength", "rubble");
    zone.put("cappingBeamPossible", draw.pick("no", "no", "yes"));
    zone.put("oldPiles", "none");
    zone.put("obstructions", draw.pick("none", "occasional"));
    double gap = draw.chance(0.4) ? draw.between(1, 4) : draw.between(4, 2.4 * dig);
    zone.put("gapToExcavation", typing.length(gap));
    zone.put(
        "excavationWall", draw.pick("flexible", "stiff", "stiff-watertight", "stiff-watertight"));
    Common.access(
        sketch,
        zone,
        draw.pick("hand", "small-rig", "small-rig", "large-rig"),
        draw.pick("none", "hand"));
    zone.put("rigBothSides", "no");
    zone.put("drillingFromAbove", "no");
    zone.put("freeEdge", "yes");
    zone.put("landRights", "not-needed");
    Common.forecast(sketch, zone, dig);
    return sketch;
  }
}
