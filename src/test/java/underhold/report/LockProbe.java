package underhold.report;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Another program, which says whether it could take the lock of a file. */
final class LockProbe {
  private LockProbe() {}

  public static void main(String[] arguments) throws IOException {
    try (FileChannel channel = FileChannel.open(Path.of(arguments[0]), StandardOpenOption.WRITE)) {
      System.out.print(channel.tryLock() == null ? "held" : "free");
    }
  }

  /** What another program finds. */
  static String ask(Path file) {
    try {
      Process process =
          new ProcessBuilder(
                  System.getProperty("java.home") + "/bin/java",
                  "-cp",
                  Path.of(
                          LockProbe.class
                              .getProtectionDomain()
                              .getCodeSource()
                              .getLocation()
                              .toURI())
                      .toString(),
                  LockProbe.class.getName(),
                  file.toString())
              .redirectErrorStream(true)
              .start();
      return new String(process.getInputStream().readAllBytes());
    } catch (IOException | java.net.URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }
}
