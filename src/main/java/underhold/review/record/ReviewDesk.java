package underhold.review.record;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import underhold.review.saved.SavedAdvice;
import underhold.site.PlainText;

/** Makes entries of a review, and refuses those that cannot stand. */
public final class ReviewDesk {
  /** Longest text, in characters. */
  public static final int LONGEST_TEXT = 20_000;

  private final SavedAdvice advice;
  private final String fingerprint;
  private final boolean intact;
  private final Targets targets;
  private final Clock clock;

  /**
   * Reviews a consultation.
   *
   * @param clock what tells when an entry is made
   */
  public ReviewDesk(SavedAdvice advice, Clock clock) {
    this.advice = advice;
    this.fingerprint = advice.fingerprint();
    this.intact = advice.seal().equals(fingerprint);
    this.targets = new Targets(advice);
    this.clock = clock;
  }

  /** What entries can speak of. */
  public Targets targets() {
    return targets;
  }

  /**
   * Begins a review.
   *
   * @param file the name of the file of the consultation, beside the review
   */
  public Entering start(String file, String by, Optional<String> role) {
    Reasons reasons = new Reasons();
    person(by, role, reasons);
    if (!intact) {
      reasons.state(edited());
    }
    if (!reasons.isEmpty()) {
      return reasons.refused();
    }
    Reviewed reviewed = Reviewed.of(advice, file);
    Draft draft = Draft.of(EntryKind.START, by).as(role);
    Entry entry = entry(draft, 1, 1, Optional.empty(), reviewed.root());
    return new Entering.Done(
        new ReviewFile(ReviewFile.FORM, reviewed, List.of(entry), entry.hash()));
  }

  /** Puts an entry at the end of a record that is whole and of this consultation. */
  public Entering enter(ReviewRecord record, Draft draft) {
    Reasons reasons = new Reasons();
    record.faults().forEach(fault -> reasons.state("The record is not whole: " + fault.message()));
    if (!reasons.isEmpty()) {
      reasons.state("Nothing is added to it: keep the file as it is, and go on from a whole copy.");
      return reasons.refused();
    }
    subject(record, reasons);
    person(draft.by(), draft.role(), reasons);
    texts(draft, reasons);
    Optional<Target> target = target(draft, reasons);
    new Turn(record, draft).check(reasons);
    if (draft.kind() == EntryKind.OVERRIDE) {
      target.ifPresent(found -> override(draft, found, reasons));
    }
    if (!reasons.isEmpty()) {
      return reasons.refused();
    }
    Entry last = record.file().last();
    int round = last.round() + (draft.kind() == EntryKind.REOPEN ? 1 : 0);
    Entry entry = entry(draft, last.number() + 1, round, target, last.hash());
    return new Entering.Done(record.file().with(entry));
  }

  private void subject(ReviewRecord record, Reasons reasons) {
    if (!record.isOf(fingerprint)) {
      reasons.state(
          "The consultation is not the one that this review began on: "
              + record.file().of().advice()
              + " has changed since. A new consultation needs a review of its own: review start.");
    } else if (!intact) {
      reasons.state(edited());
    }
  }

  private static String edited() {
    return "The consultation was edited after the program saved it: its content does not match its"
        + " seal. Save it again: advise --save.";
  }

  private static void person(String by, Optional<String> role, Reasons reasons) {
    PlainText.whyNoName(by)
        .ifPresent(why -> reasons.typed("Who writes (--by): " + why + "; type a name."));
    role.flatMap(PlainText::whyNoName)
        .ifPresent(why -> reasons.typed("The role (--role): " + why + "; such as checker."));
  }

  private static void texts(Draft draft, Reasons reasons) {
    draft.text().flatMap(text -> whyNot(text)).ifPresent(why -> reasons.typed("The text " + why));
    draft
        .why()
        .flatMap(text -> whyNot(text))
        .ifPresent(why -> reasons.typed("The reason (--why) " + why));
  }

  private static Optional<String> whyNot(String text) {
    if (text.isBlank()) {
      return Optional.of("is empty.");
    }
    if (text.length() > LONGEST_TEXT) {
      return Optional.of(
          "has " + text.length() + " characters; at most " + LONGEST_TEXT + " are allowed.");
    }
    boolean half =
        text.codePoints().anyMatch(point -> Character.getType(point) == Character.SURROGATE);
    return half
        ? Optional.of("holds half a character, which no file can; type it again.")
        : Optional.empty();
  }

  private Optional<Target> target(Draft draft, Reasons reasons) {
    Optional<Target> found = draft.target().flatMap(targets::find);
    if (found.isEmpty()) {
      draft
          .target()
          .ifPresent(
              typed ->
                  reasons.typed(
                      targets.refusal(typed) + " review targets FILE lists what there is."));
    }
    return found;
  }

  private static void override(Draft draft, Target target, Reasons reasons) {
    String instead = draft.instead().orElse("");
    if (target.instead().isEmpty()) {
      reasons.typed(
          "\""
              + target.path()
              + "\" cannot be overridden: a finding, the verdict of a check or a ranking can. A"
              + " comment or a query can speak of anything.");
    } else if (instead.equals(target.present())) {
      reasons.typed("\"" + target.path() + "\" is " + instead + " already.");
    } else if (!target.instead().contains(instead)) {
      reasons.typed(
          PlainText.quoted(instead)
              + " cannot stand in place of \""
              + target.path()
              + "\"; there are: "
              + String.join(", ", target.instead())
              + ".");
    }
  }

  private Entry entry(Draft draft, int number, int round, Optional<Target> target, String before) {
    Instant now = clock.instant().truncatedTo(ChronoUnit.SECONDS);
    boolean signs = draft.kind() == EntryKind.SIGN;
    return new Entry(
            number,
            round,
            now,
            draft.by().strip(),
            draft.role().map(String::strip),
            draft.kind().word(),
            target.map(Target::path),
            target.map(Target::original),
            draft.instead(),
            draft.refers(),
            draft.statement(),
            signs ? Optional.of(fingerprint) : Optional.empty(),
            draft.text(),
            draft.why(),
            before,
            "")
        .hashed();
  }
}
