package underhold.report.document;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The places of a document that something can lead to, and what leads to them. */
public final class Anchors {
  private Anchors() {}

  /** Every anchor: of sections, rows, workings and drawings, in the order of the document. */
  public static List<String> of(Document document) {
    List<String> anchors = new ArrayList<>();
    document.sections().forEach(section -> gather(section, anchors));
    return anchors.stream().filter(anchor -> !anchor.isEmpty()).toList();
  }

  private static void gather(Section section, List<String> anchors) {
    anchors.add(section.id());
    for (Block block : section.blocks()) {
      if (block instanceof Block.Table table) {
        table.rows().forEach(row -> anchors.add(row.anchor()));
      } else if (block instanceof Block.Working working) {
        anchors.add(working.anchor());
      } else if (block instanceof Block.Drawn drawn) {
        anchors.add(drawn.figure().id());
      }
    }
    section.parts().forEach(part -> gather(part, anchors));
  }

  /** Every anchor that some words lead to, in the order of the document. */
  public static List<String> targets(Document document) {
    List<Prose> words = new ArrayList<>();
    document.cover().forEach(entry -> words.add(entry.words()));
    document.sections().forEach(section -> words(section, words));
    return words.stream()
        .flatMap(prose -> prose.spans().stream())
        .map(Prose.Span::target)
        .filter(target -> !target.isEmpty())
        .toList();
  }

  private static void words(Section section, List<Prose> words) {
    section.blocks().forEach(block -> in(block).forEach(words::add));
    section.parts().forEach(part -> words(part, words));
  }

  private static Stream<Prose> in(Block block) {
    if (block instanceof Block.Paragraph paragraph) {
      return Stream.of(paragraph.words());
    }
    if (block instanceof Block.Notice notice) {
      return Stream.of(notice.words());
    }
    if (block instanceof Block.Listing listing) {
      return listing.items().stream();
    }
    if (block instanceof Block.Table table) {
      return table.rows().stream()
          .flatMap(row -> Stream.concat(row.cells().stream(), Stream.of(row.note())));
    }
    return block instanceof Block.Working working
        ? Stream.of(working.source(), working.note())
        : Stream.empty();
  }

  /** What is wrong with the anchors: two alike, or words that lead nowhere; empty where nothing. */
  public static List<String> problems(Document document) {
    List<String> problems = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (String anchor : of(document)) {
      if (!seen.add(anchor)) {
        problems.add("two places are called " + anchor);
      }
    }
    targets(document).stream()
        .distinct()
        .filter(target -> !seen.contains(target))
        .forEach(target -> problems.add("nothing is called " + target));
    return problems;
  }
}
