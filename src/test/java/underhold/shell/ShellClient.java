package underhold.shell;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import underhold.report.Look;

/** Runs commands as the program would, and keeps what they write. */
final class ShellClient {
  /** A site of our own: one wall beside a cut, one column partly over it. */
  static final String SITE =
      """
      { "underhold": "site/1", "name": "Cooper's Yard", "units": "SI",
        "facts": { "structureKind": "building-wall", "excavationDepth": "4.2 m",
                   "groundWaterDepth": "7 m", "investigation": "borings-only" },
        "zones": [
          { "name": "party wall", "facts": {
              "loadPattern": "continuous", "excavationPosition": "beside",
              "foundingDepth": "1.8 m", "gapToExcavation": "0.3 m", "lineLoad": "180 kN/m",
              "worstSoil": "stiff-clay", "openLayer": "no",
              "movementLimit": "10 mm", "bearingDepth": "3 m" } },
          { "name": "corner column", "facts": {
              "loadPattern": "concentrated", "excavationPosition": "partly-under",
              "foundingDepth": "2.5 m", "columnLoad": "900 kN" } } ] }
      """;

  private final StringWriter answers = new StringWriter();
  private final StringWriter messages = new StringWriter();
  private final Session session;
  private final Output output;
  private final Dispatcher dispatcher;

  private ShellClient(boolean interactive, Look look, String input) {
    PrintWriter out = new PrintWriter(answers);
    this.output = new Output(out, out, new PrintWriter(messages), look, false);
    Lines lines = Lines.of(new BufferedReader(new StringReader(input)), prompt -> {});
    this.session = new Session(interactive, lines, output);
    this.dispatcher = new Dispatcher(Commands.registry(session), session, () -> output);
  }

  /**
   * What a command did.
   *
   * @param code its exit code
   * @param out what it answered
   * @param err what it said beside the answer
   */
  record Ran(int code, String out, String err) {}

  static ShellClient oneShot() {
    return new ShellClient(false, Look.PLAIN, "");
  }

  static ShellClient oneShot(Look look) {
    return new ShellClient(false, look, "");
  }

  /** A program into which the lines given are typed. */
  static ShellClient typing(String... lines) {
    return new ShellClient(false, Look.PLAIN, String.join("\n", lines) + "\n");
  }

  static ShellClient interactive(String... lines) {
    return new ShellClient(true, Look.PLAIN, String.join("\n", lines) + "\n");
  }

  Ran run(String... words) {
    answers.getBuffer().setLength(0);
    messages.getBuffer().setLength(0);
    return ran(dispatcher.run(List.of(words)));
  }

  /** Runs the lines typed, one command each, until they end. */
  Ran loop() {
    return ran(new ShellLoop(dispatcher, session).run(session.lines()));
  }

  private Ran ran(int code) {
    return new Ran(code, answers.toString(), messages.toString());
  }

  /** Writes a file into a folder and gives its path. */
  static String file(Path folder, String name, String text) {
    try {
      return Files.writeString(folder.resolve(name), text).toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
