package underhold.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.shell.core.command.Command;
import org.springframework.shell.core.command.CommandArgument;
import org.springframework.shell.core.command.CommandOption;
import org.springframework.shell.core.command.CommandRegistry;
import org.springframework.shell.core.command.ParsedInput;

/** Reads the words of a command line. */
final class CommandLine {
  private static final String OPTION = "--";

  private final CommandRegistry registry;

  CommandLine(CommandRegistry registry) {
    this.registry = registry;
  }

  /**
   * A command line understood.
   *
   * @param command the command
   * @param input its words and options
   */
  record Understood(ShellCommand command, ParsedInput input) {
    boolean has(String flag) {
      return input.options().stream().anyMatch(option -> flag.equals(option.longName()));
    }
  }

  /**
   * Understands a command line.
   *
   * @throws Refusal if there is no such command, option or word, naming what exists
   */
  Understood read(List<String> typed) {
    List<String> line = synonyms(typed);
    ShellCommand command = command(line);
    int length = command.getName().split(" ", -1).length;
    List<String> rest = new ArrayList<>(line);
    for (int i = 0; i < length; i++) {
      rest.remove(firstPlain(rest));
    }
    ParsedInput input = options(command, rest);
    boolean help = input.options().stream().anyMatch(o -> Options.HELP.equals(o.longName()));
    if (!help) {
      checkWords(command, input.arguments().stream().map(CommandArgument::value).toList());
    }
    return new Understood(command, input);
  }

  /** {@code --help} and {@code --version} alone stand for the commands. */
  private static List<String> synonyms(List<String> typed) {
    if (typed.size() == 1) {
      switch (typed.get(0)) {
        case "--help", "-h", "-?", "?" -> {
          return List.of("help");
        }
        case "--version", "-V" -> {
          return List.of("version");
        }
        default -> {}
      }
    }
    return typed;
  }

  private ShellCommand command(List<String> line) {
    List<String> plain = line.stream().filter(word -> !word.startsWith("-")).toList();
    if (plain.isEmpty()) {
      throw Refusal.usage("A command is missing." + commands());
    }
    String first = plain.get(0);
    if (plain.size() > 1 && find(first + " " + plain.get(1)).isPresent()) {
      return find(first + " " + plain.get(1)).orElseThrow();
    }
    return find(first).orElseThrow(() -> unknown(first, plain));
  }

  private Refusal unknown(String first, List<String> plain) {
    List<String> names = names();
    List<String> below = names.stream().filter(name -> name.startsWith(first + " ")).toList();
    if (!below.isEmpty()) {
      List<String> subs = below.stream().map(n -> n.substring(first.length() + 1)).toList();
      String second = plain.size() > 1 ? plain.get(1) : "";
      return Refusal.usage(
          second.isEmpty()
              ? "\"" + first + "\" needs one more word."
              : "There is no command \""
                  + first
                  + " "
                  + second
                  + "\"."
                  + Nearest.question(second, subs),
          "There are: " + String.join(", ", below));
    }
    List<String> firsts = names.stream().map(name -> name.split(" ", -1)[0]).distinct().toList();
    return Refusal.usage(
        "There is no command \"" + first + "\"." + Nearest.question(first, firsts),
        "There are: " + String.join(", ", firsts));
  }

  private String commands() {
    return " There are: " + String.join(", ", names());
  }

  private List<String> names() {
    return registry.getCommands().stream().map(Command::getName).sorted().toList();
  }

  private Optional<ShellCommand> find(String name) {
    return registry.getCommandByName(name) instanceof ShellCommand command
        ? Optional.of(command)
        : Optional.empty();
  }

  private static int firstPlain(List<String> words) {
    int index = 0;
    while (words.get(index).startsWith("-")) {
      index++;
    }
    return index;
  }

  private static ParsedInput options(ShellCommand command, List<String> rest) {
    ParsedInput.Builder input = ParsedInput.builder().commandName(command.getName());
    boolean onlyWords = false;
    int words = 0;
    for (int i = 0; i < rest.size(); i++) {
      String word = rest.get(i);
      if (word.equals(OPTION) && !onlyWords) {
        onlyWords = true;
      } else if (!word.startsWith("-") || onlyWords || word.equals("-")) {
        input.addArgument(new CommandArgument(words++, word));
      } else {
        int equals = word.indexOf('=');
        CommandOption option = option(command, equals < 0 ? word : word.substring(0, equals));
        String value = equals < 0 ? "" : word.substring(equals + 1);
        if (Options.isFlag(option) && equals >= 0) {
          throw Refusal.usage("The option --" + option.longName() + " takes no value.");
        }
        if (!Options.isFlag(option) && equals < 0) {
          if (++i >= rest.size()) {
            throw Refusal.usage(
                "The option --" + option.longName() + " needs a value.", usage(command));
          }
          value = rest.get(i);
        }
        input.addOption(given(option, value));
      }
    }
    return input.build();
  }

  private static CommandOption given(CommandOption option, String value) {
    return CommandOption.with()
        .longName(String.valueOf(option.longName()))
        .value(value)
        .type(option.type())
        .build();
  }

  private static CommandOption option(ShellCommand command, String typed) {
    List<String> names = command.getOptions().stream().map(o -> OPTION + o.longName()).toList();
    for (CommandOption option : command.getOptions()) {
      if (typed.equals(OPTION + option.longName())) {
        return option;
      }
    }
    throw Refusal.usage(
        "The command \""
            + command.getName()
            + "\" has no option "
            + typed
            + "."
            + Nearest.question(typed, names),
        "It has: " + String.join(", ", names));
  }

  private static void checkWords(ShellCommand command, List<String> words) {
    int given = words.size();
    List<Parameter> parameters = command.parameters();
    long needed = parameters.stream().filter(Parameter::required).count();
    boolean endless = parameters.stream().anyMatch(Parameter::repeated);
    if (given < needed) {
      throw Refusal.usage(
          "The command \"" + command.getName() + "\" needs " + parameters.get(given).name() + ".",
          usage(command));
    }
    if (given > parameters.size() && !endless) {
      throw Refusal.usage(
          "The command \""
              + command.getName()
              + "\" does not know what to do with \""
              + words.get(given - 1)
              + "\".",
          usage(command));
    }
  }

  private static String usage(ShellCommand command) {
    return "Usage: " + command.usage();
  }
}
