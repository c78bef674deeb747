package underhold.shell;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.advice.SupportOption;
import underhold.consult.SettingHelp;
import underhold.consult.SizingDesk;
import underhold.consult.stage.PlanSettings;
import underhold.site.Site;
import underhold.sizing.Choice;
import underhold.sizing.Setting;
import underhold.sizing.SettingTable;
import underhold.sizing.Settings;

/**
 * The settings a report is called with: {@code METHOD.NAME=VALUE} for a sheet, {@code
 * stages.NAME=VALUE} for the plan. Those of sheets hold for the ranking as well, as if they stood
 * in the site file.
 *
 * @param words as typed
 * @param sheets by method and name, as typed
 * @param plan the settings of the plan in force
 */
record ReportSettings(List<String> words, Map<String, Map<String, String>> sheets, Settings plan) {
  private static final String STAGES = "stages";

  /**
   * Reads the words.
   *
   * @throws Refusal with everything that cannot be used
   */
  static ReportSettings read(List<String> words) {
    Map<String, List<String>> byMethod = new LinkedHashMap<>();
    List<String> problems = new ArrayList<>();
    for (String word : words) {
      int dot = word.indexOf('.');
      int equals = word.indexOf('=');
      String method = dot < 0 || equals < dot ? "" : word.substring(0, dot).strip();
      if (!methods().contains(method)) {
        problems.add(
            "--set \""
                + word
                + "\" does not say whose setting it is; write METHOD.NAME=VALUE, such as"
                + " pits.crews=2 or stages.rigs=2. There are: "
                + String.join(", ", methods()));
      } else {
        byMethod.computeIfAbsent(method, key -> new ArrayList<>()).add(word.substring(dot + 1));
      }
    }
    byMethod.forEach(
        (method, list) ->
            table(method).parse(list).problems().forEach(p -> problems.add(method + ": " + p)));
    if (!problems.isEmpty()) {
      throw Refusal.usage(problems.toArray(String[]::new));
    }
    Map<String, Map<String, String>> sheets = new LinkedHashMap<>();
    byMethod.forEach(
        (method, list) -> {
          if (!method.equals(STAGES)) {
            sheets.put(method, pairs(list));
          }
        });
    List<String> plan = byMethod.getOrDefault(STAGES, List.of());
    return new ReportSettings(
        List.copyOf(words), sheets, PlanSettings.TABLE.parse(plan).settings());
  }

  /** The site with these settings in place of its own of the same name. */
  Map<String, Map<String, String>> over(Site site) {
    Map<String, Map<String, String>> all = new LinkedHashMap<>();
    site.sizing().forEach((method, own) -> all.put(method, new LinkedHashMap<>(own)));
    sheets.forEach(
        (method, given) -> {
          Map<String, String> own = all.computeIfAbsent(method, key -> new LinkedHashMap<>());
          given.forEach(
              (name, value) -> {
                own.remove(name); // the later word holds
                own.put(name, value);
              });
        });
    return all;
  }

  private static Map<String, String> pairs(List<String> words) {
    Map<String, String> pairs = new LinkedHashMap<>();
    for (String word : words) {
      int equals = word.indexOf('=');
      pairs.put(word.substring(0, equals).strip(), word.substring(equals + 1).strip());
    }
    return pairs;
  }

  private static List<String> methods() {
    List<String> methods = new ArrayList<>();
    for (SupportOption option : SupportOption.values()) {
      if (option != SupportOption.REFER) {
        methods.add(option.id());
      }
    }
    methods.add(STAGES);
    return methods;
  }

  private static SettingTable table(String method) {
    Optional<SupportOption> option = SupportOption.find(method);
    if (option.isEmpty()) {
      return PlanSettings.TABLE;
    }
    List<Setting> numbers = new ArrayList<>();
    List<Choice> choices = new ArrayList<>();
    for (SettingHelp help : new SizingDesk().settings(option.get())) {
      help.number()
          .ifPresentOrElse(
              numbers::add,
              () ->
                  choices.add(
                      new Choice(help.name(), help.label(), help.choices(), help.source())));
    }
    return new SettingTable(method, numbers, choices);
  }
}
