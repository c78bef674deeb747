package underhold.shell;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;

/**
 * The standard output, which remembers whether what was written got through: an answer sent to a
 * file on a full disk must not end as if it were whole. Nothing is thrown, and a reader that has
 * read enough ({@code | head}) is no failure.
 */
final class StandardOutput extends OutputStream {
  private static final String READ_ENOUGH = "Broken pipe";

  private final OutputStream out;
  private Optional<String> failure = Optional.empty();

  StandardOutput() {
    this(new FileOutputStream(FileDescriptor.out));
  }

  StandardOutput(OutputStream out) {
    this.out = out;
  }

  /** Why the output is not whole, in the words of the system; empty where it is. */
  Optional<String> failure() {
    return failure.filter(why -> !why.equalsIgnoreCase(READ_ENOUGH));
  }

  @Override
  public void write(int signal) {
    write(new byte[] {(byte) signal}, 0, 1);
  }

  @Override
  public void write(byte[] bytes, int from, int length) {
    if (failure.isPresent()) {
      return;
    }
    try {
      out.write(bytes, from, length);
    } catch (IOException e) {
      failure = Optional.of(String.valueOf(e.getMessage()));
    }
  }

  @Override
  public void flush() {
    try {
      out.flush();
    } catch (IOException e) {
      failure = failure.or(() -> Optional.of(String.valueOf(e.getMessage())));
    }
  }
}
