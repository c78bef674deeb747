package underhold.hostile;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import underhold.site.WholeFile;

/** A process that writes a file over and over until it is killed. */
final class WriteOnAndOn {
  private static final int LINES = 3000;
  private static final int WARM = 3;

  private WriteOnAndOn() {}

  public static void main(String[] arguments) {
    Path file = Path.of(arguments[0]);
    for (int i = 0; true; i++) {
      WholeFile.replace(file, text(arguments[1] + "-" + i).getBytes(StandardCharsets.UTF_8));
      if (i == WARM) {
        System.out.println("ready");
      }
    }
  }

  /** Every line holds the same words, the last line says that it is the last. */
  private static String text(String words) {
    return (words + "\n").repeat(LINES) + "end " + words + "\n";
  }

  /** What is wrong with the file; empty where it is one whole writing. */
  static String fault(Path file) throws IOException {
    if (!Files.exists(file)) {
      return "nothing was written";
    }
    String text = Files.readString(file);
    String words = text.substring(text.lastIndexOf(' ') + 1).strip();
    return text.equals(text(words)) ? "" : file + " is not whole: " + text.length();
  }
}
