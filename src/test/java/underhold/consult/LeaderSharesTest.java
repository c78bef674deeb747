package underhold.consult;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.advice.Ranking;
import underhold.advice.Standing;
import underhold.advice.SupportOption;
import underhold.site.Site;

/**
 * How often each option leads over many plausible sites: a check of the pack's balance (judgement).
 */
class LeaderSharesTest {
  private static final int SITES = 5000;
  private static final double NEARLY_EVERYWHERE = 0.5;

  private final Consultant consultant = Consultant.standard();

  @Test
  @DisplayName(
      "Over 5,000 plausible sites with all facts known every option leads somewhere, none nearly everywhere")
  void every_option_leads_somewhere_with_all_known() {
    Shares shares = shares(0);
    System.out.println("all facts known: " + shares);
    for (SupportOption option : SupportOption.values()) {
      assertThat(shares.leads(option)).as(option.id()).isBetween(0.002, NEARLY_EVERYWHERE);
    }
  }

  @Test
  @DisplayName(
      "Over 5,000 plausible sites with half the facts unknown every option leads somewhere, none nearly everywhere")
  void every_option_leads_somewhere_with_half_unknown() {
    Shares shares = shares(0.5);
    System.out.println("half the facts unknown: " + shares);
    for (SupportOption option : SupportOption.values()) {
      assertThat(shares.leads(option)).as(option.id()).isBetween(0.0002, NEARLY_EVERYWHERE);
    }
    assertThat(shares.noChoice).isGreaterThan(0);
    assertThat(shares.withHold).isGreaterThan(0);
  }

  private Shares shares(double forgotten) {
    PlausibleSites sites = new PlausibleSites(20261125);
    Shares shares = new Shares();
    for (int i = 0; i < SITES; i++) {
      Map<String, String> facts = sites.next();
      Site site = PlausibleSites.site(forgotten > 0 ? sites.forget(facts, forgotten) : facts);
      shares.add(consultant.rank(site, site.zones().get(0)));
    }
    return shares;
  }

  /** Counts of leaders, ties, holds and sites without a choice. */
  private static final class Shares {
    private final Map<SupportOption, Integer> leaders = new EnumMap<>(SupportOption.class);
    private int noChoice;
    private int ties;
    private int withHold;

    void add(Ranking ranking) {
      ranking
          .leader()
          .ifPresentOrElse(
              leader -> leaders.merge(leader.option(), 1, Integer::sum), () -> noChoice++);
      if (!ranking.tiedWithLeader().isEmpty()) {
        ties++;
      }
      if (ranking.options().stream().anyMatch(o -> o.standing() == Standing.HELD)) {
        withHold++;
      }
    }

    double leads(SupportOption option) {
      return leaders.getOrDefault(option, 0) / (double) SITES;
    }

    @Override
    public String toString() {
      return List.of(leaders, "no choice " + noChoice, "ties " + ties, "with a hold " + withHold)
          .toString();
    }
  }
}
