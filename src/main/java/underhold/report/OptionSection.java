package underhold.report;

import java.util.List;
import underhold.advice.Effect;
import underhold.advice.Finding;
import underhold.advice.Hold;
import underhold.advice.OptionAdvice;
import underhold.advice.Standing;
import underhold.consult.ZoneAdvice;

/** One option on the page: how it stands and what speaks for and against it. */
final class OptionSection {
  private static final int MARGIN = 4;
  private static final int MARK = 10;

  private final ZoneAdvice zone;
  private final TextPage page;

  OptionSection(ZoneAdvice zone, TextPage page) {
    this.zone = zone;
    this.page = page;
  }

  /** An option in rank or held, under its place in the order. */
  void ranked(int place, OptionAdvice advice) {
    page.blank();
    heading(place + ". ", advice);
    if (advice.standing() == Standing.WORKS_IF) {
      List<String> first =
          advice.conditions().stream()
              .filter(
                  f -> f.strength().filter(underhold.advice.Strength.DECISIVE::equals).isPresent())
              .filter(f -> !f.rule().action().options().isEmpty())
              .map(Finding::reason)
              .toList();
      first.forEach(text -> item(Tint.OPEN, "if", text));
    }
    advice.holds().forEach(this::hold);
    reasons(advice);
    zone.sizing(advice.option())
        .ifPresent(sizing -> item(Tint.NONE, "sizing", SizingWords.of(sizing, zone.view())));
    if (!advice.spokenFor()) {
      page.para(MARGIN, "Nothing speaks for it.");
    }
  }

  /** An option ruled out: by which rule, and what would bring it back. */
  void ruledOut(OptionAdvice advice) {
    page.blank();
    heading("", advice);
    List<Finding> ruleOuts = advice.findings(Effect.RULE_OUT);
    for (int i = 0; i < ruleOuts.size(); i++) {
      finding(advice, ruleOuts.get(i));
      if (i < advice.wayBack().size()) {
        item(Tint.NONE, "way back", wayBack(advice.wayBack().get(i)));
      }
    }
  }

  void heading(String mark, OptionAdvice advice) {
    String standing =
        advice.standing().word()
            + (advice.tied() ? ", tied" : "")
            + (advice.ranked() && advice.score() < 0 ? ", but more speaks against it" : "");
    String right =
        advice.standing() == Standing.RULED_OUT
            ? standing
            : standing + ", score " + Words.score(advice.score());
    String left =
        mark + Words.sentence(advice.option().label()) + " (" + advice.option().id() + ")";
    page.ends(Tint.STRONG, left, Words.tint(advice.standing()), right);
  }

  private void reasons(OptionAdvice advice) {
    advice.findings().stream()
        .filter(finding -> finding.effect() != Effect.RULE_OUT)
        .forEach(finding -> finding(advice, finding));
    assumed(advice);
  }

  /** What would speak for or against it if an assumed fact were true: it warns, never counts. */
  void assumed(OptionAdvice advice) {
    Words.assumed(zone, advice.option()).forEach(finding -> finding(advice, finding));
  }

  void finding(OptionAdvice advice, Finding finding) {
    boolean plain = finding.effect() == Effect.RULE_OUT || finding.assumed();
    String tag = Words.tag(finding, plain || Words.counted(advice, finding));
    if (!finding.assumed()) {
      item(
          Words.tint(finding.effect()), Words.verb(finding.effect()), finding.reason() + " " + tag);
      return;
    }
    String verb = finding.effect() == Effect.RULE_OUT ? "rule it out" : "speak " + against(finding);
    item(
        Tint.OPEN,
        "perhaps",
        finding.reason()
            + " Would "
            + verb
            + ", "
            + Words.assumptions(finding)
            + "; it does not count until that is known. "
            + tag);
  }

  private static String against(Finding finding) {
    return finding.effect() == Effect.AGAINST ? "against it" : "for it";
  }

  private void hold(Hold hold) {
    item(Tint.OPEN, "held", hold.explanation() + " [" + hold.rule().id() + "]");
    Words.questions(hold.ask(), zone.view()).forEach(question -> item(Tint.NONE, "ask", question));
  }

  private void item(Tint tint, String mark, String words) {
    page.item(tint, MARGIN, mark, MARK, words);
  }

  /** The way back without the rule's name, which stands above it. */
  static String wayBack(String text) {
    return Words.wayBack(text);
  }
}
