package underhold.mechanics.soil;

import java.util.Optional;
import java.util.function.Function;

/**
 * What a calculator answers: a value, or the reason why the method does not apply to the case.
 *
 * @param <T> the result type of the method
 */
public sealed interface Outcome<T> {

  /** Handles both kinds of answer; adding a kind breaks every caller on purpose. */
  <R> R fold(
      Function<? super T, ? extends R> computed, Function<? super String, ? extends R> outOfRange);

  /** The value with {@code change} applied, or the same reason. */
  default <R> Outcome<R> map(Function<? super T, ? extends R> change) {
    return fold(value -> new Computed<R>(change.apply(value)), reason -> new OutOfRange<R>(reason));
  }

  /** The outcome of {@code next} for the value, or the same reason. */
  default <R> Outcome<R> flatMap(Function<? super T, Outcome<R>> next) {
    return fold(next, reason -> new OutOfRange<R>(reason));
  }

  /** The value, empty when out of range. */
  default Optional<T> value() {
    return fold(value -> Optional.of(value), reason -> Optional.empty());
  }

  /** The reason, empty when computed. */
  default Optional<String> reason() {
    return fold(value -> Optional.empty(), reason -> Optional.of(reason));
  }

  /**
   * The value, for a caller who knows that the case is in range.
   *
   * @throws IllegalStateException with the reason when the method does not apply
   */
  default T orThrow() {
    return value().orElseThrow(() -> new IllegalStateException(reason().orElse("out of range")));
  }

  /** A computed outcome. */
  static <T> Outcome<T> of(T value) {
    return new Computed<>(value);
  }

  /** An outcome that says why the method does not apply. */
  static <T> Outcome<T> outOfRange(String reason) {
    return new OutOfRange<>(reason);
  }

  /** The method applies; {@code result} is its answer. */
  record Computed<T>(T result) implements Outcome<T> {
    @Override
    public <R> R fold(
        Function<? super T, ? extends R> computed,
        Function<? super String, ? extends R> outOfRange) {
      return computed.apply(result);
    }
  }

  /** The method does not apply; {@code why} says which limit was passed, for the reader. */
  record OutOfRange<T>(String why) implements Outcome<T> {
    public OutOfRange {
      if (why.isBlank()) {
        throw new IllegalArgumentException("an out-of-range outcome must say why");
      }
    }

    @Override
    public <R> R fold(
        Function<? super T, ? extends R> computed,
        Function<? super String, ? extends R> outOfRange) {
      return outOfRange.apply(why);
    }
  }
}
