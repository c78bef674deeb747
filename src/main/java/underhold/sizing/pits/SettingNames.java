package underhold.sizing.pits;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Compares names of settings, for reading and for guesses in messages. */
final class SettingNames {
  /** Share of common pairs of letters from which a name is worth a guess. */
  private static final double NEAR = 0.4;

  private SettingNames() {}

  /** Without hyphens and capitals: "widestPit" and "widest-pit" are the same. */
  static String plain(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]", "");
  }

  /** The name that shares most pairs of letters with what was typed, if it shares enough. */
  static Optional<String> nearest(String typed, Collection<String> names) {
    return names.stream()
        .max(Comparator.comparingDouble(name -> likeness(typed, name)))
        .filter(name -> likeness(typed, name) >= NEAR);
  }

  /** Dice's coefficient of the pairs of neighbouring letters, 0 to 1. */
  private static double likeness(String one, String other) {
    Set<String> pairs = pairs(one);
    Set<String> others = pairs(other);
    Set<String> common = new HashSet<>(pairs);
    common.retainAll(others);
    return 2.0 * common.size() / Math.max(1, pairs.size() + others.size());
  }

  private static Set<String> pairs(String name) {
    String plain = plain(name);
    Set<String> pairs = new HashSet<>();
    for (int i = 0; i + 1 < plain.length(); i++) {
      pairs.add(plain.substring(i, i + 2));
    }
    return pairs;
  }
}
