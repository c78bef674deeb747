package underhold.classroom.making;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Draws what sites of all kinds have alike: levels, water, the rules of the job. */
final class Common {
  private static final Set<String> HARMED = Set.of("soft-clay", "silt");
  private static final Set<String> OPEN = Set.of("dense-gravel", "dense-sand");
  private static final double INFLUENCE = 2.5;

  private Common() {}

  /**
   * Ground and water.
   *
   * @param founding depth of the foundation, m
   * @param dig depth of the excavation, m
   */
  static void ground(Sketch sketch, GroundKind kind, double founding, double dig) {
    Draw draw = sketch.draw();
    sketch.layers().addAll(kind.layers(draw, founding));
    Map<String, String> site = sketch.site();
    site.put("investigation", "borings-and-test-pits");
    site.put("contamination", draw.chance(0.85) ? "none" : draw.pick("possible", "known"));
    if (kind.onRock()) {
      sketch.facts(sketch.first()).put("rockJoints", draw.pick("favourable", "adverse"));
    }
    boolean wet = draw.chance(0.45);
    double depth =
        wet
            ? founding + draw.between(0.2, Math.max(0.4, 0.7 * (dig - founding)))
            : dig + draw.between(1.5, 6);
    site.put("groundWaterDepth", draw.typing().length(depth));
    site.put("drawdownAllowed", draw.pick("no", "no", "limited", "yes"));
    boolean harmed = sketch.layers().stream().map(Layer::soil).anyMatch(HARMED::contains);
    site.put("drawdownHarm", harmed && draw.chance(0.8) ? "clay-or-peat" : "none");
    Layer last = sketch.layers().get(sketch.layers().size() - 1);
    int beds = sketch.layers().size();
    boolean deepWater =
        beds > 2
            && OPEN.contains(last.soil())
            && sketch.layers().get(beds - 2).soil().endsWith("clay");
    sketch.facts(sketch.first()).put("artesian", deepWater && draw.chance(0.2) ? "yes" : "no");
  }

  /** What goes for the whole job. */
  static void job(Sketch sketch, String structureKind, String liveUse) {
    Draw draw = sketch.draw();
    Map<String, String> site = sketch.site();
    site.put("structureKind", structureKind);
    site.put("purpose", "new-excavation");
    site.put("heritage", "none");
    site.put("liveUse", liveUse);
    if (liveUse.equals("rail") || liveUse.equals("road")) {
      site.put("nightClosure", draw.typing().hours(draw.whole(3, 6)));
    }
    site.put("noiseLimit", draw.pick("normal", "normal", "strict", "none"));
    site.put("programme", draw.pick("normal", "normal", "normal", "tight", "easy"));
    site.put("life", "permanent");
  }

  /** Room to work outside and inside, with heights and widths where a rig gets in. */
  static void access(Sketch sketch, Map<String, String> zone, String outside, String inside) {
    Draw draw = sketch.draw();
    zone.put("outsideAccess", outside);
    if (outside.endsWith("rig")) {
      boolean large = outside.startsWith("large");
      double least = large ? 9 : 4.5;
      zone.put("outsideHeadroom", draw.typing().length(draw.between(least, 16)));
      zone.put("outsideWidth", draw.typing().length(draw.between(large ? 6 : 2.5, 9)));
    }
    zone.put("insideAccess", inside);
    if (inside.endsWith("rig")) {
      zone.put("insideHeadroom", draw.typing().length(draw.between(2.6, 4.6)));
      zone.put("insideWidth", draw.typing().length(draw.between(2, 5)));
    }
    zone.put("utilities", draw.pick("few", "few", "none", "dense"));
    zone.put("bracingRoom", draw.pick("yes", "yes", "yes", "no"));
  }

  /** Whether rigs work on both sides, which they do only where one gets in at all. */
  static void bothSides(Sketch sketch, Map<String, String> zone) {
    boolean rig =
        String.valueOf(zone.get("outsideAccess")).endsWith("rig")
            || String.valueOf(zone.get("insideAccess")).endsWith("rig");
    zone.put("rigBothSides", rig ? sketch.draw().pick("yes", "yes", "no") : "no");
  }

  /** Shape of the structure and what it may bear. */
  static void condition(Sketch sketch, Map<String, String> zone, double leastMm, double mostMm) {
    Draw draw = sketch.draw();
    zone.put("structureCondition", draw.pick("good", "good", "good", "fair", "fair", "poor"));
    zone.put("movementLimit", draw.typing().movement(draw.between(leastMm, mostMm)));
  }

  /**
   * A forecast of movement without underpinning, where there is a wall to reckon one for: a share
   * of the depth that depends on the wall, falling in a straight line to nothing at two and a half
   * depths (judgement, after the usual charts of settlement beside braced cuts).
   */
  static void forecast(Sketch sketch, Map<String, String> zone, double dig) {
    String wall = Optional.ofNullable(zone.get("excavationWall")).orElse("none");
    String gap = zone.get("gapToExcavation");
    if (wall.equals("none") || gap == null) {
      return;
    }
    boolean soft =
        sketch.layers().stream().map(Layer::soil).anyMatch(Set.of("soft-clay", "silt")::contains);
    boolean rock = sketch.layers().get(1).soil().equals("rock");
    double share = (wall.equals("flexible") ? 0.0035 : 0.0012) * (soft ? 2 : 1) * (rock ? 0.3 : 1);
    double near = Math.max(0, 1 - Typing.metres(gap) / (INFLUENCE * dig));
    double millimetres = Math.max(1, share * dig * 1000 * near * sketch.draw().between(0.8, 1.2));
    zone.put("predictedMovement", sketch.typing().movement(millimetres));
  }

  /** A usual founding depth, as typed. */
  static String founding(Draw draw, double least, double most) {
    return draw.typing().length(draw.between(least, most));
  }

  /** One of the kinds of ground. */
  static GroundKind ground(Draw draw, List<GroundKind> kinds) {
    return draw.pick(kinds);
  }
}
