package underhold.report.pdf;

import com.openhtmltopdf.extend.FSStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

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

  private Letters() {}

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

  /** The plain letters, read. */
  static TrueTypeFont plain() throws IOException {
    try (InputStream in = open(PLAIN)) {
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
