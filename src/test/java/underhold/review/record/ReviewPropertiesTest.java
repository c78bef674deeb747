package underhold.review.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import underhold.quantity.Seeds;
import underhold.report.Look;
import underhold.report.ReviewText;

/** Random reviews, kept in mind beside the record by a few plain sets. */
class ReviewPropertiesTest {
  private static final List<String> PEOPLE = List.of("Ines Okafor", "Tom Brandt", "Lena Fischer");
  private static final List<String> PARTS =
      List.of("whole", "scheme", Reviews.FINDING, Reviews.CHECK, "ranking", "fact/loadPattern");
  private static final List<String> WORDS =
      List.of("minor", "moderate", "set-aside", "passes", "fails", "refer", "needles", "none");

  /** What a record should say, by the plainest reckoning. */
  private static final class Mind {
    final Set<Integer> open = new HashSet<>();
    final Set<Integer> withdrawn = new HashSet<>();
    final Map<Integer, Integer> answers = new HashMap<>();
    final Map<Integer, String> overrides = new HashMap<>();
    boolean signed;
    boolean everSigned;
    int round = 1;
  }

  @Property(tries = 100, seed = Seeds.BUILD)
  @Label("whatever is entered, the record is whole and says what is open, overridden and signed")
  void the_record_says_what_happened(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 25) int steps) {
    Random random = new Random(seed);
    Reviews reviews = new Reviews();
    Mind mind = new Mind();
    for (int i = 0; i < steps; i++) {
      Draft draft = draft(random, reviews.file().entries().size());
      List<Entry> before = reviews.file().entries();
      String head = reviews.file().head();
      Entering entering = reviews.enter(draft);
      List<Entry> after = reviews.file().entries();
      assertThat(after.subList(0, before.size())).isEqualTo(before);
      if (entering instanceof Entering.Done) {
        assertThat(after).hasSize(before.size() + 1);
        note(mind, reviews.file().last());
      } else {
        assertThat(reviews.file().head()).isEqualTo(head);
      }
    }
    holds(mind, reviews);
    damageShows(random, reviews.file());
  }

  private static Draft draft(Random random, int entries) {
    EntryKind[] kinds = EntryKind.values();
    EntryKind kind = kinds[random.nextInt(kinds.length)];
    Draft draft = Draft.of(kind, pick(random, PEOPLE));
    Optional<String> why = random.nextInt(4) > 0 ? Optional.of("Reason.") : Optional.empty();
    return switch (kind) {
      case START -> draft;
      case COMMENT, QUERY -> draft.on(pick(random, PARTS)).saying("Said.");
      case ANSWER -> draft.to(1 + random.nextInt(entries + 1)).saying("Answered.");
      case OVERRIDE -> draft.on(pick(random, PARTS)).instead(pick(random, WORDS)).because(why);
      case WITHDRAW -> draft.to(1 + random.nextInt(entries + 1)).because(why);
      case SIGN ->
          draft.as(Optional.of("checker")).stating(pick(random, Statement.words())).because(why);
      case REOPEN -> draft.because(why);
    };
  }

  private static <T> T pick(Random random, List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  private static void note(Mind mind, Entry entry) {
    int number = entry.number();
    switch (entry.does()) {
      case QUERY -> mind.open.add(number);
      case ANSWER -> mind.answers.put(number, entry.refers().orElseThrow());
      case OVERRIDE -> mind.overrides.put(number, entry.original().orElseThrow());
      case WITHDRAW -> mind.withdrawn.add(entry.refers().orElseThrow());
      case SIGN -> {
        mind.signed = true;
        mind.everSigned = true;
      }
      case REOPEN -> {
        mind.signed = false;
        mind.round++;
      }
      default -> {}
    }
  }

  private static void holds(Mind mind, Reviews reviews) {
    ReviewRecord record = reviews.record();
    assertThat(record.intact()).as(record.faults().toString()).isTrue();
    Set<Integer> open = new HashSet<>(mind.open);
    open.removeAll(mind.withdrawn);
    mind.answers.forEach(
        (answer, query) -> {
          if (!mind.withdrawn.contains(answer)) {
            open.remove(query);
          }
        });
    assertThat(record.openQueries().stream().map(query -> query.asked().number()))
        .containsExactlyInAnyOrderElementsOf(open);
    assertThat(record.round()).isEqualTo(mind.round);
    assertThat(record.signed())
        .isEqualTo(
            mind.signed
                ? ReviewRecord.Signed.YES
                : mind.everSigned ? ReviewRecord.Signed.NO_LONGER : ReviewRecord.Signed.NO);
    assertThat(record.overrides()).hasSize(mind.overrides.size());
    String status = ReviewText.status(record, "", "", Look.PLAIN);
    String all = ReviewText.all(record, "", Look.PLAIN);
    for (ReviewRecord.Overridden one : record.overrides()) {
      String original = mind.overrides.get(one.entry().number());
      assertThat(new Targets(Reviews.ADVICE).find(one.entry().target().orElseThrow()))
          .hasValueSatisfying(target -> assertThat(target.original()).isEqualTo(original));
      assertThat(flat(status)).contains("Original: " + flat(original));
      assertThat(flat(all)).contains("Original: " + flat(original));
      assertThat(one.state() == ReviewRecord.Overridden.State.WITHDRAWN)
          .isEqualTo(mind.withdrawn.contains(one.entry().number()));
    }
    assertThat(ReviewRow.of(record)).hasSize(record.entries().size());
  }

  /** Without line ends and the blanks that wrapping makes. */
  private static String flat(String text) {
    return text.replaceAll("\\s+", " ");
  }

  private static void damageShows(Random random, ReviewFile file) {
    byte[] bytes = ReviewFile.FILES.text(file).getBytes(StandardCharsets.UTF_8);
    bytes[random.nextInt(bytes.length)] ^= (byte) (1 + random.nextInt(255));
    String text = new String(bytes, StandardCharsets.UTF_8);
    boolean seen =
        ReviewFile.FILES
            .read(text, "x")
            .content()
            .map(read -> !ReviewRecord.of(read, text).intact())
            .orElse(true);
    assertThat(seen).isTrue();
  }
}
