package underhold.classroom.making;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import underhold.classroom.Believed;
import underhold.classroom.CaseStage;
import underhold.classroom.FactPlace;
import underhold.classroom.Reveal;

/**
 * Sets out when the facts of a site become known: by a first look, a survey, trial pits, borings,
 * and at times by the work itself.
 */
final class Staging {
  private static final int LOOK = 0;
  private static final int SURVEY = 1;
  private static final int PITS = 2;
  private static final int BORINGS = 3;
  private static final int WORK = 4;

  private static final Set<String> BY_SURVEY =
      Set.of(
          "noiseLimit",
          "nightClosure",
          "existingTilt",
          "structureCondition",
          "clearSpan",
          "movementLimit",
          "wallsTied",
          "stabilitySeen",
          "lineLoad",
          "columnLoad",
          "areaLoad",
          "lateralDemand",
          "cappingBeamPossible",
          "pickUpPossible",
          "bracingRoom",
          "landRights",
          "utilities",
          "outsideHeadroom",
          "outsideWidth",
          "insideHeadroom",
          "insideWidth",
          "rigBothSides",
          "loadOffset",
          "pairedPilesPossible",
          "drillingFromAbove",
          "clearShaft",
          "seatInsidePossible",
          "wallThickness");
  private static final Set<String> BY_PITS =
      Set.of(
          "foundationKind",
          "foundingDepth",
          "footingStrength",
          "footingWidth",
          "oldPiles",
          "obstructions",
          "seatBearingDepth");
  private static final Set<String> BY_BORINGS =
      Set.of(
          "investigation",
          "contamination",
          "groundWaterDepth",
          "drawdownAllowed",
          "drawdownHarm",
          "artesian",
          "edgeGround",
          "rockJoints",
          "predictedMovement");

  private final Sketch sketch;
  private final Knowing knowing;
  private final List<List<FactPlace>> told = new ArrayList<>();
  private final List<List<Believed>> believed = new ArrayList<>();

  private Staging(Sketch sketch, Knowing knowing) {
    this.sketch = sketch;
    this.knowing = knowing;
    for (int stage = LOOK; stage <= WORK; stage++) {
      told.add(new ArrayList<>());
      believed.add(new ArrayList<>());
    }
  }

  /** The stages in their order. */
  static List<CaseStage> stages(Sketch sketch, Knowing knowing) {
    Staging staging = new Staging(sketch, knowing);
    staging.spread();
    return staging.stages();
  }

  private static int home(String fact) {
    return BY_SURVEY.contains(fact)
        ? SURVEY
        : BY_PITS.contains(fact) ? PITS : BY_BORINGS.contains(fact) ? BORINGS : LOOK;
  }

  private void spread() {
    Set<FactPlace> kept = kept();
    for (FactPlace place : sketch.places()) {
      int home = home(place.fact());
      String belief = knowing.believed().get(place.fact());
      boolean wrong = belief != null && place.equals(sketch.place(sketch.first(), place.fact()));
      if (belief != null && wrong) {
        int from = knowing.fromFile() ? LOOK : home;
        told.get(knowing.surprise() ? WORK : Math.max(home, SURVEY)).add(place);
        Optional<String> zone =
            place.zone().isEmpty() ? Optional.empty() : Optional.of(place.zone());
        believed.get(from).add(new Believed(zone, place.fact(), belief));
      } else {
        boolean early = knowing.fromFile() && !kept.contains(place);
        told.get(early ? LOOK : home).add(place);
      }
    }
  }

  /** What the file does not tell, so that something is left to find out. */
  private Set<FactPlace> kept() {
    List<FactPlace> later =
        sketch.places().stream().filter(place -> home(place.fact()) != LOOK).toList();
    List<FactPlace> mixed = sketch.draw().shuffled(later);
    return new LinkedHashSet<>(mixed.subList(0, Math.min(knowing.withheld(), mixed.size())));
  }

  private List<CaseStage> stages() {
    List<CaseStage> stages = new ArrayList<>();
    for (int stage = LOOK; stage <= WORK; stage++) {
      boolean ground = stage == (knowing.fromFile() ? LOOK : BORINGS);
      if (ground || !told.get(stage).isEmpty()) {
        stages.add(stage(stage, ground));
      }
    }
    return stages;
  }

  private CaseStage stage(int stage, boolean ground) {
    StageWords words = new StageWords(sketch, knowing);
    StageWords.Named named =
        switch (stage) {
          case LOOK -> words.look();
          case SURVEY -> words.survey();
          case PITS -> words.pits();
          case BORINGS -> words.borings(ground);
          default -> words.work();
        };
    List<FactPlace> places = told.get(stage);
    boolean truth = places.stream().anyMatch(this::wasBelieved);
    boolean belief = !believed.get(stage).isEmpty();
    String tells =
        named.tells()
            + (belief ? " " + words.believed(stage == LOOK) : "")
            + (truth ? " " + words.truth(stage == WORK) : "");
    return new CaseStage(
        named.name(),
        named.title(),
        named.days(),
        stage == WORK,
        tells.strip(),
        ground,
        reveals(places),
        believed.get(stage));
  }

  private boolean wasBelieved(FactPlace place) {
    return knowing.believed().containsKey(place.fact())
        && place.equals(sketch.place(sketch.first(), place.fact()));
  }

  private static List<Reveal> reveals(List<FactPlace> places) {
    Map<String, List<String>> byZone = new LinkedHashMap<>();
    places.forEach(
        place -> byZone.computeIfAbsent(place.zone(), zone -> new ArrayList<>()).add(place.fact()));
    List<Reveal> reveals = new ArrayList<>();
    byZone.forEach(
        (zone, facts) ->
            reveals.add(new Reveal(zone.isEmpty() ? Optional.empty() : Optional.of(zone), facts)));
    return reveals;
  }
}
