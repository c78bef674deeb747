package underhold.shell;

import java.util.List;
import java.util.Optional;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.UserInterruptException;
import org.jline.reader.impl.DefaultParser;
import org.jline.reader.impl.completer.StringsCompleter;
import org.jline.terminal.Terminal;

/** Lines typed at a terminal, with editing, and completion of the words offered. */
final class TerminalLines implements Lines {
  private final Terminal terminal;

  TerminalLines(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Optional<String> read(String prompt, List<String> words) {
    DefaultParser parser = new DefaultParser();
    parser.setEscapeChars(new char[0]);
    parser.setQuoteChars(new char[0]);
    LineReader reader =
        LineReaderBuilder.builder()
            .terminal(terminal)
            .parser(parser)
            .completer(new StringsCompleter(words))
            .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
            .build();
    reader.setVariable(LineReader.DISABLE_HISTORY, true);
    try {
      return Optional.of(reader.readLine(prompt));
    } catch (EndOfFileException end) {
      return Optional.empty();
    } catch (UserInterruptException interrupt) {
      throw new Interrupted();
    }
  }

  @Override
  public Runnable onInterrupt(Runnable action) {
    return onInterrupt(terminal, action);
  }

  /** Hears Ctrl-C at a terminal, which the terminal's library takes from the program. */
  static Runnable onInterrupt(Terminal terminal, Runnable action) {
    Terminal.SignalHandler before = terminal.handle(Terminal.Signal.INT, signal -> action.run());
    return () -> terminal.handle(Terminal.Signal.INT, before);
  }
}
