package underhold.shell;

import java.util.List;
import underhold.report.Look;

/** The program. */
public final class Underhold {
  private Underhold() {}

  /** Runs one command where there are arguments, else the interactive shell. */
  public static void main(String[] args) {
    System.exit(run(List.of(args)));
  }

  private static int run(List<String> words) {
    Output output = Console.output(Look.USUAL);
    Lines lines = Lines.of(Console.input(), output::say);
    Session session = new Session(false, lines, output);
    return new Dispatcher(Commands.registry(session), session).run(words);
  }
}
