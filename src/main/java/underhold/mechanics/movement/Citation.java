package underhold.mechanics.movement;

/**
 * Who says so.
 *
 * @param text author, title, edition, clause or table; empty only for common practice and what is
 *     derived
 * @param provenance how it is known
 */
public record Citation(String text, Provenance provenance) {
  public Citation {
    text = text.strip();
    boolean unnamed = provenance == Provenance.COMMON_PRACTICE || provenance == Provenance.DERIVED;
    if (text.isEmpty() && !unnamed) {
      throw new IllegalArgumentException("a source that is claimed must be named");
    }
  }
}
