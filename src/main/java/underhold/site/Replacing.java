package underhold.site;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.jspecify.annotations.Nullable;

/**
 * The step in which a new file takes the place of an old one, or of none. What is given back is
 * what stood there at that moment; the step was taken only if that is what was expected.
 */
final class Replacing {
  private static final long WAIT = TimeUnit.MILLISECONDS.toNanos(20);
  private static final int MOST_WAITS = 250;

  private Replacing() {}

  /** Gives the new file the name, unless there is a file of that name. */
  static SavedState create(Path target, Path fresh) throws IOException {
    try {
      link(target, fresh);
      return SavedState.NO_FILE;
    } catch (FileAlreadyExistsException e) {
      return SavedState.of(new byte[0]); // whatever it holds
    }
  }

  private static void link(Path target, Path fresh) throws IOException {
    try {
      Files.createLink(target, fresh);
    } catch (FileAlreadyExistsException e) {
      throw e;
    } catch (FileSystemException | UnsupportedOperationException e) {
      Files.move(fresh, target); // this file system knows no links; a file there is not replaced
    }
  }

  /** Puts the new file in the place of the old one, if that is as expected. */
  static SavedState over(Path target, Path fresh, SavedState expected) throws IOException {
    for (int waits = 0; waits < MOST_WAITS; waits++) {
      Object key = key(target);
      if (key == null) {
        return SavedState.NO_FILE;
      }
      try (FileChannel old =
          FileChannel.open(target, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
        Lock lock = lock(old);
        // While we waited another program may have put a new file in the place of the one locked.
        if (lock != Lock.ANOTHERS && Objects.equals(key(target), key)) {
          SavedState found = state(old);
          if (found.sameContents(expected)) {
            keepRights(target, fresh);
            if (!mayReplaceOpen(target)) {
              old.close();
            }
            Files.move(
                fresh, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
          }
          return found;
        }
      } catch (NoSuchFileException e) {
        return SavedState.NO_FILE;
      }
      LockSupport.parkNanos(WAIT);
    }
    throw new IOException("another program holds it; try again");
  }

  private enum Lock {
    OURS,
    ANOTHERS,
    /** The file system keeps no locks. */
    NONE
  }

  /** The lock lives as long as the channel. */
  private static Lock lock(FileChannel channel) {
    try {
      FileLock lock = channel.tryLock();
      return lock == null ? Lock.ANOTHERS : Lock.OURS;
    } catch (OverlappingFileLockException e) {
      return Lock.ANOTHERS;
    } catch (IOException e) {
      return Lock.NONE;
    }
  }

  /** What tells this file from another of its name; null without a file. */
  private static @Nullable Object key(Path file) throws IOException {
    try {
      BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
      if (!attributes.isRegularFile()) {
        throw new IOException("it is not an ordinary file");
      }
      Object key = attributes.fileKey();
      return key == null ? file : key;
    } catch (NoSuchFileException e) {
      return null;
    }
  }

  /** Read through the channel: to open and close the file once more would end the lock. */
  private static SavedState state(FileChannel channel) throws IOException {
    int length = (int) Math.min(channel.size(), FileText.LARGEST_BYTES + 1L);
    ByteBuffer buffer = ByteBuffer.allocate(length);
    while (buffer.hasRemaining() && channel.read(buffer, buffer.position()) > 0) {
      // until all is read
    }
    byte[] bytes = new byte[buffer.position()];
    buffer.flip().get(bytes);
    return SavedState.of(bytes);
  }

  private static boolean mayReplaceOpen(Path target) {
    return target.getFileSystem().supportedFileAttributeViews().contains("posix");
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
}
