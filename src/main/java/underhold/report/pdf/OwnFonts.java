package underhold.report.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;

/**
 * Stands in for the fonts of the machine, which the PDF library would search and list in a file of
 * the user's home folder as soon as it names one; our files embed all their letters.
 */
final class OwnFonts implements FontMapper {
  private final TrueTypeFont plain;

  private OwnFonts(TrueTypeFont plain) {
    this.plain = plain;
  }

  /** Sets it once for the program. */
  static void use() {
    Once.set();
  }

  @Override
  public FontMapping<TrueTypeFont> getTrueTypeFont(String name, PDFontDescriptor descriptor) {
    return new FontMapping<>(plain, false);
  }

  @Override
  public FontMapping<FontBoxFont> getFontBoxFont(String name, PDFontDescriptor descriptor) {
    return new FontMapping<>(plain, false);
  }

  @Override
  public CIDFontMapping getCIDFont(
      String name, PDFontDescriptor descriptor, PDCIDSystemInfo information) {
    return new CIDFontMapping(null, plain, false);
  }

  /** Loaded once. */
  private static final class Once {
    static {
      try {
        FontMappers.set(new OwnFonts(Letters.plain()));
      } catch (IOException failure) {
        throw new UncheckedIOException(failure);
      }
    }

    private Once() {}

    static void set() {
      // the work is done when the class is loaded
    }
  }
}
