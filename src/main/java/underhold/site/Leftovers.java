package underhold.site;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.UUID;
import java.util.regex.Pattern;

/**
 * The temporary files beside a file that is written whole. One is left behind where the program is
 * killed, or the power fails, before it takes the place of the file; the next writing of that file
 * takes it away. A younger one may be another program's, at work this moment.
 */
final class Leftovers {
  /** A file is written in a moment; what is older is nobody's any more. */
  private static final Duration OLD = Duration.ofMinutes(1);

  /** A name must have room for ours within the 255 bytes that most file systems allow. */
  private static final int LONGEST_STEM = 60;

  private static final Pattern ID = Pattern.compile("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}");

  private Leftovers() {}

  /** A new temporary name in the folder of the file. */
  static Path temporary(Path target) {
    return target.resolveSibling(stem(target) + UUID.randomUUID());
  }

  /** Takes away what earlier writings of the file left; what cannot be taken away stays. */
  static void remove(Path target, Clock clock) {
    Path folder = target.getParent();
    if (folder == null) {
      return;
    }
    String stem = stem(target);
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, one -> ours(one, stem))) {
      for (Path file : files) {
        if (Files.getLastModifiedTime(file).toInstant().isBefore(clock.instant().minus(OLD))) {
          Files.deleteIfExists(file);
        }
      }
    } catch (IOException | DirectoryIteratorException | SecurityException e) {
      // They harm nothing where they are.
    }
  }

  private static boolean ours(Path file, String stem) {
    String name = String.valueOf(file.getFileName());
    return name.startsWith(stem) && ID.matcher(name.substring(stem.length())).matches();
  }

  private static String stem(Path target) {
    String name = String.valueOf(target.getFileName());
    if (name.length() > LONGEST_STEM) {
      boolean half = Character.isHighSurrogate(name.charAt(LONGEST_STEM - 1));
      name = name.substring(0, half ? LONGEST_STEM - 1 : LONGEST_STEM);
    }
    return "." + name + ".";
  }
}
