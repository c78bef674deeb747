package underhold.classroom;

import java.util.List;

/**
 * How a case came about that the program made. The same words, seed and rules make it again.
 *
 * @param leader the id of the method that was asked for
 * @param teaches the word of what it was to teach
 * @param seed the seed of the search
 * @param rulePack SHA-256 of the rules by which it was searched, in hexadecimal
 * @param counterparts what proves that the facts decide: the same site with facts otherwise, and
 *     another answer
 */
public record Made(
    String leader, String teaches, int seed, String rulePack, List<Counterpart> counterparts) {
  public Made {
    counterparts = List.copyOf(counterparts);
    Expected.mustBeMethod(leader);
  }
}
