package underhold.review.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import underhold.review.file.FileReading;
import underhold.review.record.Fault.Kind;

/** A record that was not kept as it was written shows it, and where. */
class ChainTest {
  private static final ReviewFile FILE = Reviews.usual().file();
  private static final String TEXT = ReviewFile.FILES.text(FILE);

  private static List<Fault> faults(List<Entry> entries, String head) {
    return ReviewRecord.of(new ReviewFile(ReviewFile.FORM, FILE.of(), entries, head), "").faults();
  }

  private static Entry said(Entry entry, String text) {
    return new Entry(
        entry.number(),
        entry.round(),
        entry.when(),
        entry.by(),
        entry.role(),
        entry.kind(),
        entry.target(),
        entry.original(),
        entry.instead(),
        entry.refers(),
        entry.statement(),
        entry.reviewed(),
        Optional.of(text),
        entry.why(),
        entry.before(),
        entry.hash());
  }

  @Test
  void what_was_written_is_whole() {
    FileReading<ReviewFile> read = ReviewFile.FILES.read(TEXT, "x");
    assertThat(read.content()).contains(FILE);
    assertThat(ReviewRecord.of(FILE, TEXT).faults()).isEmpty();
  }

  @Test
  void no_byte_can_change_unseen() {
    byte[] bytes = TEXT.getBytes(StandardCharsets.UTF_8);
    for (int at = 0; at < bytes.length; at++) {
      for (int flip : bytes[at] == ' ' ? new int[] {0x2A, 0x29} : new int[] {1 << at % 7}) {
        byte[] other = bytes.clone(); // of a blank a line end or a tab is made
        other[at] ^= (byte) flip;
        String text = new String(other, StandardCharsets.UTF_8);
        FileReading<ReviewFile> read = ReviewFile.FILES.read(text, "x");
        boolean seen =
            read.content().map(file -> !ReviewRecord.of(file, text).intact()).orElse(true);
        assertThat(seen).as("byte %s of %s", at, TEXT.substring(Math.max(0, at - 20), at)).isTrue();
      }
    }
  }

  @Test
  void every_entry_changed_is_named() {
    for (int i = 0; i < FILE.entries().size(); i++) {
      List<Entry> entries = new ArrayList<>(FILE.entries());
      entries.set(i, said(entries.get(i), "Another text."));
      assertThat(faults(entries, FILE.head()))
          .extracting(Fault::kind, Fault::entry)
          .containsExactly(org.assertj.core.groups.Tuple.tuple(Kind.CHANGED, i + 1));
    }
  }

  @Test
  void an_entry_changed_with_its_fingerprint_is_named_by_the_next() {
    for (int i = 0; i < FILE.entries().size() - 1; i++) {
      List<Entry> entries = new ArrayList<>(FILE.entries());
      entries.set(i, said(entries.get(i), "Another text.").hashed());
      assertThat(faults(entries, FILE.head()))
          .extracting(Fault::kind, Fault::entry)
          .containsExactly(org.assertj.core.groups.Tuple.tuple(Kind.CHANGED, i + 1));
    }
  }

  @Test
  void entries_taken_out_are_named() {
    for (int i = 1; i < FILE.entries().size() - 1; i++) {
      List<Entry> entries = new ArrayList<>(FILE.entries());
      entries.remove(i);
      assertThat(faults(entries, FILE.head()))
          .extracting(Fault::kind, Fault::entry)
          .containsExactly(org.assertj.core.groups.Tuple.tuple(Kind.REMOVED, i + 1));
    }
    List<Entry> two = new ArrayList<>(FILE.entries());
    two.subList(2, 4).clear();
    assertThat(faults(two, FILE.head()).get(0).message())
        .isEqualTo("between entry 2 and entry 5 some are missing");
  }

  @Test
  void entries_put_in_are_named() {
    for (int i = 1; i < FILE.entries().size(); i++) {
      List<Entry> entries = new ArrayList<>(FILE.entries());
      Entry above = entries.get(i - 1);
      Entry copy = FILE.entries().get(1);
      Entry put =
          new Entry(
                  i + 1,
                  1,
                  copy.when(),
                  copy.by(),
                  copy.role(),
                  copy.kind(),
                  copy.target(),
                  copy.original(),
                  Optional.empty(),
                  Optional.empty(),
                  Optional.empty(),
                  Optional.empty(),
                  Optional.of("Put in."),
                  Optional.empty(),
                  above.hash(),
                  "")
              .hashed();
      entries.add(i, put);
      assertThat(faults(entries, FILE.head()))
          .anySatisfy(
              fault -> {
                assertThat(fault.kind()).isEqualTo(Kind.INSERTED);
                assertThat(fault.entry()).isEqualTo(put.number());
              });
    }
  }

  @Test
  void entries_moved_are_named() {
    for (int i = 1; i < FILE.entries().size() - 1; i++) {
      List<Entry> entries = new ArrayList<>(FILE.entries());
      entries.add(i, entries.remove(i + 1));
      assertThat(faults(entries, FILE.head()))
          .filteredOn(fault -> fault.kind() != Kind.HEAD)
          .isNotEmpty()
          .allSatisfy(fault -> assertThat(fault.kind()).isEqualTo(Kind.REORDERED));
    }
  }

  @Test
  void a_changed_head_a_changed_subject_and_another_layout_are_named() {
    assertThat(faults(FILE.entries(), "0".repeat(64)))
        .extracting(Fault::kind)
        .containsExactly(Kind.HEAD);
    Reviewed other =
        new Reviewed("other.advice.json", FILE.of().fingerprint(), "x", "y", "underhold 1");
    ReviewFile moved = new ReviewFile(ReviewFile.FORM, other, FILE.entries(), FILE.head());
    assertThat(ReviewRecord.of(moved, "").faults())
        .extracting(Fault::kind)
        .containsExactly(Kind.SUBJECT);
    assertThat(ReviewRecord.of(FILE, TEXT.replace("\n", "\r\n")).faults())
        .extracting(Fault::kind)
        .containsExactly(Kind.LAYOUT);
  }

  /** Nothing in the file can tell this; what was noted elsewhere can. */
  @Test
  void entries_taken_off_the_end_show_only_against_a_head_noted_elsewhere() {
    List<Entry> fewer = FILE.entries().subList(0, 4);
    ReviewFile cut = new ReviewFile(ReviewFile.FORM, FILE.of(), fewer, fewer.get(3).hash());
    ReviewRecord record = ReviewRecord.of(cut, ReviewFile.FILES.text(cut));

    assertThat(record.intact()).isTrue();
    assertThat(record.entryOfHead(FILE.head())).isEmpty();
    assertThat(record.entryOfHead(fewer.get(2).hash())).contains(fewer.get(2));
    assertThat(record.entryOfHead(record.headForPaper().toUpperCase(java.util.Locale.ROOT)))
        .contains(fewer.get(3));
    assertThat(record.entryOfHead(record.head().substring(0, 12))).contains(fewer.get(3));
    assertThat(record.entryOfHead(record.head().substring(0, 11))).isEmpty();
  }

  /** Every fingerprint is right, and still no program would have written it. */
  @Test
  void an_entry_after_a_signature_without_a_new_round_is_named() {
    Entry last = FILE.last();
    Entry late =
        new Entry(
                last.number() + 1,
                1,
                last.when(),
                Reviews.DESIGNER,
                Optional.empty(),
                "comment",
                Optional.of("whole"),
                Optional.of(""),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of("Late."),
                Optional.empty(),
                last.hash(),
                "")
            .hashed();
    assertThat(ReviewRecord.of(FILE.with(late), "").faults())
        .extracting(Fault::kind, Fault::entry)
        .containsExactly(org.assertj.core.groups.Tuple.tuple(Kind.OUT_OF_TURN, last.number() + 1));
  }
}
