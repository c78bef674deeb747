package underhold.shell;

import java.util.List;
import java.util.Optional;
import org.jline.reader.EOFError;
import org.jline.reader.ParsedLine;
import org.jline.reader.Parser;
import org.jline.reader.SyntaxError;
import org.jline.reader.impl.DefaultParser;

/** Reads and runs command lines until the user leaves. */
final class ShellLoop {
  static final String PROMPT = "underhold> ";
  private static final List<String> LEAVING = List.of("exit", "quit", "bye");

  private final Dispatcher dispatcher;
  private final Session session;
  private int failed = Exit.DONE;

  ShellLoop(Dispatcher dispatcher, Session session) {
    this.dispatcher = dispatcher;
    this.session = session;
  }

  /** The words of lines: quotes keep blanks together, a backslash is a plain sign. */
  static Parser parser() {
    DefaultParser parser = new DefaultParser();
    parser.setEscapeChars(new char[0]);
    parser.setEofOnUnclosedQuote(true);
    return parser;
  }

  /**
   * Runs line after line; Ctrl-C empties the line, the end of the input leaves.
   *
   * @return the exit code of the last command that failed; done where none did
   */
  int run(Lines lines) {
    Parser parser = parser();
    while (true) {
      Optional<String> line;
      try {
        line = lines.read(PROMPT, List.of());
      } catch (Lines.Interrupted interrupted) {
        continue;
      }
      if (line.isEmpty()) {
        return leave(true);
      }
      List<String> words = words(parser, line.get());
      if (words.size() == 1 && LEAVING.contains(words.get(0))) {
        if (mayLeave()) {
          return leave(false);
        }
      } else if (!words.isEmpty()) {
        note(dispatcher.run(words));
      }
    }
  }

  private void note(int code) {
    if (code != Exit.DONE) {
      failed = code;
    }
  }

  private List<String> words(Parser parser, String line) {
    if (line.isBlank()) {
      return List.of();
    }
    try {
      ParsedLine parsed = parser.parse(line.strip(), line.strip().length());
      return parsed.words().stream().filter(word -> !word.isEmpty()).toList();
    } catch (EOFError open) {
      session.output().say("A quotation mark is not closed.");
    } catch (SyntaxError error) {
      session.output().say("The line cannot be read.");
    }
    return List.of();
  }

  private boolean mayLeave() {
    try {
      session.keepChanges();
      return true;
    } catch (Refusal refusal) {
      refusal.messages().forEach(session.output()::say);
      return false;
    }
  }

  /** At the end of the input nobody can be asked: unsaved changes are named. */
  private int leave(boolean atEnd) {
    if (atEnd) {
      session
          .current()
          .filter(OpenSite::changed)
          .ifPresent(
              open -> session.output().say("Changes to " + open.file() + " were not saved."));
    }
    return failed;
  }
}
