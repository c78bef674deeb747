package underhold.sizing.edgepits;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import underhold.consult.SizingSites;
import underhold.quantity.UnitSystem;
import underhold.site.FactView;
import underhold.site.GroundProfile;
import underhold.site.Site;
import underhold.site.Zone;
import underhold.sizing.Sheet;
import underhold.sizing.SheetText;
import underhold.sizing.StepProof;

class EdgeDemosTest {
  private static final EdgePitsMethod METHOD = new EdgePitsMethod();

  @Test
  void every_demo_zone_is_sized_or_told_why_not() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("cases/demo"))) {
      List<Path> demos =
          files.filter(file -> file.toString().endsWith(".site.json")).sorted().toList();
      assertThat(demos).hasSizeGreaterThanOrEqualTo(8);
      for (Path file : demos) {
        Site site = EdgeSites.read(file);
        for (Zone zone : site.zones()) {
          sized(site, zone);
        }
      }
    }
  }

  private static void sized(Site site, Zone zone) {
    FactView view = SizingSites.advice(site, zone).view();
    GroundProfile ground = zone.ground().isEmpty() ? site.ground() : zone.ground();
    Sheet sheet = METHOD.size(view, ground, METHOD.settings().defaults());
    assertThat(sheet.complete()).as(zone.name()).isEqualTo(!sheet.steps().isEmpty());
    assertThat(sheet.complete() || !sheet.missing().isEmpty()).isTrue();
    StepProof.redo(sheet);
    assertThat(SheetText.lines(sheet, UnitSystem.US))
        .hasSameSizeAs(SheetText.lines(sheet, UnitSystem.SI))
        .noneMatch(line -> line.contains("NaN"));
  }
}
