package underhold.report.document;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** A document whose words lead only to what is in it: for one that leaves sections out. */
public final class LiveLinks {
  private final Set<String> anchors;

  private LiveLinks(Set<String> anchors) {
    this.anchors = anchors;
  }

  /** The same document; words that would lead nowhere lead nowhere and stay as they are. */
  public static Document only(Document document) {
    LiveLinks live = new LiveLinks(new HashSet<>(Anchors.of(document)));
    return new Document(
        document.title(),
        document.status(),
        document.cover().stream()
            .map(entry -> new Document.Entry(entry.label(), live.words(entry.words())))
            .toList(),
        document.sections().stream().map(live::section).toList());
  }

  private Section section(Section section) {
    return new Section(
        section.id(),
        section.title(),
        section.blocks().stream().map(this::block).toList(),
        section.parts().stream().map(this::section).toList());
  }

  private Block block(Block block) {
    if (block instanceof Block.Paragraph paragraph) {
      return new Block.Paragraph(words(paragraph.words()));
    }
    if (block instanceof Block.Notice notice) {
      return new Block.Notice(notice.tone(), notice.head(), words(notice.words()));
    }
    if (block instanceof Block.Listing listing) {
      return new Block.Listing(listing.numbered(), all(listing.items()));
    }
    if (block instanceof Block.Table table) {
      return new Block.Table(
          table.caption(),
          table.columns(),
          table.rows().stream()
              .map(
                  row ->
                      new Block.Row(row.anchor(), row.tone(), all(row.cells()), words(row.note())))
              .toList());
    }
    if (block instanceof Block.Working working) {
      return new Block.Working(
          working.anchor(),
          working.title(),
          working.formula(),
          working.symbols(),
          working.substituted(),
          working.result(),
          words(working.source()),
          words(working.note()));
    }
    return block;
  }

  private List<Prose> all(List<Prose> prose) {
    return prose.stream().map(this::words).toList();
  }

  private Prose words(Prose prose) {
    return new Prose(prose.spans().stream().map(this::span).toList());
  }

  private Prose.Span span(Prose.Span span) {
    return anchors.contains(span.target()) ? span : new Prose.Span(span.text(), span.style(), "");
  }
}
