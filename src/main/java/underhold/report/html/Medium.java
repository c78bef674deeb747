package underhold.report.html;

/**
 * What a page is set for.
 *
 * @param paged whether it is cut into pages by the PDF writer, which knows no HTML 5
 * @param pageSize the size of a page for the style, {@code 210mm 297mm}; empty on screen, where the
 *     printer's own paper is used
 * @param widthMillimetres width that a drawing may have [mm]
 * @param heightMillimetres height that a drawing may have [mm]
 */
public record Medium(
    boolean paged, String pageSize, double widthMillimetres, double heightMillimetres) {

  /** A browser, and whatever it prints on. */
  public static final Medium SCREEN = new Medium(false, "", 400, 400);
}
