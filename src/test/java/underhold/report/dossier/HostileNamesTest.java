package underhold.report.dossier;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import underhold.report.Json;
import underhold.report.document.Anchors;
import underhold.report.document.Block;
import underhold.report.document.Document;
import underhold.report.document.Section;
import underhold.report.json.JsonWriter;
import underhold.report.markdown.MarkdownWriter;
import underhold.site.Relation;
import underhold.site.Site;
import underhold.site.StatedFact;
import underhold.site.Zone;

/** Whatever a user calls a site, its zones and notes: only the words change. */
class HostileNamesTest {
  private static final String DEMO = "alder-row-party-wall.site.json";
  private static final Site PLAIN = called("plain");
  private static final Material PLAIN_MATERIAL = Demos.material(PLAIN);

  /** Everything at once, and very long; each site is consulted once for all tests. */
  private static final Map<String, Material> HOSTILE =
      Stream.of(
              "<script>alert(1)</script> ](#stage-1) <a id=\"trace\"></a> | x | `y` # z"
                  + "\nsecond\r\n\tthird \u0000\u0007\u001b[31m \u202eturned\u2066 \u200f\u061c",
              "wide " + "x".repeat(10_000))
          .collect(Collectors.toMap(name -> name, name -> Demos.material(called(name))));

  static Stream<String> names() {
    return HOSTILE.keySet().stream();
  }

  @ParameterizedTest
  @MethodSource("names")
  void only_the_words_change(String name) {
    Material hostile = HOSTILE.get(name);
    for (Audience audience : Audience.values()) {
      Document plain = Demos.document(PLAIN_MATERIAL, audience);
      Document document = Demos.document(hostile, audience);

      assertThat(skeleton(document.sections())).isEqualTo(skeleton(plain.sections()));
      assertThat(Anchors.targets(document)).isEqualTo(Anchors.targets(plain));
      assertThat(Anchors.problems(document)).isEmpty();
      String text = MarkdownWriter.text(document);
      assertThat(text.lines().count()).isEqualTo(MarkdownWriter.text(plain).lines().count());
      assertThat(text)
          .doesNotContain("\u202e", "\u2066", "\u200f", "\u061c", "\u001b")
          .doesNotContain("<script>alert(1)</script> ")
          .doesNotContain("\n<script>");
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void json_holds_the_names_as_text(String name) {
    Material hostile = HOSTILE.get(name);
    JsonNode json =
        JsonMapper.shared()
            .readTree(
                Json.text(
                    new JsonWriter(Dossier.data(hostile))
                        .tree(Demos.document(hostile, Audience.CLIENT))));

    assertThat(json.get("data").get("advice").get("site").get("name").asString())
        .isEqualTo("site " + name);
    assertThat(json.get("document").get("title").asString())
        .endsWith(": summary for the client")
        .doesNotContain("\n", "\u0000", "\u202e");
  }

  /** The demo site with everything a user may call by a name called so. */
  private static Site called(String name) {
    Site site = Demos.site(DEMO);
    Map<String, String> names = new LinkedHashMap<>();
    List<Zone> zones = new ArrayList<>();
    for (Zone zone : site.zones()) {
      String other = "zone " + zones.size() + " " + name;
      names.put(zone.name(), other);
      zones.add(new Zone(other, noted(zone.facts(), name), zone.ground(), name));
    }
    return new Site(
        "site " + name,
        site.units(),
        noted(site.facts(), name),
        site.ground(),
        zones,
        site.relations().stream()
            .map(
                one ->
                    new Relation(
                        names.getOrDefault(one.first(), one.first()),
                        names.getOrDefault(one.second(), one.second()),
                        one.facts(),
                        name))
            .toList(),
        site.sizing(),
        name);
  }

  private static Map<String, StatedFact> noted(Map<String, StatedFact> facts, String note) {
    Map<String, StatedFact> noted = new LinkedHashMap<>();
    facts.forEach((name, fact) -> noted.put(name, new StatedFact(fact.value(), note)));
    return noted;
  }

  /** What a document is made of, without its words. */
  private static List<String> skeleton(List<Section> sections) {
    List<String> bones = new ArrayList<>();
    for (Section section : sections) {
      bones.add("section " + section.id());
      section.blocks().forEach(block -> bones.add(bone(block)));
      bones.addAll(skeleton(section.parts()));
    }
    return bones;
  }

  private static String bone(Block block) {
    String kind = block.getClass().getSimpleName();
    if (block instanceof Block.Table table) {
      return kind
          + table.columns().size()
          + table.rows().stream().map(row -> row.anchor() + row.tone()).toList();
    }
    if (block instanceof Block.Listing listing) {
      return kind + listing.items().size();
    }
    return kind;
  }
}
