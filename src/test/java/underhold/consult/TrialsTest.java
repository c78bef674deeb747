package underhold.consult;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.advice.BuiltInPack;
import underhold.advice.OptionAdvice;
import underhold.advice.Ranking;
import underhold.advice.Standing;
import underhold.advice.SupportOption;
import underhold.consult.trial.Outcome;
import underhold.consult.trial.Trials;
import underhold.site.Site;
import underhold.site.Zone;

/** The short way of the trials against the whole consultation with the rule engine. */
class TrialsTest {
  private static final int SITES = 600;

  private final Consultant consultant = Consultant.toCheckBy(BuiltInPack.pack());

  @Test
  @DisplayName(
      "Trials name the leader, the ties, the standings and the scores of the whole consultation: 600 plausible sites, from all known to little known")
  void trials_agree_with_the_whole_consultation() {
    PlausibleSites sites = new PlausibleSites(77);
    Map<String, Integer> leaders = new HashMap<>();
    int lazy = 0;
    for (int i = 0; i < SITES; i++) {
      Site site = PlausibleSites.site(sites.forget(sites.next(), (i % 4) * 0.25));
      Zone zone = site.zones().get(0);
      Ranking whole = consultant.ranking(site, zone);
      Trials trials = consultant.trials(site, zone);
      Outcome outcome = trials.of(zone);
      assertThat(outcome.leaders()).containsExactlyInAnyOrderElementsOf(leaders(whole));
      assertThat(outcome.leader()).isEqualTo(whole.leader().map(OptionAdvice::option));
      Outcome all = trials.of(trials.view(zone), Set.of(SupportOption.values()));
      for (SupportOption option : SupportOption.values()) {
        same(whole.of(option), all.of(option));
        if (outcome.sized().contains(option)) {
          same(whole.of(option), outcome.of(option));
        }
      }
      lazy += all.sized().size() - outcome.sized().size();
      leaders.merge(outcome.leaderId(), 1, Integer::sum);
    }
    assertThat(leaders.size()).isGreaterThan(5);
    assertThat(lazy).isGreaterThan(SITES);
  }

  private static void same(OptionAdvice whole, Outcome.Placing trial) {
    assertThat(trial.score()).isEqualTo(whole.score());
    assertThat(trial.spokenFor()).isEqualTo(whole.spokenFor());
    assertThat(trial.state())
        .isEqualTo(
            switch (whole.standing()) {
              case LEADS, WORKS, WORKS_IF -> Outcome.State.IN_RANK;
              case HELD -> Outcome.State.HELD;
              case RULED_OUT -> Outcome.State.RULED_OUT;
            });
  }

  private static List<SupportOption> leaders(Ranking ranking) {
    return ranking.options().stream()
        .filter(o -> o.standing() == Standing.LEADS || o.tied())
        .map(OptionAdvice::option)
        .toList();
  }
}
