package underhold.classroom.making;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underhold.advice.SupportOption;

/**
 * One structure in two zones over the same ground and water: a box over a cut and at its end, a
 * wall and an inner column, a near wall and a far one.
 */
final class MarriedZones implements SiteKind {
  @Override
  public String name() {
    return "one structure in two zones";
  }

  @Override
  public Set<SupportOption> leaders() {
    return Set.of(SupportOption.values());
  }

  @Override
  public Sketch draw(Draw draw) {
    Sketch sketch =
        switch (draw.whole(0, 2)) {
          case 0 -> box(draw);
          case 1 -> wallAndColumn(draw);
          default -> twoWalls(draw);
        };
    return draw.chance(0.5) ? sketch : sketch.turned();
  }

  private static Sketch box(Draw draw) {
    Sketch sketch = new Sketch(draw);
    String digs =
        "A cut for a new line passes under a railway box and ends part of the way below it.";
    String stands =
        draw.pick("Trains run all day.", "The line is closed for a few hours at night.");
    Map<String, String> over = sketch.zone(new Scene(digs, stands, "box over the cut", "the box"));
    Common.job(sketch, "tunnel-box", "rail");
    double founding = Typing.metres(Common.founding(draw, 6, 9));
    double dig = Typing.metres(draw.typing().length(founding + draw.between(3.2, 6)));
    sketch.site().put("excavationDepth", draw.typing().length(dig));
    Common.ground(sketch, Common.ground(draw, BoxOverCut.GROUNDS), founding, dig);
    BoxOverCut.box(sketch, over, founding, false);
    BoxOverCut.cut(sketch, over, false);
    BoxOverCut.ways(sketch, over);
    Map<String, String> end = sketch.zone(new Scene(digs, stands, "end of the cut", "the box"));
    end.putAll(over);
    double length = draw.between(8, 16);
    end.put("excavationPosition", "partly-under");
    end.put("underminedLength", draw.typing().length(length));
    end.put("underminedWidth", draw.typing().length(draw.between(3, 6)));
    end.put("wallGapLength", draw.typing().length(length));
    BoxOverCut.edge(sketch, end);
    relate(sketch, 0, true);
    return sketch;
  }

  private static Sketch wallAndColumn(Draw draw) {
    Sketch sketch = new Sketch(draw);
    String digs =
        draw.pick(
            "A cellar is to be dug along the front of a store and on below it, across one of its"
                + " columns.",
            "A new basement follows the wall of a mill, and a tunnel from it crosses the mill under"
                + " a column.");
    String stands = draw.pick("Work goes on in the building.", "The floors above stay in use.");
    Map<String, String> wall = sketch.zone(new Scene(digs, stands, "front wall", "the wall"));
    Common.job(sketch, "building-wall", "occupied");
    double founding = Typing.metres(Common.founding(draw, 1, 1.8));
    double dig = Typing.metres(draw.typing().length(founding + draw.between(1.5, 3.2)));
    sketch.site().put("excavationDepth", draw.typing().length(dig));
    Common.ground(sketch, Common.ground(draw, List.of(GroundKind.values())), founding, dig);
    wall.put("loadPattern", "continuous");
    wall.put("excavationPosition", "beside");
    WallBeside.wall(sketch, wall, founding);
    WallBeside.edge(sketch, wall, WallBeside.near(draw, false));
    WallBeside.ways(sketch, wall, false);
    Common.forecast(sketch, wall, dig);
    Map<String, String> column = sketch.zone(new Scene(digs, stands, "inner column", "the column"));
    column.put("artesian", String.valueOf(wall.get("artesian")));
    Map<String, String> site = new LinkedHashMap<>(sketch.site());
    ColumnCrossed.across(sketch, column, founding, 0);
    column.put("obstructions", String.valueOf(wall.get("obstructions")));
    sketch.site().clear();
    sketch.site().putAll(site);
    relate(sketch, draw.between(4, 9), false);
    return sketch;
  }

  private static Sketch twoWalls(Draw draw) {
    Sketch sketch = new Sketch(draw);
    String digs = "A yard between two wings of an old house is to become a basement.";
    String stands =
        draw.pick("Both wings are lived in.", "People live in one wing, the other is a shop.");
    Map<String, String> near = sketch.zone(new Scene(digs, stands, "near wing", "the wall"));
    Common.job(sketch, "building-wall", "occupied");
    double founding = Typing.metres(Common.founding(draw, 0.9, 1.8));
    double dig = Typing.metres(draw.typing().length(founding + draw.between(1.5, 4)));
    sketch.site().put("excavationDepth", draw.typing().length(dig));
    Common.ground(sketch, Common.ground(draw, List.of(GroundKind.values())), founding, dig);
    near.put("loadPattern", "continuous");
    near.put("excavationPosition", "beside");
    WallBeside.wall(sketch, near, founding);
    WallBeside.edge(sketch, near, WallBeside.near(draw, false));
    WallBeside.ways(sketch, near, false);
    Map<String, String> far = sketch.zone(new Scene(digs, stands, "far wing", "the wall"));
    far.putAll(near);
    near.put(
        "gapToExcavation", draw.typing().length(draw.chance(0.6) ? 0 : draw.between(0.3, 1.5)));
    far.put("gapToExcavation", draw.typing().length(draw.between(1.2, 2.4) * dig));
    Common.forecast(sketch, near, dig);
    far.put("wallLength", draw.typing().length(draw.between(7, 20)));
    Common.forecast(sketch, far, dig);
    relate(sketch, draw.between(9, 16), false);
    return sketch;
  }

  private static void relate(Sketch sketch, double metres, boolean edge) {
    Map<String, String> relation = sketch.relation();
    relation.put("distance", sketch.typing().length(metres));
    relation.put("oneStructure", "yes");
    relation.put("sameWallLine", "no");
    relation.put("sharedEdge", edge ? "yes" : "no");
    relation.put("sharedGroundWater", "yes");
    relation.put("seatsInOtherDig", "neither");
    relation.put("pileLineCutsPits", "neither");
    relation.put("accessThrough", "neither");
  }
}
