package underhold.sizing;

/**
 * A source and its basis.
 *
 * @param citation author, title, edition, clause or page; may be empty for statics, practice and
 *     judgement
 * @param basis what stands behind it
 */
public record Source(String citation, Basis basis) {
  private static final Source STATICS = new Source("", Basis.STATICS);
  private static final Source JUDGEMENT = new Source("", Basis.JUDGEMENT);
  private static final Source PRACTICE = new Source("", Basis.COMMON_PRACTICE);

  public Source {
    citation = citation.strip();
    boolean needsCitation = basis == Basis.STANDARD || basis == Basis.PUBLISHED;
    if (needsCitation && citation.isEmpty()) {
      throw new IllegalArgumentException("a source that was read must be cited");
    }
  }

  /** A code or standard that was read. */
  public static Source standard(String citation) {
    return new Source(citation, Basis.STANDARD);
  }

  /** A publication that was read. */
  public static Source published(String citation) {
    return new Source(citation, Basis.PUBLISHED);
  }

  /** A source quoted from memory. */
  public static Source memory(String citation) {
    return new Source(citation, Basis.FROM_MEMORY);
  }

  /** Statics or arithmetic. */
  public static Source statics() {
    return STATICS;
  }

  /** Judgement. */
  public static Source judgement() {
    return JUDGEMENT;
  }

  /** Common practice. */
  public static Source practice() {
    return PRACTICE;
  }

  /** Citation and basis in one line. */
  public String words() {
    return citation.isEmpty() ? basis.label() : citation + " (" + basis.label() + ")";
  }
}
