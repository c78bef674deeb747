package underhold.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underhold.advice.Finding;
import underhold.advice.OptionAdvice;
import underhold.advice.Standing;
import underhold.advice.SupportOption;
import underhold.consult.Consultation;
import underhold.consult.OpenQuestion;
import underhold.consult.ZoneAdvice;
import underhold.consult.scheme.SchemeDesk;

/** The advice on a site, zone by zone. */
public final class AdviceText {
  private static final int MARGIN = 2;
  private static final int MARK = 3;

  private final Consultation consultation;
  private final TextPage page;

  private AdviceText(Consultation consultation, Look look) {
    this.consultation = consultation;
    this.page = new TextPage(look);
  }

  /** The whole answer. */
  public static String of(Consultation consultation, Look look) {
    return new AdviceText(consultation, look).whole();
  }

  /** The verdict of every zone, without the reasons: the end of an interview. */
  public static String summary(Consultation consultation, Look look) {
    return new AdviceText(consultation, look).shortly();
  }

  private String whole() {
    for (ZoneAdvice zone : consultation.zones()) {
      page.heading(title(zone));
      new Headline(zone).on(page);
      options(zone);
      told("Conditions", zone, zone.conditions(), false);
      told("Cautions", zone, zone.cautions(), true);
      questions(zone);
      ruledOut(zone);
    }
    SchemeText.summary(consultation, SchemeDesk.of(consultation.pack()), page);
    page.blank();
    page.para(0, "Facts, limits and sources behind every reason: why METHOD, trace.");
    Program.foot(page, consultation.pack());
    return page.text();
  }

  private String shortly() {
    for (ZoneAdvice zone : consultation.zones()) {
      page.heading(title(zone));
      new Headline(zone).on(page);
      for (OptionAdvice advice : zone.ranking().options()) {
        String right =
            advice.standing().word()
                + (advice.standing() == Standing.RULED_OUT
                    ? ""
                    : ", score " + Words.score(advice.score()));
        page.item(MARGIN, advice.option().label(), 30, right);
      }
    }
    Program.foot(page, consultation.pack());
    return page.text();
  }

  private String title(ZoneAdvice zone) {
    return consultation.site().name() + ": " + zone.name();
  }

  private void options(ZoneAdvice zone) {
    OptionSection section = new OptionSection(zone, page);
    int place = 0;
    for (OptionAdvice advice : zone.ranking().options()) {
      if (advice.standing() != Standing.RULED_OUT) {
        section.ranked(++place, advice);
      }
    }
  }

  private void told(String heading, ZoneAdvice zone, List<Finding> findings, boolean caution) {
    if (findings.isEmpty()) {
      return;
    }
    page.heading(heading);
    Map<String, List<Finding>> groups = new LinkedHashMap<>();
    Set<String> elsewhere = new LinkedHashSet<>();
    for (Finding finding : findings) {
      List<SupportOption> options = zone.optionsInPlay(finding).toList();
      List<SupportOption> contending = options.stream().filter(o -> contends(zone, o)).toList();
      if (contending.isEmpty()) {
        options.forEach(option -> elsewhere.add(option.id()));
      } else {
        String concerns = Words.concerns(finding, contending);
        groups.computeIfAbsent(concerns, key -> new ArrayList<>()).add(finding);
      }
    }
    groups.forEach(
        (concerns, group) -> {
          page.para(MARGIN, Words.sentence(concerns) + ":");
          group.forEach(finding -> told(finding, caution));
        });
    if (!elsewhere.isEmpty()) {
      page.para(
          MARGIN,
          "More for options that too little speaks for; see why with "
              + String.join(", ", elsewhere)
              + ".");
    }
  }

  /** An option whose conditions the reader needs at once: it leads, competes, or waits. */
  private static boolean contends(ZoneAdvice zone, SupportOption option) {
    OptionAdvice advice = zone.ranking().of(option);
    boolean none = zone.ranking().leader().isEmpty();
    return advice.spokenFor() && (none || advice.score() > 0);
  }

  private void told(Finding finding, boolean caution) {
    String assumptions = Words.assumptions(finding);
    page.item(
        MARGIN,
        caution ? "!" : "-",
        MARK,
        finding.rule().sentence()
            + " "
            + (assumptions.isEmpty() ? "" : Words.sentence(assumptions) + ": ")
            + finding.reason()
            + (caution ? " Decides: " + Decider.of(finding).words() + "." : "")
            + " "
            + Words.tag(finding, true));
  }

  private void questions(ZoneAdvice zone) {
    List<OpenQuestion> deciding =
        zone.questions().list().stream().filter(OpenQuestion::decides).toList();
    List<OpenQuestion> minor =
        zone.questions().list().stream().filter(question -> !question.decides()).toList();
    if (!deciding.isEmpty()) {
      page.heading("Open questions, those that could change most first");
      int number = 0;
      for (OpenQuestion question : deciding) {
        page.item(
            MARGIN,
            ++number + ".",
            4,
            question.fact().question()
                + " ("
                + question.fact().name()
                + ") It "
                + question.stake()
                + ".");
      }
    }
    if (!minor.isEmpty()) {
      page.heading("Also open; alone these could only move a score");
      page.para(MARGIN, String.join(", ", minor.stream().map(q -> q.fact().name()).toList()));
    }
  }

  private void ruledOut(ZoneAdvice zone) {
    List<OptionAdvice> out =
        zone.ranking().options().stream()
            .filter(advice -> advice.standing() == Standing.RULED_OUT)
            .toList();
    if (out.isEmpty()) {
      return;
    }
    page.heading("Ruled out");
    out.forEach(new OptionSection(zone, page)::ruledOut);
  }
}
