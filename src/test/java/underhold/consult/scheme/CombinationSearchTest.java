package underhold.consult.scheme;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;
import underhold.consult.Consultation;
import underhold.consult.RandomZones;
import underhold.quantity.Seeds;

/** What the search cuts could not have been among the best: every combination is tried in full. */
class CombinationSearchTest {
  private static final int KEPT = 4;

  @Property(tries = 150, seed = Seeds.BUILD)
  @Label("Branch and bound finds the points that trying every combination finds")
  void search_agrees_with_trying_all(
      @ForAll long seed, @ForAll @IntRange(min = 2, max = 6) int zones, @ForAll boolean heldLast) {
    Consultation advice = RandomZones.advise(new RandomZones(seed).site(5 * zones, 0.2));
    PairScreen screen = new PairScreen(RandomZones.engine(), advice.site());
    List<List<ZoneChoice>> contested =
        advice.zones().stream().map(ZoneChoice::of).filter(list -> list.size() > 1).toList();
    List<List<ZoneChoice>> options = contested.subList(0, Math.min(zones, contested.size()));
    List<Combination> found = new CombinationSearch(options, screen, KEPT, heldLast).run();

    List<Combination> all = new ArrayList<>();
    every(options, new ArrayList<>(), screen, all);
    Comparator<Combination> order = Comparator.comparing(c -> -c.points());
    if (heldLast) {
      order = Comparator.comparing(Combination::held).thenComparing(order);
    }
    List<Combination> best = all.stream().sorted(order).limit(KEPT).toList();
    Statistics.collect(all.size() > KEPT ? "something to cut" : "few");
    assertThat(found).extracting(Combination::points).isEqualTo(points(best));
    assertThat(found)
        .extracting(Combination::held)
        .isEqualTo(best.stream().map(Combination::held).toList());
  }

  private static List<Integer> points(List<Combination> combinations) {
    return combinations.stream().map(Combination::points).toList();
  }

  private static void every(
      List<List<ZoneChoice>> options,
      List<ZoneChoice> chosen,
      PairScreen screen,
      List<Combination> all) {
    if (chosen.size() == options.size()) {
      Combination.of(chosen, screen).ifPresent(all::add);
      return;
    }
    for (ZoneChoice choice : options.get(chosen.size())) {
      chosen.add(choice);
      every(options, chosen, screen, all);
      chosen.remove(chosen.size() - 1);
    }
  }

  @Property(tries = 60, seed = Seeds.BUILD)
  @Label(
      "What nobody states of two zones never scores: forgetting every relation takes all pair points")
  void unknown_relations_do_not_score(@ForAll long seed) {
    Consultation advice = RandomZones.advise(new RandomZones(seed).site(3, 1));
    SchemeOutcome outcome = new SchemeDesk(RandomZones.engine()).scheme(advice);
    if (outcome instanceof SchemeOutcome.Made made && advice.site().relations().isEmpty()) {
      assertThat(made.scheme().best().pairPoints()).isZero();
    }
  }
}
