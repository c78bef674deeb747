package underhold.advice;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A rule as the second reader understands it. */
record SecondRule(String id, String verb, List<String> arguments, List<Test> tests) {

  /** One condition: words allowed, or a limit, or neither where the fact must not be known. */
  record Test(String fact, String operator, List<String> words, @Nullable Double limit) {
    /** Whether it holds; null while nobody knows. */
    @Nullable Boolean holds(Map<String, Object> facts) {
      Object value = facts.get(fact);
      if (limit == null && words.isEmpty()) {
        return value == null;
      }
      if (value == null) {
        return null;
      }
      if (limit == null) {
        return words.contains(value);
      }
      double number = (Double) value;
      return switch (operator) {
        case "<" -> number < limit;
        case "<=" -> !(number > limit);
        case ">" -> number > limit;
        case ">=" -> !(number < limit);
        default -> throw new IllegalStateException(operator);
      };
    }
  }

  boolean fires(Map<String, Object> facts) {
    for (Test test : tests) {
      if (!Boolean.TRUE.equals(test.holds(facts))) {
        return false;
      }
    }
    return true;
  }

  /** The condition that alone keeps it from firing; null if there is none such. */
  @Nullable Test nearMiss(Map<String, Object> facts) {
    List<Test> failed = new ArrayList<>();
    for (Test test : tests) {
      if (!Boolean.TRUE.equals(test.holds(facts))) {
        failed.add(test);
      }
    }
    boolean told = failed.size() == 1 && (tests.size() > 1 || failed.get(0).limit() != null);
    return told ? failed.get(0) : null;
  }

  /** Effect, options or subject, strength or value: all that it states, in one line. */
  String states() {
    return verb + " " + String.join(" | ", arguments);
  }

  /** The facts it reads, in order. */
  Set<String> facts() {
    Set<String> facts = new LinkedHashSet<>();
    tests.forEach(test -> facts.add(test.fact()));
    return facts;
  }
}
