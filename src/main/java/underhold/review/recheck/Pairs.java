package underhold.review.recheck;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * The same thing in both answers, where it is in both.
 *
 * @param name its name
 * @param was as it was; empty where it was not there
 * @param now as it is; empty where it is no more
 */
record Pairs<T>(String name, Optional<T> was, Optional<T> now) {
  /** All things of two lists by their names, in the order of the first list. */
  static <T> List<Pairs<T>> of(List<T> was, List<T> now, Function<T, String> name) {
    Map<String, T> before = new LinkedHashMap<>();
    Map<String, T> after = new LinkedHashMap<>();
    was.forEach(one -> before.putIfAbsent(name.apply(one), one));
    now.forEach(one -> after.putIfAbsent(name.apply(one), one));
    List<Pairs<T>> pairs = new ArrayList<>();
    before.forEach(
        (key, one) ->
            pairs.add(new Pairs<>(key, Optional.of(one), Optional.ofNullable(after.get(key)))));
    after.forEach(
        (key, one) -> {
          if (!before.containsKey(key)) {
            pairs.add(new Pairs<>(key, Optional.empty(), Optional.of(one)));
          }
        });
    return pairs;
  }

  /** Both, in words; empty where one is not there. */
  String textWas(Function<T, String> text) {
    return was.map(text).orElse("");
  }

  String textNow(Function<T, String> text) {
    return now.map(text).orElse("");
  }

  boolean both() {
    return was.isPresent() && now.isPresent();
  }
}
