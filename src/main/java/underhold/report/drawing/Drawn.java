package underhold.report.drawing;

import java.util.List;
import java.util.Optional;

/**
 * What came of a drawing: one or more figures, or why there is none.
 *
 * @param figures the figures, in order; a long one comes in parts
 * @param why why there is none; empty where there is one
 */
public record Drawn(List<Figure> figures, String why) {
  public Drawn {
    figures = List.copyOf(figures);
    if (figures.isEmpty() == why.isEmpty()) {
      throw new IllegalArgumentException("a drawing has figures, or a reason why not");
    }
  }

  /** A drawing on one figure. */
  public static Drawn of(Figure figure) {
    return new Drawn(List.of(figure), "");
  }

  /** A drawing in parts. */
  public static Drawn of(List<Figure> figures) {
    return new Drawn(figures, "");
  }

  /** No drawing. */
  public static Drawn none(String why) {
    return new Drawn(List.of(), why);
  }

  /** The first figure, if there is any. */
  public Optional<Figure> figure() {
    return figures.stream().findFirst();
  }
}
