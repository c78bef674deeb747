package underhold.report.dossier;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import underhold.advice.Finding;
import underhold.advice.Rule;
import underhold.consult.ZoneAdvice;
import underhold.consult.stage.StagePlan;
import underhold.quantity.UnitSystem;
import underhold.report.AdviceJson;
import underhold.report.Json;
import underhold.report.document.Anchors;
import underhold.report.document.Block;
import underhold.report.document.Document;
import underhold.report.document.Prose;
import underhold.report.document.Section;
import underhold.report.drawing.Drawn;
import underhold.report.drawing.Figure;
import underhold.report.json.JsonWriter;
import underhold.report.markdown.MarkdownWriter;
import underhold.site.Origin;
import underhold.site.Site;
import underhold.site.ZoneViews;
import underhold.sizing.Sheet;

/** The packages of all demo sites: whole, linked, and saying what the advice says. */
class DossierTest {
  static Stream<String> demos() {
    return Demos.names();
  }

  @ParameterizedTest
  @MethodSource("demos")
  void every_audience_has_its_package_in_every_format(String demo) {
    Material material = Demos.material(demo);
    for (Audience audience : Audience.values()) {
      Document document =
          audience == Audience.REVIEWER ? Demos.whole(demo) : Demos.document(material, audience);
      String markdown = MarkdownWriter.text(document);
      Map<String, Object> data =
          audience == Audience.CLIENT ? Dossier.data(material) : Map.of(); // the same for all
      JsonNode json = JsonMapper.shared().readTree(Json.text(new JsonWriter(data).tree(document)));

      assertThat(Anchors.problems(document)).as(audience.word()).isEmpty();
      assertThat(empty(document.sections())).as(audience.word()).isEmpty();
      assertThat(Anchors.of(document)).allMatch(id -> id.matches("[a-z0-9]+(-[a-z0-9]+)*"));
      assertThat(markdown)
          .contains("For review: not for construction", "licensed engineer must check")
          .contains(material.pack().fingerprint(), "2026-03-14")
          .contains(audience.leavesOut().substring(0, 20));
      assertThat(json.get("document").get("sections").size()).isEqualTo(document.sections().size());
      assertThat(json.get("what").asString()).startsWith("A report of Underhold");
      if (audience != Audience.REVIEWER) {
        assertThat(markdown)
            .contains("The reviewer's package of the same site")
            .contains("governs");
      }
    }
  }

  /** The titles of sections under which nothing stands. */
  private static List<String> empty(List<Section> sections) {
    return sections.stream()
        .flatMap(
            section ->
                section.blocks().isEmpty() && section.parts().isEmpty()
                    ? Stream.of(section.title())
                    : empty(section.parts()).stream())
        .toList();
  }

  @ParameterizedTest
  @MethodSource("demos")
  void findings_lead_to_the_trace_the_trace_to_the_rules_and_back(String demo) {
    Material material = Demos.material(demo);
    Document document = Demos.whole(demo);
    Set<String> anchors = new HashSet<>(Anchors.of(document));
    Map<String, Block.Row> rows = byAnchor(document);
    for (ZonePart zone : material.zones()) {
      var screening = zone.advice().screening();
      Stream.of(screening.derivations(), screening.findings(), screening.assumed())
          .flatMap(List::stream)
          .map(finding -> finding.rule().id())
          .forEach(
              id -> assertThat(anchors).contains(Anchor.trace(zone.number(), id), Anchor.rule(id)));
      for (var advice : zone.advice().ranking().options()) {
        for (Finding finding : advice.findings()) {
          String id = finding.rule().id();
          Block.Row told = row(rows, Anchor.reason(zone.number(), advice.option(), id));
          Block.Row traced = row(rows, Anchor.trace(zone.number(), id));

          assertThat(targets(told)).contains(Anchor.trace(zone.number(), id));
          assertThat(targets(traced))
              .contains(Anchor.rule(id), Anchor.reason(zone.number(), advice.option(), id));
          assertThat(targets(row(rows, Anchor.rule(id)))).contains(Anchor.trace(zone.number(), id));
        }
      }
      Stream.concat(zone.advice().conditions().stream(), zone.advice().cautions().stream())
          .map(finding -> finding.rule().id())
          .forEach(
              id ->
                  assertThat(targets(row(rows, Anchor.trace(zone.number(), id))))
                      .containsAnyOf(
                          Anchor.condition(zone.number(), id), Anchor.caution(zone.number(), id)));
    }
  }

  @ParameterizedTest
  @MethodSource("demos")
  void all_that_nobody_stated_stands_in_the_register(String demo) {
    Material material = Demos.material(demo);
    Document document = Demos.whole(demo);
    Section register = section(document, "assumptions");
    Set<String> led = targets(register);
    Set<String> anchors = new HashSet<>(Anchors.of(document));
    for (ZoneSheet sheet : material.sheets()) {
      sheet.sheet().inputs().stream()
          .filter(input -> !Set.of("stated", "derived").contains(input.origin().label()))
          .forEach(input -> assertThat(led).contains(sheet.anchor("input", input.name())));
    }
    for (ZonePart zone : material.zones()) {
      ZoneViews.cautious(zone.advice().view()).present().stream()
          .filter(fact -> fact.origin() == Origin.ASSUMED)
          .forEach(
              fact -> assertThat(anchors).contains(Anchor.assumed(zone.number(), fact.name())));
    }
    material
        .madePlan()
        .ifPresent(
            plan ->
                plan.settings()
                    .table()
                    .names()
                    .forEach(name -> assertThat(words(register)).contains("(" + name + ")")));
  }

  @ParameterizedTest
  @MethodSource("demos")
  void every_source_cited_stands_in_the_bibliography_with_its_basis(String demo) {
    Material material = Demos.material(demo);
    Document document = Demos.whole(demo);
    Map<String, Block.Row> rows = byAnchor(document);
    List<String> listed =
        rows(section(document, "sources")).stream()
            .map(row -> row.cells().stream().map(Prose::text).collect(Collectors.joining(" / ")))
            .toList();
    for (ZoneSheet sheet : material.sheets()) {
      CitationsTest.sources(sheet)
          .filter(Citations::isSource)
          .forEach(
              source ->
                  assertThat(listed)
                      .anyMatch(
                          row ->
                              (row.contains("] / " + Work.of(source.citation()).title() + " / ")
                                      || row.startsWith(Work.of(source.citation()).title() + " / "))
                                  && row.contains(source.basis().label())));
    }
    for (ZonePart zone : material.zones()) {
      for (Finding finding : zone.advice().screening().findings()) {
        for (Rule.Citation citation : finding.rule().citations()) {
          Block.Row row = row(rows, Anchor.source(citation.key()));

          assertThat(row.cells().get(2).text()).contains(finding.rule().basis().notice());
          assertThat(targets(row)).contains(Anchor.rule(finding.rule().id()));
          if (material.pack().source(citation.key()).fromMemory()) {
            assertThat(row.cells().get(1).text()).endsWith("(from memory, verify)");
          }
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("demos")
  void it_says_what_the_advice_says(String demo) {
    Material material = Demos.material(demo);
    Document document = Demos.whole(demo);
    JsonNode advice =
        JsonMapper.shared().readTree(Json.text(AdviceJson.of(material.consultation())));
    for (ZonePart zone : material.zones()) {
      JsonNode said = advice.get("zones").get(zone.number() - 1);
      assertThat(words(section(document, "recommendation-" + zone.number())))
          .contains(said.get("verdict").asString());
      int place = 0;
      List<Block.Row> rows = rows(section(document, "options-" + zone.number()));
      assertThat(rows).hasSameSizeAs(said.get("options"));
      for (JsonNode option : said.get("options")) {
        Block.Row row = rows.get(place++);
        boolean out = option.get("standing").asString().equals("ruled out");

        assertThat(row.anchor()).endsWith(option.get("id").asString());
        assertThat(row.cells().get(1).text()).startsWith(option.get("standing").asString());
        assertThat(row.cells().get(2).text())
            .isEqualTo(
                out
                    ? "none"
                    : String.format("%+d", option.get("score").asInt()).replace("+0", "0"));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("demos")
  void every_check_that_does_not_pass_is_said_to_be_open(String demo) {
    Material material = Demos.material(demo);
    for (Audience audience : List.of(Audience.REVIEWER, Audience.SITE)) {
      Section open = section(Demos.document(material, audience), "not-proved");
      for (ZonePart zone : material.zones()) {
        material
            .chosen(zone)
            .ifPresent(
                sheet ->
                    sheet.sheet().checks().stream()
                        .filter(check -> !check.verdict().label().equals("passes"))
                        .forEach(check -> assertThat(words(open)).contains(check.title())));
      }
    }
  }

  @Test
  void drawings_stand_where_they_belong_each_with_an_anchor_of_its_own() {
    Material material = Demos.material("three-bridges-interchange.site.json");
    List<String> prefixes = new ArrayList<>();
    Document document =
        Dossier.of(material, Commission.of(Audience.REVIEWER, Demos.DATE), new Sketches(prefixes));

    assertThat(Anchors.problems(document)).isEmpty();
    assertThat(Anchors.of(document)).containsAll(prefixes);
    assertThat(prefixes)
        .doesNotHaveDuplicates()
        .contains("figure-zone-3", "figure-options-1", "figure-plan")
        .contains("figure-sheet-2-edge-pits");
  }

  /** One sketch for every call, whose id is the prefix itself. */
  private record Sketches(List<String> prefixes) implements Illustrations {
    @Override
    public List<Drawn> ofZone(Site site, ZoneAdvice advice, String prefix, UnitSystem units) {
      return sketch(prefix);
    }

    @Override
    public List<Drawn> ofAdvice(ZoneAdvice advice, String prefix) {
      return sketch(prefix);
    }

    @Override
    public List<Drawn> ofSheet(
        Sheet sheet, Site site, ZoneAdvice advice, String prefix, UnitSystem units) {
      return sketch(prefix);
    }

    @Override
    public List<Drawn> ofPlan(StagePlan plan, String prefix) {
      return sketch(prefix);
    }

    private List<Drawn> sketch(String prefix) {
      prefixes.add(prefix);
      return List.of(
          Drawn.of(new Figure(prefix, "sketch", "<svg></svg>", 10, 10, List.of("a sketch"))));
    }
  }

  @Test
  void the_date_stands_on_the_cover_and_nowhere_else() {
    Material material = Demos.material("alder-row-party-wall.site.json");
    List<String> one =
        MarkdownWriter.text(Demos.document(material, Audience.REVIEWER)).lines().toList();
    List<String> other =
        MarkdownWriter.text(
                Dossier.of(
                    material,
                    Commission.of(Audience.REVIEWER, Demos.DATE.plusDays(1)),
                    Illustrations.NONE))
            .lines()
            .toList();

    List<String> changed = new ArrayList<>(other);
    changed.removeAll(one);
    assertThat(other).hasSameSizeAs(one);
    assertThat(changed).containsExactly("- **Date**: 2026-03-15");
  }

  private static Section section(Document document, String id) {
    return sections(document.sections())
        .filter(section -> section.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no section " + id));
  }

  private static Stream<Section> sections(List<Section> sections) {
    return sections.stream().flatMap(one -> Stream.concat(Stream.of(one), sections(one.parts())));
  }

  private static List<Block.Row> rows(Section section) {
    return sections(List.of(section))
        .flatMap(one -> one.blocks().stream())
        .filter(Block.Table.class::isInstance)
        .flatMap(table -> ((Block.Table) table).rows().stream())
        .toList();
  }

  private static Map<String, Block.Row> byAnchor(Document document) {
    Map<String, Block.Row> byAnchor = new HashMap<>();
    document.sections().stream()
        .flatMap(section -> rows(section).stream())
        .forEach(row -> byAnchor.put(row.anchor(), row));
    return byAnchor;
  }

  private static Block.Row row(Map<String, Block.Row> rows, String anchor) {
    Block.Row row = rows.get(anchor);
    if (row == null) {
      throw new AssertionError("no row " + anchor);
    }
    return row;
  }

  private static Set<String> targets(Block.Row row) {
    return Stream.concat(row.cells().stream(), Stream.of(row.note()))
        .flatMap(cell -> cell.spans().stream())
        .map(Prose.Span::target)
        .collect(Collectors.toSet());
  }

  private static Set<String> targets(Section section) {
    return new HashSet<>(Anchors.targets(new Document("", "", List.of(), List.of(section))));
  }

  /** All words of a section, notices and tables as well. */
  private static String words(Section section) {
    return MarkdownWriter.text(new Document("", "", List.of(), List.of(section)))
        .replaceAll("\\\\(\\p{Punct})", "$1")
        .replaceAll("\n(?:> )?(?=[A-Z])", " ")
        .replaceAll("[`*]", "");
  }
}
