package underhold.shell;

import java.util.List;
import java.util.Optional;
import underhold.advice.PackDifference;
import underhold.report.Json;
import underhold.report.LimitsText;
import underhold.report.PackDifferenceText;
import underhold.report.PackLines;
import underhold.report.RulePackJson;

/** The commands about rule packs themselves. */
final class PackCommands {
  /** The command that names a pack by a word. */
  static final String USE = "rules use";

  private final Session session;

  private PackCommands(Session session) {
    this.session = session;
  }

  static List<ShellCommand> of(Session session) {
    PackCommands commands = new PackCommands(session);
    return List.of(
        new ShellCommand(
            "rules limits",
            Commands.KNOWLEDGE,
            "lists the limits that rules compare with, and what each rests on",
            List.of(),
            List.of(),
            call -> commands.limits()),
        new ShellCommand(
            "rules differences",
            Commands.KNOWLEDGE,
            "shows every difference of a rule pack from the rules built in",
            List.of(),
            List.of(),
            call -> commands.differences()),
        new ShellCommand(
            USE,
            Commands.KNOWLEDGE,
            "in the interactive shell: answers by another rule pack from now on",
            List.of(Parameter.optional("DIR", () -> List.of(PackOptions.BUILT_IN))),
            List.of(),
            commands::use));
  }

  private int limits() {
    session
        .output()
        .answer(
            look -> LimitsText.of(session.pack(), look),
            () ->
                Json.object(
                    "rulePack", RulePackJson.of(session.pack()),
                    "limits",
                        session.pack().limits().all().stream().map(RulePackJson::limit).toList()));
    return Exit.DONE;
  }

  private int differences() {
    session
        .output()
        .bare()
        .answer(
            look -> PackDifferenceText.of(session.pack(), look),
            () ->
                Json.object(
                    "rulePack", RulePackJson.of(session.pack()),
                    "differences", RulePackJson.differences(PackDifference.of(session.pack()))));
    return Exit.DONE;
  }

  private int use(Call call) {
    if (!session.interactive()) {
      throw Refusal.usage(
          "rules use works in the interactive shell only; elsewhere give --rules DIR.");
    }
    Optional<String> folder = call.word(0);
    if (folder.isPresent() && call.has(Options.RULES)) {
      throw Refusal.usage("rules use takes DIR once, with or without --rules.");
    }
    session.use(session.pack());
    List<String> lines = PackLines.of(session.pack());
    if (lines.isEmpty()) {
      session.output().say("From now on the built-in rules answer.");
    } else {
      lines.forEach(session.output()::say);
    }
    return Exit.DONE;
  }
}
