package underhold.report.dossier;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Whom a package is for, and so what it holds. */
public enum Audience {
  /** Everything, so that every step can be followed. */
  REVIEWER(
      "calculation package",
      "Everything: facts, ranking, reasons, sheets, plan, sources and the whole trace of the rules.",
      "Nothing is left out of this package."),
  /** What a site team works by. */
  SITE(
      "sheets for the site",
      "What a site team works by: one page with what stops the work and whom to call, the stages with"
          + " their hold points, the order of pits, drawings, monitoring, cautions, conditions,"
          + " quantities and what is not proved.",
      "Left out here: the facts as stated, the other options and their reasons, the calculation"
          + " sheets, the assumptions, the sources and the trace of the rules."),
  /** What a client has to know and to decide. */
  CLIENT(
      "summary for the client",
      "In short and in plain words: what is recommended, what it means for the owner, why, how sure"
          + " it is, what must be found out, the risks, and who must sign.",
      "Left out here: the calculations, the stages and hold points, most reasons and cautions, the"
          + " assumptions, the sources and the trace of the rules.");

  private final String title;
  private final String holds;
  private final String leavesOut;

  Audience(String title, String holds, String leavesOut) {
    this.title = title;
    this.holds = holds;
    this.leavesOut = leavesOut;
  }

  /** The word of the command line. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** What the document is called. */
  public String title() {
    return title;
  }

  /** What it holds, in a sentence. */
  public String holds() {
    return holds;
  }

  /** What it leaves out, in a sentence. */
  public String leavesOut() {
    return leavesOut;
  }

  /** The audience of that word. */
  public static Optional<Audience> find(String word) {
    return Arrays.stream(values()).filter(one -> one.word().equalsIgnoreCase(word)).findFirst();
  }

  /** All words. */
  public static List<String> words() {
    return Arrays.stream(values()).map(Audience::word).toList();
  }
}
