package underhold.classroom.making;

import java.util.List;
import java.util.Map;
import java.util.Set;
import underhold.advice.SupportOption;

/** One column, pier or bent on a pad, with a dig right across it. */
final class ColumnCrossed implements SiteKind {
  private static final List<Scene> HALLS =
      List.of(
          new Scene(
              "A passage is to be dug through the cellar of a hall, straight across the pad of one"
                  + " column.",
              "People go through the hall all day.",
              "column B2",
              "the column"),
          new Scene(
              "A duct for cables must cross under a printing house, and one of its columns stands in"
                  + " the way.",
              "The presses run at night.",
              "column 14",
              "the column"),
          new Scene(
              "A goods lift is to be sunk where a column of a department store now stands.",
              "The store stays open.",
              "column D5",
              "the column"));
  private static final List<Scene> BRIDGES =
      List.of(
          new Scene(
              "A subway for walkers is to be dug across the foot of a bridge pier.",
              "The road on the bridge stays open.",
              "pier 2",
              "the pier"),
          new Scene(
              "A storm drain has to pass right below the middle pier of a road bridge.",
              "Traffic can be held for a few hours at night.",
              "middle pier",
              "the pier"));
  private static final List<Scene> BENTS =
      List.of(
          new Scene(
              "The cut for a new station hall runs across one leg of an elevated railway.",
              "Trains pass overhead every few minutes.",
              "bent 31",
              "the bent"),
          new Scene(
              "A pipe gallery is to cross below an elevated line, through the pad of a bent.",
              "The line is closed only in the small hours.",
              "bent 7",
              "the bent"));

  @Override
  public String name() {
    return "column in the way of a dig";
  }

  @Override
  public Set<SupportOption> leaders() {
    return Set.of(SupportOption.NEEDLES, SupportOption.DRILLED_PILES, SupportOption.REFER);
  }

  @Override
  public Sketch draw(Draw draw) {
    Sketch sketch = new Sketch(draw);
    int which = draw.whole(0, 3);
    List<Scene> scenes = which < 2 ? HALLS : which == 2 ? BRIDGES : BENTS;
    Map<String, String> zone = sketch.zone(draw.pick(scenes));
    Common.job(
        sketch,
        which < 2 ? "building-frame" : which == 2 ? "bridge-pier" : "elevated-rail-bent",
        which < 2 ? "occupied" : which == 2 ? "road" : "rail");
    double founding = Typing.metres(Common.founding(draw, 1.2, 2.4));
    double dig = Typing.metres(draw.typing().length(founding + draw.between(1.8, 4.5)));
    sketch.site().put("excavationDepth", draw.typing().length(dig));
    Common.ground(sketch, Common.ground(draw, List.of(GroundKind.values())), founding, dig);
    across(sketch, zone, founding, which);
    return sketch;
  }

  /** The column, the dig across it, the seats and the ways in. */
  static void across(Sketch sketch, Map<String, String> zone, double founding, int which) {
    Draw draw = sketch.draw();
    Typing typing = draw.typing();
    zone.put("loadPattern", "concentrated");
    zone.put("excavationPosition", "crosses-support");
    ColumnsBeside.columns(sketch, zone, founding, 1);
    if (which == 2) {
      double load = draw.between(900, 2200);
      sketch.site().remove("storeys");
      zone.put("structureMaterial", "reinforced-concrete");
      zone.put("footingStrength", "strong-concrete");
      zone.put("columnLoad", typing.load(load));
      double side = Math.sqrt(load / GroundKind.pressure(sketch.layers(), founding));
      zone.put("footingWidth", typing.length(Math.max(1.5, side)));
      zone.put("lateralDemand", draw.pick("moderate", "moderate", "high"));
    } else if (which == 3) {
      sketch.site().remove("storeys");
      zone.put("structureMaterial", "steel");
      double load = draw.between(450, 1300);
      zone.put("columnLoad", typing.load(load));
      double side = Math.sqrt(load / GroundKind.pressure(sketch.layers(), founding));
      zone.put("footingWidth", typing.length(Math.max(1.2, side)));
      zone.put("lateralDemand", draw.pick("moderate", "moderate", "high"));
      zone.put("movementLimit", typing.movement(draw.between(6, 12)));
    }
    zone.put("newBaseSameSpot", draw.pick("no", "no", "no", "yes"));
    double pad = Typing.metres(String.valueOf(zone.get("footingWidth")));
    double width = pad + draw.between(0.6, 2.4);
    zone.put("underminedLength", typing.length(Math.max(2, pad)));
    zone.put("underminedWidth", typing.length(width));
    zone.put("wallGapLength", typing.length(0));
    double span = draw.chance(0.8) ? width + draw.between(2.4, 6.5) : draw.between(20.5, 27);
    ColumnsBeside.seats(sketch, zone, span);
    zone.put("excavationWall", draw.pick("flexible", "flexible", "stiff"));
    Common.access(
        sketch,
        zone,
        which < 2 ? draw.pick("hand", "none") : draw.pick("small-rig", "large-rig", "hand"),
        which < 2 ? draw.pick("hand", "small-rig", "small-rig") : "none");
    Common.bothSides(sketch, zone);
    zone.put("drillingFromAbove", "no");
    zone.put("freeEdge", "no");
    zone.put("landRights", "not-needed");
  }
}
