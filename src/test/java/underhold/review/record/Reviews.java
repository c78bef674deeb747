package underhold.review.record;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import underhold.review.saved.SavedAdvice;
import underhold.review.saved.SavedSamples;

/** A review for tests: entries by invented people, a minute apart. */
final class Reviews {
  static final SavedAdvice ADVICE = SavedSamples.saved("alder-row-party-wall");
  static final String CHECKER = "Ines Okafor";
  static final String DESIGNER = "Tom Brandt";
  static final String FINDING = "finding/PIT-04a";
  static final String CHECK = "check/pits/pit-width-least";

  private final ReviewDesk desk = new ReviewDesk(ADVICE, new Minutes());
  private ReviewFile file = start();

  /** A clock that goes on by a minute each time it is read. */
  static final class Minutes extends Clock {
    private Instant now = Instant.parse("2026-03-05T14:30:00Z");

    @Override
    public Instant instant() {
      now = now.plusSeconds(60);
      return now;
    }

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }
  }

  ReviewDesk desk() {
    return desk;
  }

  ReviewFile file() {
    return file;
  }

  ReviewRecord record() {
    return ReviewRecord.of(file, ReviewFile.FILES.text(file));
  }

  private ReviewFile start() {
    return ((Entering.Done) desk.start("alder.advice.json", CHECKER, Optional.of("checker")))
        .file();
  }

  Entering enter(Draft draft) {
    Entering entering = desk.enter(record(), draft);
    if (entering instanceof Entering.Done done) {
      file = done.file();
    }
    return entering;
  }

  Reviews with(Draft draft) {
    Entering entering = enter(draft);
    if (entering instanceof Entering.Refused refused) {
      throw new IllegalStateException(refused.problems().toString());
    }
    return this;
  }

  Reviews comment(String on, String text) {
    return with(Draft.of(EntryKind.COMMENT, CHECKER).on(on).saying(text));
  }

  Reviews query(String on, String text) {
    return with(Draft.of(EntryKind.QUERY, CHECKER).on(on).saying(text));
  }

  Reviews answer(int to, String text) {
    return with(Draft.of(EntryKind.ANSWER, DESIGNER).to(to).saying(text));
  }

  Reviews override(String on, String instead, String why) {
    return with(
        Draft.of(EntryKind.OVERRIDE, CHECKER).on(on).instead(instead).because(Optional.of(why)));
  }

  static Draft signature(String by) {
    return Draft.of(EntryKind.SIGN, by).as(Optional.of("checker")).stating("checked");
  }

  /** Start, comment, query, answer, override, signature. */
  static Reviews usual() {
    return new Reviews()
        .comment("whole", "A clear package.")
        .query("fact/foundingDepth", "Who measured it?")
        .answer(3, "Trial pit 2, by us.")
        .override(FINDING, "moderate", "The sand below is looser than told.")
        .with(signature(CHECKER).because(Optional.of("The override says what there is to say.")));
  }
}
