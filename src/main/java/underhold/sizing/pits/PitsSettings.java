package underhold.sizing.pits;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import underhold.mechanics.timber.ReferenceValues;
import underhold.sizing.Amount;
import underhold.sizing.Choice;
import underhold.sizing.SettingTable;
import underhold.sizing.Settings;

/**
 * The settings in force: defaults, except where the user set another value.
 *
 * @param all the settings, of the table of pits
 */
public record PitsSettings(Settings all) {
  /** The choice of timber. */
  public static final Choice TIMBER =
      new Choice("timber", "timber of the boards, No. 2 grade", timbers(), Sources.NDS);

  /** What may be set. */
  public static final SettingTable TABLE =
      new SettingTable(
          "pits",
          Arrays.stream(PitsSetting.values()).map(PitsSetting::setting).toList(),
          List.of(TIMBER));

  private static final PitsSettings DEFAULTS = new PitsSettings(TABLE.defaults());

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
    return new PitsSettings(all.with(setting.setting(), value));
  }

  /** The value in force, inside unit. */
  public double get(PitsSetting setting) {
    return all.get(setting.setting());
  }

  /** The value in force as an amount. */
  public Amount amount(PitsSetting setting) {
    return all.amount(setting.setting());
  }

  /** Name of the timber in the table of reference values. */
  public String timber() {
    return all.get(TIMBER);
  }

  /** The timber's reference values. */
  public ReferenceValues timberValues() {
    return ReferenceValues.named(timber()).orElseThrow();
  }

  /** Reads NAME=VALUE words; every problem is listed. */
  public static Read parse(List<String> words) {
    SettingTable.Read read = TABLE.parse(words);
    return new Read(new PitsSettings(read.settings()), read.problems());
  }

  /** The timbers to choose from, the default first. */
  private static List<String> timbers() {
    List<String> names = new ArrayList<>(ReferenceValues.names());
    String usual = "douglas-fir-larch";
    names.remove(usual);
    names.add(0, usual);
    return names;
  }
}
