package underhold.consult;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.advice.OptionAdvice;
import underhold.advice.Standing;
import underhold.advice.SupportOption;
import underhold.quantity.Measure;
import underhold.quantity.Quantity;
import underhold.site.FactValue;
import underhold.site.Site;
import underhold.site.StatedFact;
import underhold.site.Zone;

/** What the quick sizing says comes back into the ranking; own cases on the demo sites. */
class ConfirmationTest {
  private static final Consultant CONSULTANT = Consultant.standard();

  private static ZoneAdvice advise(Site site) {
    return CONSULTANT.advise(site, site.zones().get(0));
  }

  private static Site with(Site site, String fact, Quantity quantity) {
    Zone zone = site.zones().get(0);
    Map<String, StatedFact> facts = new LinkedHashMap<>(zone.facts());
    facts.put(fact, new StatedFact(new FactValue.Amount(quantity), ""));
    return new Site(
        site.name(),
        site.units(),
        site.facts(),
        site.ground(),
        List.of(new Zone(zone.name(), facts, zone.ground(), zone.note())),
        site.sizing(),
        site.note());
  }

  private static List<String> confirmed(ZoneAdvice advice, SupportOption option) {
    return advice.ranking().of(option).findings().stream()
        .map(finding -> finding.rule().id())
        .filter(id -> id.startsWith("CNF"))
        .toList();
  }

  @Test
  @DisplayName(
      "Own case: a column ten times heavier finds no needle in the table; needles lose the lead")
  void a_load_that_no_section_carries_speaks_against_needles() {
    Site site = SizingSites.demo("ferry-street-column");
    ZoneAdvice usual = advise(site);
    assertThat(usual.ranking().leader().orElseThrow().option()).isEqualTo(SupportOption.NEEDLES);
    assertThat(confirmed(usual, SupportOption.NEEDLES)).doesNotContain("CNF-05");

    ZoneAdvice heavy = advise(with(site, "columnLoad", Quantity.of(8452, Measure.FORCE, "kN")));
    OptionAdvice needles = heavy.ranking().of(SupportOption.NEEDLES);
    assertThat(confirmed(heavy, SupportOption.NEEDLES)).contains("CNF-05");
    assertThat(needles.score()).isLessThan(usual.ranking().of(SupportOption.NEEDLES).score());
    assertThat(needles.standing()).isNotEqualTo(Standing.LEADS);
    assertThat(heavy.view().fact("needleSection").text()).isEqualTo("fails");
    assertThat(heavy.view().fact("needleSection").how()).contains("Needle");
  }

  @Test
  @DisplayName("Every option left is sized once in the answer, and those ruled out are not")
  void options_left_are_sized_and_options_ruled_out_are_not() {
    for (Site site : SizingSites.demos()) {
      ZoneAdvice advice = advise(site);
      for (SupportOption option : SupportOption.values()) {
        boolean out = advice.ranking().of(option).standing() == Standing.RULED_OUT;
        boolean sized = advice.sizing(option).isPresent();
        assertThat(sized)
            .as(site.name() + ", " + option.id())
            .isEqualTo(!out && option != SupportOption.REFER);
      }
    }
  }

  @Test
  @DisplayName("Settings in the file that cannot be used are asked about, not passed over")
  void unusable_settings_are_asked_about() {
    Site site =
        SizingSites.with(
            SizingSites.demo("alder-row-party-wall"),
            underhold.quantity.UnitSystem.SI,
            Map.of("widestPit", "9 kg"));
    QuickSizing pits = advise(site).sizing(SupportOption.PITS).orElseThrow();
    assertThat(pits.complete()).isFalse();
    assertThat(pits.sheet().missing()).hasSize(1);
    assertThat(pits.sheet().missing().get(0).why()).contains("widest-pit", "9 kg");
  }
}
