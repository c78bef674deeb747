package underhold.consult;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import underhold.advice.BuiltInPack;
import underhold.advice.PackFolder;
import underhold.advice.PackReading;
import underhold.advice.PlainRules;
import underhold.advice.Points;
import underhold.advice.RulePack;
import underhold.advice.SupportOption;
import underhold.consult.trial.Outcome;
import underhold.consult.trial.Trials;
import underhold.site.FactDictionary;
import underhold.site.FactView;
import underhold.site.Site;
import underhold.site.Zone;
import underhold.sizing.Check;
import underhold.sizing.Guesses;
import underhold.sizing.Sheet;
import underhold.sizing.Verdict;

/** What the trials leave out changes nothing that they tell. */
class QuickWaysTest {
  private static final int SITES = 200;
  private static final int SHEETS = 60;

  private static final String MANIFEST =
      """
      {"name": "own", "version": "1", "extends": "built-in", "files": ["own.drl"]}
      """;
  private static final String HEAD =
      """
      package rules.own

      import underhold.advice.ZoneFacts
      global underhold.advice.FindingSink findings

      """;
  private static final String OTHERS =
      rule("pileCapacity == \"fails\"", "edge-pits")
          + rule("bracketBared == \"fails\"", "drilled-piles").replace("OWN-1", "OWN-2");
  private static final String TOGETHER =
      rule("pileCapacity == \"fails\", edgeSliding == \"fails\"", "edge-pits");

  private final Consultant consultant = Consultant.toCheckBy(BuiltInPack.pack());

  @Test
  @DisplayName(
      "The leader, and what is ruled out, are the same where no more is sized than it takes to tell: 200 plausible sites, the pack's weights and weights that tie nothing")
  void the_leader_does_not_depend_on_how_much_is_sized() {
    PlausibleSites sites = new PlausibleSites(5);
    int spared = 0;
    for (int i = 0; i < SITES; i++) {
      Site site = PlausibleSites.site(sites.forget(sites.next(), (i % 4) * 0.25));
      Zone zone = site.zones().get(0);
      Trials usual = consultant.trials(site, zone);
      PlainRules rules = usual.rules();
      for (Trials trials : List.of(usual, usual.by(rules, new Points(7.3, 4.1, 2.9, 1.7)))) {
        Outcome whole = trials.of(trials.view(zone), Set.of(SupportOption.values()));
        Outcome quick = trials.leading(zone);
        assertThat(quick.leader()).isEqualTo(whole.leader());
        for (SupportOption option : SupportOption.values()) {
          assertThat(quick.of(option).state()).isEqualTo(whole.of(option).state());
          assertThat(trials.leads(zone, option))
              .isEqualTo(whole.leader().filter(option::equals).isPresent());
        }
        spared += trials.of(zone).sized().size() - quick.sized().size();
      }
    }
    assertThat(spared).isPositive();
  }

  @Test
  @DisplayName(
      "Where a sheet of one option speaks of another, or two sheets speak together, asking for one option still names the leader: 120 plausible sites")
  void sheets_that_speak_of_others_are_heard(@TempDir Path folder) throws IOException {
    for (String own : List.of(OTHERS, TOGETHER)) {
      Files.writeString(folder.resolve("pack.json"), MANIFEST);
      Files.writeString(folder.resolve("own.drl"), HEAD + own);
      RulePack pack = ((PackReading.Read) PackFolder.read(folder, "own")).pack();
      assertThat(new PlainRules(pack, FactDictionary.standard()).sheetsSpeakApart())
          .isEqualTo(own.equals(OTHERS));
      Consultant other = Consultant.of(pack);
      PlausibleSites sites = new PlausibleSites(8);
      for (int i = 0; i < SHEETS; i++) {
        Site site = PlausibleSites.site(sites.next());
        Zone zone = site.zones().get(0);
        Trials trials = other.trials(site, zone);
        Outcome quick = trials.leading(zone);
        for (SupportOption option : SupportOption.values()) {
          assertThat(trials.leads(zone, option))
              .isEqualTo(quick.leader().filter(option::equals).isPresent());
        }
      }
    }
  }

  @Test
  @DisplayName(
      "A sheet of checks alone holds the checks of the whole sheet, and none passes there that fails here: every method on 60 plausible sites")
  void a_sheet_of_checks_alone_has_the_checks_of_the_whole_sheet() {
    PlausibleSites sites = new PlausibleSites(6);
    SizingDesk desk = new SizingDesk();
    int compared = 0;
    for (int i = 0; i < SHEETS; i++) {
      Site site = PlausibleSites.site(sites.next());
      Zone zone = site.zones().get(0);
      FactView view = consultant.trials(site, zone).view(zone);
      for (SupportOption option : SupportOption.values()) {
        if (option == SupportOption.REFER) {
          continue;
        }
        Sheet whole = desk.quick(site, zone.name(), view, option, Guesses.TRIED).orElseThrow();
        Sheet alone = desk.quick(site, zone.name(), view, option, Guesses.TAKEN).orElseThrow();
        assertThat(alone.missing()).isEqualTo(whole.missing());
        assertThat(alone.steps()).isEmpty();
        assertThat(alone.checks()).hasSameSizeAs(whole.checks());
        for (int j = 0; j < whole.checks().size(); j++) {
          same(whole.checks().get(j), alone.checks().get(j));
          compared++;
        }
      }
    }
    assertThat(compared).isGreaterThan(SHEETS);
  }

  private static String rule(String conditions, String option) {
    return """
        rule "What fails in %2$s."
          @id("OWN-1")
          @basis("judgement")
          @source("")
          @because("It fails.")
          @cause("pile capacity")
          agenda-group "confirm"
        when
          ZoneFacts( %1$s )
        then
          findings.against("%2$s", "decisive", drools.getRule());
        end

        """
        .formatted(conditions, option);
  }

  private static void same(Check whole, Check alone) {
    assertThat(alone.id()).isEqualTo(whole.id());
    assertThat(alone.title()).isEqualTo(whole.title());
    if (whole.id().equals("primary-piles")) { // a sheet's use of guesses says which check governs
      assertThat(alone.verdict() == Verdict.FAILS).isEqualTo(whole.verdict() == Verdict.FAILS);
      return;
    }
    assertThat(alone.demand()).isEqualTo(whole.demand());
    assertThat(alone.capacity()).isEqualTo(whole.capacity());
    boolean referred = whole.verdict() == Verdict.REFER && alone.verdict() == Verdict.PASSES;
    assertThat(referred || alone.verdict() == whole.verdict()).isTrue();
  }
}
