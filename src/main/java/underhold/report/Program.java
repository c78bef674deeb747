package underhold.report;

import underhold.advice.RulePack;

/** What the program says of itself wherever it answers. */
public final class Program {
  /** The command's name. */
  public static final String NAME = "underhold";

  /** Stands under every answer. */
  public static final String CAUTION =
      "Decision support only: a licensed engineer must check and own the design. Local codes and"
          + " the site's own investigation govern.";

  private static final int SHORT_FINGERPRINT = 12;

  private Program() {}

  /** The version of the program; {@code development} where it was not built into a jar. */
  public static String version() {
    String version = Program.class.getPackage().getImplementationVersion();
    return version == null ? "development" : version;
  }

  /** The rule pack in a few words. */
  public static String rules(RulePack pack) {
    return pack.name() + " " + pack.version() + ", " + fingerprint(pack);
  }

  /** The beginning of the fingerprint, enough to tell packs apart. */
  public static String fingerprint(RulePack pack) {
    String whole = pack.fingerprint();
    return whole.substring(0, Math.min(SHORT_FINGERPRINT, whole.length()));
  }

  /** Ends a page: program, rules, who must check. */
  static void foot(TextPage page, RulePack pack) {
    page.blank();
    page.tinted(Tint.QUIET, 0, "Underhold " + version() + ", rule pack " + rules(pack) + ".");
    page.para(0, CAUTION);
  }
}
