package underhold.consult.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.statistics.Statistics;
import underhold.consult.Consultation;
import underhold.consult.RandomZones;
import underhold.consult.scheme.SchemeDesk;
import underhold.consult.scheme.SchemeOutcome;
import underhold.consult.scheme.ZoneChoice;
import underhold.quantity.Seeds;

/** Plans of random sites of several zones, whatever is known of how the zones lie to each other. */
class PlanPropertiesTest {
  private static final int TRIES = 120;
  private static final AtomicInteger MADE = new AtomicInteger();
  private static final AtomicInteger REFUSED = new AtomicInteger();
  private static final SchemeDesk DESK = new SchemeDesk(RandomZones.engine());

  private static Optional<StagePlan> plan(long seed, int zones, double forgotten) {
    Consultation advice = RandomZones.advise(new RandomZones(seed).site(zones, forgotten));
    SchemeOutcome outcome = DESK.scheme(advice);
    if (!(outcome instanceof SchemeOutcome.Made made)) {
      return Optional.empty();
    }
    PlanOutcome plan = StagePlanner.plan(made.scheme(), PlanSettings.TABLE.defaults());
    if (plan instanceof PlanOutcome.Refused refused) {
      // random relations can ask for orders that exclude each other; then there is no plan
      assertThat(refused.problems())
          .as("seed %d, %d zones", seed, zones)
          .allMatch(problem -> problem.contains(" cannot be kept: "));
      REFUSED.incrementAndGet();
      return Optional.empty();
    }
    MADE.incrementAndGet();
    return Optional.of(((PlanOutcome.Made) plan).plan());
  }

  @AfterContainer
  static void hardly_any_plan_is_refused() {
    assertThat(REFUSED.get()).isLessThan(1 + MADE.get() / 20);
  }

  private static double share(int tenths) {
    return tenths / 10.0;
  }

  @Property(tries = TRIES, seed = Seeds.BUILD)
  @Label("In no order of work that a plan allows does anything stand on nothing")
  void nothing_ever_stands_on_nothing(
      @ForAll long seed,
      @ForAll @IntRange(min = 2, max = 5) int zones,
      @ForAll @IntRange(min = 0, max = 6) int tenths) {
    Optional<StagePlan> made = plan(seed, zones, share(tenths));
    Statistics.collect(made.isPresent() ? "planned" : "no combination stands");
    made.ifPresent(
        plan -> {
          assertThat(PlanChecker.problems(plan.stages(), plan.limits())).isEmpty();
          for (int i = 0; i < 20; i++) {
            assertThat(new WorkSimulation(plan.stages(), plan.limits(), seed + i).run()).isEmpty();
          }
        });
  }

  @Property(tries = TRIES, seed = Seeds.BUILD)
  @Label("Whatever a random play of a spoilt plan brings down, the checker has found")
  void the_checker_finds_what_a_play_finds(
      @ForAll long seed, @ForAll @IntRange(min = 2, max = 4) int zones) {
    plan(seed, zones, 0.2)
        .ifPresent(
            plan -> {
              List<PlanStage> spoilt = spoilt(plan.stages(), new Random(seed));
              boolean falls = false;
              for (int i = 0; i < 30; i++) {
                falls |= !new WorkSimulation(spoilt, plan.limits(), seed + i).run().isEmpty();
              }
              Statistics.collect(falls ? "falls" : "stands");
              if (falls) {
                assertThat(PlanChecker.problems(spoilt, plan.limits())).isNotEmpty();
              }
            });
  }

  /** The same stages, one of them waiting for the survey only. */
  private static List<PlanStage> spoilt(List<PlanStage> stages, Random random) {
    List<PlanStage> spoilt = new ArrayList<>(stages);
    List<PlanStage> acting =
        stages.stream()
            .filter(one -> !one.moves().equals(Moves.NONE) && one.moves().accepts().isEmpty())
            .toList();
    PlanStage s =
        acting.isEmpty()
            ? stages.get(stages.size() - 1)
            : acting.get(random.nextInt(acting.size()));
    int at = stages.indexOf(s);
    spoilt.set(
        at,
        new PlanStage(
            s.id(),
            s.zone(),
            s.method(),
            s.kind(),
            s.title(),
            s.work(),
            s.holds(),
            s.moves(),
            List.of(new Link("survey", "")),
            s.time(),
            s.told(),
            s.toldOfPairs(),
            s.waitsFor()));
    return spoilt;
  }

  @Property(tries = TRIES, seed = Seeds.BUILD)
  @Label("A plan holds every zone, begins with the survey and ends with the reinstatement")
  void a_plan_is_complete(
      @ForAll long seed,
      @ForAll @IntRange(min = 2, max = 5) int zones,
      @ForAll @IntRange(min = 0, max = 6) int tenths) {
    plan(seed, zones, share(tenths))
        .ifPresent(
            plan -> {
              Reach reach = Reach.of(plan.stages());
              assertThat(reach.order()).hasSameSizeAs(plan.stages());
              for (PlanStage stage : plan.stages()) {
                if (stage.kind() != StageKind.SURVEY && stage.kind() != StageKind.REINSTATE) {
                  assertThat(reach.isBefore("survey", stage.id())).isTrue();
                  assertThat(reach.isBefore(stage.id(), "reinstate")).isTrue();
                }
                assertThat(stage.holds()).isNotEmpty();
                assertThat(stage.time().source()).isNotBlank();
              }
              for (ZoneChoice zone : plan.scheme().best().zones()) {
                List<PlanStage> own =
                    plan.stages().stream().filter(s -> s.zone().equals(zone.name())).toList();
                assertThat(own).isNotEmpty();
                if (zone.method().isEmpty()) {
                  assertThat(own).extracting(PlanStage::kind).containsExactly(StageKind.DECIDE);
                }
              }
            });
  }

  @Property(tries = TRIES, seed = Seeds.BUILD)
  @Label("The time of a plan is its longest path, found again by plain relaxation of every link")
  void the_time_is_the_longest_path(
      @ForAll long seed,
      @ForAll @IntRange(min = 2, max = 5) int zones,
      @ForAll @IntRange(min = 0, max = 6) int tenths) {
    plan(seed, zones, share(tenths))
        .ifPresent(
            plan -> {
              Map<String, Double> ends = relaxed(plan.stages());
              double longest = ends.values().stream().mapToDouble(d -> d).max().orElseThrow();
              assertThat(plan.schedule().days()).isCloseTo(longest, within(1e-6));
              double along =
                  plan.schedule().criticalPath().stream()
                      .mapToDouble(id -> plan.stage(id).time().days())
                      .sum();
              assertThat(along).isCloseTo(longest, within(1e-6));
              List<String> path = plan.schedule().criticalPath();
              for (int i = 1; i < path.size(); i++) {
                assertThat(plan.stage(path.get(i)).after())
                    .extracting(Link::before)
                    .contains(path.get(i - 1));
                assertThat(plan.schedule().isCritical(path.get(i))).isTrue();
              }
            });
  }

  /** Ends of stages: every link is relaxed until none moves anything, in no clever order. */
  private static Map<String, Double> relaxed(List<PlanStage> stages) {
    Map<String, Double> ends = new HashMap<>();
    stages.forEach(stage -> ends.put(stage.id(), stage.time().days()));
    for (int round = 0; round < stages.size(); round++) {
      for (PlanStage stage : stages) {
        for (Link link : stage.after()) {
          double end = ends.get(link.before()) + stage.time().days();
          ends.merge(stage.id(), end, Math::max);
        }
      }
    }
    return ends;
  }

  @Property(tries = TRIES, seed = Seeds.BUILD)
  @Label("Every order that a rule between zones asks for is kept, link by link")
  void orders_of_rules_are_kept(@ForAll long seed, @ForAll @IntRange(min = 2, max = 4) int zones) {
    plan(seed, zones, 0.1)
        .ifPresent(
            plan -> {
              Reach reach = Reach.of(plan.stages());
              plan.scheme().best().orders().stream()
                  .filter(order -> !plan.unkept().contains(order))
                  .filter(o -> o.order() == underhold.advice.PairOrder.CARRIES_BEFORE_DIGS)
                  .forEach(
                      order -> {
                        for (PlanStage accept : of(plan, order.first(), StageKind.ACCEPT)) {
                          for (PlanStage dig : of(plan, order.second(), StageKind.DIG)) {
                            assertThat(reach.isBefore(accept.id(), dig.id())).isTrue();
                          }
                        }
                      });
            });
  }

  private static List<PlanStage> of(StagePlan plan, String zone, StageKind kind) {
    return plan.stages().stream()
        .filter(stage -> stage.zone().equals(zone) && stage.kind() == kind)
        .toList();
  }
}
