package underhold.report.dossier;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import underhold.report.document.Block;
import underhold.report.document.Document;
import underhold.report.document.Prose;
import underhold.report.document.Section;
import underhold.report.markdown.MarkdownWriter;
import underhold.sizing.Basis;
import underhold.sizing.Source;

/** The numbers of sources: each leads to its entry, and none makes a source worth more. */
class CitationsTest {
  private static final Pattern MARK = Pattern.compile("\\[\\d+]");

  static Stream<String> demos() {
    return Demos.names();
  }

  @ParameterizedTest
  @MethodSource("demos")
  @DisplayName("Every number cited has its entry, every entry is cited, and none is left out")
  void resolve(String demo) {
    for (WhichSheets which : WhichSheets.values()) {
      Document document =
          Dossier.of(
              Demos.material(demo),
              Commission.of(Audience.REVIEWER, Demos.DATE).with(which),
              Illustrations.NONE);
      List<Block.Row> entries = table(document, "Sources cited");
      List<String> numbers = entries.stream().map(row -> row.cells().get(0).text()).toList();
      assertThat(numbers)
          .isEqualTo(
              IntStream.rangeClosed(1, entries.size()).mapToObj(i -> "[" + i + "]").toList());
      Set<String> cited = new TreeSet<>();
      for (Section section : document.sections()) {
        if (!section.id().equals("sources") && !section.id().equals("about")) {
          for (Prose.Span span : spans(section)) {
            if (MARK.matcher(span.text()).matches()) {
              int number = Integer.parseInt(span.text().substring(1, span.text().length() - 1));
              assertThat(number).isBetween(1, entries.size());
              assertThat(span.target()).isEqualTo(entries.get(number - 1).anchor());
              cited.add(span.text());
            } else {
              assertThat(MARK.matcher(span.text()).find())
                  .as("a number that leads nowhere: " + span.text())
                  .isFalse();
            }
          }
        }
      }
      assertThat(cited).containsExactlyInAnyOrderElementsOf(numbers);
    }
  }

  @ParameterizedTest
  @MethodSource("demos")
  @DisplayName("Where a value is used its clause and its basis stand; none is promoted")
  void basis(String demo) {
    Material material = Demos.material(demo);
    Document document = Demos.whole(demo);
    List<Block.Row> rows = document.sections().stream().flatMap(one -> rows(one).stream()).toList();
    List<Block.Row> entries = table(document, "Sources cited");
    List<Block.Row> unnamed = table(document, "Relied on without a source");
    for (ZoneSheet sheet : material.sheets()) {
      sheet
          .sheet()
          .inputs()
          .forEach(
              input ->
                  said(
                      input.source(),
                      row(rows, sheet.anchor("input", input.name())),
                      entries,
                      unnamed));
      sheet
          .sheet()
          .checks()
          .forEach(
              check ->
                  said(
                      check.source(),
                      row(rows, sheet.anchor("check", check.id())),
                      entries,
                      unnamed));
    }
  }

  private static void said(
      Source source, Block.Row row, List<Block.Row> entries, List<Block.Row> unnamed) {
    String words = row.cells().stream().map(Prose::text).collect(Collectors.joining(" / "));
    boolean read = source.basis() == Basis.STANDARD || source.basis() == Basis.PUBLISHED;
    if (!Citations.isSource(source)) {
      assertThat(words).contains(source.words());
      return;
    }
    Work work = Work.of(source.citation());
    if (!read && !work.named()) {
      assertThat(words).contains(source.words());
      assertThat(unnamed)
          .filteredOn(one -> one.cells().get(0).text().equals(work.title()))
          .singleElement()
          .satisfies(one -> assertThat(one.cells().get(1).text()).contains(source.basis().label()));
      return;
    }
    Block.Row entry =
        entries.stream()
            .filter(one -> one.cells().get(1).text().equals(work.title()))
            .findFirst()
            .orElseThrow(() -> new AssertionError("no entry for " + work));
    assertThat(entry.cells().get(2).text()).contains(source.basis().label());
    String mark = entry.cells().get(0).text() + (work.place().isEmpty() ? "" : " " + work.place());
    assertThat(words).contains(read ? mark : mark + " (" + source.basis().label() + ")");
    if (read) {
      assertThat(words).doesNotContain("(common practice)", "(from memory, verify)");
    }
  }

  @Test
  @DisplayName("A source nobody read says so beside the number, in a rule of whatever basis")
  void notRead() {
    Material material = Demos.material("three-bridges-interchange.site.json");
    Citations citations = Citations.numbered(material.pack());
    int seen = 0;
    for (var rule : material.pack().all()) {
      String words = citations.of(rule).text();
      assertThat(words).startsWith(rule.basis().notice());
      boolean anyUnread =
          rule.citations().stream().anyMatch(one -> material.pack().source(one.key()).fromMemory());
      if (anyUnread) {
        assertThat(words).contains("from memory, verify");
        seen++;
      }
    }
    assertThat(seen).isPositive();
  }

  @Test
  @DisplayName("A package without a bibliography cites in full")
  void inFull() {
    Material material = Demos.material("alder-row-party-wall.site.json");
    Document document = Demos.document(material, Audience.SITE);
    String site = MarkdownWriter.text(document);
    Source cited =
        material.chosen(material.zones().get(0)).orElseThrow().sheet().cautions().stream()
            .map(caution -> caution.source())
            .filter(Citations::isSource)
            .findFirst()
            .orElseThrow();

    assertThat(site.replace("\\", "")).contains(cited.words());
    assertThat(document.sections())
        .flatMap(CitationsTest::spans)
        .noneMatch(span -> span.target().matches("(source|cited)-.*"));
  }

  /** Every source on a sheet. */
  static Stream<Source> sources(ZoneSheet sheet) {
    return Stream.of(
            sheet.sheet().inputs().stream().map(input -> input.source()),
            sheet.sheet().steps().stream().map(step -> step.source()),
            sheet.sheet().checks().stream().map(check -> check.source()),
            sheet.sheet().cautions().stream().map(caution -> caution.source()))
        .flatMap(stream -> stream);
  }

  private static List<Block.Row> table(Document document, String caption) {
    return section(document, "sources").blocks().stream()
        .filter(Block.Table.class::isInstance)
        .map(Block.Table.class::cast)
        .filter(table -> table.caption().equals(caption))
        .flatMap(table -> table.rows().stream())
        .toList();
  }

  private static Section section(Document document, String id) {
    return document.sections().stream()
        .filter(section -> section.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static Block.Row row(List<Block.Row> rows, String anchor) {
    return rows.stream().filter(row -> row.anchor().equals(anchor)).findFirst().orElseThrow();
  }

  private static List<Block.Row> rows(Section section) {
    List<Block.Row> rows = new ArrayList<>();
    section.blocks().stream()
        .filter(Block.Table.class::isInstance)
        .forEach(table -> rows.addAll(((Block.Table) table).rows()));
    section.parts().forEach(part -> rows.addAll(rows(part)));
    return rows;
  }

  private static List<Prose.Span> spans(Section section) {
    List<Prose.Span> spans = new ArrayList<>();
    for (Block block : section.blocks()) {
      if (block instanceof Block.Table table) {
        table.rows().forEach(row -> row.cells().forEach(cell -> spans.addAll(cell.spans())));
      } else if (block instanceof Block.Working working) {
        spans.addAll(working.source().spans());
      } else if (block instanceof Block.Paragraph paragraph) {
        spans.addAll(paragraph.words().spans());
      }
    }
    section.parts().forEach(part -> spans.addAll(spans(part)));
    return spans;
  }
}
