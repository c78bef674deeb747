package underhold.classroom.making;

import java.util.Map;
import java.util.Optional;

/**
 * How a case comes to be known.
 *
 * @param belief what is believed although the site is otherwise
 * @param surprise whether only the work shows how it is
 * @param fromFile whether a file of an earlier job tells most on day one
 * @param withheld how many facts the file does not tell
 */
record Knowing(Optional<Change> belief, boolean surprise, boolean fromFile, int withheld) {
  /** Nothing is believed that is not so. */
  static final Knowing PLAIN = new Knowing(Optional.empty(), false, false, 0);

  /** A file tells most on day one, and it is right. */
  static final Knowing FILE = new Knowing(Optional.empty(), false, true, 8);

  /** Everybody believes it until the work shows otherwise. */
  static Knowing surprised(Change belief) {
    return new Knowing(Optional.of(belief), true, false, 0);
  }

  /** A file tells it on day one, and a later look shows otherwise. */
  static Knowing misled(Change belief, boolean surprise, int withheld) {
    return new Knowing(Optional.of(belief), surprise, true, withheld);
  }

  /** The facts believed, as they are not. */
  Map<String, String> believed() {
    return belief.map(Change::facts).orElse(Map.of());
  }
}
