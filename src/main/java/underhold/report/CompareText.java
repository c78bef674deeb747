package underhold.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import underhold.advice.Effect;
import underhold.advice.Finding;
import underhold.advice.OptionAdvice;
import underhold.advice.Standing;
import underhold.advice.SupportOption;
import underhold.consult.Consultation;
import underhold.consult.ZoneAdvice;

/** Two options side by side: cause by cause what speaks for each, and what they share. */
public final class CompareText {
  private static final int MARGIN = 2;
  private static final int NAME = 15;

  private final TextPage page;
  private final SupportOption one;
  private final SupportOption other;

  private CompareText(SupportOption one, SupportOption other, Look look) {
    this.page = new TextPage(look);
    this.one = one;
    this.other = other;
  }

  public static String of(
      Consultation consultation,
      List<ZoneAdvice> zones,
      SupportOption one,
      SupportOption other,
      Look look) {
    CompareText text = new CompareText(one, other, look);
    for (ZoneAdvice zone : zones) {
      text.page.heading(
          consultation.site().name()
              + ": "
              + zone.name()
              + ". "
              + Words.sentence(one.label())
              + " against "
              + other.label());
      text.zone(zone);
    }
    Program.foot(text.page, consultation.pack());
    return text.page.text();
  }

  private void zone(ZoneAdvice zone) {
    OptionAdvice first = zone.ranking().of(one);
    OptionAdvice second = zone.ranking().of(other);
    standing(first);
    standing(second);
    for (String cause : causes(first, second)) {
      List<Finding> of1 = of(first, cause);
      List<Finding> of2 = of(second, cause);
      page.heading("Cause: " + cause);
      List<Finding> shared = of1.stream().filter(of2::contains).toList();
      shared.forEach(finding -> line("both", first, finding));
      of1.stream().filter(f -> !shared.contains(f)).forEach(f -> line(one.id(), first, f));
      of2.stream().filter(f -> !shared.contains(f)).forEach(f -> line(other.id(), second, f));
    }
    if (causes(first, second).isEmpty()) {
      page.para(MARGIN, "No known fact speaks for or against either.");
    }
    holds(first);
    holds(second);
  }

  private void standing(OptionAdvice advice) {
    String score =
        advice.standing() == Standing.RULED_OUT ? "" : ", score " + Words.score(advice.score());
    page.item(
        MARGIN,
        advice.option().id(),
        NAME,
        advice.standing().word() + (advice.tied() ? ", tied" : "") + score);
  }

  static Set<String> causes(OptionAdvice first, OptionAdvice second) {
    Set<String> causes = new LinkedHashSet<>();
    List<Finding> all = new ArrayList<>(first.findings());
    all.addAll(second.findings());
    all.forEach(finding -> causes.add(finding.rule().cause()));
    return causes;
  }

  static List<Finding> of(OptionAdvice advice, String cause) {
    return advice.findings().stream().filter(f -> f.rule().cause().equals(cause)).toList();
  }

  private void line(String name, OptionAdvice advice, Finding finding) {
    boolean counted = finding.effect() == Effect.RULE_OUT || Words.counted(advice, finding);
    page.item(
        Words.tint(finding.effect()),
        MARGIN,
        name,
        NAME,
        Words.sentence(Words.verb(finding.effect()))
            + ": "
            + finding.reason()
            + " "
            + Words.tag(finding, counted));
  }

  private void holds(OptionAdvice advice) {
    if (advice.holds().isEmpty()) {
      return;
    }
    page.heading("Holds " + advice.option().label());
    advice.holds().forEach(h -> page.item(MARGIN, h.rule().id(), NAME, h.explanation()));
  }
}
