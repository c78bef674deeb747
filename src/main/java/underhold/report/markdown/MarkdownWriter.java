package underhold.report.markdown;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import underhold.report.document.Block;
import underhold.report.document.Document;
import underhold.report.document.DocumentWriter;
import underhold.report.document.Prose;
import underhold.report.document.Section;

/** Sets a document in Markdown, with anchors and links, drawings by their text. */
public final class MarkdownWriter implements DocumentWriter {
  /** The first line of every report, by which an earlier one is known again. */
  public static final String MARK = "<!-- underhold report -->";

  private static final int DEEPEST = 6;
  private static final Pattern SENTENCE_END = Pattern.compile("(?<=[.?]) (?=\\p{Lu})");

  @Override
  public void write(Document document, OutputStream out) throws IOException {
    out.write(text(document).getBytes(StandardCharsets.UTF_8));
    out.flush();
  }

  /** The whole text; the same document gives the same characters. */
  public static String text(Document document) {
    return new Page().whole(document);
  }

  /** One document on its way to lines. */
  private static final class Page {
    private final StringBuilder text = new StringBuilder();

    String whole(Document document) {
      line(MARK);
      blank();
      line("# " + Escape.words(document.title()));
      blank();
      line("> **" + Escape.words(document.status()) + "**");
      blank();
      for (Document.Entry entry : document.cover()) {
        line("- **" + Escape.words(entry.label()) + "**: " + words(entry.words()));
      }
      contents(document);
      document.sections().forEach(section -> section(section, 2));
      return text.toString().strip() + "\n";
    }

    private void contents(Document document) {
      blank();
      line("## Contents");
      blank();
      for (Section section : document.sections()) {
        line("- " + link(Escape.words(section.title()), section.id()));
        section.parts().forEach(part -> line("  - " + link(Escape.words(part.title()), part.id())));
      }
      blank();
    }

    private void section(Section section, int depth) {
      blank();
      line(anchor(section.id()));
      blank();
      line("#".repeat(Math.min(depth, DEEPEST)) + " " + Escape.words(section.title()));
      blank();
      section.blocks().forEach(this::block);
      section.parts().forEach(part -> section(part, depth + 1));
    }

    private void block(Block block) {
      if (block instanceof Block.Paragraph paragraph) {
        sentences("", "", words(paragraph.words()));
      } else if (block instanceof Block.Notice notice) {
        sentences("> ", "> ", "**" + Escape.words(notice.head()) + "**: " + words(notice.words()));
      } else if (block instanceof Block.Listing listing) {
        list(listing);
      } else if (block instanceof Block.Table table) {
        table(table);
      } else if (block instanceof Block.Working working) {
        working(working);
      } else if (block instanceof Block.Drawn drawn) {
        drawn(drawn);
      }
      blank();
    }

    private void list(Block.Listing listing) {
      int number = 0;
      for (Prose item : listing.items()) {
        number++;
        String mark = listing.numbered() ? number + ". " : "- ";
        sentences(mark, " ".repeat(mark.length()), words(item));
      }
    }

    private void table(Block.Table table) {
      if (!table.caption().isEmpty()) {
        line("**" + Escape.words(table.caption()) + "**");
        blank();
      }
      boolean noted = table.noted();
      line(
          table.columns().stream()
                  .map(column -> Escape.words(column.title()))
                  .collect(Collectors.joining(" | ", "| ", " |"))
              + (noted ? " Note |" : ""));
      line(
          table.columns().stream()
                  .map(column -> column.amounts() ? "---:" : "---")
                  .collect(Collectors.joining(" | ", "| ", " |"))
              + (noted ? " --- |" : ""));
      for (Block.Row row : table.rows()) {
        String cells = row.cells().stream().map(Page::words).collect(Collectors.joining(" | "));
        String note = noted ? " " + words(row.note()) + " |" : "";
        line("| " + (row.anchor().isEmpty() ? "" : anchor(row.anchor())) + cells + " |" + note);
      }
    }

    private void working(Block.Working working) {
      String anchor = working.anchor().isEmpty() ? "" : anchor(working.anchor());
      line(anchor + "**" + Escape.words(working.title()) + "**");
      blank();
      line("- Formula: " + Escape.typed(working.formula()));
      for (Block.Symbol symbol : working.symbols()) {
        line(
            "  - "
                + Escape.typed(symbol.symbol())
                + " = "
                + Escape.words(symbol.value())
                + ", "
                + Escape.words(symbol.meaning()));
      }
      line("- With numbers: " + Escape.typed(working.substituted()));
      line("- Result: **" + Escape.words(working.result()) + "**");
      line("- Source: " + words(working.source()));
      if (!working.note().spans().isEmpty()) {
        line("- Note: " + words(working.note()));
      }
    }

    private void drawn(Block.Drawn drawn) {
      List<String> lines = new ArrayList<>(drawn.figure().equivalent());
      String fence = Escape.fence(lines);
      line(anchor(drawn.figure().id()));
      blank();
      line("**Drawing: " + Escape.words(drawn.figure().title()) + "**, here in words");
      blank();
      line(fence + "text");
      lines.forEach(this::line);
      line(fence);
    }

    /** One sentence a line, so that a change shows where it is. */
    private void sentences(String first, String others, String words) {
      String lead = first;
      for (String sentence : SENTENCE_END.split(words)) {
        line(lead + Escape.first(sentence));
        lead = others;
      }
    }

    private void line(String line) {
      text.append(line).append('\n');
    }

    private void blank() {
      if (text.length() > 0 && text.lastIndexOf("\n\n") != text.length() - 2) {
        text.append('\n');
      }
    }

    private static String words(Prose prose) {
      return prose.spans().stream().map(Page::span).collect(Collectors.joining());
    }

    private static String span(Prose.Span span) {
      if (span.text().isEmpty()) {
        return "";
      }
      String words =
          switch (span.style()) {
            case PLAIN -> Escape.words(span.text());
            case STRONG -> strong(span.text());
            case TYPED -> Escape.typed(span.text());
          };
      return span.target().isEmpty() ? words : link(words, span.target());
    }

    /** Strong words; blanks at their ends stay outside, where Markdown wants them. */
    private static String strong(String text) {
      String bare = text.strip();
      if (bare.isEmpty()) {
        return text;
      }
      int start = text.indexOf(bare);
      return text.substring(0, start)
          + "**"
          + Escape.words(bare)
          + "**"
          + text.substring(start + bare.length());
    }

    private static String link(String escaped, String target) {
      return "[" + escaped + "](#" + target + ")";
    }

    private static String anchor(String id) {
      return "<a id=\"" + id + "\"></a>";
    }
  }
}
