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
  static final String SHEETS = "sheets";
  static final String REVIEW = "review";
  static final String UNITS = "units";
  static final String FOR = "for";
  static final String CHANGES = "changes";
  static final String DRAWS = "draws";
  static final String SEED = "seed";
  static final String SAVE = "save";
  static final String BY = "by";
  static final String ROLE = "role";
  static final String ON = "on";
  static final String WHY = "why";
  static final String HEAD = "head";
  static final String OUT = "out";
  static final String SECTION = "section";
  static final String TRIES = "tries";
  static final String ANEW = "anew";
  static final String TEMPLATE = "template";
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
  static final CommandOption SAVE_OPTION =
      valued(SAVE, "NAME.advice.json", "saves the consultation, to be run again and reviewed");
  static final CommandOption BY_OPTION = valued(BY, "NAME", "who writes the entry");
  static final CommandOption ROLE_OPTION = valued(ROLE, "ROLE", "what the writer is in this job");
  static final CommandOption ON_OPTION =
      valued(ON, "TARGET", "the part spoken of; the whole unless set");
  static final CommandOption WHY_OPTION = valued(WHY, "REASON", "the reason");
  static final CommandOption HEAD_OPTION =
      valued(HEAD, "HEAD", "a head noted elsewhere, to hold the record against");
  static final CommandOption OUT_OPTION =
      valued(OUT, "NAME", "the file to write; its ending says in which format");
  static final CommandOption AUDIENCE_OPTION =
      valued(FOR, "AUDIENCE", "for the reviewer (everything), the site or the client");
  static final CommandOption SHEETS_OPTION =
      valued(
          SHEETS,
          "WHICH",
          "whole sheets of the methods chosen, others in short (chosen), or of all options (all)");
  static final CommandOption REVIEW_OPTION =
      valued(REVIEW, "FILE.review.json", "the review that goes with the report");
  static final CommandOption SET_OF_OPTION =
      valued(
          SET, "METHOD.NAME=VALUE", "a setting of a sheet, or of stages; may stand several times");
  static final CommandOption SECTION_OPTION =
      valued(SECTION, "NAME", "only that section; may stand several times");
  static final CommandOption FOLDER_OPTION =
      valued(OUT, "DIR", "writes the sites that show defects into that folder");
  static final CommandOption TRIES_OPTION =
      valued(TRIES, "N", "how many sites are tried for each question");
  static final CommandOption SITE_OPTION = valued(SITE, "FILE", "the site file");
  static final CommandOption NAME_OPTION = valued(NAME, "NAME", "the name of the site");

  static final CommandOption ANEW_OPTION =
      flag(ANEW, "lets go of rows kept from a run that was stopped, and begins again");
  static final CommandOption TEMPLATE_OPTION =
      flag(TEMPLATE, "prints a table of zones to begin with: every column, and an example");

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
