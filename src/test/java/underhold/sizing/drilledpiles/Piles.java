package underhold.sizing.drilledpiles;

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

/** Sites and sheets for tests of drilled piles. */
final class Piles {
  private Piles() {}

  static Site site(String json) {
    return SiteReader.read(json, "own case")
        .fold(
            SiteReading.Valid::site,
            invalid -> {
              throw new AssertionError(invalid.problems().toString());
            });
  }

  static Sheet size(Site site, Zone zone, String... words) {
    SettingTable.Read read = DrilledPiles.TABLE.parse(List.of(words));
    if (!read.problems().isEmpty()) {
      throw new AssertionError(read.problems().toString());
    }
    return new DrilledPiles().size(view(site, zone), ground(site, zone), read.settings());
  }

  static Sheet size(String json, String... words) {
    Site site = site(json);
    return size(site, site.zones().get(0), words);
  }

  static FactView view(Site site, Zone zone) {
    return ZoneViews.known(site, zone, FactDictionary.standard());
  }

  static GroundProfile ground(Site site, Zone zone) {
    return zone.ground().isEmpty() ? site.ground() : zone.ground();
  }

  static double step(Sheet sheet, String id) {
    return sheet.step(id).orElseThrow(() -> new AssertionError("no step " + id)).result().si();
  }
}
