package underhold.report.document;

import java.io.IOException;
import java.io.OutputStream;

/** Sets a document in one format. */
public interface DocumentWriter {

  /**
   * Writes the whole document; the stream stays open.
   *
   * @throws IOException when the stream takes no more
   */
  void write(Document document, OutputStream out) throws IOException;
}
