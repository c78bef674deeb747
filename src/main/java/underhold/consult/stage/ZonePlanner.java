package underhold.consult.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import underhold.advice.SupportOption;
import underhold.consult.scheme.PairFinding;
import underhold.consult.scheme.ZoneChoice;
import underhold.quantity.Quantity;
import underhold.site.FactView;
import underhold.sizing.HoldPoint;
import underhold.sizing.Phrase;
import underhold.sizing.Settings;
import underhold.sizing.Stage;
import underhold.sizing.StageDetail;
import underhold.sizing.StageRole;

/**
 * Sets the stages of one zone in order: those of the sheet of its method, or the usual ones where
 * the sheet cannot be drawn up yet. Each step of load and each round of pits is a stage of its own.
 */
final class ZonePlanner {
  private static final StageTime BY_OTHERS =
      new StageTime(0, "by others; its own days are not in this plan");

  private final PlanBuilder plan;
  private final Settings settings;
  private final ZoneChoice zone;
  private final SupportOption method;
  private final ZoneSheets sheets;
  private final Timing timing;
  private final List<Stage> sheetStages;
  private final ZoneWriter writer;
  private final LoadPath path;
  private final List<OpenLimit> limits = new ArrayList<>();
  private final List<Stage> triggers = new ArrayList<>();
  private boolean excavationSeen;
  private List<Phrase> pitRules = List.of();
  private List<HoldPoint> pitHolds = List.of();

  ZonePlanner(
      PlanBuilder plan,
      Settings settings,
      ZoneChoice zone,
      int number,
      List<PairFinding> pairs,
      String survey) {
    this.plan = plan;
    this.settings = settings;
    this.zone = zone;
    this.method = zone.method().orElseThrow();
    this.sheets = new ZoneSheets(zone, method);
    this.timing = new Timing(settings, zone.zone().view(), sheets.list());
    this.sheetStages = sheets.stages();
    this.path = new LoadPath(zone.name(), method);
    Told told = Told.of(zone, pairs, kinds());
    this.writer = new ZoneWriter(plan, zone, number, told, survey);
  }

  private List<StageKind> kinds() {
    return Stream.concat(
            sheetStages.stream().flatMap(stage -> kind(stage.role()).stream()),
            waterDown().isPresent() ? Stream.of(StageKind.WATER) : Stream.of())
        .toList();
  }

  private static Optional<StageKind> kind(StageRole role) {
    return switch (role) {
      case PREPARE -> Optional.of(StageKind.PREPARE);
      case DRILL -> Optional.of(StageKind.DRILL);
      case BUILD -> Optional.of(StageKind.BUILD);
      case LOAD -> Optional.of(StageKind.LOAD);
      case LOCK -> Optional.of(StageKind.ACCEPT);
      case PITS -> Optional.of(StageKind.PITS);
      case CLOSE -> Optional.of(StageKind.CLOSE);
      case DIG, WATCH -> Optional.of(StageKind.DIG);
      case LASTING -> Optional.of(StageKind.LASTING);
      case HAND_BACK -> Optional.of(StageKind.HAND_BACK);
      case CARRY, PIT_RULES, TRIGGER, AFTER -> Optional.empty();
    };
  }

  /** By how much ground water is lowered for dry pits, where it is. */
  private Optional<Quantity> waterDown() {
    boolean pits = sheetStages.stream().anyMatch(stage -> stage.role() == StageRole.PITS);
    FactView facts = zone.zone().view();
    return pits ? facts.amount("drawdownNeeded").filter(depth -> depth.si() > 0) : Optional.empty();
  }

  ZoneStages run() {
    Rounds rounds = new Rounds(sheetStages);
    for (Stage stage : sheetStages) {
      if (stage.role() == StageRole.DIG && nothingIsDug()) {
        continue;
      }
      excavationBefore(stage);
      switch (stage.role()) {
        case PREPARE -> prepare(stage);
        case DRILL -> writer.add(StageKind.DRILL, stage, Moves.NONE, timing.drilling());
        case BUILD -> writer.add(StageKind.BUILD, stage, Moves.NONE, building(stage));
        case LOAD -> load(stage);
        case LOCK -> lock(stage);
        case PIT_RULES -> {
          pitRules = stage.work();
          pitHolds = stage.holdPoints();
        }
        case PITS -> pits(stage, rounds);
        case CLOSE ->
            writer.add(StageKind.CLOSE, stage, Moves.NONE, timing.setting(PlanSettings.CLOSE));
        case WATCH ->
            writer.add(
                StageKind.DIG,
                stage,
                path.dig(stage),
                timing.weeks(Timing.WATCH_DURING, PlanSettings.LIFT));
        case AFTER ->
            writer.add(
                StageKind.AFTER,
                stage,
                Moves.NONE,
                timing.weeks(Timing.WATCH_AFTER, PlanSettings.REINSTATE));
        case DIG ->
            writer.add(StageKind.DIG, stage, path.dig(stage), timing.setting(PlanSettings.LIFT));
        case LASTING -> lasting(stage);
        case HAND_BACK -> handBack(stage);
        case TRIGGER -> triggers.add(stage);
        case CARRY -> {}
      }
    }
    if (path.needsLasting()) {
      lasting(UsualWorks.lasting());
    }
    removeTemporary();
    return writer.stages();
  }

  /** Needles alone cut their footing free although no excavation comes. */
  private boolean nothingIsDug() {
    return method != SupportOption.NEEDLES
        && zone.zone()
            .view()
            .word("excavationPosition")
            .filter("no-excavation"::equals)
            .isPresent();
  }

  List<OpenLimit> limits() {
    return limits;
  }

  List<Stage> triggers() {
    return triggers;
  }

  private StageTime building(Stage stage) {
    if (stage.detail() instanceof StageDetail.Curing) {
      return timing.cure();
    }
    if (stage.detail() instanceof StageDetail.ByOthers) {
      return BY_OTHERS;
    }
    if (method == SupportOption.PITS) {
      return timing.setting(PlanSettings.BUILD);
    }
    long parts =
        sheetStages.stream()
            .filter(one -> one.role() == StageRole.BUILD)
            .filter(one -> !(one.detail() instanceof StageDetail.Curing))
            .filter(one -> !(one.detail() instanceof StageDetail.ByOthers))
            .count();
    return timing.building((int) parts);
  }

  /**
   * Once, before what first leans on it: the wall of the excavation and its ground water. An edge
   * pit at the end is cast against that wall.
   */
  private void excavationBefore(Stage stage) {
    boolean leans =
        stage.role() == StageRole.CLOSE
            || (stage.role() == StageRole.PITS && method == SupportOption.EDGE_PITS)
            || stage.role() == StageRole.DIG
            || stage.role() == StageRole.WATCH;
    if (!leans || excavationSeen || nothingIsDug()) {
      return;
    }
    excavationSeen = true;
    UsualWorks.excavation(zone.zone().view(), waterDown().isPresent())
        .ifPresent(others -> writer.add(StageKind.BUILD, others, Moves.NONE, BY_OTHERS));
  }

  private StageTime preparing() {
    if (method == SupportOption.MONITOR) {
      return timing.baseline();
    }
    return timing.preparing(method == SupportOption.BRACKET_PILES || sheets.testPile());
  }

  private void prepare(Stage stage) {
    List<HoldPoint> holds = new ArrayList<>(stage.holdPoints());
    holds.addAll(sheets.unsettled());
    writer.add(
        StageKind.PREPARE,
        new Stage(StageRole.PREPARE, stage.title(), stage.work(), holds),
        Moves.NONE,
        preparing());
    waterDown()
        .ifPresent(
            depth ->
                writer.add(
                    StageKind.WATER,
                    UsualWorks.water(depth),
                    Moves.accepting(path.lowerWater()),
                    timing.setting(PlanSettings.WATER)));
  }

  /**
   * Each step for itself, so that nobody runs past its hold point: before the first what holds for
   * all of them, after the last what follows them. Where the sheet has no stages of its own for
   * that, the usual lock-off accepts the support.
   */
  private void load(Stage stage) {
    boolean locked = sheetStages.stream().anyMatch(one -> one.role() == StageRole.LOCK);
    List<Phrase> steps = UsualWorks.steps(stage);
    for (int i = 0; i < steps.size(); i++) {
      List<Phrase> work = new ArrayList<>(i == 0 ? UsualWorks.forAllSteps(stage) : List.of());
      work.add(steps.get(i));
      Stage step =
          new Stage(
              StageRole.LOAD,
              "Step " + (i + 1) + " of " + steps.size() + ": " + inSentence(stage.title()),
              work,
              locked ? stage.holdPoints() : List.of(UsualWorks.STEP_HOLD));
      writer.add(StageKind.LOAD, step, Moves.NONE, timing.step(steps.size()));
    }
    if (!locked) {
      lock(
          new Stage(
              StageRole.LOCK,
              "Locked off and accepted: " + inSentence(stage.title()),
              UsualWorks.afterSteps(stage),
              stage.holdPoints()));
    }
  }

  /** Proof, lock-off and release; at the end of the last the support is accepted. */
  private void lock(Stage stage) {
    List<Stage> locks = sheetStages.stream().filter(one -> one.role() == StageRole.LOCK).toList();
    boolean last = locks.isEmpty() || locks.get(locks.size() - 1) == stage;
    writer.add(
        StageKind.ACCEPT,
        stage,
        last ? Moves.accepting(path.carry()) : Moves.NONE,
        last ? timing.setting(PlanSettings.LOCK_OFF) : timing.step(locks.size()));
  }

  private static String inSentence(String title) {
    return title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1);
  }

  private void pits(Stage stage, Rounds rounds) {
    List<Phrase> work = new ArrayList<>(UsualWorks.round(stage));
    List<HoldPoint> holds = new ArrayList<>(stage.holdPoints());
    if (rounds.isFirst(stage)) {
      work.addAll(pitRules);
    }
    holds.addAll(pitHolds);
    Optional<StageDetail.PitRound> round = Rounds.round(stage);
    StageTime time =
        round
            .map(one -> new StageTime(one.days(), "in step: round by round, by the sheet"))
            .orElseGet(() -> timing.setting(PlanSettings.PITS));
    round.ifPresent(
        one -> {
          if (limits.isEmpty()) {
            limits.add(new OpenLimit(zone.name(), one.mayBeOpenMetres(), one.wallMetres()));
          }
        });
    writer.add(
        StageKind.PITS,
        new Stage(StageRole.PITS, stage.title(), work, holds),
        path.pits(round, rounds.isFirst(stage), rounds.isLast(stage)),
        time);
  }

  private void lasting(Stage stage) {
    Stage built =
        new Stage(StageRole.LASTING, stage.title(), stage.work().subList(0, 1), stage.holdPoints());
    writer.add(StageKind.LASTING, built, path.lasting(), timing.setting(PlanSettings.LASTING));
  }

  private void handBack(Stage stage) {
    List<HoldPoint> holds = new ArrayList<>(stage.holdPoints().subList(0, 1));
    if (zone.zone().view().word("newBaseSameSpot").filter("no"::equals).isPresent()) {
      holds.add(UsualWorks.ELSEWHERE);
    }
    Stage built = new Stage(StageRole.LASTING, "New support", stage.work().subList(0, 1), holds);
    writer.add(
        StageKind.RENEW,
        built,
        Moves.accepting(path.newSupport()),
        timing.setting(PlanSettings.LASTING));
    int last = stage.work().size() - 1;
    Stage returned =
        new Stage(
            StageRole.HAND_BACK,
            stage.title(),
            stage.work().subList(1, last),
            stage.holdPoints().subList(1, stage.holdPoints().size()));
    writer.add(StageKind.HAND_BACK, returned, Moves.NONE, timing.handBack());
    Stage drawn =
        new Stage(
            StageRole.HAND_BACK,
            "Needles out",
            stage.work().subList(last, last + 1),
            List.of(UsualWorks.REMOVE_HOLD));
    writer.add(StageKind.REMOVE, drawn, Moves.removing(path.takeBack()), timing.needlesOut());
  }

  private void removeTemporary() {
    List<Support> left = path.takeBack();
    if (!left.isEmpty()) {
      writer.add(
          StageKind.REMOVE,
          UsualWorks.remove(left),
          Moves.removing(left),
          timing.setting(PlanSettings.REMOVE));
    }
  }
}
