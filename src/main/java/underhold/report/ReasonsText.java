package underhold.report;

import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import underhold.advice.Effect;
import underhold.advice.Finding;
import underhold.advice.Hold;
import underhold.advice.NearMiss;
import underhold.advice.OptionAdvice;
import underhold.advice.Standing;
import underhold.advice.SupportOption;
import underhold.consult.Consultation;
import underhold.consult.ZoneAdvice;
import underhold.consult.turning.TurningPoints;

/** Why an option stands where it stands, and why no higher. */
public final class ReasonsText {
  private static final int MARGIN = 2;

  private final Consultation consultation;
  private final SupportOption option;
  private final TextPage page;

  private ReasonsText(Consultation consultation, SupportOption option, Look look) {
    this.consultation = consultation;
    this.option = option;
    this.page = new TextPage(look);
  }

  /** All that speaks for and against the option, with facts, limits and sources. */
  public static String why(
      Consultation consultation, List<ZoneAdvice> zones, SupportOption option, Look look) {
    ReasonsText text = new ReasonsText(consultation, option, look);
    zones.forEach(text::why);
    Program.foot(text.page, consultation.pack());
    return text.page.text();
  }

  /**
   * What rules the option out or holds it, what nearly spoke for it, what stands above it, and the
   * cheapest way back.
   *
   * @param ways what would bring it back, or put it first, by the name of the zone
   */
  public static String whyNot(
      Consultation consultation,
      List<ZoneAdvice> zones,
      SupportOption option,
      Map<String, TurningPoints> ways,
      Look look) {
    ReasonsText text = new ReasonsText(consultation, option, look);
    zones.forEach(zone -> text.whyNot(zone, ways.get(zone.name())));
    Program.foot(text.page, consultation.pack());
    return text.page.text();
  }

  private void why(ZoneAdvice zone) {
    OptionAdvice advice = start(zone, "Why ");
    section(advice, "Rules it out", advice.findings(), f -> f.effect() == Effect.RULE_OUT);
    section(
        advice,
        "Speaks for it",
        advice.findings(),
        f -> f.effect() == Effect.FOR || f.effect() == Effect.REFER);
    section(advice, "Speaks against it", advice.findings(), f -> f.effect() == Effect.AGAINST);
    if (!advice.spokenFor()) {
      page.heading("Nothing speaks for it.");
    }
    holds(zone, advice);
    section(advice, "It requires", advice.conditions(), f -> true);
    assumed(zone, advice);
  }

  private void whyNot(ZoneAdvice zone, @Nullable TurningPoints ways) {
    OptionAdvice advice = start(zone, "Why not ");
    if (advice.standing() == Standing.LEADS) {
      page.para(0, "It leads; nothing outranks it. What nearly changed that stands below.");
    }
    ruleOuts(advice);
    holds(zone, advice);
    section(advice, "Speaks against it", advice.findings(), f -> f.effect() == Effect.AGAINST);
    outranking(zone, advice);
    if (ways != null) {
      boolean several = consultation.site().zones().size() > 1;
      new TurningSection(page, several ? zone.name() : "").ways(ways);
    }
    assumed(zone, advice);
    misses(zone, "Rules that nearly spoke for it", e -> e == Effect.FOR || e == Effect.REFER);
    misses(zone, "Rules that nearly ruled it out", e -> e == Effect.RULE_OUT);
  }

  private OptionAdvice start(ZoneAdvice zone, String question) {
    OptionAdvice advice = zone.ranking().of(option);
    page.heading(
        consultation.site().name()
            + ": "
            + zone.name()
            + ". "
            + question
            + option.label()
            + " ("
            + option.id()
            + ")?");
    page.tinted(
        Words.tint(advice.standing()),
        0,
        Words.sentence(advice.standing().word())
            + (advice.tied() ? ", tied" : "")
            + (advice.standing() == Standing.RULED_OUT
                ? "."
                : ", score " + Words.score(advice.score()) + "."));
    return advice;
  }

  private void section(
      OptionAdvice advice, String heading, List<Finding> all, Predicate<Finding> wanted) {
    List<Finding> findings = all.stream().filter(wanted).toList();
    if (findings.isEmpty()) {
      return;
    }
    page.heading(heading);
    FindingBlock block = new FindingBlock(page, MARGIN);
    for (Finding finding : findings) {
      boolean counted = !finding.effect().scores() || Words.counted(advice, finding);
      block.full(finding, Words.verb(finding.effect()), Words.tag(finding, counted));
    }
  }

  private void ruleOuts(OptionAdvice advice) {
    List<Finding> ruleOuts = advice.findings(Effect.RULE_OUT);
    if (ruleOuts.isEmpty()) {
      return;
    }
    page.heading("Rules it out");
    FindingBlock block = new FindingBlock(page, MARGIN);
    for (int i = 0; i < ruleOuts.size(); i++) {
      Finding finding = ruleOuts.get(i);
      block.full(finding, "rules out", Words.tag(finding, true));
      if (i < advice.wayBack().size()) {
        block.detail("way back", OptionSection.wayBack(advice.wayBack().get(i)));
      }
    }
    if (ruleOuts.size() > 1) {
      page.para(MARGIN, "Every one of these rules must give way before it comes back.");
    }
  }

  private void holds(ZoneAdvice zone, OptionAdvice advice) {
    if (advice.holds().isEmpty()) {
      return;
    }
    page.heading("Held by safety questions");
    FindingBlock block = new FindingBlock(page, MARGIN);
    for (Hold hold : advice.holds()) {
      page.item(Tint.OPEN, MARGIN, hold.rule().id(), 10, hold.explanation());
      block.detail("rule", hold.rule().sentence());
      Words.questions(hold.ask(), zone.view()).forEach(question -> block.detail("ask", question));
    }
  }

  private void assumed(ZoneAdvice zone, OptionAdvice advice) {
    List<Finding> assumed = Words.assumed(zone, option);
    if (assumed.isEmpty()) {
      return;
    }
    page.heading("Rests on assumed facts: it warns and does not count");
    OptionSection section = new OptionSection(zone, page);
    section.assumed(advice);
  }

  private void outranking(ZoneAdvice zone, OptionAdvice advice) {
    List<OptionAdvice> all = zone.ranking().options();
    List<OptionAdvice> above =
        all.subList(0, all.indexOf(advice)).stream()
            .filter(other -> other.standing() != Standing.RULED_OUT)
            .toList();
    if (above.isEmpty()) {
      return;
    }
    page.heading("What stands above it");
    for (OptionAdvice other : above) {
      String first =
          other.findings(Effect.FOR).stream().map(Finding::reason).findFirst().orElse("");
      page.item(
          MARGIN,
          other.option().id(),
          16,
          other.standing().word() + ", score " + Words.score(other.score()) + ". " + first);
    }
  }

  private void misses(ZoneAdvice zone, String heading, Predicate<Effect> wanted) {
    List<NearMiss> misses =
        zone.screening().nearMisses().stream()
            .filter(miss -> wanted.test(miss.rule().effect()))
            .filter(miss -> miss.rule().action().options().contains(option))
            .toList();
    if (misses.isEmpty()) {
      return;
    }
    page.heading(heading);
    misses.forEach(new FindingBlock(page, MARGIN)::nearMiss);
  }
}
