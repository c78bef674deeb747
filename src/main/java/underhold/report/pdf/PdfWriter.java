package underhold.report.pdf;

import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PDFCreationListener;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer.SvgExternalResourceMode;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer.SvgScriptMode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import underhold.report.document.Document;
import underhold.report.document.DocumentWriter;
import underhold.report.html.PageMarkup;

/**
 * Writes a document as a PDF file: bookmarks as its sections, its status and the page in the footer
 * of every page, text that can be searched and copied, nothing fetched from elsewhere. The same
 * document gives the same file; no date and no author stand in it but those that the document
 * names.
 */
public final class PdfWriter implements DocumentWriter {
  private static final String PRODUCER = "Underhold";

  private final Paper paper;

  /** A writer for a size of paper. */
  public PdfWriter(Paper paper) {
    this.paper = paper;
  }

  @Override
  public void write(Document document, OutputStream out) throws IOException {
    QuietLog.use();
    String page = Letters.shown(PageMarkup.of(document, paper.medium()));
    pages(page).writeTo(out);
  }

  /** Whether a file is one that this program wrote: its producer says so. */
  public static boolean wrote(byte[] file) {
    QuietLog.use();
    try (PDDocument pdf = Loader.loadPDF(file)) {
      return PRODUCER.equals(pdf.getDocumentInformation().getProducer());
    } catch (IOException unreadable) {
      return false;
    }
  }

  /** The file, tagged for readers of the screen; untagged where the library cannot tag it. */
  private static ByteArrayOutputStream pages(String page) throws IOException {
    try {
      return pages(page, true);
    } catch (RuntimeException tagging) {
      return untagged(page);
    } catch (InternalError | LinkageError noFonts) { // a Java that cannot even ask for fonts
      throw unset(noFonts);
    }
  }

  private static ByteArrayOutputStream untagged(String page) throws IOException {
    try {
      return pages(page, false);
    } catch (RuntimeException | InternalError | LinkageError failure) {
      throw unset(failure);
    }
  }

  private static IOException unset(Throwable failure) {
    return new IOException(
        "the PDF cannot be set; where Java finds no font on the machine at all, the words of the"
            + " drawings cannot be drawn: install any font package, or write HTML instead",
        failure);
  }

  private static ByteArrayOutputStream pages(String page, boolean tagged) throws IOException {
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    try (PDDocument pdf = new PDDocument();
        BatikSVGDrawer drawings =
            new BatikSVGDrawer(SvgScriptMode.SECURE, SvgExternalResourceMode.SECURE)) {
      PdfRendererBuilder builder = new PdfRendererBuilder();
      builder.useFastMode();
      builder.usePDDocument(pdf);
      Letters.embed(builder, pdf);
      builder.useSVGDrawer(drawings);
      builder.usePdfUaAccessibility(tagged);
      builder.usePageSupplier(new MarkedContent());
      builder.useProtocolsStreamImplementation(Letters::stream, Letters.PROTOCOL);
      for (ExternalResourceControlPriority when : ExternalResourceControlPriority.values()) {
        builder.useExternalResourceAccessControl(
            (uri, type) -> uri != null && uri.startsWith(Letters.PROTOCOL + ":"), when);
      }
      org.w3c.dom.Document read = read(page);
      builder.withW3cDocument(read, "");
      builder.withProducer(PRODUCER);
      builder.toStream(file);
      try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
        renderer.setListener(new Undated(checksum(page)));
        FigureFlow.set(
            read.getDocumentElement(),
            () -> {
              renderer.layout();
              return renderer.getRootBox();
            });
        renderer.createPDF();
      }
    }
    return file;
  }

  private static org.w3c.dom.Document read(String page) throws IOException {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
      factory.setNamespaceAware(true);
      factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
      factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
      org.w3c.dom.Document read =
          factory.newDocumentBuilder().parse(new InputSource(new StringReader(page)));
      ReadingOrder.keep(read.getDocumentElement());
      return read;
    } catch (SAXException | ParserConfigurationException bad) {
      throw new IllegalStateException("the page is not well formed: " + bad.getMessage(), bad);
    }
  }

  private static long checksum(String page) {
    CRC32 sum = new CRC32();
    sum.update(page.getBytes(StandardCharsets.UTF_8));
    return sum.getValue();
  }

  /**
   * Takes the hour of writing out of the file, so that the same document gives the same file, and
   * the claim of the library that the file keeps to ISO 14289, which nobody checked.
   */
  private record Undated(long id) implements PDFCreationListener {
    @Override
    public void preOpen(PdfBoxRenderer renderer) {}

    @Override
    public void preWrite(PdfBoxRenderer renderer, int pageCount) {}

    @Override
    public void onClose(PdfBoxRenderer renderer) {
      PDDocument pdf = renderer.getPdfDocument();
      PDDocumentInformation about = new PDDocumentInformation();
      about.setTitle(pdf.getDocumentInformation().getTitle());
      about.setSubject(pdf.getDocumentInformation().getSubject());
      about.setProducer(pdf.getDocumentInformation().getProducer());
      pdf.setDocumentInformation(about);
      pdf.getDocumentCatalog().setMetadata(null);
      pdf.setDocumentId(id);
    }
  }
}
