package underhold.review.record;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import underhold.review.record.Fault.Kind;

/**
 * Holds the entries of a record against their fingerprints.
 *
 * <p>A change, removal, insertion or move that leaves the fingerprints as they were shows here.
 * Whoever makes all fingerprints anew, or takes entries off the end and puts the head right, is
 * seen only where a head, or a signature's line, was noted elsewhere.
 */
final class Chain {
  private final ReviewFile file;
  private final List<Entry> entries;
  private final List<Fault> faults = new ArrayList<>();

  private Chain(ReviewFile file) {
    this.file = file;
    this.entries = file.entries();
  }

  /**
   * All faults, in the order of the entries.
   *
   * @param text the text of the file; empty where there is none
   */
  static List<Fault> faults(ReviewFile file, String text) {
    Chain chain = new Chain(file);
    chain.own();
    if (!chain.moved()) {
      chain.links();
    }
    chain.head();
    chain.turns();
    if (chain.faults.isEmpty() && !text.isEmpty() && !text.equals(ReviewFile.FILES.text(file))) {
      chain.add(
          Kind.LAYOUT,
          0,
          "the file was written by another program: every entry is as it was, but blanks, line ends"
              + " or the spelling of characters are not");
    }
    chain.faults.sort(Comparator.comparing(Fault::entry));
    return chain.faults;
  }

  private void own() {
    for (Entry entry : entries) {
      if (!entry.hash().equals(entry.fingerprint())) {
        add(
            Kind.CHANGED,
            entry.number(),
            entry.name() + " was changed: it does not match its fingerprint");
      }
    }
  }

  /** Whether the entries are all there and only their order is another. */
  private boolean moved() {
    List<Entry> sorted = entries.stream().sorted(Comparator.comparingInt(Entry::number)).toList();
    if (sorted.equals(entries) || !linked(sorted)) {
      return false;
    }
    for (int i = 0; i < entries.size(); i++) {
      if (entries.get(i).number() != sorted.get(i).number()) {
        add(
            Kind.REORDERED,
            entries.get(i).number(),
            entries.get(i).name() + " was moved: it stands in place " + (i + 1));
      }
    }
    return true;
  }

  private boolean linked(List<Entry> order) {
    String before = file.of().root();
    for (Entry entry : order) {
      if (!entry.before().equals(before)) {
        return false;
      }
      before = entry.hash();
    }
    return true;
  }

  private void links() {
    Entry first = entries.get(0);
    if (!first.before().equals(file.of().root())) {
      add(
          Kind.SUBJECT,
          first.number(),
          "what is reviewed was changed after the review began: its name, its fingerprint or what"
              + " is told of it");
    }
    for (int i = 1; i < entries.size(); i++) {
      if (!entries.get(i).before().equals(entries.get(i - 1).hash())) {
        broken(i);
      } else if (entries.get(i).number() != entries.get(i - 1).number() + 1) {
        add(
            Kind.OUT_OF_TURN,
            entries.get(i).number(),
            entries.get(i).name() + " does not have the next number");
      }
    }
  }

  /** The entry at that place does not follow the one above it: why, as far as it can be told. */
  private void broken(int at) {
    Entry entry = entries.get(at);
    Entry above = entries.get(at - 1);
    Optional<Entry> real =
        entries.stream().filter(one -> one.hash().equals(entry.before())).findFirst();
    if (real.isPresent() && entries.indexOf(real.get()) < at) {
      add(
          Kind.INSERTED,
          above.number(),
          above.name()
              + " was put in afterwards: entry "
              + entry.number()
              + " was written right after entry "
              + real.get().number());
    } else if (real.isPresent()) {
      add(
          Kind.REORDERED,
          entry.number(),
          entry.name() + " was moved: it was written after entry " + real.get().number());
    } else if (entry.number() > above.number() + 1) {
      add(
          Kind.REMOVED,
          above.number() + 1,
          "between entry "
              + above.number()
              + " and entry "
              + entry.number()
              + (entry.number() == above.number() + 2 ? " one is missing" : " some are missing"));
    } else if (entry.number() <= above.number()) {
      add(Kind.INSERTED, entry.number(), entry.name() + " was put in: it follows no entry");
    } else {
      add(
          Kind.CHANGED,
          above.number(),
          above.name()
              + " was changed with its fingerprint: entry "
              + entry.number()
              + " was written after another text");
    }
  }

  private void head() {
    Entry last = file.last();
    if (!file.head().equals(last.hash())) {
      add(
          Kind.HEAD,
          last.number(),
          "the head is not the fingerprint of the last entry: entries at the end were taken away or"
              + " added, or the head was changed");
    }
  }

  /** Rounds go up by one at each reopening, and nothing but signatures follows a signature. */
  private void turns() {
    int round = 1;
    boolean signed = false;
    for (Entry entry : entries) {
      EntryKind kind = entry.does();
      round += kind == EntryKind.REOPEN ? 1 : 0;
      boolean free = !signed || kind == EntryKind.SIGN || kind == EntryKind.REOPEN;
      if (faults.isEmpty() && (!free || entry.round() != round)) {
        add(
            Kind.OUT_OF_TURN,
            entry.number(),
            entry.name()
                + (free
                    ? " has another round than its place"
                    : " follows a signature without a new round"));
      }
      signed = kind == EntryKind.SIGN || (signed && kind != EntryKind.REOPEN);
    }
  }

  private void add(Kind kind, int entry, String message) {
    faults.add(new Fault(kind, entry, message));
  }
}
