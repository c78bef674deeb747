package underhold.sizing.bracketpiles;

import java.util.List;

/** What carries the moment of the bracket's eccentricity. */
enum MomentPath {
  /** The pile bends; the bracket is free. */
  PILE_HEAD("pile-head", "pile head bending, free bracket"),
  /** The structure: anchors pull, a face plate pushes. */
  COUPLE("couple", "couple with the structure"),
  /** A pile behind holds down. */
  PAIRED("paired", "pair of piles under a cap beam"),
  /** The head is packed or tied against the edge so that it cannot move sideways. */
  TIED("tied", "pile head held sideways by the edge");

  private static final List<MomentPath> ALL = List.of(values());

  private final String word;
  private final String label;

  MomentPath(String word, String label) {
    this.word = word;
    this.label = label;
  }

  String word() {
    return word;
  }

  String label() {
    return label;
  }

  static MomentPath of(String word) {
    for (MomentPath one : ALL) {
      if (one.word.equals(word)) {
        return one;
      }
    }
    throw new IllegalArgumentException("no such path: " + word);
  }

  static List<String> words() {
    return ALL.stream().map(MomentPath::word).toList();
  }

  /** Whether the structure or another pile keeps the head from swaying. */
  boolean headHeld() {
    return this != PILE_HEAD;
  }
}
