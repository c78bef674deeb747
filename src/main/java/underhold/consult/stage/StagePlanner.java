package underhold.consult.stage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.advice.SupportOption;
import underhold.consult.OpenQuestion;
import underhold.consult.scheme.Scheme;
import underhold.consult.scheme.ZoneChoice;
import underhold.sizing.HoldPoint;
import underhold.sizing.Phrase;
import underhold.sizing.Setting;
import underhold.sizing.Settings;
import underhold.sizing.Stage;

/** Draws up the plan of a scheme, and refuses one in which anything could stand on nothing. */
public final class StagePlanner {
  private static final String SURVEY = "survey";
  private static final String REINSTATE = "reinstate";
  private static final int QUESTIONS = 3;

  private final Scheme scheme;
  private final Settings settings;
  private final PlanBuilder plan = new PlanBuilder();
  private final Map<String, ZoneStages> zones = new LinkedHashMap<>();
  private final Map<String, String> decisions = new LinkedHashMap<>();
  private final Map<String, List<Stage>> triggers = new LinkedHashMap<>();
  private final List<OpenLimit> limits = new ArrayList<>();

  private StagePlanner(Scheme scheme, Settings settings) {
    this.scheme = scheme;
    this.settings = settings;
  }

  /** The plan of a scheme with the settings of {@link PlanSettings#TABLE}. */
  public static PlanOutcome plan(Scheme scheme, Settings settings) {
    return new StagePlanner(scheme, settings).run();
  }

  private PlanOutcome run() {
    plan.add(survey());
    List<ZoneChoice> choices = scheme.best().zones();
    for (int i = 0; i < choices.size(); i++) {
      zone(choices.get(i), i + 1);
    }
    BetweenZones between = new BetweenZones(plan, scheme, zones);
    between.orders();
    between.waitForUndecided(decisions);
    between.crews(settings);
    plan.add(reinstate());
    List<PlanStage> stages = ordered(plan.stages());
    List<String> problems = new ArrayList<>(PlanChecker.problems(stages, limits));
    between.unkept().stream()
        .filter(order -> !order.assumed())
        .forEach(order -> problems.add(order.ruleId() + " cannot be kept: " + order.sentence()));
    if (!problems.isEmpty()) {
      return new PlanOutcome.Refused(problems);
    }
    return new PlanOutcome.Made(
        new StagePlan(
            scheme, settings, stages, limits, Schedule.of(stages), triggers, between.unkept()));
  }

  private void zone(ZoneChoice zone, int number) {
    if (zone.method().isEmpty()) {
      decisions.put(zone.name(), plan.add(decide(zone, number)));
      return;
    }
    ZonePlanner planner =
        new ZonePlanner(plan, settings, zone, number, scheme.best().findings(), SURVEY);
    zones.put(zone.name(), planner.run());
    limits.addAll(planner.limits());
    if (!planner.triggers().isEmpty()) {
      triggers.put(zone.name(), planner.triggers());
    }
  }

  private PlanStage survey() {
    return site(
        SURVEY,
        StageKind.SURVEY,
        "Survey and baseline",
        List.of(
            "Survey the condition of the structure and its neighbours; agree it with their owners.",
            "Set level, tilt, crack and joint points for every zone; read until they are steady.",
            "Find and mark services; agree limits of movement, levels of alarm, and who stops the work."),
        "Baseline readings are steady; limits, and who may stop the work, are agreed in writing",
        List.of(),
        time(PlanSettings.SURVEY));
  }

  /** A zone without a method has nothing but its investigation. */
  private PlanStage decide(ZoneChoice zone, int number) {
    List<Phrase> work = new ArrayList<>();
    work.add(Phrase.of("No method yet: " + zone.undecided() + "."));
    zone.zone().questions().list().stream()
        .filter(OpenQuestion::decides)
        .limit(QUESTIONS)
        .forEach(question -> work.add(Phrase.of("Find out: " + question.fact().question())));
    return new PlanStage(
        "z" + number + ".decide",
        zone.name(),
        Optional.empty(),
        StageKind.DECIDE,
        "Decide first: survey and investigation",
        work,
        List.of(
            new HoldPoint(
                Phrase.of("A method is chosen for this zone and the scheme is made again with it"),
                UsualStages.ENGINEER)),
        Moves.NONE,
        List.of(new Link(SURVEY, "")),
        time(PlanSettings.DECIDE),
        List.of(),
        List.of(),
        List.of());
  }

  private PlanStage reinstate() {
    List<Link> ends = new ArrayList<>();
    zones.values().forEach(zone -> ends.add(new Link(zone.last(), "")));
    decisions.values().forEach(id -> ends.add(new Link(id, "")));
    boolean builds = scheme.best().zones().stream().anyMatch(StagePlanner::builds);
    boolean pits = plan.stages().stream().anyMatch(stage -> stage.kind() == StageKind.PITS);
    List<String> work = new ArrayList<>();
    if (builds) {
      work.add(
          pits
              ? "Fill approach pits and working spaces, make good what was cut."
              : "Fill working spaces, make good what was cut.");
    }
    work.add("Read on until steady; survey the structure again beside the survey of before.");
    boolean watched = !builds && decisions.isEmpty();
    return site(
        REINSTATE,
        StageKind.REINSTATE,
        builds ? "Backfill, reinstatement, last readings" : "Last readings and survey of after",
        work,
        "Readings are steady; the survey of after is agreed with the owners",
        ends,
        watched
            ? new StageTime(0, "within the readings after the work")
            : time(PlanSettings.REINSTATE));
  }

  /** Whether anything is built or dug for a zone, rather than watched or left open. */
  private static boolean builds(ZoneChoice zone) {
    return zone.method().filter(method -> method != SupportOption.MONITOR).isPresent();
  }

  private PlanStage site(
      String id,
      StageKind kind,
      String title,
      List<String> work,
      String hold,
      List<Link> after,
      StageTime time) {
    return new PlanStage(
        id,
        "",
        Optional.empty(),
        kind,
        title,
        work.stream().map(Phrase::of).toList(),
        List.of(new HoldPoint(Phrase.of(hold), UsualStages.ENGINEER)),
        Moves.NONE,
        after,
        time,
        List.of(),
        List.of(),
        List.of());
  }

  private StageTime time(Setting setting) {
    return new StageTime(settings.get(setting), setting.name() + ", judgement");
  }

  /** By earliest start, links kept; as they were made where links close a circle. */
  private static List<PlanStage> ordered(List<PlanStage> stages) {
    Map<String, PlanStage> byId = new LinkedHashMap<>();
    stages.forEach(stage -> byId.put(stage.id(), stage));
    List<String> sorted = Reach.of(stages).order();
    if (sorted.size() < stages.size()) {
      return stages;
    }
    List<PlanStage> topological = new ArrayList<>();
    for (String id : sorted) {
      PlanStage stage = byId.get(id);
      if (stage != null) {
        topological.add(stage);
      }
    }
    Schedule schedule = Schedule.of(topological);
    List<PlanStage> byStart = new ArrayList<>(topological);
    byStart.sort(
        (one, other) -> Double.compare(schedule.start(one.id()), schedule.start(other.id())));
    return byStart; // stable: of two that start together the one that comes first stays first
  }
}
