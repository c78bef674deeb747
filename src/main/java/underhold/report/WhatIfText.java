package underhold.report;

import java.util.List;
import java.util.Optional;
import underhold.advice.Finding;
import underhold.advice.Hold;
import underhold.advice.OptionAdvice;
import underhold.consult.Bearing;
import underhold.consult.ZoneAdvice;
import underhold.consult.change.ChangedFact;
import underhold.consult.change.CheckChange;
import underhold.consult.change.FactChange;
import underhold.consult.change.FindingChange;
import underhold.consult.change.OptionChange;
import underhold.consult.change.SheetChange;
import underhold.consult.change.SiteChange;
import underhold.consult.change.ZoneChange;
import underhold.quantity.UnitSystem;
import underhold.site.Fact;
import underhold.site.Origin;
import underhold.sizing.Check;

/** What a change of facts does to the answer: before and after, and why. */
public final class WhatIfText {
  private static final int MARGIN = 2;
  private static final int NAME = 15;
  private static final int INNER = 4;
  private static final int MARK = 18;

  private final TextPage page;
  private final UnitSystem units;

  private WhatIfText(TextPage page, UnitSystem units) {
    this.page = page;
    this.units = units;
  }

  /** The differences, zone by zone. */
  public static String of(SiteChange change, Look look) {
    TextPage page = new TextPage(look);
    WhatIfText text = new WhatIfText(page, change.trial().after().units());
    text.changed(change);
    for (ZoneChange zone : change.zones()) {
      page.heading(change.trial().after().name() + ": " + zone.name());
      text.zone(zone);
    }
    page.blank();
    page.para(0, "Nothing was saved: the site stays as it is.");
    Program.foot(page, change.pack());
    return page.text();
  }

  private void changed(SiteChange change) {
    page.heading("What if");
    for (ChangedFact one : change.trial().changed()) {
      page.item(
          MARGIN,
          "-",
          2,
          one.fact().label()
              + (one.already()
                  ? " is " + one.textAfter() + " already"
                  : ": " + one.textBefore() + " -> " + one.textAfter())
              + ", "
              + ChangeWords.where(one));
    }
    change
        .trial()
        .left()
        .forEach(
            (fact, zones) ->
                page.para(
                    MARGIN,
                    Words.sentence(fact.label())
                        + " is not stated in "
                        + Words.list(zones)
                        + ", and stays so; --zone states it there."));
  }

  private void zone(ZoneChange zone) {
    page.tinted(
        zone.leaderAfter().isPresent() ? Tint.GOOD : Tint.OPEN, 0, ChangeWords.leader(zone));
    if (zone.nothing()) {
      page.para(0, ChangeWords.NOTHING);
      return;
    }
    page.blank();
    zone.options().forEach(this::place);
    zone.options().stream().filter(OptionChange::detailed).forEach(one -> option(zone, one));
    told("Conditions", zone.conditionsGained(), zone.conditionsLost(), zone);
    told("Cautions", zone.cautionsGained(), zone.cautionsLost(), zone);
    facts(zone.facts());
  }

  private void place(OptionChange option) {
    String before = ChangeWords.place(option.before());
    String after = ChangeWords.place(option.after());
    page.item(
        Words.tint(option.after().standing()),
        MARGIN,
        option.option().id(),
        NAME,
        before.equals(after) ? after + ", as before" : before + " -> " + after);
  }

  private void option(ZoneChange zone, OptionChange option) {
    page.blank();
    page.tinted(
        Tint.STRONG,
        MARGIN,
        Words.sentence(option.option().label()) + " (" + option.option().id() + ")");
    option.findings().forEach(one -> finding(zone, option, one));
    option.holdsGained().forEach(hold -> hold("held now", hold));
    option.holdsLost().forEach(hold -> hold("held no longer", hold));
    sheet(zone, option.sheet());
  }

  private void finding(ZoneChange zone, OptionChange option, FindingChange change) {
    Finding finding = change.finding();
    ZoneAdvice told = change.after() == Bearing.NONE ? zone.before() : zone.after();
    OptionAdvice advice = told.ranking().of(option.option());
    boolean counted = Bearing.of(finding, advice) != Bearing.NOT_COUNTED;
    String assumed = finding.assumed() ? ", " + Words.assumptions(finding) : "";
    page.item(
        Words.tint(finding.effect()),
        INNER,
        change.kind().word(),
        MARK,
        Words.sentence(Words.verb(finding.effect()))
            + assumed
            + ": "
            + finding.reason()
            + turned(change)
            + " "
            + Words.tag(finding, counted));
  }

  /** What is known now and was assumed, or the other way round. */
  private static String turned(FindingChange change) {
    if (change.before() == Bearing.PERHAPS && change.after().known()) {
      return " Before, it rested on an assumption.";
    }
    return change.after() == Bearing.PERHAPS && change.before().known()
        ? " Now it rests on an assumption and does not count."
        : "";
  }

  private void hold(String mark, Hold hold) {
    page.item(Tint.OPEN, INNER, mark, MARK, hold.explanation() + " [" + hold.rule().id() + "]");
  }

  private void sheet(ZoneChange zone, SheetChange sheet) {
    if (sheet.stateChanged()) {
      page.item(
          INNER,
          "sheet",
          MARK,
          switch (sheet.stateAfter()) {
            case NONE -> "No longer sized.";
            case ASKS ->
                (sheet.stateBefore() == SheetChange.State.COMPLETE ? "No longer complete. " : "")
                    + words(sheet, zone);
            case COMPLETE -> "Complete now. " + words(sheet, zone);
          });
    }
    sheet.checks().forEach(this::check);
  }

  private static String words(SheetChange sheet, ZoneChange zone) {
    return sheet.after().map(one -> SizingWords.of(one, zone.after().view())).orElse("");
  }

  private void check(CheckChange change) {
    Check check = change.check();
    String was = verdict(change.before());
    String is = verdict(change.after());
    page.item(
        INNER,
        "check",
        MARK,
        check.title()
            + ": "
            + was
            + " -> "
            + is
            + (change.after().isPresent() ? ", " + amounts(check) : ""));
  }

  private String amounts(Check check) {
    return check.demand().in(units) + " against " + check.capacity().in(units);
  }

  private static String verdict(Optional<Check> check) {
    return check.map(one -> one.verdict().label()).orElse("not checked");
  }

  private void told(String heading, List<Finding> gained, List<Finding> lost, ZoneChange zone) {
    if (gained.isEmpty() && lost.isEmpty()) {
      return;
    }
    page.blank();
    page.tinted(Tint.STRONG, MARGIN, heading);
    gained.forEach(finding -> told("gained", finding, zone.after()));
    lost.forEach(finding -> told("lost", finding, zone.before()));
  }

  private void told(String mark, Finding finding, ZoneAdvice zone) {
    String concerns = Words.concerns(finding, zone.optionsInPlay(finding).toList());
    String assumed = finding.assumed() ? " (" + Words.assumptions(finding) + ")" : "";
    page.item(
        Tint.OPEN,
        INNER,
        mark,
        MARK,
        Words.sentence(concerns)
            + ": "
            + finding.reason()
            + assumed
            + " "
            + Words.tag(finding, true));
  }

  private void facts(List<FactChange> facts) {
    if (facts.isEmpty()) {
      return;
    }
    page.blank();
    page.tinted(Tint.STRONG, MARGIN, "Facts that follow");
    for (FactChange change : facts) {
      Fact after = change.after();
      page.item(
          INNER,
          "-",
          2,
          after.definition().label()
              + ": "
              + change.before().text()
              + " -> "
              + after.text()
              + because(change));
    }
  }

  /** How it follows; a calculation begins with the value, which stands there already. */
  private static String how(Fact fact) {
    String value = fact.text() + " = ";
    return fact.how().startsWith(value)
        ? " = " + fact.how().substring(value.length())
        : fact.how().isEmpty() ? "" : ", because " + fact.how();
  }

  private static String because(FactChange change) {
    Fact after = change.after();
    return switch (after.origin()) {
      case DERIVED -> how(after);
      case STATED -> ", stated now";
      case ASSUMED, UNKNOWN ->
          change.before().origin() == Origin.DERIVED ? ", no longer follows" : "";
    };
  }
}
