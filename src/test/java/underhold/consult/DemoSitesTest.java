package underhold.consult;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underhold.advice.OptionAdvice;
import underhold.advice.Standing;
import underhold.advice.SupportOption;
import underhold.site.FactDictionary;
import underhold.site.FactReader;
import underhold.site.GroundProfile;
import underhold.site.Site;
import underhold.site.SiteProblem;
import underhold.site.SiteReader;
import underhold.site.StatedFact;
import underhold.site.Zone;

/**
 * The demo sites (invented) lead where a practitioner would expect; the turning points are common
 * practice.
 */
class DemoSitesTest {
  private static final Path DEMO = Path.of("cases/demo");

  private final Consultant consultant = Consultant.standard();

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "alder-row-party-wall,pits",
    "ferry-street-column,needles",
    "harbour-mill-columns,drilled-piles",
    "kestrel-road-platform,bracket-piles",
    "orchard-line-box,edge-pits",
    "college-green-library,monitor",
    "willow-quay-warehouse,refer"
  })
  @DisplayName("demo site leads with")
  void leads_with(String name, String option) {
    Consultation consultation = consultant.advise(site(name));
    assertThat(consultation.zones()).hasSize(1);
    assertThat(leader(consultation.zones().get(0))).isEqualTo(option);
    assertThat(consultation.zones().get(0).screening().conflicts()).isEmpty();
  }

  @Test
  void three_zones_marry_drilled_piles_edge_pits_and_brackets() {
    Map<String, String> leaders =
        consultant.advise(site("three-bridges-interchange")).zones().stream()
            .collect(Collectors.toMap(ZoneAdvice::name, DemoSitesTest::leader));
    assertThat(leaders)
        .containsOnly(
            Map.entry("box over the cut", "drilled-piles"),
            Map.entry("end of the cut", "edge-pits"),
            Map.entry("platform edge", "bracket-piles"));
  }

  @Test
  void knowing_nearly_nothing_gives_no_leader_and_asks() {
    ZoneAdvice zone = consultant.advise(site("first-visit-chapel-hill")).zones().get(0);
    assertThat(leader(zone)).isEmpty();
    assertThat(zone.questions().list()).hasSizeGreaterThan(5);
    assertThat(zone.questions().list().get(0).decides()).isTrue();
    assertThat(zone.ranking().of(SupportOption.PITS).standing()).isEqualTo(Standing.HELD);
  }

  @Test
  @DisplayName(
      "Common practice: rock that stands by itself at the edge drops the edge pits, drilled piles remain")
  void rock_at_the_edge_drops_edge_pits() {
    Site rock =
        with(site("orchard-line-box"), Map.of("edgeGround", "rock", "rockJoints", "favourable"));
    ZoneAdvice zone = consultant.advise(rock).zones().get(0);
    assertThat(leader(zone)).isEqualTo("drilled-piles");
    OptionAdvice edgePits = zone.ranking().of(SupportOption.EDGE_PITS);
    assertThat(edgePits.findings()).anyMatch(finding -> finding.rule().id().equals("HYB-11"));
  }

  @Test
  @DisplayName(
      "Common practice: water that stands in the sand and may not be lowered takes pits out, permission brings them back")
  void water_decides_on_pits() {
    Map<String, String> wet =
        Map.of(
            "worstSoil",
            "dense-sand",
            "soilAtFooting",
            "dense-sand",
            "bearingDepth",
            "0 m",
            "bearingKind",
            "dense-granular",
            "groundWaterDepth",
            "2 m",
            "drawdownAllowed",
            "no",
            "permeability",
            "1e-4 m/s",
            "drawdownHarm",
            "none");
    Site refused = with(site("alder-row-party-wall"), wet);
    assertThat(standing(refused, SupportOption.PITS)).isEqualTo(Standing.RULED_OUT);
    Map<String, String> allowed = new LinkedHashMap<>(wet);
    allowed.put("drawdownAllowed", "yes");
    assertThat(standing(with(site("alder-row-party-wall"), allowed), SupportOption.PITS))
        .isNotEqualTo(Standing.RULED_OUT);
  }

  @Test
  void every_demo_file_is_sound() throws IOException {
    try (Stream<Path> files = Files.list(DEMO)) {
      List<Path> all = files.filter(path -> path.toString().endsWith(".site.json")).toList();
      assertThat(all).hasSizeGreaterThanOrEqualTo(8);
      assertThat(all).allSatisfy(path -> assertThat(read(path).zones()).isNotEmpty());
    }
  }

  @Test
  @DisplayName(
      "A site of which only the required facts are stated is answered honestly: questions, no leader")
  void all_optional_unknown() {
    for (String load : List.of("concentrated", "continuous", "area", "cantilevered-edge")) {
      for (String position :
          List.of(
              "beside",
              "partly-under",
              "wholly-under",
              "crosses-support",
              "inside-walls",
              "no-excavation")) {
        StringBuilder facts = new StringBuilder();
        FactDictionary.standard().all().stream()
            .filter(fact -> !fact.derived() && !fact.required())
            .forEach(fact -> facts.append(", \"").append(fact.name()).append("\": \"unknown\""));
        String text =
            "{\"underhold\": \"site/1\", \"name\": \"n\", \"zones\": [{\"name\": \"z\", \"facts\": {\"loadPattern\": \""
                + load
                + "\", \"excavationPosition\": \""
                + position
                + "\""
                + facts
                + "}}]}";
        Site site =
            SiteReader.read(text, "n.site.json")
                .fold(valid -> valid.site(), invalid -> failed(invalid.problems()));
        ZoneAdvice zone = consultant.advise(site).zones().get(0);
        zone.ranking()
            .leader()
            .ifPresent(
                leader ->
                    assertThat(leader.findings())
                        .as("what leads rests on the two facts stated")
                        .allMatch(f -> f.facts().stream().allMatch(x -> x.origin().isKnown())));
        assertThat(zone.questions().list()).isNotEmpty();
        assertThat(zone.questions().kept()).isLessThan(zone.questions().trials());
      }
    }
  }

  private Standing standing(Site site, SupportOption option) {
    return consultant.advise(site).zones().get(0).ranking().of(option).standing();
  }

  private static String leader(ZoneAdvice zone) {
    return zone.ranking().leader().map(advice -> advice.option().id()).orElse("");
  }

  static Site site(String name) {
    return read(DEMO.resolve(name + ".site.json"));
  }

  private static Site read(Path path) {
    return SiteReader.read(path).fold(valid -> valid.site(), invalid -> failed(invalid.problems()));
  }

  private static Site failed(List<SiteProblem> problems) {
    throw new UncheckedIOException(
        new IOException(problems.stream().map(SiteProblem::text).toList().toString()));
  }

  /** The site with facts of its only zone changed; without its layers where the soil is stated. */
  private static Site with(Site site, Map<String, String> changes) {
    Zone zone = site.zones().get(0);
    Map<String, StatedFact> facts = new LinkedHashMap<>(zone.facts());
    Map<String, StatedFact> common = new LinkedHashMap<>(site.facts());
    changes.forEach(
        (name, typed) -> {
          common.remove(name);
          facts.put(
              name,
              new StatedFact(
                  FactReader.read(FactDictionary.standard().require(name), typed)
                      .fold(
                          value -> value,
                          () -> {
                            throw new IllegalArgumentException(name);
                          },
                          rejected -> {
                            throw new IllegalArgumentException(rejected.explanation());
                          }),
                  ""));
        });
    GroundProfile ground = changes.containsKey("worstSoil") ? GroundProfile.NONE : site.ground();
    return new Site(
        site.name(),
        site.units(),
        common,
        ground,
        List.of(new Zone(zone.name(), facts, zone.ground(), zone.note())),
        site.sizing(),
        site.note());
  }
}
