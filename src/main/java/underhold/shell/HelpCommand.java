package underhold.shell;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.springframework.shell.core.command.Command;
import org.springframework.shell.core.command.CommandRegistry;
import underhold.report.Json;
import underhold.report.Look;
import underhold.report.Program;
import underhold.report.TextPage;

/** {@code help}: what there is, and what one command does. */
final class HelpCommand {
  private static final int COLUMN = 34;

  private HelpCommand() {}

  static ShellCommand of(Session session, CommandRegistry registry) {
    return new ShellCommand(
        "help",
        Commands.GENERAL,
        "lists the commands, or shows what one of them takes",
        List.of(new Parameter("COMMAND", false, true, () -> names(registry))),
        List.of(),
        call -> {
          if (call.words().isEmpty()) {
            session.output().answer(look -> all(registry, look), () -> tree(registry));
          } else {
            String name = String.join(" ", call.words());
            describe(find(registry, name), session.output());
          }
          return Exit.DONE;
        });
  }

  static void describe(ShellCommand command, Output output) {
    output.answer(look -> one(command, look), () -> node(command));
  }

  private static ShellCommand find(CommandRegistry registry, String name) {
    return Optional.ofNullable(registry.getCommandByName(name))
        .filter(ShellCommand.class::isInstance)
        .map(ShellCommand.class::cast)
        .orElseThrow(
            () ->
                Refusal.usage(
                    "There is no command \""
                        + name
                        + "\"."
                        + Nearest.question(name, names(registry)),
                    "There are: " + String.join(", ", names(registry))));
  }

  private static String all(CommandRegistry registry, Look look) {
    TextPage page = new TextPage(look);
    page.para(
        0,
        "Underhold "
            + Program.version()
            + ": how to hold up a structure beside or over a new excavation.");
    for (String group : Commands.GROUPS) {
      page.heading(group);
      commands(registry).stream()
          .filter(command -> command.getGroup().equals(group))
          .forEach(c -> page.item(2, shortUsage(c), COLUMN, c.getDescription()));
    }
    page.blank();
    page.para(
        0,
        "Every command takes --json, --no-colour, --debug and --help. Commands that answer by rules take --rules DIR, a rule pack of your own, and --limit NAME=VALUE, another value of a limit for a trial. Without a command an interactive shell starts; there FILE may be left out once a site is open, and exit leaves.");
    page.para(0, Program.CAUTION);
    return page.text();
  }

  private static String shortUsage(ShellCommand command) {
    StringBuilder usage = new StringBuilder(command.getName());
    command.parameters().forEach(parameter -> usage.append(' ').append(parameter.usage()));
    return usage.toString();
  }

  private static String one(ShellCommand command, Look look) {
    TextPage page = new TextPage(look);
    page.para(0, command.usage());
    page.para(2, command.getDescription());
    page.blank();
    command
        .getOptions()
        .forEach(
            option ->
                page.item(
                    2,
                    "--"
                        + option.longName()
                        + (Options.isFlag(option) ? "" : " " + option.defaultValue()),
                    18,
                    String.valueOf(option.description())));
    for (String note : command.notes()) {
      page.blank();
      page.para(0, note);
    }
    return page.text();
  }

  private static Object tree(CommandRegistry registry) {
    return Json.object("commands", commands(registry).stream().map(HelpCommand::node).toList());
  }

  private static Object node(ShellCommand command) {
    return Json.object(
        "name", command.getName(),
        "usage", command.usage(),
        "does", command.getDescription(),
        "options", command.getOptions().stream().map(o -> "--" + o.longName()).toList(),
        "notes", command.notes());
  }

  private static List<ShellCommand> commands(CommandRegistry registry) {
    return registry.getCommands().stream()
        .filter(ShellCommand.class::isInstance)
        .map(ShellCommand.class::cast)
        .sorted(Comparator.comparing(ShellCommand::getName))
        .toList();
  }

  private static List<String> names(CommandRegistry registry) {
    return registry.getCommands().stream().map(Command::getName).sorted().toList();
  }
}
