package underhold.consult;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import underhold.site.Site;
import underhold.site.SiteReader;

/** Scenarios of our own on which common practice is tried. */
final class PracticeSites {
  /**
   * A sound brick wall on a concrete strip in dry stiff clay, a basement dug next to it by hand.
   */
  static final Map<String, String> WALL =
      Map.ofEntries(
          Map.entry("structureKind", "building-wall"),
          Map.entry("purpose", "new-excavation"),
          Map.entry("loadPattern", "continuous"),
          Map.entry("excavationPosition", "beside"),
          Map.entry("structureMaterial", "unreinforced-masonry"),
          Map.entry("structureCondition", "good"),
          Map.entry("stabilitySeen", "yes"),
          Map.entry("foundationKind", "strip"),
          Map.entry("footingStrength", "plain-concrete"),
          Map.entry("footingWidth", "0.9 m"),
          Map.entry("wallThickness", "0.33 m"),
          Map.entry("wallLength", "12 m"),
          Map.entry("lineLoad", "90 kN/m"),
          Map.entry("clearSpan", "1.5 m"),
          Map.entry("foundingDepth", "1 m"),
          Map.entry("excavationBelowFooting", "2.5 m"),
          Map.entry("gapToExcavation", "0 m"),
          Map.entry("excavationWall", "none"),
          Map.entry("bearingDepth", "0 m"),
          Map.entry("bearingKind", "stiff-clay"),
          Map.entry("soilAtFooting", "stiff-clay"),
          Map.entry("worstSoil", "stiff-clay"),
          Map.entry("openLayer", "no"),
          Map.entry("undrainedStrength", "140 kPa"),
          Map.entry("soilUnitWeight", "19.5 kN/m3"),
          Map.entry("groundWaterDepth", "9 m"),
          Map.entry("movementLimit", "15 mm"),
          Map.entry("heritage", "none"),
          Map.entry("liveUse", "occupied"),
          Map.entry("obstructions", "none"),
          Map.entry("oldPiles", "none"),
          Map.entry("bracingRoom", "yes"),
          Map.entry("investigation", "borings-and-test-pits"),
          Map.entry("landRights", "permanent"),
          Map.entry("outsideAccess", "hand"),
          Map.entry("insideAccess", "hand"));

  /** A steel column on a pad; a trench takes the ground from under it. */
  static final Map<String, String> COLUMN =
      Map.ofEntries(
          Map.entry("structureKind", "building-frame"),
          Map.entry("purpose", "new-excavation"),
          Map.entry("loadPattern", "concentrated"),
          Map.entry("excavationPosition", "crosses-support"),
          Map.entry("structureMaterial", "steel"),
          Map.entry("structureCondition", "good"),
          Map.entry("columnLoad", "800 kN"),
          Map.entry("clearShaft", "2.5 m"),
          Map.entry("foundationKind", "pad"),
          Map.entry("foundingDepth", "1.5 m"),
          Map.entry("excavationBelowFooting", "3 m"),
          Map.entry("pickUpPossible", "yes"),
          Map.entry("seatSpan", "8 m"),
          Map.entry("seatBearingDepth", "1.5 m"),
          Map.entry("soilAtFooting", "dense-sand"),
          Map.entry("worstSoil", "dense-sand"),
          Map.entry("groundWaterDepth", "12 m"),
          Map.entry("oldPiles", "none"),
          Map.entry("heritage", "none"),
          Map.entry("freeEdge", "no"),
          Map.entry("roomForBeams", "yes"),
          Map.entry("outsideAccess", "small-rig"),
          Map.entry("insideAccess", "hand"));

  /** A concrete box over a cut; at the end of the cut no wall can be built under it. */
  static final Map<String, String> BOX =
      Map.ofEntries(
          Map.entry("structureKind", "tunnel-box"),
          Map.entry("purpose", "new-excavation"),
          Map.entry("liveUse", "rail"),
          Map.entry("loadPattern", "area"),
          Map.entry("excavationPosition", "partly-under"),
          Map.entry("structureMaterial", "reinforced-concrete"),
          Map.entry("structureCondition", "good"),
          Map.entry("areaLoad", "120 kPa"),
          Map.entry("foundationKind", "box-slab"),
          Map.entry("footingStrength", "strong-concrete"),
          Map.entry("foundingDepth", "6 m"),
          Map.entry("excavationBelowFooting", "5 m"),
          Map.entry("underminedLength", "12 m"),
          Map.entry("underminedWidth", "10 m"),
          Map.entry("wallGapLength", "12 m"),
          Map.entry("edgeGround", "earth"),
          Map.entry("worstSoil", "cemented-sand"),
          Map.entry("soilAtFooting", "cemented-sand"),
          Map.entry("runningLayer", "no"),
          Map.entry("bearingDepth", "0 m"),
          Map.entry("groundWaterDepth", "20 m"),
          Map.entry("obstructions", "none"),
          Map.entry("oldPiles", "none"),
          Map.entry("movementLimit", "8 mm"),
          Map.entry("seatSpan", "26 m"),
          Map.entry("seatInsidePossible", "no"),
          Map.entry("crossingSquare", "no"),
          Map.entry("freeEdge", "no"),
          Map.entry("outsideAccess", "large-rig"),
          Map.entry("outsideHeadroom", "9 m"),
          Map.entry("insideAccess", "hand"),
          Map.entry("rigBothSides", "yes"));

  /** A platform edge that overhangs a trench, trains running, piles set from outside. */
  static final Map<String, String> EDGE =
      Map.ofEntries(
          Map.entry("structureKind", "rail-yard"),
          Map.entry("purpose", "new-excavation"),
          Map.entry("liveUse", "rail"),
          Map.entry("nightClosure", "0 h"),
          Map.entry("loadPattern", "cantilevered-edge"),
          Map.entry("excavationPosition", "beside"),
          Map.entry("structureMaterial", "reinforced-concrete"),
          Map.entry("structureCondition", "good"),
          Map.entry("lineLoad", "50 kN/m"),
          Map.entry("clearSpan", "2 m"),
          Map.entry("footingStrength", "strong-concrete"),
          Map.entry("foundationKind", "strip"),
          Map.entry("foundingDepth", "1.5 m"),
          Map.entry("excavationBelowFooting", "2 m"),
          Map.entry("gapToExcavation", "0.3 m"),
          Map.entry("excavationWall", "none"),
          Map.entry("loadOffset", "0.2 m"),
          Map.entry("freeEdge", "yes"),
          Map.entry("worstSoil", "dense-sand"),
          Map.entry("soilAtFooting", "dense-sand"),
          Map.entry("groundWaterDepth", "15 m"),
          Map.entry("oldPiles", "none"),
          Map.entry("movementLimit", "8 mm"),
          Map.entry("outsideAccess", "small-rig"),
          Map.entry("outsideHeadroom", "6 m"),
          Map.entry("insideAccess", "none"));

  private PracticeSites() {}

  /** The facts with some changed. */
  static Map<String, String> with(Map<String, String> facts, Map<String, String> changes) {
    Map<String, String> changed = new LinkedHashMap<>(facts);
    changed.putAll(changes);
    return changed;
  }

  /** A site of one zone with those facts. */
  static Site site(Map<String, String> facts) {
    return site(facts, "");
  }

  private static Site site(Map<String, String> facts, String ground) {
    String entries =
        facts.entrySet().stream()
            .map(fact -> "\"" + fact.getKey() + "\": \"" + fact.getValue() + "\"")
            .collect(Collectors.joining(", "));
    String text =
        "{\"underhold\": \"site/1\", \"name\": \"Quarry Lane\", \"units\": \"SI\""
            + ground
            + ", \"zones\": [{\"name\": \"zone\", \"facts\": {"
            + entries
            + "}}]}";
    return SiteReader.read(text, "quarry-lane.site.json")
        .fold(
            valid -> valid.site(),
            invalid -> {
              throw new AssertionError(invalid.problems().toString());
            });
  }

  /** The same with the worst soil as the only layer of its ground, for the sheets. */
  static Site layered(Map<String, String> facts) {
    return site(
        facts,
        ", \"ground\": {\"layers\": [{\"top\": \"0 m\", \"soil\": \""
            + facts.getOrDefault("worstSoil", "")
            + "\", \"unitWeight\": \"19.5 kN/m3\"}]}");
  }
}
