package underhold.report;

import java.util.List;
import underhold.advice.Finding;
import underhold.advice.NearMiss;
import underhold.advice.Screening;
import underhold.consult.Consultation;
import underhold.consult.ZoneAdvice;

/** Every rule that fired, in order, and every rule that nearly did. */
public final class TraceText {
  private static final int MARGIN = 2;
  private static final int MARK = 10;

  private final TextPage page;

  private TraceText(Look look) {
    this.page = new TextPage(look);
  }

  public static String of(Consultation consultation, List<ZoneAdvice> zones, Look look) {
    TraceText text = new TraceText(look);
    for (ZoneAdvice zone : zones) {
      text.page.heading(consultation.site().name() + ": " + zone.name() + ". Trace");
      text.zone(zone.screening());
    }
    Program.foot(text.page, consultation.pack());
    return text.page.text();
  }

  private void zone(Screening screening) {
    fired("Facts that rules derived", screening.derivations());
    fired("Rules that fired on known facts", screening.findings());
    fired("Rules that fire only on assumed facts: they warn and do not count", screening.assumed());
    List<NearMiss> misses = screening.nearMisses();
    if (!misses.isEmpty()) {
      page.heading("Rules that failed by one condition");
      misses.forEach(new FindingBlock(page, MARGIN)::nearMiss);
    }
    if (!screening.conflicts().isEmpty()) {
      page.heading("Rules that disagree");
      screening.conflicts().forEach(conflict -> page.item(MARGIN, "!", 3, conflict));
    }
  }

  private void fired(String heading, List<Finding> findings) {
    if (findings.isEmpty()) {
      return;
    }
    page.heading(heading);
    FindingBlock block = new FindingBlock(page, MARGIN);
    for (Finding finding : findings) {
      page.item(Tint.STRONG, MARGIN, finding.rule().id(), MARK, finding.rule().sentence());
      block.detail(
          "states",
          Words.verb(finding.effect())
              + Words.about(finding.rule())
              + ". "
              + finding.reason()
              + " "
              + Words.tag(finding, true));
      block.grounds(finding);
    }
  }
}
