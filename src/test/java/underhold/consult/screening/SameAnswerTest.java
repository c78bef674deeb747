package underhold.consult.screening;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import underhold.advice.BuiltInPack;
import underhold.advice.OptionAdvice;
import underhold.consult.Consultant;
import underhold.consult.QuickSizing;
import underhold.consult.ZoneAdvice;
import underhold.consult.ZoneTables;
import underhold.consult.firmness.FirmnessFinder;
import underhold.site.Site;
import underhold.site.SiteReader;
import underhold.site.SiteReading;
import underhold.site.Zone;

/** A screened zone has the answer of the whole advice by the compiled rules. */
class SameAnswerTest {
  private static final int RANDOM_ZONES = 120;

  private final Consultant whole = Consultant.toCheckBy(BuiltInPack.pack());
  private final ZoneScreen screen = new ZoneScreen(Tables.CONSULTANT, 0, 1);

  @TempDir Path folder;

  private List<ScreenedZone> screened(Path... inputs) {
    List<ScreenedZone> all = new ArrayList<>();
    try (ZoneInput input = Tables.input(inputs)) {
      Optional<ZoneEntry> entry = input.next();
      while (entry.isPresent()) {
        ZoneReading reading = entry.get().reading().get();
        assertThat(reading).isInstanceOf(ZoneReading.Read.class);
        ZoneReading.Read read = (ZoneReading.Read) reading;
        all.add(screen.screen(entry.get().place(), entry.get().id(), read.site(), read.zone()));
        entry = input.next();
      }
    }
    return all;
  }

  private static void same(ScreenedZone zone, ZoneAdvice advice) {
    assertThat(zone.advice().ranking()).as(zone.place().text()).isEqualTo(advice.ranking());
    assertThat(zone.open()).isEqualTo(Tables.CONSULTANT.open(advice));
    assertThat(zone.advice().screening().findings()).isEqualTo(advice.screening().findings());
    assertThat(zone.advice().conditions()).isEqualTo(advice.conditions());
    assertThat(zone.sizing().flatMap(QuickSizing::governing))
        .isEqualTo(
            advice
                .ranking()
                .leader()
                .map(OptionAdvice::option)
                .flatMap(advice::sizing)
                .flatMap(QuickSizing::governing));
  }

  @Test
  @DisplayName(
      "Every demo and published site: ranking, findings, conditions and governing check of the whole advice")
  void demo_and_published_sites() {
    for (String named : List.of("cases/demo", "cases/published")) {
      List<ScreenedZone> zones = screened(Path.of(named));
      assertThat(zones).hasSizeGreaterThan(8);
      for (ScreenedZone zone : zones) {
        Site site =
            SiteReader.read(Path.of(zone.place().source()))
                .fold(
                    SiteReading.Valid::site,
                    invalid -> {
                      throw new AssertionError(invalid.problems().toString());
                    });
        Zone own =
            site.zones().stream()
                .filter(one -> one.name().equals(zone.place().zone()))
                .findFirst()
                .orElseThrow();
        same(zone, whole.reasons(site, own));
      }
    }
  }

  @Test
  @DisplayName(
      "120 random zones written as a table and read again have the answers of the zones themselves")
  void random_zones_through_a_table() {
    ZoneTables tables = ZoneTables.of(RANDOM_ZONES, 3);
    List<ScreenedZone> zones = screened(tables.write(folder.resolve("random.csv")));

    List<Site> sites = tables.sites();
    assertThat(zones).hasSize(sites.size());
    for (int i = 0; i < sites.size(); i++) {
      Site site = sites.get(i);
      same(zones.get(i), whole.reasons(site, site.zones().get(0)));
    }
    assertThat(zones.stream().map(zone -> zone.leader().map(OptionAdvice::option)).distinct())
        .hasSizeGreaterThan(5);
  }

  @Test
  @DisplayName("The draws are the first ones of the whole advice: all 100 of them count the same")
  void the_draws_are_those_of_the_advice() {
    Site site = ZoneTables.of(3, 8).sites().get(2);
    Zone zone = site.zones().get(0);

    int all = Tables.CONSULTANT.stayed(site, zone, 100, FirmnessFinder.USUAL_SEED);

    ZoneAdvice advice = whole.firm(site, zone, 100, FirmnessFinder.USUAL_SEED);
    assertThat(all).isEqualTo(advice.firmness().orElseThrow().stayed());
  }
}
