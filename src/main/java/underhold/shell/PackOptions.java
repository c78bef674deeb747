package underhold.shell;

import java.util.ArrayList;
import java.util.List;
import org.springframework.shell.core.command.CommandOption;
import underhold.advice.BuiltInPack;
import underhold.advice.LimitTrial;
import underhold.advice.PackFolder;
import underhold.advice.PackProblem;
import underhold.advice.RulePack;

/** Finds the rules that a command line asks for. */
final class PackOptions {
  /** Stands for the rules built in where a folder could stand. */
  static final String BUILT_IN = "built-in";

  private static final int MOST_SHOWN = 100;

  private PackOptions() {}

  /**
   * The rules that the options ask for.
   *
   * @param usual the rules where the options name none
   * @throws Refusal if the pack is not in order, telling every problem, or a limit cannot be set
   */
  static RulePack pack(RulePack usual, List<CommandOption> options) {
    List<String> folders = values(options, Options.RULES);
    if (folders.size() > 1) {
      throw Refusal.usage(
          "--rules stands " + folders.size() + " times; an answer rests on one rule pack.");
    }
    RulePack pack = folders.isEmpty() ? usual : folder(folders.get(0));
    return LimitTrial.of(pack, values(options, Options.LIMIT))
        .fold(
            changed -> changed,
            problems -> {
              throw Refusal.usage(problems.stream().map(PackProblem::text).toArray(String[]::new));
            });
  }

  /** The pack of a folder, or the one built in by its word. */
  static RulePack folder(String typed) {
    if (typed.equals(BUILT_IN)) {
      return BuiltInPack.pack();
    }
    return PackFolder.read(SiteFiles.path(typed), typed)
        .fold(
            pack -> pack,
            problems -> {
              throw Refusal.site(messages(typed, problems));
            });
  }

  private static List<String> messages(String typed, List<PackProblem> problems) {
    List<String> messages = new ArrayList<>();
    messages.add("The rule pack " + typed + " is refused; nothing of it was used. Its problems:");
    problems.stream().limit(MOST_SHOWN).map(PackProblem::text).forEach(messages::add);
    if (problems.size() > MOST_SHOWN) {
      messages.add("and " + (problems.size() - MOST_SHOWN) + " more.");
    }
    return messages;
  }

  private static List<String> values(List<CommandOption> options, String name) {
    return options.stream()
        .filter(option -> name.equals(option.longName()))
        .map(option -> String.valueOf(option.value()))
        .toList();
  }
}
