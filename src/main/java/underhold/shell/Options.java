package underhold.shell;

import java.util.ArrayList;
import java.util.List;
import org.springframework.shell.core.command.CommandOption;

/** The options of commands. */
final class Options {
  static final String JSON = "json";
  static final String NO_COLOUR = "no-colour";
  static final String DEBUG = "debug";
  static final String HELP = "help";
  static final String ZONE = "zone";
  static final String SITE = "site";
  static final String NAME = "name";
  static final String SET = "set";
  static final String UNITS = "units";
  static final String FOR = "for";
  static final String CHANGES = "changes";
  static final String DRAWS = "draws";
  static final String SEED = "seed";
  static final String RULES = "rules";
  static final String LIMIT = "limit";

  static final CommandOption ZONE_OPTION = valued(ZONE, "NAME", "only the zone of that name");
  static final CommandOption SET_OPTION =
      valued(SET, "NAME=VALUE", "a setting of the sheet; may stand several times");
  static final CommandOption UNITS_OPTION =
      valued(UNITS, "SI|US", "the units of the sheet, in place of the site's own");
  static final CommandOption FOR_OPTION =
      valued(FOR, "METHOD", "what it would take to put this method first");
  static final CommandOption CHANGES_OPTION =
      valued(CHANGES, "1|2|3", "how many facts may change together; 2 unless set");
  static final CommandOption DRAWS_OPTION = valued(DRAWS, "N", "how many draws");
  static final CommandOption SEED_OPTION =
      valued(SEED, "N", "where the draws start: the same seed, the same draws");
  static final CommandOption SITE_OPTION = valued(SITE, "FILE", "the site file");
  static final CommandOption NAME_OPTION = valued(NAME, "NAME", "the name of the site");

  /** What every command takes that answers by rules. */
  static final List<CommandOption> PACK =
      List.of(
          valued(RULES, "DIR", "the folder of a rule pack, in place of the rules built in"),
          valued(
              LIMIT,
              "NAME=VALUE",
              "another value of a limit, for a trial; may stand several times"));

  /** What every command takes. */
  private static final List<CommandOption> COMMON =
      List.of(
          flag(JSON, "answer in JSON"),
          flag(NO_COLOUR, "no colour"),
          flag(DEBUG, "show the details of a fault of the program"),
          flag(HELP, "show what the command does"));

  private Options() {}

  /** The options of a command: its own, those of its group, and those of every command. */
  static List<CommandOption> with(String group, List<CommandOption> own) {
    List<CommandOption> all = new ArrayList<>(own);
    boolean byRules = group.equals(Commands.ADVICE) || group.equals(Commands.KNOWLEDGE);
    if (byRules && !all.containsAll(PACK)) {
      all.addAll(PACK);
    }
    all.addAll(COMMON);
    return all;
  }

  static boolean isFlag(CommandOption option) {
    return option.type() == boolean.class;
  }

  private static CommandOption flag(String name, String description) {
    return CommandOption.with().longName(name).description(description).type(boolean.class).build();
  }

  /** The default value doubles as the name of the value in help texts. */
  private static CommandOption valued(String name, String value, String description) {
    return CommandOption.with()
        .longName(name)
        .defaultValue(value)
        .description(description)
        .type(String.class)
        .build();
  }
}
