package underhold.report;

import java.util.Comparator;
import java.util.List;
import underhold.review.recheck.Difference;
import underhold.review.recheck.PackChange;
import underhold.review.recheck.Recheck;
import underhold.review.recheck.Stand;
import underhold.review.recheck.Topic;
import underhold.review.recheck.ZoneRecheck;
import underhold.review.saved.SavedAdvice;

/** What running a saved consultation again showed. */
public final class RecheckText {
  private static final int MARGIN = 2;
  private static final int COLUMN = 10;
  private static final int MARK = 3;

  /** More differences of one kind in one place than these are counted only; JSON has them all. */
  private static final int SHOWN = 12;

  private final TextPage page;
  private final Recheck recheck;

  private RecheckText(Recheck recheck, Look look) {
    this.recheck = recheck;
    this.page = new TextPage(look);
  }

  public static String of(Recheck recheck, Look look) {
    RecheckText text = new RecheckText(recheck, look);
    text.head();
    text.verdict();
    text.rules();
    recheck.zones().forEach(text::zone);
    text.whole();
    text.foot();
    return text.page.text();
  }

  private void head() {
    SavedAdvice was = recheck.was();
    SavedAdvice now = recheck.now();
    page.heading(SafeText.of(was.siteName()) + ", run again");
    page.item(MARGIN, "saved", COLUMN, maker(was));
    page.item(MARGIN, "now", COLUMN, maker(now));
    if (!recheck.sameSite()) {
      page.item(
          MARGIN,
          "site",
          COLUMN,
          "Another than was saved: what it states otherwise is among the facts.");
    }
    if (!was.intact()) {
      page.item(
          Tint.BAD,
          MARGIN,
          "edited",
          COLUMN,
          "The file was edited after the program saved it: its content does not match its seal. What"
              + " follows compares with the edited content; save it again with advise --save.");
    }
  }

  private static String maker(SavedAdvice advice) {
    return SafeText.of(
        advice.made().when().toString().replace('T', ' ').replace("Z", " UTC")
            + ", "
            + advice.made().program()
            + " "
            + advice.made().version()
            + ", rule pack "
            + advice.rulePack().line());
  }

  private void verdict() {
    page.blank();
    Stand stand = recheck.stand();
    page.tinted(stand.holds() ? Tint.GOOD : Tint.BAD, 0, verdict(stand));
  }

  private String verdict(Stand stand) {
    return switch (stand) {
      case IDENTICAL ->
          "Identical: every standing, point, finding, fact, number, verdict and stage is as it was"
              + (recheck.rules().isEmpty() ? "." : ", though the rules are not.");
      case STANDS ->
          "The recommendation still stands: the same option leads in every zone, and nothing that it"
              + " rests on is worse. What is otherwise follows.";
      case LOOK_AGAIN ->
          "The same option leads in every zone, but something that the recommendation rests on is"
              + " worse, or new to it: look again at what is marked !.";
      case FALLEN -> "The recommendation no longer stands: look at what is marked !.";
    };
  }

  private void rules() {
    if (recheck.rules().isEmpty()) {
      return;
    }
    page.heading("Rules");
    List<PackChange> changes = recheck.rules();
    changes.stream()
        .limit(SHOWN * 2L)
        .forEach(
            change ->
                page.item(
                    MARGIN,
                    "-",
                    MARK,
                    SafeText.of(change.name())
                        + ": "
                        + change.kind().word()
                        + wasNow(change.was(), change.now(), ". ")));
    more(changes.size() - SHOWN * 2);
  }

  private void zone(ZoneRecheck zone) {
    page.blank();
    page.ends(
        Tint.STRONG,
        "Zone " + SafeText.of(zone.zone()),
        zone.stand().holds() ? Tint.GOOD : Tint.BAD,
        zone.stand().word());
    if (zone.was().equals(zone.now())) {
      page.para(MARGIN, Words.sentence(SafeText.of(zone.now())) + ", as it was.");
    } else {
      page.item(MARGIN, "was", COLUMN, SafeText.of(zone.was()));
      page.item(MARGIN, "is", COLUMN, SafeText.of(zone.now()));
    }
    differences(zone.differences());
  }

  private void whole() {
    if (recheck.whole().isEmpty()) {
      return;
    }
    page.blank();
    page.ends(
        Tint.STRONG,
        "Scheme and stages",
        recheck.wholeStand().holds() ? Tint.GOOD : Tint.BAD,
        recheck.wholeStand().word());
    differences(recheck.whole());
  }

  private void differences(List<Difference> all) {
    for (Topic topic : Topic.values()) {
      List<Difference> some = all.stream().filter(one -> one.topic() == topic).toList();
      some.stream()
          .sorted(Comparator.comparing(one -> !one.worse()))
          .limit(SHOWN)
          .forEach(this::difference);
      more(some.size() - SHOWN);
    }
  }

  private void difference(Difference one) {
    page.item(
        one.worse() ? Tint.BAD : Tint.NONE,
        MARGIN,
        one.worse() ? "!" : "-",
        MARK,
        subject(one) + wasNow(one.was(), one.now(), ": "));
  }

  private static String subject(Difference one) {
    String topic = one.topic().word();
    return one.subject().equals(topic) ? topic : topic + ", " + SafeText.of(one.subject());
  }

  private static String wasNow(String was, String now, String lead) {
    if (was.isEmpty() && now.isEmpty()) {
      return "";
    }
    if (was.isEmpty()) {
      return lead + "new: " + SafeText.of(now);
    }
    return now.isEmpty()
        ? lead + "gone: " + SafeText.of(was)
        : lead + "was " + SafeText.of(was) + "; is " + SafeText.of(now);
  }

  private void more(int count) {
    if (count > 0) {
      page.para(MARGIN + MARK, "and " + count + " more (--json lists all)");
    }
  }

  private void foot() {
    page.blank();
    page.para(
        0,
        "Compared: standings, points, findings with their facts and limits, facts, sheets, scheme and"
            + " stages. Numbers count as the same within one part in a thousand million. Where the"
            + " site itself has changed since, its file must be advised anew (recheck FILE --site"
            + " SITE compares with it).");
    page.para(0, Program.CAUTION);
  }
}
