package underhold.report.drawing;

import java.util.Optional;

/** What comes of asking for a drawing: the drawing, or why there is none. */
public sealed interface Drawn {

  /** A drawing. */
  record Shown(Figure drawing) implements Drawn {}

  /**
   * No drawing.
   *
   * @param reason why, in a sentence, and what is asked for
   */
  record Withheld(String reason) implements Drawn {}

  /** The drawing, if there is one. */
  default Optional<Figure> figure() {
    return this instanceof Shown shown ? Optional.of(shown.drawing()) : Optional.empty();
  }
}
