package underhold.review.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import underhold.review.file.Fingerprint;

/**
 * A review as it stands: what is open, what is overridden, who signed, and whether the record is
 * whole.
 *
 * @param file its entries
 * @param faults the signs that it is not as it was written; empty where there are none
 */
public record ReviewRecord(ReviewFile file, List<Fault> faults) {
  public ReviewRecord {
    faults = List.copyOf(faults);
  }

  /**
   * The record of a file.
   *
   * @param text the text of the file; empty where it is not in one yet
   */
  public static ReviewRecord of(ReviewFile file, String text) {
    return new ReviewRecord(file, Chain.faults(file, text));
  }

  /** A query with its answers. */
  public record Query(Entry asked, List<Entry> answers, boolean withdrawn) {
    public Query {
      answers = List.copyOf(answers);
    }

    /** Whether it still waits for an answer. */
    public boolean open() {
      return answers.isEmpty() && !withdrawn;
    }
  }

  /** An override with what became of it; the entry holds what was there before. */
  public record Overridden(Entry entry, State state) {
    private static final List<String> UNSAFE = List.of("rule out", "fails");

    /**
     * Whether it speaks against a rule that rules out, a check that fails, or an option put first
     * that was held or ruled out: then whoever relies on it must know.
     */
    public boolean againstSafety() {
      String original = entry.original().orElse("");
      String instead = entry.instead().orElse("");
      return UNSAFE.stream().anyMatch(original::startsWith)
          || original.contains(instead + " held")
          || original.contains(instead + " ruled out");
    }

    /** What became of an override. */
    public enum State {
      IN_FORCE("in force"),
      REPLACED("replaced by a later one"),
      WITHDRAWN("withdrawn");

      private final String words;

      State(String words) {
        this.words = words;
      }

      /** In words. */
      public String words() {
        return words;
      }
    }
  }

  /** A signature, and whether it is of the round that goes on. */
  public record Signature(Entry entry, boolean covers) {}

  /** How a record is signed. */
  public enum Signed {
    NO("not signed"),
    YES("signed"),
    NO_LONGER("signed before, but no signature covers the present round");

    private final String words;

    Signed(String words) {
      this.words = words;
    }

    /** In words. */
    public String words() {
      return words;
    }
  }

  /** Whether the record is as it was written, as far as it can tell by itself. */
  public boolean intact() {
    return faults.isEmpty();
  }

  public List<Entry> entries() {
    return file.entries();
  }

  /** The fingerprint that stands for the whole record; noted elsewhere it proves the record. */
  public String head() {
    return file.head();
  }

  /** The round that goes on. */
  public int round() {
    return file.last().round();
  }

  /** The entry of that number. */
  public Optional<Entry> entry(int number) {
    return entries().stream().filter(entry -> entry.number() == number).findFirst();
  }

  /** The entry that withdraws another one. */
  public Optional<Entry> withdrawal(Entry entry) {
    return referring(entry, EntryKind.WITHDRAW).stream().findFirst();
  }

  private List<Entry> referring(Entry to, EntryKind kind) {
    return entries().stream()
        .filter(one -> one.does() == kind)
        .filter(one -> one.refers().filter(number -> number == to.number()).isPresent())
        .toList();
  }

  /** Every query, in the order asked. */
  public List<Query> queries() {
    return of(EntryKind.QUERY).stream()
        .map(
            asked ->
                new Query(
                    asked,
                    referring(asked, EntryKind.ANSWER).stream()
                        .filter(answer -> withdrawal(answer).isEmpty())
                        .toList(),
                    withdrawal(asked).isPresent()))
        .toList();
  }

  /** The queries that wait for an answer. */
  public List<Query> openQueries() {
    return queries().stream().filter(Query::open).toList();
  }

  /** Every override, with what became of it. */
  public List<Overridden> overrides() {
    List<Overridden> all = new ArrayList<>();
    List<Entry> entries = of(EntryKind.OVERRIDE);
    for (int i = 0; i < entries.size(); i++) {
      Entry entry = entries.get(i);
      boolean replaced =
          entries.subList(i + 1, entries.size()).stream()
              .filter(later -> withdrawal(later).isEmpty())
              .anyMatch(later -> later.target().equals(entry.target()));
      all.add(
          new Overridden(
              entry,
              withdrawal(entry).isPresent()
                  ? Overridden.State.WITHDRAWN
                  : replaced ? Overridden.State.REPLACED : Overridden.State.IN_FORCE));
    }
    return all;
  }

  /** Every signature. */
  public List<Signature> signatures() {
    return of(EntryKind.SIGN).stream()
        .map(entry -> new Signature(entry, entry.round() == round()))
        .toList();
  }

  /** How it is signed. */
  public Signed signed() {
    List<Signature> all = signatures();
    if (all.isEmpty()) {
      return Signed.NO;
    }
    return all.stream().anyMatch(Signature::covers) ? Signed.YES : Signed.NO_LONGER;
  }

  private List<Entry> of(EntryKind kind) {
    return entries().stream().filter(entry -> entry.does() == kind).toList();
  }

  /** Entries dated before the one above them: some clock was wrong. */
  public List<Entry> datedBack() {
    List<Entry> back = new ArrayList<>();
    for (int i = 1; i < entries().size(); i++) {
      if (entries().get(i).when().isBefore(entries().get(i - 1).when())) {
        back.add(entries().get(i));
      }
    }
    return back;
  }

  /** The fewest digits of a head noted elsewhere that are compared. */
  public static final int FEWEST_DIGITS = 12;

  /**
   * What a head noted elsewhere says of this record.
   *
   * @param noted the head, or its beginning of at least {@value #FEWEST_DIGITS} digits, blanks
   *     allowed
   * @return the entry that had this head; empty where none has: then the record was rewritten, or
   *     entries were taken off its end
   */
  public Optional<Entry> entryOfHead(String noted) {
    String digits = noted.replaceAll("\\s", "").toLowerCase(Locale.ROOT);
    return entries().stream()
        .filter(entry -> digits.length() >= FEWEST_DIGITS && entry.hash().startsWith(digits))
        .findFirst();
  }

  /** Whether a consultation is the one reviewed. */
  public boolean isOf(String fingerprint) {
    return file.of().fingerprint().equals(fingerprint);
  }

  /** The head in groups of eight digits, to be read and copied by hand. */
  public String headForPaper() {
    return head().length() == Fingerprint.LENGTH ? head().replaceAll("(.{8})(?=.)", "$1 ") : head();
  }
}
