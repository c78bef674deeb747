package underhold.report.dossier;

import java.util.ArrayList;
import java.util.List;
import underhold.advice.Strength;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;

/** What the package is, what it leaves out, and how to follow it. */
final class AboutSection {
  private AboutSection() {}

  static Section of(Material material, Commission commission) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.Notice(
            Block.Tone.CAUTION,
            Cover.STATUS,
            Prose.of(
                "Decision support only. A licensed engineer must check and own the design; local"
                    + " codes and the site's own investigation govern. Nothing in here has been"
                    + " checked by a person unless a signature says so.")));
    boolean whole = commission.audience() == Audience.REVIEWER;
    blocks.add(
        new Block.Notice(
            Block.Tone.PLAIN,
            whole
                ? commission.sheets() == WhichSheets.ALL ? "Whole package" : "Whole but for sheets"
                : "A part only",
            Prose.of(
                leavesOut(commission)
                    + (whole
                        ? ""
                        : " The reviewer's package of the same site, date and fingerprint governs."))));
    if (whole) {
      blocks.add(Cells.paragraph("How to follow it:"));
      blocks.add(new Block.Listing(false, guide(material)));
    }
    return Section.of("about", "About this package", blocks);
  }

  private static String leavesOut(Commission commission) {
    return commission.audience() == Audience.REVIEWER && commission.sheets() != WhichSheets.ALL
        ? "The calculation sheet of the method of each zone is set whole. Of the other options in"
            + " play only a short account of the checks is set, and their assumed inputs are not"
            + " listed: report with --sheets all sets every sheet whole. Nothing else is left out."
        : commission.audience().leavesOut();
  }

  private static List<Prose> guide(Material material) {
    return List.of(
        Prose.of("Every fact has its origin: ")
            .strong("stated")
            .then(" as the user typed it, ")
            .strong("derived")
            .then(" from stated facts by the arithmetic or rule shown, ")
            .strong("assumed")
            .then(" for want of a fact, ")
            .strong("unknown")
            .then(". Only what is stated or derived counts for or against an option."),
        Prose.of("Points of a finding: " + points(material) + ". One cause counts once each way."),
        Prose.of(
                "Every source has its basis: standard, published, common practice, judgement, by statics,"
                    + " site fact, or from memory, verify. What is from memory was not at hand and must be"
                    + " looked up before anything rests on it.")
            .then(" A number in brackets, [1], leads to the ")
            .link("sources", "sources")
            .then(
                "; clause or page stand after it. A number alone is a source that was read: every other"
                    + " basis stands beside it."),
        Prose.of("A check ")
            .strong("passes")
            .then(", ")
            .strong("fails")
            .then(" or is to ")
            .strong("refer")
            .then(
                " to the engineer: where numbers alone cannot decide, rest on what nobody stated, or"
                    + " exceed a limit that an engineer may set otherwise. Refer is never a pass:"
                    + " where more is asked than there is it says \"refer, exceeded\", and the work"
                    + " does not go ahead on that sheet until the engineer has settled it. A method"
                    + " is proved only where every check passes and what it does not cover is settled."),
        Prose.of("A finding leads by its rule's number to the ")
            .link("trace", "trace")
            .then(", the trace to the ")
            .link("rule as written", "rules")
            .then(" and back to every place where the finding is told."),
        Prose.of("An input of a sheet names the steps and checks that take it by its name. A step")
            .then(" shows formula, symbols, numbers, result and source. ")
            .then("The formula in metric units holds in m, kN, kPa and degrees as it stands,")
            .then(" unless the step's note names another unit."));
  }

  private static String points(Material material) {
    List<String> all = new ArrayList<>();
    for (Strength strength : Strength.values()) {
      all.add(strength.word() + " " + material.pack().weights().of(strength));
    }
    return String.join(", ", all);
  }
}
