package underhold.classroom;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import underhold.advice.Effect;
import underhold.advice.Rule;
import underhold.advice.RulePack;

/**
 * The words for conditions: what a method, or any method, asks for besides being chosen. Each word
 * stands for the rules that ask for the same thing. A rule of another pack is called by its cause.
 */
public final class ConditionWords {
  /** Word, what it means, the rules it stands for. */
  private static final String TABLE =
      """
      survey-and-watch | the structure is surveyed, given limits and watched | ANY-11 ANY-11b ANY-11c
      support-first | nothing is dug before it is settled what holds the structure up | ANY-12a ANY-12b
      find-depths | the depths of footing and dig are found first | ANY-12c NON-13
      bare-in-strips | a footing is bared in short strips only, one after the other | ANY-13
      licence | parts on a neighbour's land wait for a written licence | ANY-14
      see-footings | footings that nobody has seen are bared at each typical place | ANY-15
      strengthen-first | a structure in poor condition is strengthened or shored first | ANY-17
      foul-ground-plan | there is a plan for people and spoil in foul ground | ANY-22
      special-wells | water in slow ground is drawn down by ejectors or deep wells | ANY-06
      lower-water | water close below the base is lowered, so that it stays dry | PIT-27
      prove-drawdown | gauges prove that the water is down before a pit is opened | PIT-02b
      order-of-pits | pits are narrow, far apart, and wait for the strength of the last | PIT-23
      small-pits | pits are as small as can be, levelled one by one, never used to lift | PIT-25
      dig-in-lifts | deep pits go down in lifts, each braced | PIT-05b
      brace-piers | piers are braced or tied against the soil behind them | CNF-03a PIT-24a PIT-13a
      jacks-in-gap | jacks stand in the gap between pier and footing | PIT-17b
      reckon-load | a heavy wall load is reckoned, not taken from rules of thumb | PIT-07b
      split-rock | rock is line drilled and split, not blasted | PIT-11
      check-pick-up | the structure is checked where it is picked up | NDL-04
      enlarge-pick-up | a pick-up that would crush what it grips is enlarged first | CNF-08
      locking-jacks | the load stands on jacks that lock, levelled at each step | NDL-08
      seats-clear-of-dig | seats stand at or below the base of the dig, or behind its zone | NDL-14a
      seats-on-piles | seats over deep soft ground stand on piles of their own | NDL-14b
      inner-seat | a span too long for one beam has a seat inside the dig | NDL-02c
      preload | the support is loaded by jacks before it takes over | MPB-12b DRP-10 CNF-06 CNF-12
      old-piles-in-steps | old piles are cut evenly and in small steps | DRP-11
      plumb-piles | piles beside a live structure are proved upright | DRP-12
      spare-pile | a group that cannot lose one pile is given another | CNF-11
      brace-bared-piles | piles that would buckle are braced before they are bared | CNF-14a CNF-10a
      tie-long-arm | a long arm of a bracket has a pair of piles or a tie | MPB-06a
      sound-seats | bracket seats are cut back to sound concrete, and piles are load tested | MPB-12a
      gather-footing | weak masonry is gathered into a beam before it is picked up | INT-04a INT-04b INT-04c
      brace-edge-wall | the wall of pits at the edge is reckoned and braced as a wall | HYB-07 CNF-17a
      carry-before-dig | piles carry before the edge is dug | HYB-08
      cut-off | fine sand is cut off between the pits, down to below the base | HYB-10
      forecast-movement | movement is forecast before anybody relies on watching | NON-11
      leave-berm | soil is left standing beside the footing where no wall is built | NON-03b
      test-soft-clay | soft clay is tested, and heave of the base reckoned | REF-03b REF-03c
      """;

  private static final Map<String, String> MEANS = new LinkedHashMap<>();
  private static final Map<String, String> OF_RULE = new LinkedHashMap<>();

  static {
    for (String line : TABLE.lines().toList()) {
      String[] parts = line.split(" \\| ");
      MEANS.put(parts[0], parts[1]);
      for (String rule : parts[2].split(" ")) {
        OF_RULE.put(rule, parts[0]);
      }
    }
  }

  private ConditionWords() {}

  /**
   * All of them that a pack can ask for, whatever the case, so that the list gives nothing away.
   */
  public static List<Named> of(RulePack pack) {
    Map<String, String> found = new LinkedHashMap<>();
    List<Rule> rules = rules(pack);
    MEANS.forEach(
        (word, means) -> {
          if (rules.stream().anyMatch(rule -> word(rule).equals(word))) {
            found.put(word, means);
          }
        });
    rules.forEach(rule -> found.putIfAbsent(word(rule), rule.sentence()));
    List<Named> all = new ArrayList<>();
    found.forEach((word, means) -> all.add(new Named(word, means)));
    return all;
  }

  /** The rules of a pack that ask for something of a zone. */
  static List<Rule> rules(RulePack pack) {
    return pack.rules().stream()
        .filter(rule -> rule.effect() == Effect.REQUIRE && rule.phase() != Rule.Phase.SCHEME)
        .toList();
  }

  /** The rules that have a word of their own. */
  static List<String> named() {
    return List.copyOf(OF_RULE.keySet());
  }

  /** The word for what a rule asks for. */
  static String word(Rule rule) {
    String own = OF_RULE.get(rule.id());
    return own == null ? DangerWords.word(rule.cause()) : own;
  }
}
