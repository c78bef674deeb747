package underhold.report.pdf;

import com.openhtmltopdf.pdfboxout.PageSupplier;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.jspecify.annotations.Nullable;

/**
 * Pages on which marks of content that say the same are one object. The library makes a mark of its
 * own for the background of every box, most of them with nothing in it, and looks through all marks
 * of the page for each: in a long file they would be most of its objects and of the time it takes.
 * The bounds of a background, which nothing reads, are left out.
 */
final class MarkedContent implements PageSupplier {
  private final Map<String, COSDictionary> all = new HashMap<>();

  @Override
  public PDPage requestPage(
      PDDocument pdf, float width, float height, int number, int shadowNumber) {
    COSDictionary resources = new COSDictionary();
    resources.setItem(COSName.PROPERTIES, new Marks(all));
    PDPage page = new PDPage(new PDRectangle(width, height));
    page.setResources(new PDResources(resources));
    pdf.addPage(page);
    return page;
  }

  /**
   * The marks of a page. Asked for the name of a mark it has one, be it new: the library adds only
   * what a dictionary does not hold.
   */
  private static final class Marks extends COSDictionary {
    private final Map<String, COSDictionary> all;
    private final Map<String, COSName> names = new HashMap<>();

    private Marks(Map<String, COSDictionary> all) {
      this.all = all;
    }

    @Override
    public boolean containsValue(Object value) {
      return getKeyForValue(value) != null;
    }

    @Override
    public @Nullable COSName getKeyForValue(Object value) {
      if (!(value instanceof COSDictionary mark)) {
        return null;
      }
      mark.removeItem(COSName.BBOX);
      return names.computeIfAbsent(
          mark.toString(),
          words -> {
            COSName name = COSName.getPDFName("M" + names.size());
            setItem(name, all.computeIfAbsent(words, fresh -> mark));
            return name;
          });
    }
  }
}
