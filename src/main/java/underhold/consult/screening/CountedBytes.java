package underhold.consult.screening;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** Counts the bytes that are taken from a stream. */
final class CountedBytes extends FilterInputStream {
  private long count;

  CountedBytes(InputStream in) {
    super(in);
  }

  long count() {
    return count;
  }

  @Override
  public int read() throws IOException {
    int next = super.read();
    count += next < 0 ? 0 : 1;
    return next;
  }

  @Override
  public int read(byte[] bytes, int from, int length) throws IOException {
    int read = super.read(bytes, from, length);
    count += Math.max(0, read);
    return read;
  }
}
