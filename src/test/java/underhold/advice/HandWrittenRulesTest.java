package underhold.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.consult.ZoneTables;
import underhold.site.FactDictionary;
import underhold.site.FactView;
import underhold.site.Site;
import underhold.site.ZoneViews;

/**
 * Rules written by hand fire where those of the pack do: else a measure of one against the other
 * says nothing. Where a rule was changed, change it in {@link HandWrittenRules} too.
 */
class HandWrittenRulesTest {
  private static final int ZONES = 2000;

  @Test
  @DisplayName(
      "48 rules written by hand fire as the pack's do, on 2,000 plausible zones from all known to little known")
  void they_fire_where_the_rules_of_the_pack_fire() {
    RulePack pack = BuiltInPack.pack();
    PlainEngine engine = new PlainEngine(pack);
    PlainRules rules = new PlainRules(pack, FactDictionary.standard());
    HandWrittenRules byHand = new HandWrittenRules(pack.limits());
    Set<String> seen = new HashSet<>();
    for (Site site : ZoneTables.of(ZONES, 21).sites()) {
      FactView known = ZoneViews.known(site, site.zones().get(0), FactDictionary.standard());
      FactView view = rules.complete(known);
      List<String> fired = new ArrayList<>();
      byHand.fire(new PlainZone(view), fired);
      assertThat(fired)
          .containsExactlyInAnyOrderElementsOf(
              engine.fire(view, Rule.Phase.SCREEN).stream()
                  .map(Rule::id)
                  .filter(HandWrittenRules.IDS::contains)
                  .toList());
      seen.addAll(fired);
    }
    assertThat(HandWrittenRules.IDS).hasSizeGreaterThanOrEqualTo(40).doesNotHaveDuplicates();
    assertThat(seen).as("rules that fired at least once").hasSizeGreaterThan(40);
  }
}
