package underhold.sizing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import underhold.quantity.ParsedQuantity;
import underhold.quantity.UnitSystem;
import underhold.site.NearestName;

/**
 * The settings of a method: numbers within ranges and choices among words, each with its default.
 *
 * @param method name of the method in messages: "pits"
 * @param numbers the numbers, in the order of the sheet
 * @param choices the choices, in the order of the sheet
 */
public record SettingTable(String method, List<Setting> numbers, List<Choice> choices) {
  public SettingTable {
    numbers = List.copyOf(numbers);
    choices = List.copyOf(choices);
    Set<String> seen = new HashSet<>();
    names(numbers, choices)
        .forEach(
            name -> {
              if (!seen.add(plain(name))) {
                throw new IllegalArgumentException(method + ": two settings are called " + name);
              }
            });
  }

  /**
   * Settings read from words.
   *
   * @param settings what could be read
   * @param problems what could not, one sentence each
   */
  public record Read(Settings settings, List<String> problems) {
    public Read {
      problems = List.copyOf(problems);
    }
  }

  /** All defaults. */
  public Settings defaults() {
    return Settings.defaults(this);
  }

  /** Every name, numbers first. */
  public List<String> names() {
    return names(numbers, choices).toList();
  }

  /** The number of that name; "widestPit", as site files write names, serves as well. */
  public Optional<Setting> number(String name) {
    return numbers.stream().filter(one -> plain(one.name()).equals(plain(name))).findFirst();
  }

  /** The choice of that name. */
  public Optional<Choice> choice(String name) {
    return choices.stream().filter(one -> plain(one.name()).equals(plain(name))).findFirst();
  }

  /** Reads NAME=VALUE words, a later one in place of an earlier; every problem is listed. */
  public Read parse(List<String> words) {
    List<String> problems = new ArrayList<>();
    Settings settings = defaults();
    for (String word : words) {
      settings = one(settings, word, problems);
    }
    return new Read(settings, problems);
  }

  private Settings one(Settings settings, String word, List<String> problems) {
    int equals = word.indexOf('=');
    if (equals < 0) {
      problems.add("\"" + word + "\" is not NAME=VALUE" + example());
      return settings;
    }
    String name = word.substring(0, equals).strip();
    String value = word.substring(equals + 1).strip();
    Optional<Choice> choice = choice(name);
    Optional<Setting> number = number(name);
    if (choice.isPresent()) {
      if (choice.get().accepts(value)) {
        return settings.with(choice.get(), value);
      }
      problems.add(choice.get().refusal(value));
    } else if (number.isPresent()) {
      return amount(settings, number.get(), value, problems);
    } else {
      problems.add(unknown(name, value));
    }
    return settings;
  }

  private static Settings amount(
      Settings settings, Setting setting, String value, List<String> problems) {
    ParsedQuantity parsed = setting.parse(value);
    return parsed.fold(
        read -> {
          if (setting.accepts(read.quantity().si())) {
            return settings.with(setting, read.quantity().si());
          }
          problems.add(setting.refusal(read.quantity().si()));
          return settings;
        },
        rejected -> {
          String explanation = rejected.explanation();
          problems.add(
              setting.name() + " is \"" + value + "\": " + explanation + " " + setting.range());
          return settings;
        });
  }

  private String example() {
    return numbers.stream()
        .findFirst()
        .map(one -> ", such as " + one.name() + "=" + one.fallback().in(UnitSystem.SI))
        .orElse("");
  }

  private String unknown(String name, String value) {
    return "there is no setting \""
        + name
        + "\" for "
        + method
        + ", so \""
        + value
        + "\" was not used; "
        + NearestName.of(name, names())
            .map(nearest -> "did you mean \"" + nearest + "\"?")
            .orElseGet(() -> "known: " + String.join(", ", names()));
  }

  private static Stream<String> names(List<Setting> numbers, List<Choice> choices) {
    return Stream.concat(numbers.stream().map(Setting::name), choices.stream().map(Choice::name));
  }

  private static String plain(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]", "");
  }
}
