package underhold.site;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.UUID;
import underhold.site.SiteWriting.Reason;

/**
 * Writes a file whole or not at all: to a temporary file beside it, flushed to the disk, then moved
 * over it in one step. Between the last look at the old file and the move lies a moment in which a
 * change by another program would go unnoticed.
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
          : refused(Reason.CANNOT_WRITE, file, PlainText.shown(String.valueOf(e.getMessage())));
    }
  }

  /** Writes the bytes; refused where the file is not as it was expected. */
  public static SiteWriting write(Path file, byte[] bytes, SavedState expected) {
    try {
      Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
      Path directory = target.getParent();
      if (directory == null || Files.isDirectory(target)) {
        return refused(Reason.CANNOT_WRITE, file, "it is a directory");
      }
      Path temporary = directory.resolve("." + target.getFileName() + "." + UUID.randomUUID());
      try {
        flushed(temporary, bytes);
        SavedState found = FileText.state(target);
        if (!found.sameContents(expected)) {
          return changed(file, expected, found);
        }
        keepRights(target, temporary);
        Files.move(
            temporary, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        flushDirectory(directory);
        return new SiteWriting.Written(FileText.state(target));
      } finally {
        Files.deleteIfExists(temporary);
      }
    } catch (AccessDeniedException e) {
      return refused(Reason.CANNOT_WRITE, file, "there is no permission to write there");
    } catch (NoSuchFileException e) {
      return refused(Reason.CANNOT_WRITE, file, "there is no such directory");
    } catch (IOException | SecurityException e) {
      String why = PlainText.shown(String.valueOf(e.getMessage()));
      return refused(Reason.CANNOT_WRITE, file, why);
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

  private static void keepRights(Path from, Path to) throws IOException {
    PosixFileAttributeView old =
        Files.getFileAttributeView(from, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
    PosixFileAttributeView fresh =
        Files.getFileAttributeView(to, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
    if (old != null && fresh != null && Files.exists(from)) {
      fresh.setPermissions(old.readAttributes().permissions());
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
