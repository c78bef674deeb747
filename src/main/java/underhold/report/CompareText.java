package underhold.report;

import java.util.List;
import java.util.function.Predicate;
import underhold.advice.Criterion;
import underhold.advice.Effect;
import underhold.advice.Finding;
import underhold.advice.Hold;
import underhold.consult.Bearing;
import underhold.consult.Consultation;
import underhold.consult.contrast.Argument;
import underhold.consult.contrast.Aside;
import underhold.consult.contrast.Contrast;
import underhold.consult.contrast.CriterionContrast;
import underhold.consult.contrast.HeldBy;
import underhold.consult.contrast.Outcome;
import underhold.consult.contrast.Side;
import underhold.quantity.UnitSystem;
import underhold.sizing.Check;

/** Two options side by side: criterion by criterion what speaks for each, and what they share. */
public final class CompareText {
  private static final int MARGIN = 2;
  private static final int NAME = 15;
  private static final int SUMMARY = 27;

  private final TextPage page;
  private final Contrast contrast;
  private final ContrastWords words;
  private final UnitSystem units;
  private boolean afterEmpty;

  private CompareText(TextPage page, Contrast contrast, UnitSystem units) {
    this.page = page;
    this.contrast = contrast;
    this.words = new ContrastWords(contrast);
    this.units = units;
  }

  /** The contrasts of some zones of a site. */
  public static String of(Consultation consultation, List<Contrast> contrasts, Look look) {
    TextPage page = new TextPage(look);
    for (Contrast contrast : contrasts) {
      page.heading(
          consultation.site().name()
              + ": "
              + contrast.zone()
              + ". "
              + Words.sentence(contrast.first().option().label())
              + " against "
              + contrast.second().option().label());
      new CompareText(page, contrast, consultation.site().units()).zone();
    }
    Program.foot(page, consultation.pack());
    return page.text();
  }

  private void zone() {
    side(contrast.first());
    side(contrast.second());
    contrast.criteria().forEach(this::criterion);
    summary();
  }

  private void side(Side side) {
    page.item(Words.tint(side.advice().standing()), MARGIN, id(side), NAME, standing(side));
    side.first()
        .forEach(
            finding ->
                page.item(MARGIN, "", NAME, "If: " + finding.reason() + " " + tag(finding, true)));
  }

  private static String standing(Side side) {
    String score = side.ruledOut() ? "" : ", score " + Words.score(side.advice().score());
    return side.advice().standing().word() + (side.advice().tied() ? ", tied" : "") + score;
  }

  private static String id(Side side) {
    return side.option().id();
  }

  private void criterion(CriterionContrast criterion) {
    if (criterion.empty() && afterEmpty) {
      page.tinted(Tint.STRONG, 0, words.verdict(criterion));
      return;
    }
    page.heading(words.verdict(criterion));
    afterEmpty = criterion.empty();
    if (afterEmpty) {
      return;
    }
    page.tinted(Tint.QUIET, MARGIN, Words.sentence(criterion.meaning()) + ".");
    criterion.arguments().forEach(this::argument);
    criterion.holds().forEach(this::held);
    criterion.asides().forEach(this::aside);
  }

  private void argument(Argument argument) {
    Finding finding = argument.finding();
    boolean one = argument.first() != Bearing.NONE;
    boolean other = argument.second() != Bearing.NONE;
    boolean oneWeak = argument.first() == Bearing.NOT_COUNTED;
    boolean otherWeak = argument.second() == Bearing.NOT_COUNTED;
    boolean mixed = argument.shared() && oneWeak != otherWeak;
    String text =
        argument.known()
            ? verb(argument)
                + ": "
                + finding.reason()
                + (mixed ? " It counts only for " + words.about(!oneWeak, !otherWeak) + "." : "")
            : perhaps(finding);
    boolean counted = mixed || !(oneWeak || otherWeak);
    page.item(
        argument.known() ? Words.tint(finding.effect()) : Tint.OPEN,
        MARGIN,
        words.about(one, other),
        NAME,
        text + " " + tag(finding, counted));
  }

  private static String verb(Argument argument) {
    String verb = Words.sentence(Words.verb(argument.finding().effect()));
    return argument.points() == 0 ? verb : verb + " " + Words.score(argument.points());
  }

  private static String perhaps(Finding finding) {
    String verb =
        finding.effect() == Effect.RULE_OUT
            ? "rules it out"
            : finding.effect() == Effect.AGAINST ? "against" : "for";
    return "Perhaps "
        + verb
        + ", "
        + Words.assumptions(finding)
        + "; not counted until that is known: "
        + finding.reason();
  }

  private static String tag(Finding finding, boolean counted) {
    return Words.tag(finding, counted);
  }

  private void held(HeldBy held) {
    Hold hold = held.hold();
    page.item(
        Tint.OPEN,
        MARGIN,
        words.about(held.first(), held.second()),
        NAME,
        "Held. " + hold.explanation() + " [" + hold.rule().id() + "]");
  }

  private void aside(Aside aside) {
    aside.fold(this::caution, this::check, this::time, this::cost);
  }

  private TextPage caution(Aside.CautionOfOne one) {
    Finding finding = one.finding();
    String assumed = finding.assumed() ? ", " + Words.assumptions(finding) : "";
    return page.item(
        Tint.OPEN,
        MARGIN,
        one.option().id(),
        NAME,
        "Caution" + assumed + ": " + finding.reason() + " " + tag(finding, true));
  }

  private TextPage check(Aside.CheckOnSheet one) {
    Check check = one.check();
    return page.item(
        MARGIN,
        one.option().id(),
        NAME,
        check.title()
            + ": "
            + check.demand().in(units)
            + " against "
            + check.capacity().in(units)
            + ", "
            + check.verdict().label()
            + " [from its sheet, not counted by itself]");
  }

  private TextPage time(Aside.TimeOnSheet one) {
    String note = one.item().note().in(units);
    return page.item(
        MARGIN,
        one.option().id(),
        NAME,
        Words.sentence(one.item().name())
            + ": "
            + one.item().amount().in(units)
            + (note.isEmpty() ? "" : " (" + note.replaceAll("\\.$", "") + ")")
            + " [from its sheet, not counted by itself]");
  }

  private TextPage cost(Aside.UsualCost one) {
    return page.item(
        MARGIN,
        one.cheaper().id(),
        NAME,
        "Usually costs less than " + one.dearer().id() + " [judgement, not counted]");
  }

  private void summary() {
    page.heading("In all");
    row("in favour of " + id(contrast.first()), Outcome::forFirst);
    row("in favour of " + id(contrast.second()), Outcome::forSecond);
    row("rule out both", Outcome.RULES_OUT_BOTH::equals);
    row("even", Outcome.EVEN::equals);
    row("count for neither", Outcome.SILENT::equals);
    page.item(MARGIN, "scores", SUMMARY, score(contrast.first()) + ", " + score(contrast.second()));
    page.para(MARGIN, words.conclusion(contrast));
    holding(contrast.first());
    holding(contrast.second());
  }

  private void row(String name, Predicate<Outcome> wanted) {
    List<String> found = contrast.where(wanted).stream().map(Criterion::word).toList();
    if (!found.isEmpty()) {
      page.item(MARGIN, name, SUMMARY, String.join(", ", found));
    }
  }

  private static String score(Side side) {
    return id(side)
        + " "
        + Words.score(side.advice().score())
        + (side.ruledOut() ? " (ruled out)" : "");
  }

  private void holding(Side side) {
    if (!side.advice().holds().isEmpty()) {
      page.tinted(
          Tint.OPEN,
          MARGIN,
          Words.sentence(id(side)) + " may not be chosen while a safety rule holds it.");
    }
  }
}
