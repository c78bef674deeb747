package underhold.review.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.jspecify.annotations.Nullable;
import underhold.quantity.Seeds;
import underhold.site.FactDictionary;
import underhold.site.FactValue;

/** Sets of values and boxes, held to what each does value by value. */
class ValueSetsTest {
  private static final FactDictionary DICTIONARY = FactDictionary.standard();

  /** The ends of all intervals here are whole; between them nothing changes. */
  private static final double[] POINTS = {
    -99, -1, -0.5, 0, 0.5, 1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 99
  };

  @Provide
  static Arbitrary<NumberSet> numbers() {
    Arbitrary<NumberSet> one =
        Combinators.combine(
                Arbitraries.integers().between(-1, 4), Arbitraries.integers().between(0, 4))
            .as(
                (limit, kind) ->
                    switch (kind) {
                      case 0 -> NumberSet.below(limit);
                      case 1 -> NumberSet.atMost(limit);
                      case 2 -> NumberSet.above(limit);
                      case 3 -> NumberSet.atLeast(limit);
                      default -> NumberSet.closed(limit, limit + 1.0);
                    });
    return Combinators.combine(one, one, one, Arbitraries.integers().between(0, 3))
        .as(
            (a, b, c, how) ->
                switch (how) {
                  case 0 -> a.and(b).or(c);
                  case 1 -> a.or(b).minus(c);
                  case 2 -> a.minus(b).minus(c);
                  default -> a.not().or(b.and(c));
                });
  }

  @Property(tries = 500, seed = Seeds.BUILD)
  @Label("And, or, minus and not of number sets hold number by number, at ends and between")
  void number_sets_are_exact(@ForAll("numbers") NumberSet one, @ForAll("numbers") NumberSet other) {
    for (double number : POINTS) {
      assertThat(one.and(other).has(number)).isEqualTo(one.has(number) && other.has(number));
      assertThat(one.or(other).has(number)).isEqualTo(one.has(number) || other.has(number));
      assertThat(one.minus(other).has(number)).isEqualTo(one.has(number) && !other.has(number));
      assertThat(one.not().has(number)).isEqualTo(!one.has(number));
    }
  }

  @Property(tries = 500, seed = Seeds.BUILD)
  @Label("Emptiness, inclusion and equality of number sets are those of their numbers")
  void number_sets_are_canonical(
      @ForAll("numbers") NumberSet one, @ForAll("numbers") NumberSet other) {
    boolean empty = true;
    boolean within = true;
    boolean equal = true;
    for (double number : POINTS) {
      empty &= !one.has(number);
      within &= !one.has(number) || other.has(number);
      equal &= one.has(number) == other.has(number);
    }
    assertThat(one.isEmpty()).isEqualTo(empty);
    assertThat(one.within(other)).isEqualTo(within);
    assertThat(one.equals(other)).isEqualTo(equal);
  }

  /** Boxes over two facts of words and one amount. */
  @Provide
  static Arbitrary<Box> boxes() {
    Arbitrary<FactSet> load = words("continuous", "concentrated", "area");
    Arbitrary<FactSet> heritage = words("none", "listed", "landmark");
    Arbitrary<FactSet> depth =
        Combinators.combine(numbers(), Arbitraries.of(true, false))
            .as((set, unknown) -> new FactSet(Set.of(), set.and(NumberSet.closed(0, 60)), unknown));
    return Combinators.combine(load, heritage, depth, Arbitraries.integers().between(0, 7))
        .as(
            (a, b, c, which) -> {
              Map<String, FactSet> sets = new LinkedHashMap<>();
              if ((which & 1) == 0) {
                sets.put("loadPattern", a);
              }
              if ((which & 2) == 0) {
                sets.put("heritage", b);
              }
              if ((which & 4) == 0) {
                sets.put("pitDepth", c);
              }
              return new Box(sets);
            });
  }

  private static Arbitrary<FactSet> words(String... words) {
    return Combinators.combine(
            Arbitraries.of(words).set().ofMinSize(0).ofMaxSize(3), Arbitraries.of(true, false))
        .as((set, unknown) -> new FactSet(set, NumberSet.NONE, unknown));
  }

  @Property(tries = 200, seed = Seeds.BUILD)
  @Label("Boxes meet, are taken away and lie within each other zone by zone")
  void boxes_are_exact(
      @ForAll("boxes") Box one, @ForAll("boxes") Box other, @ForAll("boxes") Box third) {
    Box both = one.and(other);
    List<Box> rest = one.minus(List.of(other, third), DICTIONARY);
    boolean within = true;
    boolean restIsEmpty = true;
    for (Map<String, FactValue> zone : zones()) {
      var view = Trying.view(zone);
      boolean inOne = one.has(view);
      assertThat(both.has(view)).isEqualTo(inOne && other.has(view));
      long parts = rest.stream().filter(box -> box.has(view)).count();
      assertThat(parts).isEqualTo(inOne && !other.has(view) && !third.has(view) ? 1 : 0);
      restIsEmpty &= parts == 0;
      within &= !inOne || other.has(view);
    }
    if (one.within(other, DICTIONARY)) {
      assertThat(within).isTrue();
    }
    assertThat(rest.isEmpty()).isEqualTo(restIsEmpty);
  }

  private static List<Map<String, FactValue>> zones() {
    List<Map<String, FactValue>> zones = new ArrayList<>();
    for (@Nullable String load :
        new String[] {"continuous", "concentrated", "area", "cantilevered-edge", null}) {
      for (@Nullable String heritage : new String[] {"none", "listed", "landmark", null}) {
        for (@Nullable String depth :
            new String[] {
              "0 m", "0.5 m", "1 m", "1.5 m", "2 m", "2.5 m", "3 m", "3.5 m", "4 m", "4.5 m", "5 m",
              "59 m", null
            }) {
          Map<String, FactValue> zone = new LinkedHashMap<>();
          put(zone, "loadPattern", load);
          put(zone, "heritage", heritage);
          put(zone, "pitDepth", depth);
          zones.add(zone);
        }
      }
    }
    return zones;
  }

  private static void put(Map<String, FactValue> zone, String fact, @Nullable String typed) {
    if (typed != null) {
      zone.put(fact, Ladder.value(DICTIONARY.require(fact), typed));
    }
  }

  @Property(tries = 30, seed = Seeds.BUILD)
  @Label("In a covering array each two values of any two parameters stand together")
  void covering_arrays_cover(@ForAll("sizes") List<Integer> sizes) {
    List<int[]> rows = Pairwise.rows(sizes.stream().mapToInt(Integer::intValue).toArray());
    for (int p = 0; p < sizes.size(); p++) {
      for (int q = p + 1; q < sizes.size(); q++) {
        int[] at = {p, q};
        long pairs = rows.stream().map(row -> row[at[0]] * 100 + row[at[1]]).distinct().count();
        assertThat(pairs).isEqualTo((long) sizes.get(p) * sizes.get(q));
      }
    }
  }

  @Provide
  static Arbitrary<List<Integer>> sizes() {
    return Arbitraries.integers().between(1, 6).list().ofMinSize(1).ofMaxSize(7);
  }
}
