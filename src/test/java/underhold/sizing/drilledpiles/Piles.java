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

  /** Our own case of a column, worked by hand: stiff clay, drilled from inside. */
  static final String COLUMN =
      """
      { "underhold": "site/1", "name": "Own case, Tannery Lane", "units": "SI",
        "facts": { "groundWaterDepth": "3 m", "excavationDepth": "5.5 m" },
        "ground": { "layers": [
          { "top": "0 m", "soil": "fill", "unitWeight": "18 kN/m3" },
          { "top": "2 m", "soil": "stiff-clay", "unitWeight": "20 kN/m3", "undrainedStrength": "120 kPa" } ] },
        "zones": [ { "name": "column",
          "facts": { "loadPattern": "concentrated", "excavationPosition": "crosses-support",
            "columnLoad": "1200 kN", "columnCount": "2", "foundingDepth": "1.5 m", "footingWidth": "2 m",
            "movementLimit": "10 mm", "bracingRoom": "yes", "outsideAccess": "none",
            "insideAccess": "small-rig", "insideHeadroom": "3.5 m", "obstructions": "none" } } ] }
      """;

  /** The same clay over other ground, from 9 m. */
  static String over(String layer) {
    return COLUMN.replace("\"120 kPa\" } ] }", "\"120 kPa\" }, " + layer + " ] }");
  }

  /** The same column with one text replaced by another, which must be there. */
  static String with(String json, String text, String other) {
    if (!json.contains(text)) {
      throw new AssertionError("no " + text);
    }
    return json.replace(text, other);
  }

  /** A wall in the same clay, rigs on both sides. */
  static final String WALL =
      with(
              with(COLUMN, "\"loadPattern\": \"concentrated\"", "\"loadPattern\": \"continuous\""),
              "\"columnLoad\": \"1200 kN\", \"columnCount\": \"2\"",
              "\"lineLoad\": \"150 kN/m\", \"wallLength\": \"12 m\", \"wallThickness\": \"0.4 m\", \"clearSpan\": \"1.2 m\"")
          .replace(
              "\"outsideAccess\": \"none\"",
              "\"outsideAccess\": \"small-rig\", \"outsideHeadroom\": \"8 m\"");

  /** A box in the same clay, piles drilled through it from above. */
  static final String BOX =
      with(
          with(COLUMN, "\"loadPattern\": \"concentrated\"", "\"loadPattern\": \"area\""),
          "\"columnLoad\": \"1200 kN\", \"columnCount\": \"2\"",
          "\"areaLoad\": \"60 kPa\", \"underminedLength\": \"12 m\", \"underminedWidth\": \"8 m\"");
}
