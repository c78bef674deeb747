package underhold.sizing;

/** How much stands behind a source. */
public enum Basis {
  /** A code or standard, read. */
  STANDARD("standard"),
  /** A book, paper or guide, read. */
  PUBLISHED("published"),
  /** What the trade does; no source claimed. */
  COMMON_PRACTICE("common practice"),
  /** A fact of the site, as its user states it. */
  SITE_FACT("site fact"),
  /** Statics or arithmetic; no source needed. */
  STATICS("by statics"),
  /** The authors' judgement. */
  JUDGEMENT("judgement"),
  /** A source that was not at hand. */
  FROM_MEMORY("from memory, verify");

  private final String label;

  Basis(String label) {
    this.label = label;
  }

  /** In words. */
  public String label() {
    return label;
  }
}
