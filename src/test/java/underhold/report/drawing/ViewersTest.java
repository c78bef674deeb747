package underhold.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.PNGTranscoder;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.advice.SupportOption;
import underhold.consult.Consultation;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.needles.NeedleElevation;
import underhold.report.drawing.pits.PitPlan;
import underhold.report.drawing.pits.PitSection;
import underhold.report.drawing.section.SectionDrawing;
import underhold.site.Site;
import underhold.sizing.Sheet;

/** Viewers that know nothing of this program show the drawings. */
class ViewersTest {
  private static List<Figure> figures() {
    Consultation alder = DemoDrawings.advised("alder-row-party-wall");
    Sheet pits = DemoDrawings.sheet(alder, SupportOption.PITS);
    Site site = alder.site();
    List<Figure> figures = new ArrayList<>();
    figures.addAll(
        SectionDrawing.of(
                site, site.zones().get(0), DemoDrawings.limits(), UnitSystem.SI, "section")
            .figures());
    figures.addAll(PitPlan.of(pits, site.name(), UnitSystem.SI, "plan").figures());
    figures.addAll(PitSection.of(site, site.zones().get(0), pits, UnitSystem.US, "pit").figures());
    Consultation ferry = DemoDrawings.advised("ferry-street-column");
    figures.addAll(
        NeedleElevation.of(
                ferry.site(),
                ferry.site().zones().get(0),
                DemoDrawings.sheet(ferry, SupportOption.NEEDLES),
                UnitSystem.US,
                "needle")
            .figures());
    return figures;
  }

  @Test
  @DisplayName("Apache Batik 1.17 draws each, and not on a blank sheet")
  void batik_draws_each() throws Exception {
    for (Figure figure : figures()) {
      ByteArrayOutputStream png = new ByteArrayOutputStream();
      new PNGTranscoder()
          .transcode(
              new TranscoderInput(new StringReader(figure.svg())), new TranscoderOutput(png));
      BufferedImage image = ImageIO.read(new ByteArrayInputStream(png.toByteArray()));
      double shape = figure.widthMillimetres() / figure.heightMillimetres();
      assertThat(image.getWidth() / (double) image.getHeight())
          .isBetween(0.98 * shape, 1.02 * shape);
      assertThat(dark(image)).as(figure.id()).isBetween(0.005, 0.5);
    }
  }

  /** Share of the picture that is dark and drawn. */
  private static double dark(BufferedImage image) {
    int dark = 0;
    for (int x = 0; x < image.getWidth(); x++) {
      for (int y = 0; y < image.getHeight(); y++) {
        int pixel = image.getRGB(x, y);
        boolean drawn = (pixel >>> 24) > 128;
        dark += drawn && (pixel & 0xFF) + (pixel >> 8 & 0xFF) + (pixel >> 16 & 0xFF) < 384 ? 1 : 0;
      }
    }
    return dark / (double) (image.getWidth() * image.getHeight());
  }
}
