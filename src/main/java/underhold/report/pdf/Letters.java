package underhold.report.pdf;

import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The DejaVu letters that a file embeds, so that it reads the same on a machine that has no fonts.
 * They may be used, embedded and passed on freely (Bitstream Vera licence; changes in the public
 * domain); the licence lies beside them in the library.
 */
final class Letters {
  /** How the style sheet names a file of letters. */
  static final String PROTOCOL = "letters";

  private static final String FOLDER = "/net/sf/jasperreports/fonts/dejavu/";
  private static final String PLAIN = "DejaVuSansCondensed.ttf";

  private static final List<Face> FACES =
      List.of(
          new Face(PLAIN, "Plain", 400, FontStyle.NORMAL),
          new Face("DejaVuSansCondensed-Bold.ttf", "Plain", 700, FontStyle.NORMAL),
          new Face("DejaVuSansCondensed-Oblique.ttf", "Plain", 400, FontStyle.ITALIC),
          new Face("DejaVuSansMono.ttf", "Typed", 400, FontStyle.NORMAL),
          new Face("DejaVuSerifCondensed.ttf", "Formula", 400, FontStyle.NORMAL),
          new Face("DejaVuSerifCondensed-Italic.ttf", "Formula", 400, FontStyle.ITALIC));

  private Letters() {}

  /** A file of letters and what the style sheet calls it. */
  private record Face(String file, String family, int weight, FontStyle style) {}

  /** The file that the style sheet asks for. */
  static FSStream stream(String uri) {
    String name = uri.substring(uri.indexOf(':') + 1);
    return new FSStream() {
      @Override
      public InputStream getStream() {
        return open(name);
      }

      @Override
      public Reader getReader() {
        return new InputStreamReader(open(name), StandardCharsets.ISO_8859_1);
      }
    };
  }

  /**
   * The text with every character that the letters lack written as its number, {@code [U+5927]}, so
   * that none is lost in silence.
   */
  static String shown(String text) {
    if (text.codePoints().allMatch(Letters::isCommon)) {
      return text;
    }
    try (TrueTypeFont font = plain()) {
      CmapLookup glyphs = font.getUnicodeCmapLookup();
      StringBuilder out = new StringBuilder(text.length() + 64);
      text.codePoints()
          .forEach(
              each -> {
                if (isCommon(each) || glyphs.getGlyphId(each) != 0) {
                  out.appendCodePoint(each);
                } else if (Character.getType(each) != Character.FORMAT) {
                  out.append(String.format("[U+%04X]", each));
                }
              });
      return out.toString();
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /**
   * Embeds the letters of the style sheet's families. Without joined letters: a search for "first"
   * would not find it written with the joined fi.
   */
  static void embed(PdfRendererBuilder builder, PDDocument pdf) throws IOException {
    for (Face face : FACES) {
      TrueTypeFont font = read(face.file());
      font.setEnableGsub(false);
      PDFontSupplier supplier = new PDFontSupplier(PDType0Font.load(pdf, font, true));
      builder.useFont(supplier, face.family(), face.weight(), face.style(), true);
    }
  }

  /** The plain letters, read. */
  static TrueTypeFont plain() throws IOException {
    return read(PLAIN);
  }

  private static TrueTypeFont read(String name) throws IOException {
    try (InputStream in = open(name)) {
      return new TTFParser().parse(new RandomAccessReadBuffer(in));
    }
  }

  private static boolean isCommon(int codePoint) {
    return codePoint < 0x180 && codePoint != 0xAD;
  }

  private static InputStream open(String name) {
    InputStream in = Letters.class.getResourceAsStream(FOLDER + name);
    if (in == null) {
      throw new IllegalStateException("the program lacks its letters " + name);
    }
    return in;
  }
}
