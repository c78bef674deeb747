package underhold.review.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import underhold.review.saved.SavedAdvice;
import underhold.review.saved.SavedSamples;

/** What may be entered, and what is refused and why. */
class ReviewDeskTest {
  private static final Optional<String> WHY = Optional.of("Because.");

  private static List<String> refused(Reviews reviews, Draft draft) {
    Entering entering = reviews.enter(draft);
    assertThat(entering).isInstanceOf(Entering.Refused.class);
    return ((Entering.Refused) entering).problems();
  }

  @Test
  void an_override_stands_beside_the_original() {
    ReviewRecord record = new Reviews().override(Reviews.FINDING, "minor", "Looser sand.").record();

    assertThat(record.overrides())
        .singleElement()
        .satisfies(
            one -> {
              assertThat(one.state()).isEqualTo(ReviewRecord.Overridden.State.IN_FORCE);
              assertThat(one.entry().original().orElseThrow())
                  .startsWith("for pits, major: The classic case");
              assertThat(one.entry().instead()).contains("minor");
            });
  }

  @Test
  void an_override_needs_a_reason_and_a_word_that_fits() {
    Draft draft = Draft.of(EntryKind.OVERRIDE, Reviews.CHECKER);
    Reviews reviews = new Reviews();
    assertThat(refused(reviews, draft.on(Reviews.FINDING).instead("minor")))
        .containsExactly("An override needs a reason: --why REASON.");
    assertThat(refused(reviews, draft.on(Reviews.FINDING).instead("major").because(WHY)))
        .singleElement()
        .asString()
        .endsWith("is major already.");
    assertThat(refused(reviews, draft.on(Reviews.CHECK).instead("minor").because(WHY)))
        .singleElement()
        .asString()
        .endsWith("there are: passes, fails, refer.");
    assertThat(refused(reviews, draft.on("ranking").instead("pits").because(WHY)))
        .singleElement()
        .asString()
        .endsWith("is pits already.");
    assertThat(refused(reviews, draft.on("fact/loadPattern").instead("x").because(WHY)))
        .singleElement()
        .asString()
        .contains("cannot be overridden");
    assertThat(reviews.record().overrides()).isEmpty();
  }

  /** Protect and monitor is ruled out at Alder Row: the wall would be bared to its underside. */
  @Test
  void an_override_against_what_rules_out_says_so() {
    Reviews reviews =
        new Reviews()
            .override("ranking", "monitor", "The owner wants it.")
            .override(Reviews.FINDING, "minor", "Looser sand.")
            .override("finding/NON-03a", "set-aside", "There will be a wall.");
    assertThat(reviews.record().overrides())
        .extracting(ReviewRecord.Overridden::againstSafety)
        .containsExactly(true, false, true);
  }

  @Test
  void a_target_is_there_or_the_nearest_is_named() {
    assertThat(
            refused(
                new Reviews(),
                Draft.of(EntryKind.COMMENT, Reviews.CHECKER).on("fact/foundingDept").saying("Hm.")))
        .singleElement()
        .asString()
        .contains("has no part \"fact/foundingDept\". Did you mean \"")
        .contains("/fact/foundingDepth\"?");
  }

  @Test
  void a_zone_must_be_named_where_several_have_the_part() {
    Targets targets = new Targets(SavedSamples.saved("three-bridges-interchange"));
    assertThat(targets.find("ranking")).isEmpty();
    assertThat(targets.refusal("ranking"))
        .contains("name the zone", "\"box over the cut/ranking\"");
    assertThat(targets.find("PLATFORM edge/ranking")).isPresent();
    assertThat(targets.paths()).doesNotHaveDuplicates().contains("whole", "scheme", "stage/survey");
  }

  @Test
  void all_that_is_wrong_is_told_at_once() {
    assertThat(
            refused(
                new Reviews(),
                Draft.of(EntryKind.OVERRIDE, " ")
                    .as(Optional.of("x\u001b[31m"))
                    .on("nothing/like/it")
                    .instead("x")
                    .because(Optional.of(" "))))
        .hasSize(4);
  }

  @Test
  void a_signature_waits_for_open_queries_unless_it_says_why() {
    Reviews reviews = new Reviews().query("whole", "Whose borings?").query("scheme", "Why one?");
    assertThat(refused(reviews, Reviews.signature(Reviews.CHECKER)))
        .singleElement()
        .asString()
        .startsWith("The queries 2, 3 are open.");

    reviews.answer(2, "Ours.");
    assertThat(refused(reviews, Reviews.signature(Reviews.CHECKER)))
        .singleElement()
        .asString()
        .startsWith("Query 3 is open.");

    reviews.with(Reviews.signature(Reviews.CHECKER).because(Optional.of("One zone only.")));
    assertThat(reviews.record().signed()).isEqualTo(ReviewRecord.Signed.YES);
    assertThat(reviews.record().openQueries()).hasSize(1);
  }

  @Test
  void an_override_is_an_objection() {
    Reviews reviews = new Reviews().override(Reviews.FINDING, "moderate", "Looser sand.");
    assertThat(refused(reviews, Reviews.signature(Reviews.CHECKER)))
        .singleElement()
        .asString()
        .startsWith("In force are the overrides 2,")
        .contains("--why REASON");

    reviews.with(Reviews.signature(Reviews.CHECKER).stating("accepted-with-comments"));
    assertThat(reviews.record().signed()).isEqualTo(ReviewRecord.Signed.YES);
  }

  @Test
  void a_signature_needs_a_role_and_a_statement_and_comes_once() {
    Reviews reviews = new Reviews();
    Draft bare = Draft.of(EntryKind.SIGN, Reviews.CHECKER).stating("cheked");
    assertThat(refused(reviews, bare))
        .hasSize(2)
        .anyMatch(one -> one.contains("Did you mean checked?"));
    reviews.with(Reviews.signature(Reviews.CHECKER));
    assertThat(refused(reviews, Reviews.signature(" ines okafor ")))
        .containsExactly("ines okafor has signed this round already.");
    reviews.with(Reviews.signature("Lena Fischer"));
    assertThat(reviews.record().signatures()).hasSize(2).allMatch(ReviewRecord.Signature::covers);
  }

  @Test
  void a_signature_freezes_what_it_covers() {
    Entry signature = Reviews.usual().file().last();
    assertThat(signature.reviewed()).contains(Reviews.ADVICE.fingerprint());
    assertThat(signature.before()).isEqualTo(Reviews.usual().file().entries().get(4).hash());
  }

  @Test
  void after_a_signature_only_a_new_round_goes_on() {
    Reviews reviews = Reviews.usual();
    Draft comment = Draft.of(EntryKind.COMMENT, Reviews.DESIGNER).on("whole").saying("Late.");
    assertThat(refused(reviews, comment)).singleElement().asString().contains("review reopen");

    reviews.with(Draft.of(EntryKind.REOPEN, Reviews.DESIGNER).because(Optional.of("New boring.")));
    assertThat(reviews.record().signed()).isEqualTo(ReviewRecord.Signed.NO_LONGER);
    reviews.with(comment);
    assertThat(reviews.record().round()).isEqualTo(2);
    assertThat(reviews.record().signatures()).noneMatch(ReviewRecord.Signature::covers);
    assertThat(reviews.record().intact()).isTrue();
    assertThat(refused(reviews, Draft.of(EntryKind.REOPEN, Reviews.CHECKER).because(WHY)))
        .singleElement()
        .asString()
        .contains("not signed");
  }

  @Test
  void only_who_wrote_an_entry_takes_it_back_and_it_stays() {
    Reviews reviews = new Reviews().query("whole", "Whose borings?");
    Draft withdraw = Draft.of(EntryKind.WITHDRAW, Reviews.DESIGNER).to(2).because(WHY);
    assertThat(refused(reviews, withdraw)).singleElement().asString().contains("alone can");
    reviews.with(Draft.of(EntryKind.WITHDRAW, Reviews.CHECKER).to(2).because(WHY));

    assertThat(reviews.record().openQueries()).isEmpty();
    assertThat(reviews.record().entry(2).orElseThrow().text()).contains("Whose borings?");
    assertThat(refused(reviews, Draft.of(EntryKind.ANSWER, "X").to(2).saying("Ours.")))
        .containsExactly("Entry 2 is withdrawn.");
    assertThat(refused(reviews, Draft.of(EntryKind.WITHDRAW, Reviews.CHECKER).to(1).because(WHY)))
        .containsExactly("A start cannot be withdrawn.");
    assertThat(refused(reviews, Draft.of(EntryKind.ANSWER, "X").to(9).saying("Ours.")))
        .containsExactly("There is no entry 9; the last is 3.");
  }

  @Test
  void a_later_override_replaces_and_a_withdrawn_one_gives_the_place_back() {
    Reviews reviews =
        new Reviews()
            .override(Reviews.FINDING, "minor", "One.")
            .override(Reviews.FINDING, "set-aside", "Two.");
    assertThat(reviews.record().overrides())
        .extracting(ReviewRecord.Overridden::state)
        .containsExactly(
            ReviewRecord.Overridden.State.REPLACED, ReviewRecord.Overridden.State.IN_FORCE);
    reviews.with(Draft.of(EntryKind.WITHDRAW, Reviews.CHECKER).to(3).because(WHY));
    assertThat(reviews.record().overrides())
        .extracting(ReviewRecord.Overridden::state)
        .containsExactly(
            ReviewRecord.Overridden.State.IN_FORCE, ReviewRecord.Overridden.State.WITHDRAWN);
  }

  @Test
  void nothing_is_added_to_a_record_that_is_not_whole() {
    Reviews reviews = Reviews.usual();
    ReviewFile cut =
        new ReviewFile(
            ReviewFile.FORM,
            reviews.file().of(),
            reviews.file().entries().subList(0, 3),
            reviews.file().head());
    Entering entering =
        reviews
            .desk()
            .enter(
                ReviewRecord.of(cut, ""),
                Draft.of(EntryKind.COMMENT, Reviews.CHECKER).on("whole").saying("Go on."));
    assertThat(((Entering.Refused) entering).problems())
        .anyMatch(one -> one.startsWith("The record is not whole"));
  }

  @Test
  void another_consultation_is_not_the_one_reviewed() {
    SavedAdvice other = SavedSamples.saved("ferry-street-column");
    Entering entering =
        new ReviewDesk(other, Clock.systemUTC())
            .enter(
                new Reviews().record(),
                Draft.of(EntryKind.COMMENT, Reviews.CHECKER).on("whole").saying("Hm."));
    assertThat(((Entering.Refused) entering).state())
        .singleElement()
        .asString()
        .contains("has changed since");
  }

  @Test
  void odd_texts_are_kept_as_they_are() {
    String odd =
        "\u001b[31mred\u001b[0m \u0007 \u202Egnol\u202C \u05E9\u05DC\u05D5\u05DD \ud83d\ude00 "
            + "\u009b31m \\ \" </script>\r\n"
            + "x".repeat(10_000);
    ReviewFile file = new Reviews().comment("whole", odd).file();
    String text = ReviewFile.FILES.text(file);
    ReviewFile read = ReviewFile.FILES.read(text, "x").content().orElseThrow();

    assertThat(read.last().text()).contains(odd);
    assertThat(ReviewRecord.of(read, text).intact()).isTrue();
    assertThat(text).doesNotContain("\u001b", "\u009b", "\u202e", "\u0007");
    assertThat(
            refused(
                new Reviews(), Draft.of(EntryKind.COMMENT, "X").on("whole").saying("half \ud83d")))
        .singleElement()
        .asString()
        .contains("half a character");
    assertThat(
            refused(
                new Reviews(),
                Draft.of(EntryKind.COMMENT, "X").on("whole").saying("x".repeat(20_001))))
        .containsExactly("The text has 20001 characters; at most 20000 are allowed.");
  }
}
