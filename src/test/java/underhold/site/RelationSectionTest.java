package underhold.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** How zones lie to each other: read, written again, and every mistake named with its place. */
class RelationSectionTest {
  private static String site(String relations) {
    return """
        {"underhold": "site/1", "name": "Weir Lane", "units": "SI",
         "facts": {"excavationPosition": "beside", "loadPattern": "continuous"},
         "zones": [{"name": "front"}, {"name": "rear"}, {"name": "wing"}],
         "relations": %s}
        """
        .formatted(relations);
  }

  private static Site valid(String relations) {
    return SiteReader.read(site(relations), "weir.site.json")
        .fold(
            SiteReading.Valid::site,
            invalid -> {
              throw new AssertionError(invalid.problems().toString());
            });
  }

  private static List<String> problems(String relations) {
    return SiteReader.read(site(relations), "weir.site.json")
        .fold(valid -> List.<SiteProblem>of(), SiteReading.Invalid::problems)
        .stream()
        .map(SiteProblem::text)
        .toList();
  }

  @Test
  void a_relation_is_read_and_written_again() {
    String relations =
        "[{\"zones\": [\"front\", \"rear\"], \"note\": \"one wall\", \"facts\": {\"distance\": \"6 ft\","
            + " \"sameWallLine\": true, \"accessThrough\": \"second\", \"oneStructure\": \"unknown\"}}]";
    Site site = valid(relations);

    Relation relation = site.relation("REAR", "front").orElseThrow();
    assertThat(relation.first()).isEqualTo("front");
    assertThat(relation.facts())
        .containsOnlyKeys("distance", "sameWallLine", "accessThrough", "oneStructure");
    assertThat(relation.facts().get("distance").value())
        .hasToString(relation.facts().get("distance").value().toString())
        .isNotNull();
    assertThat(relation.facts().get("oneStructure").value()).isNull();
    assertThat(site.relation("front", "wing")).isEmpty();
    String written = SiteWriter.toText(site);
    assertThat(written).contains("\"6 ft\"");
    assertThat(SiteReader.read(written, "weir.site.json").fold(SiteReading.Valid::site, i -> null))
        .isEqualTo(site);
  }

  @Test
  void what_is_left_out_is_no_problem() {
    assertThat(valid("[]").relations()).isEmpty();
    assertThat(valid("[{\"zones\": [\"front\", \"wing\"]}]").relations()).hasSize(1);
  }

  @Test
  void all_mistakes_are_named_at_once_with_their_places() {
    List<String> problems =
        problems(
            "[{\"zones\": [\"front\", \"raer\"]},"
                + " {\"zones\": [\"front\", \"front\"]},"
                + " {\"zones\": [\"front\"]},"
                + " {\"facts\": {}},"
                + " {\"zones\": [\"front\", \"wing\"], \"facts\": {\"distance\": \"6\", \"firstMethod\": \"pits\","
                + " \"accessThrough\": \"third\", \"nearness\": \"1 m\"}},"
                + " {\"zones\": [\"wing\", \"front\"]}, 7]");

    assertThat(problems)
        .anyMatch(p -> p.contains("relations[0].zones[1]") && p.contains("did you mean \"rear\"?"))
        .anyMatch(p -> p.contains("relations[1].zones") && p.contains("both are the same zone"))
        .anyMatch(p -> p.contains("relations[2].zones") && p.contains("two zones, not 1"))
        .anyMatch(p -> p.contains("relations[3]") && p.contains("names the two zones"))
        .anyMatch(p -> p.contains("relations[4].facts.distance"))
        .anyMatch(p -> p.contains("relations[4].facts.firstMethod") && p.contains("never stated"))
        .anyMatch(p -> p.contains("relations[4].facts.accessThrough"))
        .anyMatch(p -> p.contains("relations[4].facts.nearness"))
        .anyMatch(p -> p.contains("relations[5].zones") && p.contains("the same two zones"))
        .anyMatch(p -> p.contains("relations[6]"))
        .hasSize(10);
  }

  @Test
  void no_fact_of_a_pair_has_the_name_of_a_fact_of_a_zone() {
    Set<String> zone =
        FactDictionary.standard().all().stream()
            .map(FactDefinition::name)
            .collect(Collectors.toSet());
    assertThat(FactDictionary.pairs().all())
        .isNotEmpty()
        .allSatisfy(
            fact -> {
              assertThat(zone).doesNotContain(fact.name());
              assertThat(fact.question()).endsWith(fact.derived() ? "" : "?");
            });
  }
}
