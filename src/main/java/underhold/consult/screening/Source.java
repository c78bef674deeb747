package underhold.consult.screening;

import java.io.Closeable;
import java.io.IOException;
import java.util.Optional;

/** Zones of one file, handed out one at a time. */
interface Source extends Closeable {
  /** The next zone, or what is wrong in its place; empty at the end. */
  Optional<ZoneEntry> next();

  /** How many bytes of the file were taken so far. */
  long bytesRead();

  @Override
  void close() throws IOException;
}
