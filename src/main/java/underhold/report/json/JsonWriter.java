package underhold.report.json;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import underhold.report.Json;
import underhold.report.document.Block;
import underhold.report.document.Document;
import underhold.report.document.DocumentWriter;
import underhold.report.document.Prose;
import underhold.report.document.Section;
import underhold.report.drawing.Figure;

/** Sets a document in JSON: every block with its type, and the data the document was made from. */
public final class JsonWriter implements DocumentWriter {
  /** The first member of every report, by which an earlier one is known again. */
  public static final String MARK = "underholdReport";

  private static final int VERSION = 1;

  private final Map<String, Object> data;

  /** A writer that sets the data given beside the document. */
  public JsonWriter(Map<String, Object> data) {
    this.data = data;
  }

  @Override
  public void write(Document document, OutputStream out) throws IOException {
    out.write(Json.text(tree(document)).getBytes(StandardCharsets.UTF_8));
    out.flush();
  }

  /** The whole tree. */
  public Map<String, Object> tree(Document document) {
    return Json.object(
        MARK,
        VERSION,
        "what",
        "A report of Underhold: under document the same words as in its other formats, under data"
            + " what they were made from. It is no site file.",
        "document",
        Json.object(
            "title", document.title(),
            "status", document.status(),
            "cover", document.cover().stream().map(JsonWriter::entry).toList(),
            "sections", document.sections().stream().map(JsonWriter::section).toList()),
        "data",
        data);
  }

  private static Map<String, Object> entry(Document.Entry entry) {
    return Json.object("label", entry.label(), "words", words(entry.words()));
  }

  private static Map<String, Object> section(Section section) {
    return Json.object(
        "id", section.id(),
        "title", section.title(),
        "blocks", section.blocks().stream().map(JsonWriter::block).toList(),
        "parts", section.parts().stream().map(JsonWriter::section).toList());
  }

  private static Map<String, Object> block(Block block) {
    if (block instanceof Block.Paragraph paragraph) {
      return Json.object("type", "paragraph", "words", words(paragraph.words()));
    }
    if (block instanceof Block.Notice notice) {
      return Json.object(
          "type", "notice",
          "tone", word(notice.tone()),
          "head", notice.head(),
          "words", words(notice.words()));
    }
    if (block instanceof Block.Listing listing) {
      return Json.object(
          "type", "list",
          "numbered", listing.numbered(),
          "items", listing.items().stream().map(JsonWriter::words).toList());
    }
    if (block instanceof Block.Table table) {
      return table(table);
    }
    if (block instanceof Block.Working working) {
      return working(working);
    }
    return drawing(((Block.Drawn) block).figure());
  }

  private static Map<String, Object> table(Block.Table table) {
    return Json.object(
        "type",
        "table",
        "caption",
        table.caption(),
        "columns",
        table.columns().stream()
            .map(column -> Json.object("title", column.title(), "amounts", column.amounts()))
            .toList(),
        "rows",
        table.rows().stream().map(JsonWriter::row).toList());
  }

  /** A row; a note only where there is one. */
  private static Map<String, Object> row(Block.Row row) {
    Map<String, Object> node =
        Json.object(
            "anchor", row.anchor(),
            "tone", word(row.tone()),
            "cells", row.cells().stream().map(JsonWriter::words).toList());
    if (!row.note().spans().isEmpty()) {
      node.put("note", words(row.note()));
    }
    return node;
  }

  private static Map<String, Object> working(Block.Working working) {
    return Json.object(
        "type", "working",
        "anchor", working.anchor(),
        "title", working.title(),
        "formula", working.formula(),
        "symbols",
            working.symbols().stream()
                .map(
                    symbol ->
                        Json.object(
                            "symbol", symbol.symbol(),
                            "meaning", symbol.meaning(),
                            "value", symbol.value()))
                .toList(),
        "substituted", working.substituted(),
        "result", working.result(),
        "source", words(working.source()),
        "note", words(working.note()));
  }

  private static Map<String, Object> drawing(Figure figure) {
    return Json.object(
        "type", "drawing",
        "id", figure.id(),
        "title", figure.title(),
        "svg", figure.svg(),
        "widthMillimetres", figure.widthMillimetres(),
        "heightMillimetres", figure.heightMillimetres(),
        "equivalent", figure.equivalent());
  }

  /** Words span by span; a style or a target only where there is one. */
  private static List<Map<String, Object>> words(Prose prose) {
    return prose.spans().stream().map(JsonWriter::span).toList();
  }

  private static Map<String, Object> span(Prose.Span span) {
    Map<String, Object> node = Json.object("text", span.text());
    if (span.style() != Prose.Style.PLAIN) {
      node.put("style", word(span.style()));
    }
    if (!span.target().isEmpty()) {
      node.put("to", span.target());
    }
    return node;
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}
