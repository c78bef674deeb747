package underhold.report.document;

import java.io.IOException;
import java.io.OutputStream;

/**
 * Sets a document in one format. Every writer says all that the document holds: only how it looks
 * differs.
 */
public interface DocumentWriter {

  /**
   * Writes the whole document.
   *
   * @param document what to write
   * @param out where to; it is flushed and stays open
   * @throws IOException where nothing more can be written there
   */
  void write(Document document, OutputStream out) throws IOException;
}
