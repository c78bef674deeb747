package underhold.shell;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import underhold.report.document.DocumentWriter;
import underhold.report.dossier.Dossier;
import underhold.report.dossier.Material;
import underhold.report.html.HtmlWriter;
import underhold.report.json.JsonWriter;
import underhold.report.markdown.MarkdownWriter;
import underhold.report.pdf.Paper;
import underhold.report.pdf.PdfWriter;

/** The formats of a report, by the ending of its file. */
enum ReportFormat {
  // The one place that knows which writer writes what.
  HTML(".html", bytes -> holds(bytes, HtmlWriter.MARK), material -> new HtmlWriter()),
  PDF(".pdf", PdfWriter::wrote, material -> new PdfWriter(Paper.of(material.units()))),
  MARKDOWN(".md", bytes -> holds(bytes, MarkdownWriter.MARK), material -> new MarkdownWriter()),
  JSON(
      ".json",
      bytes -> holds(bytes, JsonWriter.MARK),
      material -> new JsonWriter(Dossier.data(material)));

  private final String ending;
  private final Predicate<byte[]> report;
  private final Function<Material, DocumentWriter> writer;

  ReportFormat(String ending, Predicate<byte[]> report, Function<Material, DocumentWriter> writer) {
    this.ending = ending;
    this.report = report;
    this.writer = writer;
  }

  /** The ending of its files. */
  String ending() {
    return ending;
  }

  /** What writes it. */
  DocumentWriter writer(Material material) {
    return writer.apply(material);
  }

  /** Whether a file holds an earlier report of this format, which a new one may replace. */
  boolean isReport(byte[] bytes) {
    return report.test(bytes);
  }

  private static boolean holds(byte[] bytes, String mark) {
    return new String(bytes, StandardCharsets.ISO_8859_1).contains(mark);
  }

  /** The format of a file of that name. */
  static Optional<ReportFormat> of(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    return Arrays.stream(values()).filter(format -> lower.endsWith(format.ending)).findFirst();
  }

  /** {@code .html, .pdf, .md or .json}. */
  static String endings() {
    List<String> all = Arrays.stream(values()).map(ReportFormat::ending).toList();
    int last = all.size() - 1;
    return all.subList(0, last).stream().collect(Collectors.joining(", ")) + " or " + all.get(last);
  }
}
