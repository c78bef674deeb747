package underhold.report.pdf;

import java.util.Locale;
import underhold.quantity.UnitSystem;
import underhold.report.html.Medium;

/** A size of paper, upright. ISO 216 A4; ANSI/ASME Y14.1 A, which is called Letter. */
public enum Paper {
  A4(210, 297),
  LETTER(215.9, 279.4);

  /** Margins left and right together [mm], as the style of the pages has them. */
  private static final double SIDES = 25;

  /** Margins above and below together, with the title of a drawing [mm]. */
  private static final double ENDS = 37;

  private final double widthMillimetres;
  private final double heightMillimetres;

  Paper(double widthMillimetres, double heightMillimetres) {
    this.widthMillimetres = widthMillimetres;
    this.heightMillimetres = heightMillimetres;
  }

  /** The paper that readers of the units have in their printers. */
  public static Paper of(UnitSystem system) {
    return system == UnitSystem.US ? LETTER : A4;
  }

  Medium medium() {
    String size = String.format(Locale.ROOT, "%.1fmm %.1fmm", widthMillimetres, heightMillimetres);
    return new Medium(true, size, widthMillimetres - SIDES, heightMillimetres - ENDS);
  }
}
