package underhold.classroom.making;

import java.util.List;
import java.util.Map;
import java.util.Set;
import underhold.advice.SupportOption;

/** A box in the ground, a tunnel or a large drain, that a cut passes under or ends below. */
final class BoxOverCut implements SiteKind {
  private static final List<Scene> RAILWAYS =
      List.of(
          new Scene(
              "A cut for a new line is to be dug under a railway box.",
              "Trains run through the box all day.",
              "railway box",
              "the box"),
          new Scene(
              "The hall of a new station is to be dug below an old railway tunnel.",
              "The tunnel may not close.",
              "old tunnel",
              "the box"));
  private static final List<Scene> ROADS =
      List.of(
          new Scene(
              "A trench for heating mains has to be dug under a road tunnel.",
              "The tunnel can be closed for a few hours at night.",
              "road tunnel",
              "the box"));
  private static final List<Scene> DRAINS =
      List.of(
          new Scene(
              "A large concrete drain stands over the line of a new underpass.",
              "It carries storm water and cannot be turned off.",
              "storm drain",
              "the drain"),
          new Scene(
              "An underground store is to be built on both sides of a culvert, and below it.",
              "The culvert runs full after every heavy rain.",
              "culvert",
              "the culvert"));

  static final List<GroundKind> GROUNDS =
      List.of(
          GroundKind.CEMENTED_SAND,
          GroundKind.CEMENTED_SAND,
          GroundKind.TILL,
          GroundKind.STIFF_CLAY,
          GroundKind.DENSE_SAND,
          GroundKind.GRAVEL,
          GroundKind.ROCK,
          GroundKind.ROCK,
          GroundKind.CLAY_OVER_ROCK,
          GroundKind.WEATHERED_ROCK,
          GroundKind.FINE_SAND,
          GroundKind.SOFT_CLAY_OVER_GRAVEL);

  @Override
  public String name() {
    return "box over a cut";
  }

  @Override
  public Set<SupportOption> leaders() {
    return Set.of(
        SupportOption.DRILLED_PILES,
        SupportOption.EDGE_PITS,
        SupportOption.NEEDLES,
        SupportOption.REFER);
  }

  @Override
  public Sketch draw(Draw draw) {
    Sketch sketch = new Sketch(draw);
    int which = draw.whole(0, 4);
    List<Scene> scenes = which < 3 ? RAILWAYS : which == 3 ? ROADS : DRAINS;
    Map<String, String> zone = sketch.zone(draw.pick(scenes));
    boolean drain = which == 4;
    Common.job(
        sketch,
        drain ? "large-utility" : "tunnel-box",
        which < 3 ? "rail" : which == 3 ? "road" : "critical-plant");
    double founding =
        Typing.metres(drain ? Common.founding(draw, 3, 5) : Common.founding(draw, 6, 9));
    double dig = Typing.metres(draw.typing().length(founding + draw.between(3.2, drain ? 5 : 7)));
    sketch.site().put("excavationDepth", draw.typing().length(dig));
    Common.ground(sketch, Common.ground(draw, GROUNDS), founding, dig);
    box(sketch, zone, founding, drain);
    cut(sketch, zone, draw.chance(0.55));
    ways(sketch, zone);
    return sketch;
  }

  /** The box itself. */
  static void box(Sketch sketch, Map<String, String> zone, double founding, boolean drain) {
    Draw draw = sketch.draw();
    Typing typing = draw.typing();
    zone.put("loadPattern", "area");
    zone.put("structureMaterial", "reinforced-concrete");
    zone.put("structureCondition", draw.pick("good", "good", "fair"));
    zone.put("movementLimit", typing.movement(drain ? draw.between(8, 15) : draw.between(4, 9)));
    zone.put("areaLoad", typing.areaLoad(draw.between(80, 150)));
    zone.put("lateralDemand", "low");
    zone.put("foundationKind", "box-slab");
    zone.put("foundingDepth", typing.length(founding));
    zone.put("footingStrength", "strong-concrete");
    zone.put("oldPiles", "none");
    zone.put("obstructions", draw.pick("none", "occasional", "occasional", "frequent"));
  }

  /**
   * The cut under it.
   *
   * @param open whether it has an edge below the box, where no wall can be built
   */
  static void cut(Sketch sketch, Map<String, String> zone, boolean open) {
    Draw draw = sketch.draw();
    Typing typing = draw.typing();
    boolean ends = open && draw.chance(0.5);
    zone.put("excavationPosition", ends ? "partly-under" : "wholly-under");
    double length = draw.between(8, 34);
    zone.put("underminedLength", typing.length(length));
    zone.put("underminedWidth", typing.length(ends ? draw.between(3, 7) : draw.between(8, 22)));
    zone.put("wallGapLength", typing.length(open ? ends ? length : draw.between(5, 12) : 0));
    zone.put("crossingSquare", draw.pick("yes", "no"));
    zone.put("seatSpan", typing.length(length + draw.between(2, 4)));
    zone.put("seatInsidePossible", draw.pick("no", "no", "yes"));
    zone.put("roomForBeams", draw.pick("yes", "no"));
    zone.put("excavationWall", draw.pick("stiff", "stiff", "flexible"));
    if (open) {
      edge(sketch, zone);
    }
  }

  /** What the edge of the cut stands in, which nobody knows before the borings. */
  static void edge(Sketch sketch, Map<String, String> zone) {
    boolean rock = sketch.layers().get(1).soil().equals("rock");
    zone.put("edgeGround", rock ? "rock" : "earth");
    if (rock) {
      zone.put("rockJoints", sketch.draw().pick("favourable", "favourable", "adverse"));
    }
  }

  static void ways(Sketch sketch, Map<String, String> zone) {
    Draw draw = sketch.draw();
    Common.access(
        sketch,
        zone,
        draw.pick("large-rig", "large-rig", "small-rig", "hand"),
        draw.pick("hand", "none", "none"));
    Common.bothSides(sketch, zone);
    zone.put("drillingFromAbove", draw.pick("no", "no", "no", "yes"));
    zone.put("freeEdge", "no");
    zone.put("landRights", "not-needed");
  }
}
