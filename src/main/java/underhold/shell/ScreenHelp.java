package underhold.shell;

import java.util.List;
import org.springframework.shell.core.command.CommandOption;
import underhold.consult.firmness.FirmnessFinder;
import underhold.consult.screening.ZoneScreen;

/** What is said about {@code screen}. */
final class ScreenHelp {
  /** Below its options. */
  static final List<String> NOTES =
      List.of(
          "A table of zones: the first row names the columns: zone, any facts (the command facts lists them), and"
              + " the ground as layer1.top, layer1.soil, layer1.unitWeight, layer2.top and so on; also site,"
              + " units (SI or US) and note. A column whose name begins with # is passed over. Amounts carry"
              + " their unit in the cell (3.2 m), or in the header (foundingDepth [m]). An empty cell means"
              + " unknown. Comma or semicolon, UTF-8. --template prints a table to begin with.",
          "Quick: leader, standings, scores, conditions and checks are those of advise. What is left out: the"
              + " trials of open questions, the scheme over several zones, whole sheets of other options than the"
              + " leader (of these only failing checks are found, which are all that counts), and most draws: "
              + ZoneScreen.USUAL_DRAWS
              + " instead of "
              + FirmnessFinder.USUAL_DRAWS
              + " (--draws N; 0 for none). Every row says so.",
          "A row with anything wrong is told with all its problems, and skipped; the exit code is then 1.",
          "Stopped or killed: rows are kept in TABLE.part.csv (.part.jsonl) beside the table, in order and only"
              + " whole. The same command goes on after the last of them: it knows each row again by a digest of"
              + " its line and cells, and refuses where the input, program, rules or draws are others. The table"
              + " itself is written in one step at the end. --anew lets begun rows go.");

  private ScreenHelp() {}

  /** The command line again, as it would be typed. */
  static String line(Call call) {
    StringBuilder line = new StringBuilder("underhold screen");
    call.words().forEach(word -> line.append(' ').append(quoted(word)));
    for (CommandOption option : call.options()) {
      if (!Options.ANEW.equals(option.longName())) {
        line.append(" --").append(option.longName());
        if (!Options.isFlag(option)) {
          line.append(' ').append(quoted(String.valueOf(option.value())));
        }
      }
    }
    return line.toString();
  }

  private static String quoted(String word) {
    return word.matches("[\\w./,:=+-]+") ? word : "\"" + word.replace("\"", "\\\"") + "\"";
  }
}
