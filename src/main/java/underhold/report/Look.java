package underhold.report;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/**
 * How a text is laid out.
 *
 * @param width columns that no line exceeds, from {@value #NARROWEST} to {@value #WIDEST}
 * @param colour whether colour may hint at what the words say
 * @param charset the signs that can be shown
 */
public record Look(int width, boolean colour, Charset charset) {
  /** Fewer columns than this are laid out as if there were this many. */
  public static final int NARROWEST = 40;

  /** Lines longer than this read badly, whatever the terminal. */
  public static final int WIDEST = 110;

  /** The width where none is known. */
  public static final int USUAL = 80;

  /** No colour, 80 columns: a file or a pipe. */
  public static final Look PLAIN = new Look(USUAL, false, StandardCharsets.UTF_8);

  public Look {
    width = Math.max(NARROWEST, Math.min(WIDEST, width));
  }
}
