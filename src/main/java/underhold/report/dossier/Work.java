package underhold.report.dossier;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A citation of a sheet parted into what the bibliography lists once and what differs from place to
 * place. Only what is surely a clause, a page or a table is taken off; in doubt the whole citation
 * is the work, so that nothing is lost: before, work and place together are always all its words.
 *
 * @param before what the sheet says before it, such as the layer a value is for; may be empty
 * @param title author, title, edition
 * @param place clause or page, with whatever follows it, such as how it was read; may be empty
 */
record Work(String before, String title, String place) {
  /** {@code stiff-clay from 1 m; }: the layer that a value was chosen for. */
  private static final Pattern LAYER = Pattern.compile("([a-z-]+ from [\\d.]+ \\S+); (\\S.*)");

  private static final String WORD =
      "(?:[Cc]hapters?|ch\\.|[Tt]ables?|eqs?\\.|[Ss]ections?|[Cc]lauses?|pp?\\.|commentary)(?!\\w)";

  /** {@code 10.8.3.6}, {@code 5-1.02B}, {@code G.1A}, {@code F2}, {@code J10.2}. */
  private static final String NUMBER =
      "(?:\\d+(?:[.-]\\d+)+[A-Z]?|[A-Z]\\d+(?:\\.\\d+)*|[A-Z]\\.\\d+[A-Z]?)(?!\\w)";

  /** {@code 29 CFR 1926.651(i)}: the section is the work, its paragraph the place. */
  private static final Pattern REGULATION = Pattern.compile("(\\d+ CFR \\d+\\.\\d+)( ?)(\\(.*)");

  /** {@code AASHTO LRFD 10.8.3.6}: a work named by capitals and numbers alone. */
  private static final Pattern CODE =
      Pattern.compile(
          "((?:[A-Z0-9][A-Z0-9/.-]*(?::\\d[\\d-]*)? )*?[A-Z0-9][A-Z0-9/.-]*(?::\\d[\\d-]*)?) ((?:"
              + WORD
              + "|\\d+(?:\\.\\d+)+(?!\\w)|[A-Z]\\d+(?:\\.\\d+)*(?!\\w)).*)");

  private static final Pattern AFTER_COMMA =
      Pattern.compile("([^;:]*?), ((?:" + WORD + "|" + NUMBER + ").*)");

  /** A second work after the first; its clauses would be taken for those of the first. */
  private static final Pattern SECOND = Pattern.compile("; [A-Z][A-Za-z]");

  /** Words of practice, not the name of a work. */
  private static final Pattern PRACTICE =
      Pattern.compile("(?![A-Z]['A-Za-z]|\\d+ CFR ).*|.*\\bpractice\\b.*");

  /** A work named inside such words: its initials and number, its authors, or one that follows. */
  private static final Pattern NAMED_WITHIN =
      Pattern.compile(
          ".*(?:[A-Z]{2,}[ -]\\d|\\([A-Z][a-z]+ and [A-Z]|; [A-Z][a-z]+ [A-Z]|: [A-Z][a-z]+ \\d{4}).*");

  /** Whether a work is named, by author, title or number, that somebody could look up. */
  boolean named() {
    return !PRACTICE.matcher(title).matches()
        || NAMED_WITHIN.matcher(title + ", " + place).matches();
  }

  /** The parts of a citation. */
  static Work of(String citation) {
    Matcher layer = LAYER.matcher(citation);
    if (layer.matches()) {
      Work work = of(layer.group(2));
      return new Work(layer.group(1), work.title, work.place);
    }
    Matcher regulation = REGULATION.matcher(citation);
    if (regulation.matches()) {
      return new Work("", regulation.group(1), regulation.group(3));
    }
    for (Pattern pattern : new Pattern[] {CODE, AFTER_COMMA}) {
      Matcher parts = pattern.matcher(citation);
      if (parts.matches() && !SECOND.matcher(parts.group(2)).find()) {
        return new Work("", parts.group(1), parts.group(2));
      }
    }
    return new Work("", citation, "");
  }
}
