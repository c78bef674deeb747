package underhold.sizing;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The settings of a method in force: defaults, except where the user set another value.
 *
 * @param table what may be set
 * @param numbers numbers set by the user, by name, inside units
 * @param words choices set by the user, by name
 */
public record Settings(SettingTable table, Map<String, Double> numbers, Map<String, String> words) {
  public Settings {
    numbers = Collections.unmodifiableMap(new LinkedHashMap<>(numbers));
    words = Collections.unmodifiableMap(new LinkedHashMap<>(words));
  }

  static Settings defaults(SettingTable table) {
    return new Settings(table, Map.of(), Map.of());
  }

  /**
   * The same with one number changed, inside unit.
   *
   * @throws IllegalArgumentException if the value is out of the setting's range
   */
  public Settings with(Setting setting, double value) {
    if (!setting.accepts(value)) {
      throw new IllegalArgumentException(setting.refusal(value));
    }
    Map<String, Double> more = new LinkedHashMap<>(numbers);
    more.put(setting.name(), value);
    return new Settings(table, more, words);
  }

  /**
   * The same with one choice changed.
   *
   * @throws IllegalArgumentException if the word is not among the choices
   */
  public Settings with(Choice choice, String word) {
    if (!choice.accepts(word)) {
      throw new IllegalArgumentException(choice.refusal(word));
    }
    Map<String, String> more = new LinkedHashMap<>(words);
    more.put(choice.name(), word);
    return new Settings(table, numbers, more);
  }

  /**
   * The same with the numbers that other settings have in force.
   *
   * @param shared settings that stand in both tables
   */
  public Settings withNumbersOf(Settings other, List<Setting> shared) {
    Map<String, Double> more = new LinkedHashMap<>(numbers);
    for (Setting one : shared) {
      double value = other.get(one);
      if (!one.accepts(value)) {
        throw new IllegalArgumentException(one.refusal(value));
      }
      more.put(one.name(), value);
    }
    return new Settings(table, more, words);
  }

  /** The number in force, inside unit. */
  public double get(Setting setting) {
    Double set = numbers.isEmpty() ? null : numbers.get(setting.name());
    return set == null ? setting.fallback().si() : set;
  }

  /** The number in force as an amount. */
  public Amount amount(Setting setting) {
    return setting.fallback().with(get(setting));
  }

  /** The word in force. */
  public String get(Choice choice) {
    String set = words.isEmpty() ? null : words.get(choice.name());
    return set == null ? choice.fallback() : set;
  }

  /** Default or set by the user. */
  public Origin origin(Setting setting) {
    return numbers.containsKey(setting.name()) ? Origin.SET_BY_USER : Origin.DEFAULT;
  }

  /** Default or set by the user. */
  public Origin origin(Choice choice) {
    return words.containsKey(choice.name()) ? Origin.SET_BY_USER : Origin.DEFAULT;
  }

  /** Writes all of them as inputs of a sheet, with origin, source and basis. */
  public void write(SheetBuilder sheet) {
    if (!sheet.whole()) {
      return;
    }
    for (Setting one : table.numbers()) {
      sheet.input(one.name(), one.label(), amount(one), origin(one), one.source());
    }
    for (Choice one : table.choices()) {
      sheet.input(one.name(), one.label(), get(one), origin(one), one.source());
    }
  }
}
