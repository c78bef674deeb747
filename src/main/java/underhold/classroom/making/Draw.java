package underhold.classroom.making;

import java.util.List;
import java.util.SplittableRandom;
import underhold.quantity.UnitSystem;

/** Draws for one try; the same start gives the same draws. Not for several threads. */
final class Draw {
  private static final double US_SHARE = 0.3;

  private final SplittableRandom random;
  private final Typing typing;

  Draw(SplittableRandom random) {
    this.random = random;
    this.typing = new Typing(random.nextDouble() < US_SHARE ? UnitSystem.US : UnitSystem.SI);
  }

  /** Amounts in the units of this job. */
  Typing typing() {
    return typing;
  }

  boolean chance(double share) {
    return random.nextDouble() < share;
  }

  /** A number between two. */
  double between(double least, double most) {
    return least + random.nextDouble() * (most - least);
  }

  /** A whole number from least to most, both included. */
  int whole(int least, int most) {
    return random.nextInt(least, most + 1);
  }

  /** One of the words, which may stand several times to come oftener. */
  String pick(String... words) {
    return words[random.nextInt(words.length)];
  }

  <T> T pick(List<T> items) {
    return items.get(random.nextInt(items.size()));
  }

  /** The items in another order. */
  <T> List<T> shuffled(List<T> items) {
    List<T> mixed = new java.util.ArrayList<>(items);
    for (int i = mixed.size() - 1; i > 0; i--) {
      java.util.Collections.swap(mixed, i, random.nextInt(i + 1));
    }
    return mixed;
  }
}
