package underhold.advice;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A second reader of rule texts, written from the description of the grammar alone. It shares
 * nothing with the program: not the tokens, not the conditions, not the units of the limits.
 */
final class SecondReading {
  /** Units of the limits in the inside units, from their definitions (1 ft = 0.3048 m, SI). */
  private static final Map<String, String> UNITS =
      Map.of(
          "m", "1", "mm", "0.001", "ft", "0.3048", "m/s", "1", "kN/m", "1", "kN", "1", "kPa", "1",
          "h", "1", "%", "0.01", "", "1");

  private static final Pattern LIMIT =
      Pattern.compile("\"name\"\\s*:\\s*\"([^\"]+)\"[^{}]*?\"value\"\\s*:\\s*\"([^\"]+)\"");
  private static final Pattern AMOUNT = Pattern.compile("(-?[0-9.]+(?:e-?[0-9]+)?)\\s*(.*)");

  private final Map<String, Double> limits = new HashMap<>();
  private final Map<String, List<SecondRule>> phases = new LinkedHashMap<>();

  /** Reads the texts of a pack, each given by its name. */
  SecondReading(UnaryOperator<String> texts) {
    Matcher limit = LIMIT.matcher(texts.apply("limits.json"));
    while (limit.find()) {
      limits.put(limit.group(1), amount(limit.group(2)));
    }
    Matcher file = Pattern.compile("\"([^\"]+\\.drl)\"").matcher(texts.apply("pack.json"));
    while (file.find()) {
      read(words(texts.apply(file.group(1))));
    }
  }

  Map<String, Double> limits() {
    return limits;
  }

  /** The rules of a phase in the order of the texts. */
  List<SecondRule> rules(String phase) {
    return phases.getOrDefault(phase, List.of());
  }

  /** The rules of all phases. */
  List<SecondRule> all() {
    return phases.values().stream().flatMap(List::stream).toList();
  }

  /** The ids of the rules of a phase that fire on facts, in order; unknown facts are missing. */
  List<String> fire(Map<String, Object> facts, String phase) {
    List<String> fired = new ArrayList<>();
    for (SecondRule rule : rules(phase)) {
      if (rule.fires(facts)) {
        fired.add(rule.id());
      }
    }
    return fired;
  }

  private static double amount(String text) {
    Matcher matcher = AMOUNT.matcher(text);
    if (!matcher.matches()) {
      throw new IllegalArgumentException(text);
    }
    return new BigDecimal(matcher.group(1))
        .multiply(new BigDecimal(UNITS.get(matcher.group(2))))
        .doubleValue();
  }

  /** Names, signs, and texts with one quotation mark before them; comments left out. */
  private static List<String> words(String text) {
    List<String> words = new ArrayList<>();
    Matcher matcher =
        Pattern.compile("//[^\n]*|\"([^\"\n]*)\"|[\\w.-]+|<=|>=|==|\\S").matcher(text);
    while (matcher.find()) {
      if (!matcher.group().startsWith("//")) {
        words.add(matcher.group(1) == null ? matcher.group() : '"' + matcher.group(1));
      }
    }
    return words;
  }

  private void read(List<String> words) {
    int at = words.indexOf("rule");
    while (at >= 0 && at < words.size()) {
      at = rule(words, at);
    }
  }

  private int rule(List<String> words, int start) {
    int when = next(words, "when", start);
    int then = next(words, "then", when);
    int end = next(words, "end", then);
    Map<String, String> header = new HashMap<>();
    for (int i = start; i < when; i++) {
      if (words.get(i).equals("@")) {
        header.put(words.get(i + 1), words.get(i + 3).substring(1));
      }
    }
    String phase = words.get(next(words, "agenda-group", start) + 1).substring(1);
    List<SecondRule.Test> tests = new ArrayList<>();
    int from = when + 3;
    for (int i = from, depth = 1; depth > 0; i++) {
      String word = words.get(i);
      depth += word.equals("(") ? 1 : word.equals(")") ? -1 : 0;
      if (depth == 0 || (depth == 1 && word.equals(","))) {
        tests.add(test(words.subList(from, i)));
        from = i + 1;
      }
    }
    List<String> arguments =
        words.subList(then, end).stream()
            .filter(word -> word.startsWith("\""))
            .map(word -> word.substring(1))
            .toList();
    String verb = words.get(then + 1).replace("findings.", "");
    phases
        .computeIfAbsent(phase, key -> new ArrayList<>())
        .add(new SecondRule(header.get("id"), verb, arguments, tests));
    return end + 1;
  }

  private SecondRule.Test test(List<String> words) {
    String fact = words.get(0);
    String operator = words.get(1);
    @Nullable Double limit = null;
    List<String> allowed = List.of();
    if (words.contains("limit")) {
      limit = limits.get(words.get(words.indexOf("limit") + 2).substring(1));
    } else if (!words.get(2).equals("null")) {
      allowed = words.stream().filter(w -> w.startsWith("\"")).map(w -> w.substring(1)).toList();
    }
    return new SecondRule.Test(fact, operator, allowed, limit);
  }

  private static int next(List<String> words, String word, int from) {
    int at = from;
    while (!words.get(at).equals(word)) {
      at++;
    }
    return at;
  }
}
