package underhold.shell;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import underhold.report.Look;

/** The program. */
public final class Underhold {
  /** What the terminal's library logs; held, for a logger that nobody holds forgets its level. */
  private static final class Remarks {
    static final Logger TERMINAL = Logger.getLogger("org.jline");
  }

  private Underhold() {}

  /** Runs one command where there are arguments, else the interactive shell. */
  public static void main(String[] args) {
    // The rule engine would else load and set up a whole logging library of which nothing is shown.
    System.setProperty("slf4j.provider", "org.slf4j.helpers.NOP_FallbackServiceProvider");
    System.setProperty("slf4j.internal.verbosity", "WARN"); // and not say so
    System.exit(run(List.of(args)));
  }

  private static int run(List<String> words) {
    if (Console.isTerminal()) {
      Remarks.TERMINAL.setLevel(
          Level.OFF); // a terminal of an unknown kind is treated as a plain one
    }
    if (words.isEmpty() && Console.isTerminal()) {
      return ShellConfiguration.start();
    }
    if (!words.isEmpty() && Console.isTerminal()) {
      return atTerminal(words);
    }
    return plainly(words);
  }

  /** One command at a terminal: its width is known, and an interview can edit lines. */
  private static int atTerminal(List<String> words) {
    try (Terminal terminal = TerminalBuilder.builder().system(true).dumb(true).build()) {
      Output output = Console.output(width(terminal));
      Session session = new Session(false, new TerminalLines(terminal), output);
      int code = new Dispatcher(Commands.registry(session), session, () -> output).run(words);
      return Console.whole(code, output);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static int width(Terminal terminal) {
    return terminal.getWidth() > 0 ? terminal.getWidth() : Look.USUAL;
  }

  /** Files and pipes: one command, or one a line where there are no words. */
  private static int plainly(List<String> words) {
    Output output = Console.output(Look.USUAL);
    Lines lines = Lines.of(Console.input(), output::show);
    boolean shell = words.isEmpty();
    Session session = new Session(shell, lines, output);
    Dispatcher dispatcher = new Dispatcher(Commands.registry(session), session, () -> output);
    int code = shell ? new ShellLoop(dispatcher, session).run(lines) : dispatcher.run(words);
    return Console.whole(code, output);
  }
}
