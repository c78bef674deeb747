package underhold.classroom.making;

import java.util.List;
import java.util.Map;
import java.util.Set;
import underhold.advice.SupportOption;

/** A wall that carries a building, with a basement, cellar or trench dug along it. */
final class WallBeside implements SiteKind {
  private static final double FAR_SHARE = 0.3;

  private static final List<Scene> SCENES =
      List.of(
          new Scene(
              "A basement is to be dug against the gable of an old house.",
              "The house is lived in.",
              "gable",
              "the wall"),
          new Scene(
              "The owner of a corner plot wants a cellar, right beside the wall that he shares with"
                  + " his neighbour.",
              "The neighbour sleeps on the other side.",
              "party wall",
              "the wall"),
          new Scene(
              "Behind a row of workshops a yard is to be lowered for lorries.",
              "The workshops stay open.",
              "back wall",
              "the wall"),
          new Scene(
              "A lift pit and a plant room are planned along the side of a school.",
              "Lessons go on in the building.",
              "side wall",
              "the wall"),
          new Scene(
              "A new drain is to pass along an old storehouse, deeper than its footings.",
              "Goods are moved in and out all day.",
              "long wall",
              "the wall"),
          new Scene(
              "The plot beside a small theatre is to be built on, with two rooms below ground.",
              "The theatre plays every evening.",
              "flank wall",
              "the wall"),
          new Scene(
              "An inn wants its cellar deepened on one side of a bearing wall.",
              "Guests stay in the rooms above.",
              "cellar wall",
              "the wall"));

  /** The dig keeps away, and the fear for the wall comes near. */
  private static final List<Scene> FAR =
      List.of(
          new Scene(
              "Across a lane from a row of houses a deep garage is to be dug.",
              "The owner of the end house asks which underpinning will be done.",
              "end wall",
              "the wall"),
          new Scene(
              "A tank for storm water is to be sunk in the yard of a brewery, some way from its oldest"
                  + " wall.",
              "The brewery works day and night.",
              "old wall",
              "the wall"),
          new Scene(
              "A sunken garden is planned beyond the lawn of a small hospital.",
              "The wards look out on it.",
              "ward wall",
              "the wall"));

  private enum Fabric {
    BRICK("unreinforced-masonry", "strip", "plain-concrete"),
    BLOCK("reinforced-masonry", "strip", "strong-concrete"),
    CONCRETE("reinforced-concrete", "strip", "strong-concrete"),
    RUBBLE("rubble", "mass-rubble", "rubble");

    private final String material;
    private final String foundation;
    private final String footing;

    Fabric(String material, String foundation, String footing) {
      this.material = material;
      this.foundation = foundation;
      this.footing = footing;
    }
  }

  @Override
  public String name() {
    return "wall beside a dig";
  }

  @Override
  public Set<SupportOption> leaders() {
    return Set.of(
        SupportOption.PITS,
        SupportOption.BRACKET_PILES,
        SupportOption.DRILLED_PILES,
        SupportOption.MONITOR,
        SupportOption.REFER);
  }

  @Override
  public Sketch draw(Draw draw) {
    Sketch sketch = new Sketch(draw);
    boolean far = draw.chance(FAR_SHARE);
    Map<String, String> zone = sketch.zone(draw.pick(far ? FAR : SCENES));
    Common.job(sketch, "building-wall", "occupied");
    double founding = Typing.metres(Common.founding(draw, 0.8, 1.8));
    double dig =
        Typing.metres(
            draw.typing()
                .length(
                    founding
                        + (draw.chance(0.8) ? draw.between(1.3, 3.4) : draw.between(3.4, 6.5))));
    sketch.site().put("excavationDepth", draw.typing().length(dig));
    zone.put("loadPattern", "continuous");
    boolean cellar = sketch.first().startsWith("cellar");
    zone.put("excavationPosition", cellar ? "inside-walls" : "beside");
    Common.ground(sketch, Common.ground(draw, List.of(GroundKind.values())), founding, dig);
    wall(sketch, zone, founding);
    edge(sketch, zone, far ? draw.between(2.5, 2.2 * dig) : near(draw, cellar));
    ways(sketch, zone, cellar);
    zone.put("landRights", draw.pick("permanent", "permanent", "temporary", "not-needed"));
    Common.forecast(sketch, zone, dig);
    return sketch;
  }

  /** The ways in for people and rigs, and room for piles beside the wall. */
  static void ways(Sketch sketch, Map<String, String> zone, boolean cellar) {
    Draw draw = sketch.draw();
    Common.access(
        sketch,
        zone,
        cellar
            ? draw.pick("hand", "none")
            : draw.pick("hand", "small-rig", "small-rig", "large-rig"),
        cellar
            ? draw.pick("hand", "hand", "small-rig")
            : draw.pick("hand", "hand", "none", "small-rig"));
    zone.put("rigBothSides", bothSides(zone) ? draw.pick("yes", "no") : "no");
    zone.put("drillingFromAbove", draw.pick("no", "no", "no", "yes"));
    zone.put("loadOffset", draw.typing().fineLength(draw.between(0.2, 0.6)));
    zone.put("pairedPilesPossible", draw.pick("yes", "no"));
    zone.put("freeEdge", cellar ? "no" : "yes");
  }

  private static boolean bothSides(Map<String, String> zone) {
    return String.valueOf(zone.get("outsideAccess")).endsWith("rig")
        && String.valueOf(zone.get("insideAccess")).endsWith("rig");
  }

  /** What the wall is and what it stands on. */
  static void wall(Sketch sketch, Map<String, String> zone, double founding) {
    Draw draw = sketch.draw();
    Typing typing = draw.typing();
    Fabric fabric =
        draw.pick(
            List.of(
                Fabric.BRICK,
                Fabric.BRICK,
                Fabric.BRICK,
                Fabric.BLOCK,
                Fabric.CONCRETE,
                Fabric.RUBBLE));
    int storeys = fabric == Fabric.RUBBLE ? draw.whole(1, 3) : draw.whole(2, 5);
    boolean listed = draw.chance(fabric == Fabric.RUBBLE ? 0.25 : 0.08);
    sketch.site().put("heritage", listed ? "listed" : "none");
    sketch.site().put("storeys", String.valueOf(storeys));
    zone.put("structureMaterial", fabric.material);
    Common.condition(sketch, zone, listed ? 5 : 8, listed ? 10 : 20);
    double thickness = thickness(fabric, storeys, draw);
    double load = storeys * draw.between(24, 36) + 10;
    zone.put("clearSpan", typing.length(span(fabric, zone, draw)));
    zone.put("wallsTied", draw.pick("yes", "yes", "yes", "no"));
    zone.put("stabilitySeen", draw.pick("yes", "yes", "yes", "no"));
    zone.put("lineLoad", typing.lineLoad(load));
    zone.put("lateralDemand", draw.pick("low", "low", "moderate"));
    boolean piled =
        sketch.layers().get(1).soil().matches("soft-clay|mixed-fine-sand|silt") && draw.chance(0.3);
    zone.put("foundationKind", piled ? "timber-piles" : fabric.foundation);
    zone.put("foundingDepth", typing.length(founding));
    zone.put("footingStrength", fabric.footing);
    double least = Math.max(0.5, 1.8 * thickness);
    double width = Math.max(least, load / GroundKind.pressure(sketch.layers(), founding));
    zone.put("footingWidth", typing.length(piled ? thickness + 0.4 : width));
    zone.put("wallThickness", typing.thickness(thickness));
    zone.put("wallLength", typing.length(draw.between(7, 32)));
    zone.put("cappingBeamPossible", fabric == Fabric.RUBBLE ? draw.pick("yes", "no") : "yes");
    zone.put("oldPiles", piled ? "timber" : "none");
    if (piled) {
      sketch.site().put("drawdownHarm", "timber-piles");
    }
    zone.put("obstructions", draw.pick("none", "none", "occasional", "occasional", "frequent"));
  }

  /** One brick is 0.22 m, 9 in; half a brick more for every two storeys or so. */
  private static double thickness(Fabric fabric, int storeys, Draw draw) {
    return switch (fabric) {
      case BRICK -> storeys <= 2 ? 0.22 : storeys <= 3 ? 0.33 : 0.44;
      case BLOCK -> storeys <= 3 ? 0.2 : 0.25;
      case CONCRETE -> 0.2 + 0.05 * draw.whole(0, 2);
      case RUBBLE -> 0.5 + 0.05 * draw.whole(0, 4);
    };
  }

  private static double span(Fabric fabric, Map<String, String> zone, Draw draw) {
    double sound =
        switch (fabric) {
          case BRICK -> draw.between(1.2, 1.8);
          case BLOCK -> draw.between(1.6, 2.4);
          case CONCRETE -> draw.between(2, 3.6);
          case RUBBLE -> draw.between(0.5, 1.2);
        };
    return "poor".equals(zone.get("structureCondition")) ? 0.7 * sound : sound;
  }

  /** A distance at which anybody would call the dig near, m. */
  static double near(Draw draw, boolean cellar) {
    return cellar || draw.chance(0.3) ? draw.between(0, cellar ? 0.6 : 1.8) : 0;
  }

  /** How near the dig comes and what holds its face. */
  static void edge(Sketch sketch, Map<String, String> zone, double gap) {
    Draw draw = sketch.draw();
    zone.put("gapToExcavation", draw.typing().length(gap));
    zone.put(
        "excavationWall",
        sketch.layers().get(1).soil().equals("rock")
            ? draw.pick("none", "none", "flexible")
            : gap < 1
                ? draw.pick("none", "flexible", "flexible", "stiff")
                : draw.pick("none", "flexible", "stiff", "stiff-watertight"));
  }
}
