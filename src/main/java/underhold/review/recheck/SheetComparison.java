package underhold.review.recheck;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.review.saved.SavedAmount;
import underhold.review.saved.SavedCheck;
import underhold.review.saved.SavedInput;
import underhold.review.saved.SavedItem;
import underhold.review.saved.SavedSheet;
import underhold.review.saved.SavedStep;

/** What two sheets of one option differ in. */
final class SheetComparison {
  private static final List<String> BEST_FIRST = List.of("passes", "refer", "fails");

  private final String option;
  private final boolean leads;
  private final List<Difference> found = new ArrayList<>();

  private SheetComparison(String option, boolean leads) {
    this.option = option;
    this.leads = leads;
  }

  /**
   * The differences.
   *
   * @param leads whether the option led: then what is worse on its sheet weighs
   */
  static List<Difference> of(
      String option, Optional<SavedSheet> was, Optional<SavedSheet> now, boolean leads) {
    SheetComparison comparison = new SheetComparison(option, leads);
    if (was.isPresent() && now.isPresent()) {
      comparison.run(was.get(), now.get());
    } else if (was.isPresent() || now.isPresent()) {
      comparison.found.add(
          new Difference(
              Topic.VERDICT,
              option,
              was.map(SavedSheet::verdict).orElse("not sized"),
              now.map(SavedSheet::verdict).orElse("not sized"),
              leads && now.isEmpty()));
    }
    return comparison.found;
  }

  private void run(SavedSheet was, SavedSheet now) {
    if (!was.asks().equals(now.asks())) {
      found.add(
          new Difference(
              Topic.VERDICT,
              option + ", what its sheet asks",
              asks(was),
              asks(now),
              leads && now.asks().size() > was.asks().size()));
    }
    Pairs.of(was.checks(), now.checks(), SavedCheck::id).forEach(this::check);
    Pairs.of(was.inputs(), now.inputs(), SavedInput::name).forEach(this::input);
    Pairs.of(was.steps(), now.steps(), SavedStep::id).forEach(this::step);
    Pairs.of(was.quantities(), now.quantities(), SavedItem::name).forEach(this::item);
    Pairs.of(was.time(), now.time(), SavedItem::name).forEach(this::item);
  }

  private static String asks(SavedSheet sheet) {
    return sheet.asks().isEmpty() ? "nothing" : String.join(", ", sheet.asks());
  }

  private void check(Pairs<SavedCheck> pair) {
    String subject = subject(pair.name(), pair.was().or(pair::now).orElseThrow().title());
    if (!pair.both()) {
      boolean bad = pair.now().filter(check -> grade(check) > 0).isPresent();
      boolean gone = pair.now().isEmpty();
      found.add(
          new Difference(
              Topic.SHEET,
              subject,
              pair.textWas(SavedCheck::line),
              pair.textNow(SavedCheck::line),
              leads && (bad || gone)));
      return;
    }
    SavedCheck was = pair.was().orElseThrow();
    SavedCheck now = pair.now().orElseThrow();
    if (!was.verdict().equals(now.verdict())) {
      boolean worse = leads && grade(now) > grade(was);
      found.add(new Difference(Topic.VERDICT, subject, was.line(), now.line(), worse));
    } else if (!was.demand().same(now.demand()) || !was.capacity().same(now.capacity())) {
      add(Topic.NUMBER, subject, was.line(), now.line());
    }
  }

  private static int grade(SavedCheck check) {
    return BEST_FIRST.indexOf(check.verdict());
  }

  private void input(Pairs<SavedInput> pair) {
    boolean same = pair.both() && pair.was().orElseThrow().same(pair.now().orElseThrow());
    if (!same) {
      add(
          Topic.INPUT,
          option + ", " + pair.name(),
          pair.textWas(SavedInput::line),
          pair.textNow(SavedInput::line));
    }
  }

  private void step(Pairs<SavedStep> pair) {
    String subject = subject(pair.name(), pair.was().or(pair::now).orElseThrow().title());
    if (!pair.both()) {
      add(
          Topic.SHEET,
          subject,
          pair.textWas(one -> one.result().text()),
          pair.textNow(one -> one.result().text()));
      return;
    }
    SavedStep was = pair.was().orElseThrow();
    SavedStep now = pair.now().orElseThrow();
    if (!was.result().same(now.result())) {
      amounts(subject, was.result(), now.result());
    } else if (!was.formula().equals(now.formula())) {
      add(Topic.SHEET, subject, was.formula(), now.formula());
    }
  }

  private void item(Pairs<SavedItem> pair) {
    String subject = option + ", " + pair.name();
    if (!pair.both()) {
      add(
          Topic.SHEET,
          subject,
          pair.textWas(one -> one.amount().text()),
          pair.textNow(one -> one.amount().text()));
    } else if (!pair.was().orElseThrow().amount().same(pair.now().orElseThrow().amount())) {
      amounts(subject, pair.was().orElseThrow().amount(), pair.now().orElseThrow().amount());
    }
  }

  /** Where both read the same the inside value tells them apart. */
  private void amounts(String subject, SavedAmount was, SavedAmount now) {
    boolean alike = was.text().equals(now.text());
    add(Topic.NUMBER, subject, alike ? full(was) : was.text(), alike ? full(now) : now.text());
  }

  private static String full(SavedAmount amount) {
    return amount.value() + (amount.unit().isEmpty() ? "" : " " + amount.unit());
  }

  private String subject(String id, String title) {
    return option + ", " + title + " (" + id + ")";
  }

  private void add(Topic topic, String subject, String was, String now) {
    found.add(Difference.of(topic, subject, was, now));
  }
}
