package underhold.shell;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.InvalidPathException;
import java.util.List;
import java.util.function.Supplier;
import org.springframework.shell.core.InputReader;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.CommandRegistry;
import underhold.advice.RulePack;
import underhold.site.PlainText;

/** Runs one command line and turns whatever goes wrong into messages and an exit code. */
final class Dispatcher {
  private final CommandRegistry registry;
  private final Session session;
  private final Supplier<Output> outputs;

  /**
   * Runs commands.
   *
   * @param outputs where the next command writes; a terminal may change its width
   */
  Dispatcher(CommandRegistry registry, Session session, Supplier<Output> outputs) {
    this.registry = registry;
    this.session = session;
    this.outputs = outputs;
  }

  /** Runs the words; never throws. */
  int run(List<String> words) {
    Output usual = outputs.get();
    session.writeTo(usual);
    try {
      CommandLine.Understood line = new CommandLine(registry).read(words);
      Output output = usual.with(line.has(Options.JSON), line.has(Options.NO_COLOUR));
      session.writeTo(output);
      if (line.has(Options.HELP)) {
        HelpCommand.describe(line.command(), session.output());
        return Exit.DONE;
      }
      session.take(session.usualPack());
      if (line.command().byRules()) {
        session.take(PackOptions.pack(base(line), line.input().options()));
        session.writeTo(output.by(session.pack()));
      }
      CommandContext context =
          new CommandContext(line.input(), registry, usual.answers(), new InputReader() {});
      return line.command().execute(context).code();
    } catch (Refusal refusal) {
      refusal.messages().forEach(usual::say);
      return refusal.exitCode();
    } catch (Lines.Interrupted interrupted) {
      return Exit.INTERRUPTED;
    } catch (InvalidPathException e) {
      usual.say(
          PlainText.quoted(e.getInput())
              + " cannot be the name of a file; it was typed, or stands in a file that was read.");
      return Exit.SITE;
    } catch (RuntimeException | Error fault) {
      return fault(usual, fault, words.contains("--" + Options.DEBUG));
    }
  }

  /** The rules that options of the line change: those named to {@code rules use}, or the usual. */
  private RulePack base(CommandLine.Understood line) {
    return line.command().getName().equals(PackCommands.USE)
        ? line.input().arguments().stream()
            .findFirst()
            .map(word -> PackOptions.folder(word.value()))
            .orElse(session.usualPack())
        : session.usualPack();
  }

  private static int fault(Output usual, Throwable fault, boolean details) {
    String message = String.valueOf(fault.getMessage()).replaceAll("\\s+", " ");
    usual.say(
        "Underhold failed; this is a fault of the program, not of the site: "
            + fault.getClass().getSimpleName()
            + ": "
            + message
            + (details ? "" : " (--debug shows the details)"));
    if (details) {
      StringWriter trace = new StringWriter();
      fault.printStackTrace(new PrintWriter(trace));
      trace.toString().lines().map(line -> line.replace("\t", "    ")).forEach(usual::say);
    }
    return Exit.FAULT;
  }
}
