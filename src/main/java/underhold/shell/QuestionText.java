package underhold.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import underhold.advice.SupportOption;
import underhold.consult.OpenQuestion;
import underhold.report.FactsText;
import underhold.report.Look;
import underhold.report.TextPage;
import underhold.report.Tint;
import underhold.site.FactDefinition;
import underhold.site.FactKind;

/** A question of the interview on the screen. */
final class QuestionText {
  private static final int MARGIN = 2;
  private static final int WHY = 13;

  private QuestionText() {}

  /** The words a user may type at any fact. */
  static final List<String> ALWAYS = List.of("?", "unknown", "back", "stop");

  static String of(Question question, Look look) {
    TextPage page = new TextPage(look);
    String number = "Question " + question.number() + toGo(question.toGo());
    page.ends(Tint.QUIET, number, Tint.QUIET, question.zoneName());
    page.tinted(Tint.STRONG, 0, words(question));
    question.fact().ifPresent(fact -> allowed(page, fact));
    if (!question.former().isEmpty()) {
      page.para(MARGIN, "Enter keeps: " + question.former());
    }
    return page.text();
  }

  private static String toGo(int toGo) {
    return toGo == 0 ? ", the last for now" : ", about " + toGo + " to go";
  }

  private static String words(Question question) {
    return switch (question.topic()) {
      case SITE_NAME -> "What is the site called?";
      case ZONE_NAME ->
          "Which part of the structure comes first? Name it as on the drawings: north wall, column"
              + " B4. Other parts can follow.";
      case FACT -> question.fact().orElseThrow().question();
      case GO_ON ->
          question.toGo()
              + " more questions can move scores but decide nothing alone. Go on with them? (yes,"
              + " no)";
      case ANOTHER_ZONE ->
          "Is there another part of the structure to look at? Type its name, or press Enter to"
              + " finish.";
      case NONE -> "Nothing is left to ask.";
    };
  }

  private static void allowed(TextPage page, FactDefinition fact) {
    if (fact.kind() == FactKind.CHOICE) {
      int column = 2 + fact.values().stream().mapToInt(v -> v.value().length()).max().orElse(0);
      int number = 0;
      for (FactDefinition.Allowed value : fact.values()) {
        String mark = String.format(Locale.ROOT, "%2d  %s", ++number, value.value());
        page.item(MARGIN, mark, column + 4, value.means());
      }
    } else {
      page.para(MARGIN, "Type " + FactsText.takes(fact) + ".");
    }
  }

  /** Why a question matters, how to find out, and what hangs on it. */
  static String why(Question question, Look look) {
    TextPage page = new TextPage(look);
    if (question.fact().isEmpty()) {
      page.para(MARGIN, "The name stands on every page. It can be changed later.");
      return page.text();
    }
    FactDefinition fact = question.fact().get();
    page.item(MARGIN, "why", WHY, fact.why());
    if (!fact.findOut().isEmpty()) {
      page.item(MARGIN, "find out", WHY, fact.findOut());
    }
    page.item(MARGIN, "hangs on it", WHY, String.join(", ", labels(fact.options())));
    var unknown = fact.unknown();
    if (unknown != null) {
      page.item(MARGIN, "unknown", WHY, unknown.because());
    }
    question.open().ifPresent(open -> stake(page, open));
    page.item(
        MARGIN,
        "type",
        WHY,
        "an answer; unknown if nobody knows; back for the question before; stop to go on another"
            + " day.");
    return page.text();
  }

  private static void stake(TextPage page, OpenQuestion open) {
    List<String> leads = new ArrayList<>();
    if (open.leaderChanges() > 0) {
      open.answers()
          .forEach(a -> leads.add(a.value() + ": " + (a.leader().isEmpty() ? "none" : a.leader())));
    }
    page.item(
        MARGIN,
        "now",
        WHY,
        "It "
            + open.stake()
            + "."
            + (leads.isEmpty() ? "" : " What would lead: " + String.join("; ", leads) + "."));
  }

  private static List<String> labels(List<String> ids) {
    return ids.stream()
        .map(id -> SupportOption.find(id).map(SupportOption::label).orElse(id))
        .toList();
  }

  /** The words that may well be typed. */
  static List<String> completions(Question question) {
    List<String> words = new ArrayList<>();
    question
        .fact()
        .ifPresent(
            fact -> {
              fact.values().forEach(value -> words.add(value.value()));
              words.addAll(ALWAYS);
            });
    return words;
  }
}
