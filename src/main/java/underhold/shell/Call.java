package underhold.shell;

import java.util.List;
import java.util.Optional;
import org.springframework.shell.core.command.CommandArgument;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.CommandOption;

/** The words and options one command was called with. */
record Call(List<String> words, List<CommandOption> options) {
  Call {
    words = List.copyOf(words);
    options = List.copyOf(options);
  }

  static Call of(CommandContext context) {
    return new Call(
        context.parsedInput().arguments().stream().map(CommandArgument::value).toList(),
        context.parsedInput().options());
  }

  /** The word at that place. */
  Optional<String> word(int index) {
    return index < words.size() ? Optional.of(words.get(index)) : Optional.empty();
  }

  /** The word at that place, which the command line is known to have. */
  String needed(int index) {
    return words.get(index);
  }

  /** The value of an option, if given. */
  Optional<String> option(String name) {
    return options.stream()
        .filter(option -> name.equals(option.longName()))
        .map(CommandOption::value)
        .map(String::valueOf)
        .findFirst();
  }

  /** All values of an option that may stand several times. */
  List<String> all(String name) {
    return options.stream()
        .filter(option -> name.equals(option.longName()))
        .map(CommandOption::value)
        .map(String::valueOf)
        .toList();
  }

  boolean has(String flag) {
    return option(flag).isPresent();
  }
}
