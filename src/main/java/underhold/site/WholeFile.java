package underhold.site;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import underhold.site.SiteWriting.Reason;

/**
 * Writes a file whole or not at all: to a temporary file beside it, flushed to the disk, which then
 * takes the place of the file in one step. A program killed at any moment leaves the old file or
 * the new one.
 *
 * <p>Two programs with one file: each writes only over what it read. The last look at the old file
 * and the step that replaces it are made under the system's lock on the old file, which ends with
 * the program however it ends, so that nothing is left to be cleared away; of two programs that
 * create one file the second is refused by the system itself. That holds on one machine and on
 * shares that keep locks. Where a system has no locks, or no links between files, or does not let
 * an open file be replaced (Windows), there lies a moment between look and step in which a change
 * by another program would go unnoticed.
 */
public final class WholeFile {
  private WholeFile() {}

  /** Writes a file that may be there already; one that may not be written to stays as it is. */
  public static SiteWriting replace(Path file, byte[] bytes) {
    if (Files.exists(file) && !Files.isDirectory(file) && !Files.isWritable(file)) {
      return refused(Reason.CANNOT_WRITE, file, "it may not be written to");
    }
    try {
      return write(file, bytes, FileText.state(file));
    } catch (IOException | SecurityException e) {
      return Files.isDirectory(file)
          ? refused(Reason.CANNOT_WRITE, file, "it is a directory")
          : refused(Reason.CANNOT_WRITE, file, why(e));
    }
  }

  /**
   * A name beside a file for what is to take its place when it is whole; what earlier writings left
   * there is taken away.
   */
  public static Path temporary(Path target) {
    Leftovers.remove(target, Clock.systemUTC());
    return Leftovers.temporary(target);
  }

  /** Writes the bytes; refused where the file is not as it was expected. */
  public static SiteWriting write(Path file, byte[] bytes, SavedState expected) {
    try {
      Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
      Path directory = target.getParent();
      if (directory == null || Files.isDirectory(target)) {
        return refused(Reason.CANNOT_WRITE, file, "it is a directory");
      }
      Path temporary = temporary(target);
      try {
        flushed(temporary, bytes);
        SavedState found =
            expected.existed()
                ? Replacing.over(target, temporary, expected)
                : Replacing.create(target, temporary);
        if (!found.sameContents(expected)) {
          return changed(file, expected, found);
        }
        flushDirectory(directory);
        return new SiteWriting.Written(SavedState.of(bytes));
      } finally {
        Files.deleteIfExists(temporary);
      }
    } catch (AccessDeniedException e) {
      return refused(Reason.CANNOT_WRITE, file, "there is no permission to write there");
    } catch (NoSuchFileException e) {
      return refused(Reason.CANNOT_WRITE, file, "there is no such directory");
    } catch (IOException | SecurityException e) {
      return refused(Reason.CANNOT_WRITE, file, why(e));
    }
  }

  private static SiteWriting changed(Path file, SavedState expected, SavedState found) {
    if (!expected.existed()) {
      return refused(Reason.EXISTS_ALREADY, file, "there is a file of that name already");
    }
    return refused(
        Reason.CHANGED_SINCE_READ,
        file,
        found.existed()
            ? "the file has changed since it was read; read it again or choose another name"
            : "the file has been deleted or moved since it was read; choose another name");
  }

  /** The reason alone, such as {@code No space left on device}; the file is named anyway. */
  private static String why(Exception failed) {
    String reason = failed instanceof FileSystemException of ? of.getReason() : null;
    return PlainText.shown(reason == null ? String.valueOf(failed.getMessage()) : reason);
  }

  private static SiteWriting refused(Reason reason, Path file, String why) {
    return new SiteWriting.Refused(reason, file + " was not written: " + why);
  }

  private static void flushed(Path file, byte[] bytes) throws IOException {
    try (FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      ByteBuffer buffer = ByteBuffer.wrap(bytes);
      while (buffer.hasRemaining()) {
        channel.write(buffer);
      }
      channel.force(true);
    }
  }

  /** Makes the new name last through a power cut; not every system can. */
  private static void flushDirectory(Path directory) {
    try (FileChannel channel = FileChannel.open(directory, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      // Windows opens no directories; the file itself is safe.
    }
  }
}
