package underhold.sizing.pits;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import underhold.mechanics.timber.ReferenceValues;
import underhold.quantity.ParsedQuantity;
import underhold.sizing.Amount;
import underhold.sizing.Source;

/**
 * The settings in force: defaults, except where the user set another value.
 *
 * @param changed values set by the user, inside units
 * @param timber name of the timber in the table of reference values
 */
public record PitsSettings(Map<PitsSetting, Double> changed, String timber) {
  /** Name of the choice of timber. */
  public static final String TIMBER = "timber";

  /** The choice of timber in words. */
  public static final String TIMBER_LABEL = "timber of the boards, No. 2 grade";

  /** Where the timbers' values come from. */
  public static final Source TIMBER_SOURCE = Sources.NDS;

  private static final String DEFAULT_TIMBER = "douglas-fir-larch";
  private static final PitsSettings DEFAULTS = new PitsSettings(Map.of(), DEFAULT_TIMBER);

  public PitsSettings {
    Map<PitsSetting, Double> copy = new EnumMap<>(PitsSetting.class);
    changed.forEach(
        (setting, value) -> {
          if (!setting.setting().accepts(value)) {
            throw new IllegalArgumentException(setting.setting().refusal(value));
          }
          copy.put(setting, value);
        });
    changed = Collections.unmodifiableMap(copy);
    if (ReferenceValues.named(timber).isEmpty()) {
      throw new IllegalArgumentException(unknownTimber(timber));
    }
  }

  /**
   * Settings read from words.
   *
   * @param settings what could be read
   * @param problems what could not, one sentence each
   */
  public record Read(PitsSettings settings, List<String> problems) {
    public Read {
      problems = List.copyOf(problems);
    }
  }

  /** All defaults. */
  public static PitsSettings defaults() {
    return DEFAULTS;
  }

  /** The same with one value changed, inside unit. */
  public PitsSettings with(PitsSetting setting, double value) {
    Map<PitsSetting, Double> more = new EnumMap<>(PitsSetting.class);
    more.putAll(changed);
    more.put(setting, value);
    return new PitsSettings(more, timber);
  }

  /** The value in force, inside unit. */
  public double get(PitsSetting setting) {
    return changed.getOrDefault(setting, setting.setting().fallback().si());
  }

  /** The value in force as an amount. */
  public Amount amount(PitsSetting setting) {
    return setting.setting().fallback().with(get(setting));
  }

  /** The timber's reference values. */
  public ReferenceValues timberValues() {
    return ReferenceValues.named(timber).orElseThrow();
  }

  /** The timbers to choose from, the default first. */
  public static List<String> timbers() {
    List<String> names = new ArrayList<>(ReferenceValues.names());
    names.remove(DEFAULT_TIMBER);
    names.add(0, DEFAULT_TIMBER);
    return names;
  }

  /** Whether the timber is the default one. */
  boolean defaultTimber() {
    return timber.equals(DEFAULT_TIMBER);
  }

  /** Reads NAME=VALUE words; every problem is listed. */
  public static Read parse(List<String> words) {
    PitsSettings settings = DEFAULTS;
    List<String> problems = new ArrayList<>();
    for (String word : words) {
      int equals = word.indexOf('=');
      String name = equals < 0 ? word.strip() : word.substring(0, equals).strip();
      String value = equals < 0 ? "" : word.substring(equals + 1).strip();
      if (equals < 0) {
        problems.add("\"" + word + "\" is not NAME=VALUE, such as widest-pit=1.1 m");
      } else if (name.equals(TIMBER)) {
        settings = timber(settings, value, problems);
      } else {
        settings = number(settings, name, value, problems);
      }
    }
    return new Read(settings, problems);
  }

  private static PitsSettings timber(PitsSettings settings, String value, List<String> problems) {
    if (ReferenceValues.named(value).isPresent()) {
      return new PitsSettings(settings.changed, value);
    }
    problems.add(unknownTimber(value));
    return settings;
  }

  private static PitsSettings number(
      PitsSettings settings, String name, String value, List<String> problems) {
    PitsSetting setting = PitsSetting.named(name).orElse(null);
    if (setting == null) {
      problems.add(unknownSetting(name, value));
      return settings;
    }
    ParsedQuantity parsed = setting.setting().parse(value);
    return parsed.fold(
        read -> checked(settings, setting, read.quantity().si(), problems),
        rejected -> {
          problems.add(
              name
                  + " is \""
                  + value
                  + "\": "
                  + rejected.explanation()
                  + " "
                  + setting.setting().range());
          return settings;
        });
  }

  private static PitsSettings checked(
      PitsSettings settings, PitsSetting setting, double si, List<String> problems) {
    if (setting.setting().accepts(si)) {
      return settings.with(setting, si);
    }
    problems.add(setting.setting().refusal(si));
    return settings;
  }

  private static String unknownSetting(String name, String value) {
    List<String> names = new ArrayList<>();
    Arrays.stream(PitsSetting.values()).forEach(one -> names.add(one.setting().name()));
    names.add(TIMBER);
    return "there is no setting \""
        + name
        + "\" for pits, so \""
        + value
        + "\" was not used"
        + SettingNames.nearest(name, names)
            .map(nearest -> "; did you mean \"" + nearest + "\"?")
            .orElse("; known: " + String.join(", ", names));
  }

  private static String unknownTimber(String name) {
    return "there is no timber \""
        + name
        + "\"; known: "
        + String.join(", ", ReferenceValues.names());
  }
}
