package underhold.consult;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import underhold.quantity.UnitSystem;
import underhold.site.FactDictionary;
import underhold.site.FactReader;
import underhold.site.FactValue;
import underhold.site.GroundProfile;
import underhold.site.Site;
import underhold.site.StatedFact;
import underhold.site.Zone;

/**
 * Random one-zone sites that an engineer would believe: levels, water and position agree with each
 * other, load and foundation go with the kind of structure. All facts known; {@link #forget} makes
 * some unknown.
 */
final class PlausibleSites {
  private static final FactDictionary DICTIONARY = FactDictionary.standard();
  private static final List<String> REQUIRED = List.of("loadPattern", "excavationPosition");

  private static final List<String> RUNS =
      List.of("dense-sand", "loose-sand", "mixed-fine-sand", "silt", "fill", "peat");
  private static final List<String> OPEN =
      List.of("decomposed-rock", "cemented-sand", "dense-gravel");

  private final Random random;

  PlausibleSites(long seed) {
    this.random = new Random(seed);
  }

  /** A site with all facts known. */
  Map<String, String> next() {
    Map<String, String> f = new LinkedHashMap<>();
    String load =
        pick(
            "continuous",
            "continuous",
            "continuous",
            "concentrated",
            "concentrated",
            "area",
            "cantilevered-edge");
    f.put("loadPattern", load);
    structure(f, load);
    position(f, load);
    levels(f);
    ground(f);
    water(f);
    access(f);
    constraints(f);
    return f;
  }

  private void structure(Map<String, String> f, String load) {
    switch (load) {
      case "continuous" -> {
        f.put(
            "structureKind",
            pick("building-wall", "building-wall", "building-wall", "retaining-wall"));
        f.put(
            "structureMaterial",
            pick(
                "unreinforced-masonry",
                "unreinforced-masonry",
                "reinforced-masonry",
                "reinforced-concrete",
                "rubble"));
        f.put("foundationKind", pick("strip", "strip", "strip", "mass-rubble", "timber-piles"));
        f.put("lineLoad", metres(40, 400).replace(" m", " kN/m"));
      }
      case "concentrated" -> {
        f.put(
            "structureKind",
            pick("building-frame", "building-frame", "bridge-pier", "elevated-rail-bent"));
        f.put(
            "structureMaterial",
            pick("steel", "reinforced-concrete", "cast-iron", "unreinforced-masonry"));
        f.put("foundationKind", pick("pad", "pad", "pad", "other-piles", "caissons"));
        f.put("columnLoad", Math.round(150 + random.nextDouble() * 2500) + " kN");
      }
      case "area" -> {
        f.put("structureKind", pick("tunnel-box", "tunnel-box", "building-frame", "large-utility"));
        f.put("structureMaterial", "reinforced-concrete");
        f.put("foundationKind", f.get("structureKind").equals("tunnel-box") ? "box-slab" : "raft");
        f.put("areaLoad", Math.round(40 + random.nextDouble() * 200) + " kPa");
      }
      default -> {
        f.put("structureKind", pick("rail-yard", "building-frame", "retaining-wall"));
        f.put("structureMaterial", "reinforced-concrete");
        f.put("foundationKind", "strip");
        f.put("lineLoad", metres(30, 150).replace(" m", " kN/m"));
      }
    }
    f.put(
        "structureCondition",
        pick("good", "good", "fair", "fair", "poor", chance(0.1) ? "dangerous" : "fair"));
    f.put("clearSpan", metres(0.5, 3));
    f.put(
        "movementLimit",
        chance(0.03) ? "2 mm" : pick("5 mm", "8 mm", "10 mm", "12 mm", "15 mm", "20 mm", "25 mm"));
    f.put("heritage", chance(0.03) ? "landmark" : pick("none", "none", "none", "none", "listed"));
    f.put("existingTilt", pick("none", "none", "none", "slight", "marked"));
    f.put("wallsTied", pick("yes", "yes", "no"));
    f.put("stabilitySeen", pick("yes", "yes", "no"));
    f.put(
        "footingStrength",
        f.get("foundationKind").equals("mass-rubble") || f.get("structureMaterial").equals("rubble")
            ? "rubble"
            : pick("strong-concrete", "plain-concrete"));
    f.put("cappingBeamPossible", pick("yes", "yes", "no"));
    f.put("pickUpPossible", pick("yes", "no"));
    f.put("bracingRoom", pick("yes", "yes", "no"));
    f.put("newBaseSameSpot", pick("no", "no", "no", "yes"));
    f.put("reactionAvailable", pick("yes", "no"));
    f.put("clearShaft", metres(0.5, 4));
    f.put("columnCount", String.valueOf(1 + random.nextInt(16)));
    f.put("wallLength", metres(5, 60));
    f.put("lateralDemand", pick("low", "low", "moderate", "moderate", "high"));
    f.put("uplift", pick("no", "no", "no", "no", "yes"));
    boolean piled = f.get("foundationKind").endsWith("piles");
    f.put(
        "oldPiles",
        piled
            ? pick(
                "stay",
                "must-be-cut",
                f.get("foundationKind").startsWith("timber") ? "timber" : "stay")
            : "none");
    f.put(
        "freeEdge",
        load.equals("continuous") || load.equals("cantilevered-edge")
            ? "yes"
            : pick("no", "no", "yes"));
    f.put("loadOffset", metres(0.1, 1.2));
    f.put("pairedPilesPossible", pick("yes", "no"));
  }

  private void position(Map<String, String> f, String load) {
    String position =
        switch (load) {
          case "continuous" ->
              pick("beside", "beside", "beside", "beside", "inside-walls", "partly-under");
          case "concentrated" ->
              pick("beside", "beside", "crosses-support", "crosses-support", "partly-under");
          case "area" -> pick("wholly-under", "wholly-under", "partly-under", "beside");
          default -> pick("beside", "partly-under", "partly-under");
        };
    f.put("excavationPosition", position);
    f.put("purpose", chance(0.95) ? "new-excavation" : pick("remedial", "new-load"));
    boolean under = List.of("partly-under", "wholly-under", "crosses-support").contains(position);
    f.put(
        "excavationWall",
        under
            ? pick("none", "flexible", "stiff")
            : pick("none", "none", "flexible", "flexible", "stiff", "stiff-watertight"));
    f.put("wallOnPileLine", pick("no", "no", "yes"));
    if (under) {
      double width =
          load.equals("cantilevered-edge")
              ? 0.5 + random.nextDouble() * 2
              : 2 + random.nextDouble() * 28;
      f.put("underminedLength", metres(3, 60));
      f.put("underminedWidth", number(width) + " m");
      f.put("wallGapLength", load.equals("area") && chance(0.6) ? metres(4, 20) : "0 m");
      f.put("seatSpan", number(width + 2 + random.nextDouble() * 4) + " m");
      f.put("seatInsidePossible", pick("yes", "no"));
      f.put("crossingSquare", pick("yes", "no"));
    } else {
      f.put("gapToExcavation", chance(0.4) ? metres(0, 1.5) : metres(0, 15));
      f.put("wallGapLength", "0 m");
      f.put("underminedLength", "0 m");
      f.put("underminedWidth", "0 m");
      f.put("seatSpan", metres(3, 12));
      f.put("seatInsidePossible", "no");
      f.put("crossingSquare", "no");
      f.put("predictedMovement", number(random.nextDouble() * 30) + " mm");
    }
    f.put("seatBearingDepth", metres(0.5, 10));
  }

  private void levels(Map<String, String> f) {
    double founding =
        f.get("loadPattern").equals("area")
            ? 2 + random.nextDouble() * 7
            : 0.5 + random.nextDouble() * 2.5;
    double below = chance(0.7) ? 0.5 + random.nextDouble() * 5 : 5 + random.nextDouble() * 8;
    f.put("foundingDepth", number(founding) + " m");
    f.put("excavationDepth", number(founding + below) + " m");
    if (f.get("foundationKind").endsWith("piles") || f.get("foundationKind").equals("caissons")) {
      f.put("pileToeDepth", number(founding + 3 + random.nextDouble() * 15) + " m");
    }
  }

  private void ground(Map<String, String> f) {
    String worst =
        pick(
            "stiff-clay",
            "stiff-clay",
            "stiff-clay",
            "hard-clay-or-till",
            "cemented-sand",
            "dense-sand",
            "dense-sand",
            "dense-gravel",
            "loose-sand",
            "mixed-fine-sand",
            "silt",
            "soft-clay",
            "fill",
            "cohesive-fill",
            "peat",
            "decomposed-rock",
            "rock");
    f.put("worstSoil", worst);
    boolean firm =
        List.of(
                "stiff-clay",
                "hard-clay-or-till",
                "cemented-sand",
                "dense-sand",
                "dense-gravel",
                "decomposed-rock",
                "rock")
            .contains(worst);
    f.put("soilAtFooting", firm || chance(0.6) ? worst : pick("dense-sand", "stiff-clay"));
    f.put("bearingDepth", firm ? "0 m" : metres(1, 14));
    f.put(
        "bearingKind",
        worst.endsWith("clay") || worst.startsWith("hard")
            ? firm ? pick("hard-clay", "stiff-clay") : pick("hard-clay", "dense-granular")
            : worst.equals("rock") ? "rock" : pick("dense-granular", "rock", "hard-clay"));
    f.put("runningLayer", RUNS.contains(worst) ? "yes" : "no");
    f.put("openLayer", RUNS.contains(worst) || OPEN.contains(worst) ? "yes" : "no");
    f.put("rockJoints", pick("favourable", "favourable", "adverse"));
    f.put("edgeGround", worst.equals("rock") ? "rock" : "earth");
    f.put("obstructions", pick("none", "none", "occasional", "occasional", "frequent"));
    f.put(
        "undrainedStrength",
        worst.equals("soft-clay")
            ? metres(8, 35).replace(" m", " kPa")
            : metres(60, 200).replace(" m", " kPa"));
    f.put("soilUnitWeight", metres(16, 21).replace(" m", " kN/m3"));
    f.put("artesian", chance(0.04) ? "yes" : "no");
    f.put(
        "investigation",
        pick(
            "borings-and-test-pits",
            "borings-and-test-pits",
            "borings-and-test-pits",
            "borings-only",
            "none"));
    f.put(
        "treatmentProposed", chance(0.05) ? pick("jet-grouting", "grouting", "freezing") : "none");
  }

  private void water(Map<String, String> f) {
    f.put("groundWaterDepth", chance(0.5) ? metres(12, 25) : metres(1, 10));
    boolean tight =
        List.of("stiff-clay", "hard-clay-or-till", "soft-clay", "cohesive-fill", "rock")
            .contains(f.get("worstSoil"));
    f.put(
        "permeability",
        tight
            ? pick("1e-9 m/s", "1e-8 m/s")
            : pick("1e-5 m/s", "1e-4 m/s", "1e-3 m/s", "5e-7 m/s"));
    f.put("drawdownAllowed", pick("yes", "limited", "no", "no"));
    f.put("drawdownHarm", pick("none", "none", "none", "clay-or-peat", "timber-piles"));
  }

  private void access(Map<String, String> f) {
    f.put("outsideAccess", pick("none", "hand", "hand", "small-rig", "small-rig", "large-rig"));
    f.put("outsideHeadroom", metres(1.5, 20));
    f.put("outsideWidth", metres(0.6, 8));
    f.put("insideAccess", pick("none", "hand", "hand", "small-rig", "large-rig"));
    f.put("insideHeadroom", metres(1.4, 5));
    f.put("insideWidth", metres(0.6, 6));
    f.put("rigBothSides", f.get("outsideAccess").endsWith("rig") && chance(0.6) ? "yes" : "no");
    f.put("drillingFromAbove", pick("no", "no", "yes"));
    f.put("roomForBeams", pick("yes", "yes", "no"));
  }

  private void constraints(Map<String, String> f) {
    String kind = f.get("structureKind");
    f.put(
        "liveUse",
        kind.equals("tunnel-box") || kind.startsWith("rail") || kind.contains("rail")
            ? pick("rail", "rail", "none")
            : kind.equals("bridge-pier")
                ? "road"
                : pick("occupied", "occupied", "none", "critical-plant"));
    if (f.get("liveUse").equals("rail")) {
      f.put("nightClosure", pick("2 h", "3 h", "4 h", "5 h"));
      f.put("pilesFromTrackOnly", pick("no", "no", "yes"));
    } else {
      f.put("pilesFromTrackOnly", "no");
    }
    f.put("liveStructureDistance", metres(0.3, 40));
    f.put("noiseLimit", pick("none", "normal", "normal", "strict"));
    f.put("programme", pick("easy", "normal", "normal", "normal", "tight"));
    f.put("life", pick("temporary", "permanent", "permanent"));
    f.put("wetSeason", pick("no", "yes"));
    f.put("contamination", chance(0.08) ? "known" : pick("none", "none", "possible"));
    f.put("utilities", pick("none", "few", "few", "dense"));
    f.put("landRights", pick("not-needed", "not-needed", "permanent", "temporary", "none"));
  }

  /** The same facts with about that share of them unknown; the required ones stay. */
  Map<String, String> forget(Map<String, String> facts, double share) {
    Map<String, String> kept = new LinkedHashMap<>();
    facts.forEach(
        (name, value) -> {
          if (REQUIRED.contains(name) || !chance(share)) {
            kept.put(name, value);
          }
        });
    return kept;
  }

  /** A one-zone site of these facts. */
  static Site site(Map<String, String> facts) {
    Map<String, StatedFact> stated = new LinkedHashMap<>();
    facts.forEach((name, typed) -> stated.put(name, new StatedFact(value(name, typed), "")));
    Zone zone = new Zone("element", stated, GroundProfile.NONE, "");
    return new Site(
        "random", UnitSystem.SI, Map.of(), GroundProfile.NONE, List.of(zone), Map.of(), "");
  }

  private static FactValue value(String name, String typed) {
    return FactReader.read(DICTIONARY.require(name), typed)
        .fold(
            accepted -> accepted,
            () -> {
              throw new IllegalArgumentException(name + " may not be unknown here");
            },
            rejected -> {
              throw new IllegalArgumentException(name + ": " + rejected.explanation());
            });
  }

  private boolean chance(double share) {
    return random.nextDouble() < share;
  }

  private String pick(String... words) {
    return words[random.nextInt(words.length)];
  }

  private String metres(double from, double to) {
    return number(from + random.nextDouble() * (to - from)) + " m";
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }

  /** A list of sites, for a test that sweeps. */
  static List<Map<String, String>> many(int count, long seed) {
    PlausibleSites sites = new PlausibleSites(seed);
    List<Map<String, String>> list = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      list.add(sites.next());
    }
    return list;
  }
}
