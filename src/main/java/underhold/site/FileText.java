package underhold.site;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;
import underhold.site.SiteProblem.Code;

/**
 * The text of a file and the state the file was in.
 *
 * @param text its characters
 * @param state its state when it was read
 */
public record FileText(String text, SavedState state) {
  /** Largest file read, in bytes. */
  public static final int LARGEST_BYTES = 8 * 1024 * 1024;

  /** Reads a file; empty, with a problem, where it is not a readable UTF-8 file of usual size. */
  public static Optional<FileText> read(Path file, Problems problems) {
    try {
      BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
      if (!attributes.isRegularFile()) {
        return refuse(
            problems,
            attributes.isDirectory() ? "this is a directory" : "this is a device or pipe");
      }
      byte[] bytes = bytes(file);
      if (bytes.length > LARGEST_BYTES) {
        problems.add(
            Code.TOO_LARGE,
            "",
            "the file is larger than " + LARGEST_BYTES / (1024 * 1024) + " MiB",
            "is it a site file?");
        return Optional.empty();
      }
      SavedState state = SavedState.of(bytes);
      return decode(bytes, problems).map(text -> new FileText(text, state));
    } catch (NoSuchFileException e) {
      return refuse(problems, "there is no such file");
    } catch (AccessDeniedException e) {
      return refuse(problems, "there is no permission to read it");
    } catch (IOException | SecurityException e) {
      return refuse(
          problems, "it cannot be read: " + PlainText.shown(String.valueOf(e.getMessage())));
    }
  }

  /** The present state of a file. */
  static SavedState state(Path file) throws IOException {
    try {
      BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
      if (!attributes.isRegularFile()) {
        throw new IOException("it is not an ordinary file");
      }
      return SavedState.of(bytes(file));
    } catch (NoSuchFileException e) {
      return SavedState.NO_FILE;
    }
  }

  /** The bytes, at most one more than the largest file has: some files claim to be small. */
  private static byte[] bytes(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return in.readNBytes(LARGEST_BYTES + 1);
    }
  }

  private static Optional<FileText> refuse(Problems problems, String message) {
    problems.add(Code.NOT_A_FILE, "", message, "");
    return Optional.empty();
  }

  private static Optional<String> decode(byte[] bytes, Problems problems) {
    try {
      return Optional.of(
          StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
    } catch (CharacterCodingException e) {
      problems.add(Code.NOT_UTF8, "", "the file is not UTF-8 text", "save it as UTF-8");
      return Optional.empty();
    }
  }
}
