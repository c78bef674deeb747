package underhold.report.html;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import underhold.report.document.Document;
import underhold.report.document.DocumentWriter;

/**
 * Writes a document as one HTML file in UTF-8 that holds all it shows: no network, no script. It
 * reads on a desktop, on a telephone and in print.
 */
public final class HtmlWriter implements DocumentWriter {
  /** Stands in the head of every page, so that an earlier report is known as one. */
  public static final String MARK = "<meta name=\"generator\" content=\"Underhold\"/>";

  @Override
  public void write(Document document, OutputStream out) throws IOException {
    out.write(PageMarkup.of(document, Medium.SCREEN).getBytes(StandardCharsets.UTF_8));
  }
}
