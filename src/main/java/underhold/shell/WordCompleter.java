package underhold.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jline.reader.Candidate;
import org.jline.reader.LineReader;
import org.jline.reader.ParsedLine;
import org.springframework.shell.core.command.Command;
import org.springframework.shell.core.command.CommandRegistry;
import org.springframework.shell.jline.CommandCompleter;

/** Completes commands, their words and their options. */
final class WordCompleter extends CommandCompleter {
  private final CommandRegistry registry;

  WordCompleter(CommandRegistry registry) {
    super(registry);
    this.registry = registry;
  }

  @Override
  public void complete(LineReader reader, ParsedLine line, List<Candidate> candidates) {
    List<String> before = line.words().subList(0, Math.max(0, line.wordIndex()));
    words(before).forEach(word -> candidates.add(candidate(word)));
  }

  /** What may follow the words typed. */
  List<String> words(List<String> before) {
    Optional<ShellCommand> found = command(before);
    List<String> words = new ArrayList<>();
    if (before.size() < 2) {
      String prefix = before.isEmpty() ? "" : before.get(0) + " ";
      registry.getCommands().stream()
          .map(Command::getName)
          .filter(name -> name.startsWith(prefix))
          .map(name -> name.substring(prefix.length()).split(" ", -1)[0])
          .distinct()
          .sorted()
          .forEach(words::add);
    }
    found.ifPresent(command -> words.addAll(after(command, before)));
    return words;
  }

  private static List<String> after(ShellCommand command, List<String> before) {
    List<String> words = new ArrayList<>();
    int length = command.getName().split(" ", -1).length;
    int place = (int) before.stream().skip(length).filter(word -> !word.startsWith("-")).count();
    List<Parameter> parameters = command.parameters();
    if (!parameters.isEmpty()) {
      Parameter last = parameters.get(parameters.size() - 1);
      if (place < parameters.size()) {
        words.addAll(parameters.get(place).words().get());
      } else if (last.repeated()) {
        words.addAll(last.words().get());
      }
    }
    command.getOptions().forEach(option -> words.add("--" + option.longName()));
    return words;
  }

  private Optional<ShellCommand> command(List<String> before) {
    for (int length = Math.min(2, before.size()); length > 0; length--) {
      String name = String.join(" ", before.subList(0, length));
      if (registry.getCommandByName(name) instanceof ShellCommand command) {
        return Optional.of(command);
      }
    }
    return Optional.empty();
  }

  /** A name that ends with an equals sign wants its value at once. */
  private static Candidate candidate(String word) {
    return new Candidate(word, word, null, null, null, null, !word.endsWith("="));
  }
}
