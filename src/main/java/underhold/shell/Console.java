package underhold.shell;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Map;
import underhold.report.Look;

/** What is known of the place where the program runs. */
final class Console {
  private static final StandardOutput ANSWERS = new StandardOutput();

  private Console() {}

  /** The exit code, and a message, where the answer did not get through whole. */
  static int whole(int code, Output output) {
    return ANSWERS
        .failure()
        .map(
            why -> {
              output.say("The answer was not written whole: " + why + ".");
              return code == Exit.DONE ? Exit.SITE : code;
            })
        .orElse(code);
  }

  /** Whether both ends are a terminal. */
  static boolean isTerminal() {
    return System.console() != null;
  }

  /** The character set of the terminal or, without one, of the machine. */
  static Charset charset() {
    for (String name : new String[] {"stdout.encoding", "sun.stdout.encoding", "native.encoding"}) {
      String value = System.getProperty(name);
      if (value != null && Charset.isSupported(value)) {
        return Charset.forName(value);
      }
    }
    return StandardCharsets.US_ASCII;
  }

  /** Whether messages go to a terminal as well, as far as the system tells. */
  static boolean messagesAtTerminal() {
    try {
      String target = String.valueOf(Files.readSymbolicLink(Path.of("/proc/self/fd/2")));
      return isTerminal() && (target.startsWith("/dev/pts/") || target.startsWith("/dev/tty"));
    } catch (IOException | UnsupportedOperationException e) {
      return isTerminal(); // no system of that kind
    }
  }

  /** Whether colour is wanted: a terminal, and nobody said no. */
  static boolean colour(Map<String, String> environment) {
    String no = environment.get("NO_COLOR");
    return isTerminal() && (no == null || no.isEmpty()) && !"dumb".equals(environment.get("TERM"));
  }

  /** What is typed or piped in; nothing where the input is closed. */
  static BufferedReader input() {
    return closed(Path.of("/proc/self/fd/0"))
        ? new BufferedReader(Reader.nullReader())
        : new BufferedReader(new InputStreamReader(System.in, charset()));
  }

  /**
   * Whether the program was started with its input closed. The first file that Java opens for
   * itself then takes its place, and its bytes would be read as answers.
   */
  static boolean closed(Path input) {
    try {
      Path java = Path.of(System.getProperty("java.home")).toRealPath();
      return input.toRealPath().startsWith(java);
    } catch (IOException | InvalidPathException e) {
      return false; // a system that does not tell
    }
  }

  static PrintWriter writer(OutputStream stream, Charset charset) {
    return new PrintWriter(new OutputStreamWriter(stream, charset), false);
  }

  /** Where one command writes when it runs alone. */
  static Output output(int width) {
    Look look = new Look(width, colour(System.getenv()), charset());
    return new Output(
        writer(ANSWERS, look.charset()),
        writer(ANSWERS, StandardCharsets.UTF_8),
        writer(System.err, look.charset()),
        look,
        false);
  }
}
