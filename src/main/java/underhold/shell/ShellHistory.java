package underhold.shell;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import underhold.report.Program;
import underhold.site.PlainText;

/**
 * The file of lines typed in earlier sessions. It is looked at before the terminal's library reads
 * it, for that ends the program where the file is damaged.
 */
final class ShellHistory {
  static final String NAME = "history";

  /** Some ten times what the library keeps. */
  private static final int LARGEST_BYTES = 8 * 1024 * 1024;

  private ShellHistory() {}

  /** The folder, where the desktop standard wants such things. */
  static Path folder(Map<String, String> environment) {
    String state = environment.getOrDefault("XDG_STATE_HOME", "");
    Path base =
        state.isBlank()
            ? Path.of(System.getProperty("user.home"), ".local", "state")
            : Path.of(state);
    return base.resolve(Program.NAME);
  }

  /** Why the file cannot be used, in a sentence; empty where it can, or is not there yet. */
  static Optional<String> fault(Path file) {
    if (!Files.exists(file)) {
      return Optional.empty();
    }
    if (!Files.isRegularFile(file)) {
      return unused(file, "is no ordinary file");
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(LARGEST_BYTES + 1);
      if (bytes.length > LARGEST_BYTES) {
        return unused(file, "is larger than " + LARGEST_BYTES / (1024 * 1024) + " MiB");
      }
      StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
      return Optional.empty();
    } catch (CharacterCodingException e) {
      return unused(file, "is no UTF-8 text");
    } catch (IOException | SecurityException e) {
      return unused(file, "cannot be read");
    }
  }

  private static Optional<String> unused(Path file, String why) {
    return Optional.of(
        "The lines typed before are not at hand, and those of today are not kept: "
            + PlainText.shown(file.toString())
            + " "
            + why
            + ". Move it away to begin a new one.");
  }
}
