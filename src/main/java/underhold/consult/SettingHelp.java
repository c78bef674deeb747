package underhold.consult;

import java.util.List;
import java.util.Optional;
import underhold.quantity.UnitSystem;
import underhold.sizing.Choice;
import underhold.sizing.Setting;
import underhold.sizing.Source;

/**
 * What a user is told of a setting: a number within a range, or one of some words.
 *
 * @param name as typed in NAME=VALUE
 * @param label in words
 * @param number the number with its default and range; empty where it is a word
 * @param choices the words allowed, the default first; empty where it is a number
 * @param source the default's source and basis
 */
public record SettingHelp(
    String name, String label, Optional<Setting> number, List<String> choices, Source source) {
  public SettingHelp {
    choices = List.copyOf(choices);
    if (number.isPresent() != choices.isEmpty()) {
      throw new IllegalArgumentException(name + " is a number or one of some words");
    }
  }

  static SettingHelp of(Setting setting) {
    return new SettingHelp(
        setting.name(), setting.label(), Optional.of(setting), List.of(), setting.source());
  }

  static SettingHelp of(Choice choice) {
    return new SettingHelp(
        choice.name(), choice.label(), Optional.empty(), choice.words(), choice.source());
  }

  /** The default, as a person reads it. */
  public String fallback(UnitSystem system) {
    return number.map(setting -> setting.fallback().in(system)).orElseGet(() -> choices.get(0));
  }

  /** What may be set: "0.6 m to 1.524 m", or the words. */
  public String allowed(UnitSystem system) {
    return number
        .map(
            setting ->
                setting.fallback().with(setting.least()).in(system)
                    + " to "
                    + setting.fallback().with(setting.most()).in(system))
        .orElseGet(() -> String.join(", ", choices));
  }
}
