package underhold.shell;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import underhold.report.Look;

/** What is known of the place where the program runs. */
final class Console {
  private Console() {}

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

  static BufferedReader input() {
    return new BufferedReader(new InputStreamReader(System.in, charset()));
  }

  static PrintWriter writer(PrintStream stream, Charset charset) {
    return new PrintWriter(new OutputStreamWriter(stream, charset), false);
  }

  /** Where one command writes when it runs alone. */
  static Output output(int width) {
    Look look = new Look(width, colour(System.getenv()), charset());
    return new Output(
        writer(System.out, look.charset()),
        writer(System.out, StandardCharsets.UTF_8),
        writer(System.err, look.charset()),
        look,
        false);
  }
}
