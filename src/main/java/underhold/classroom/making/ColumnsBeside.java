package underhold.classroom.making;

import java.util.List;
import java.util.Map;
import java.util.Set;
import underhold.advice.SupportOption;

/** Columns on pads, with a dig along them; at times a lower base is to be built on their spot. */
final class ColumnsBeside implements SiteKind {
  /** Softer than this nobody puts more than three storeys on pads. */
  private static final double SOFT_KILOPASCALS = 85;

  private static final List<Scene> SCENES =
      List.of(
          new Scene(
              "A pit for new machines is to be dug along the columns of a press hall.",
              "The presses run in two shifts.",
              "press columns",
              "the columns"),
          new Scene(
              "A dock is to be deepened beside a warehouse that stands on columns.",
              "The warehouse stays in use.",
              "dock columns",
              "the columns"),
          new Scene(
              "A market hall gets a cellar for cold stores, dug along one row of its columns.",
              "The market opens at five every morning.",
              "north row",
              "the columns"),
          new Scene(
              "A passage for pipes will run past the columns of a laundry, below their pads.",
              "The laundry cannot stop for long.",
              "row A",
              "the columns"),
          new Scene(
              "A car park is to be sunk beside an office built on a frame.",
              "The office stays open.",
              "street columns",
              "the columns"));

  private static final double FAR_SHARE = 0.3;

  /** The dig keeps away from the columns. */
  private static final List<Scene> FAR =
      List.of(
          new Scene(
              "Next to a garage built on columns, a plot is to be dug out for an archive.",
              "Cars come and go at all hours.",
              "plot columns",
              "the columns"),
          new Scene(
              "A pump room is to be sunk in the open ground before a bus hall.",
              "The buses cannot be moved elsewhere.",
              "hall columns",
              "the columns"));

  @Override
  public String name() {
    return "columns beside a dig";
  }

  @Override
  public Set<SupportOption> leaders() {
    return Set.of(
        SupportOption.DRILLED_PILES,
        SupportOption.NEEDLES,
        SupportOption.MONITOR,
        SupportOption.REFER);
  }

  @Override
  public Sketch draw(Draw draw) {
    Sketch sketch = new Sketch(draw);
    boolean far = draw.chance(FAR_SHARE);
    Map<String, String> zone = sketch.zone(draw.pick(far ? FAR : SCENES));
    Common.job(sketch, "building-frame", "occupied");
    double founding = Typing.metres(Common.founding(draw, 1.2, 2.2));
    double dig = Typing.metres(draw.typing().length(founding + draw.between(1.6, 5)));
    sketch.site().put("excavationDepth", draw.typing().length(dig));
    zone.put("loadPattern", "concentrated");
    zone.put("excavationPosition", "beside");
    Common.ground(sketch, Common.ground(draw, List.of(GroundKind.values())), founding, dig);
    columns(sketch, zone, founding, draw.whole(2, 12));
    boolean lower = !far && draw.chance(0.45);
    zone.put("newBaseSameSpot", lower ? "yes" : "no");
    if (lower) {
      double pad = Typing.metres(String.valueOf(zone.get("footingWidth")));
      seats(sketch, zone, pad + draw.between(2, 5));
    }
    double gap = far ? draw.between(2.5, 2.2 * dig) : draw.between(0.4, 2);
    zone.put("gapToExcavation", draw.typing().length(gap));
    zone.put(
        "excavationWall",
        sketch.layers().get(1).soil().equals("rock")
            ? draw.pick("none", "none", "flexible")
            : draw.pick("flexible", "flexible", "stiff", "stiff-watertight"));
    Common.access(
        sketch,
        zone,
        draw.pick("hand", "small-rig", "small-rig", "large-rig"),
        draw.pick("hand", "small-rig", "small-rig"));
    Common.bothSides(sketch, zone);
    zone.put("drillingFromAbove", draw.pick("no", "no", "yes"));
    zone.put("freeEdge", "no");
    zone.put("landRights", "not-needed");
    Common.forecast(sketch, zone, dig);
    return sketch;
  }

  /** Columns and their pads. */
  static void columns(Sketch sketch, Map<String, String> zone, double founding, int count) {
    Draw draw = sketch.draw();
    Typing typing = draw.typing();
    String material =
        draw.pick("steel", "steel", "reinforced-concrete", "reinforced-concrete", "cast-iron");
    double pressure = GroundKind.pressure(sketch.layers(), founding);
    boolean soft = pressure < SOFT_KILOPASCALS;
    int storeys = draw.whole(1, soft ? 3 : material.equals("cast-iron") ? 4 : 6);
    sketch.site().put("storeys", String.valueOf(storeys));
    double load = Math.max(180, storeys * draw.between(220, soft ? 300 : 400));
    zone.put("structureMaterial", material);
    Common.condition(sketch, zone, 8, 18);
    zone.put("columnLoad", typing.load(load));
    zone.put("columnCount", String.valueOf(count));
    zone.put("lateralDemand", draw.pick("low", "low", "moderate"));
    zone.put("foundationKind", "pad");
    zone.put("foundingDepth", typing.length(founding));
    double side = Math.sqrt(load / pressure);
    zone.put("footingWidth", typing.length(Math.max(0.9, side)));
    zone.put(
        "footingStrength",
        material.equals("reinforced-concrete") ? "strong-concrete" : "plain-concrete");
    zone.put("pickUpPossible", draw.pick("no", "no", "yes"));
    zone.put("clearShaft", typing.length(draw.between(1.2, 3.5)));
    zone.put("oldPiles", "none");
    zone.put("obstructions", draw.pick("none", "none", "occasional", "occasional", "frequent"));
  }

  /** Seats for needle beams. */
  static void seats(Sketch sketch, Map<String, String> zone, double span) {
    Draw draw = sketch.draw();
    zone.put("seatSpan", draw.typing().length(span));
    zone.put("seatInsidePossible", draw.pick("no", "no", "yes"));
    zone.put("roomForBeams", draw.pick("yes", "yes", "yes", "no"));
    List<Layer> layers = sketch.layers();
    boolean shallow =
        !layers.get(1).soil().matches("soft-clay|silt|loose-sand|mixed-fine-sand|peat");
    String top =
        shallow || layers.size() < 3 ? layers.get(1).top() : layers.get(layers.size() - 1).top();
    zone.put("seatBearingDepth", top);
  }
}
