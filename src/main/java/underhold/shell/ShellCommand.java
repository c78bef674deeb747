package underhold.shell;

import java.util.List;
import org.springframework.shell.core.command.Command;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.CommandOption;
import org.springframework.shell.core.command.ExitStatus;

/** One command: its words, its options and what it does. */
final class ShellCommand implements Command {
  private final String name;
  private final String group;
  private final String summary;
  private final List<Parameter> parameters;
  private final List<CommandOption> options;
  private final Action action;
  private final List<String> notes;

  /** What a command does; it returns an exit code. */
  @FunctionalInterface
  interface Action {
    int run(Call call);
  }

  ShellCommand(
      String name,
      String group,
      String summary,
      List<Parameter> parameters,
      List<CommandOption> options,
      Action action) {
    this(name, group, summary, parameters, Options.with(group, options), action, List.of());
  }

  private ShellCommand(
      String name,
      String group,
      String summary,
      List<Parameter> parameters,
      List<CommandOption> options,
      Action action,
      List<String> notes) {
    this.name = name;
    this.group = group;
    this.summary = summary;
    this.parameters = List.copyOf(parameters);
    this.options = List.copyOf(options);
    this.action = action;
    this.notes = List.copyOf(notes);
  }

  /** The same command with more to be said in its help, a paragraph each. */
  ShellCommand noting(List<String> paragraphs) {
    return new ShellCommand(name, group, summary, parameters, options, action, paragraphs);
  }

  /** What its help says below the options. */
  List<String> notes() {
    return notes;
  }

  @Override
  public String getName() {
    return name;
  }

  @Override
  public String getGroup() {
    return group;
  }

  @Override
  public String getDescription() {
    return summary;
  }

  @Override
  public String getHelp() {
    return usage() + "\n" + summary;
  }

  @Override
  public List<CommandOption> getOptions() {
    return options;
  }

  /** Whether it answers by rules, which may be those of another pack. */
  boolean byRules() {
    return options.containsAll(Options.PACK);
  }

  List<Parameter> parameters() {
    return parameters;
  }

  /** The command line in short: {@code why METHOD [FILE] [--zone NAME]}. */
  String usage() {
    StringBuilder usage = new StringBuilder(name);
    parameters.forEach(parameter -> usage.append(' ').append(parameter.usage()));
    options.stream()
        .filter(option -> !Options.isFlag(option))
        .forEach(o -> usage.append(" [--" + o.longName() + " " + o.defaultValue() + "]"));
    return usage.toString();
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    int code = action.run(Call.of(context));
    return new ExitStatus(code, "");
  }
}
