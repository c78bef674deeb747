package underhold.sizing.bracketpiles;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import underhold.site.FactDictionary;
import underhold.site.FactView;
import underhold.site.GroundProfile;
import underhold.site.Site;
import underhold.site.SiteReader;
import underhold.site.SiteReading;
import underhold.site.Zone;
import underhold.site.ZoneViews;
import underhold.sizing.SettingTable;
import underhold.sizing.Sheet;

/** Sizes bracket piles for site files given as text. */
final class BracketSites {
  private static final BracketPilesMethod METHOD = new BracketPilesMethod();

  private BracketSites() {}

  static String text() {
    try {
      return Files.readString(
          Path.of("src/test/resources/underhold/sizing/bracketpiles/own-platform-edge.site.json"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Sheet size(String text, String... settings) {
    Site site =
        SiteReader.read(text, "own case")
            .fold(
                SiteReading.Valid::site,
                invalid -> {
                  throw new AssertionError(invalid.problems().toString());
                });
    Zone zone = site.zones().get(0);
    FactView view = ZoneViews.known(site, zone, FactDictionary.standard());
    GroundProfile ground = zone.ground().isEmpty() ? site.ground() : zone.ground();
    SettingTable.Read read = METHOD.settings().parse(List.of(settings));
    if (!read.problems().isEmpty()) {
      throw new AssertionError(read.problems().toString());
    }
    return METHOD.size(view, ground, read.settings());
  }
}
