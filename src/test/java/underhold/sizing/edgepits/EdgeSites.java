package underhold.sizing.edgepits;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import underhold.consult.SizingSites;
import underhold.quantity.Measure;
import underhold.quantity.Quantity;
import underhold.quantity.UnitSystem;
import underhold.site.FactDictionary;
import underhold.site.FactReader;
import underhold.site.FactValue;
import underhold.site.FactView;
import underhold.site.GroundLayer;
import underhold.site.GroundProfile;
import underhold.site.Site;
import underhold.site.SiteReader;
import underhold.site.SiteReading;
import underhold.site.StatedFact;
import underhold.site.Zone;
import underhold.sizing.Amount;
import underhold.sizing.MissingInput;
import underhold.sizing.SettingTable;
import underhold.sizing.Settings;
import underhold.sizing.Sheet;
import underhold.sizing.SheetBuilder;
import underhold.sizing.SizingMethod;
import underhold.sizing.Source;

/** Own cases of an edge under a structure, and piles that stand in for the real ones. */
final class EdgeSites {
  private EdgeSites() {}

  static Site box() {
    return read(Path.of("src/test/resources/underhold/sizing/edgepits/own-box-edge.site.json"));
  }

  static Site read(Path file) {
    return SiteReader.read(file)
        .fold(
            SiteReading.Valid::site,
            invalid -> {
              throw new AssertionError(invalid.problems().toString());
            });
  }

  static FactView view(Site site) {
    return SizingSites.advice(site, site.zones().get(0)).view();
  }

  static GroundProfile ground(Site site) {
    return site.ground();
  }

  /** Piles of which one check is full to that degree. */
  static SizingMethod piles(double use) {
    return stub(
        SheetBuilder.titled("Piles", "drilled-piles"),
        sheet ->
            sheet.check(
                "column",
                "Exposed pile as a column",
                Amount.force(use * 1000),
                Amount.force(1000),
                Source.statics(),
                ""));
  }

  /** Piles that ask for something. */
  static SizingMethod asking(String name) {
    return stub(
        SheetBuilder.titled("Piles", "drilled-piles"),
        sheet -> sheet.missing(List.of(new MissingInput(name, "What?", "it is needed"))));
  }

  private interface Filling {
    void fill(SheetBuilder sheet);
  }

  private static SizingMethod stub(SheetBuilder sheet, Filling filling) {
    filling.fill(sheet);
    Sheet built = sheet.build();
    return new SizingMethod() {
      @Override
      public String id() {
        return "drilled-piles";
      }

      @Override
      public SettingTable settings() {
        return new SettingTable("drilled-piles", List.of(), List.of());
      }

      @Override
      public Sheet size(FactView facts, GroundProfile ground, Settings settings) {
        return built;
      }
    };
  }

  static Sheet size(Site site, String... settings) {
    return size(site, piles(0.8), settings);
  }

  static Sheet size(Site site, SizingMethod piles, String... settings) {
    EdgePitsMethod method = new EdgePitsMethod(piles);
    SettingTable.Read read = method.settings().parse(List.of(settings));
    if (!read.problems().isEmpty()) {
      throw new AssertionError(read.problems().toString());
    }
    return method.size(view(site), ground(site), read.settings());
  }

  /** The same site with one fact of its zone changed; an empty word takes it away. */
  static Site with(Site site, String fact, String value) {
    Zone zone = site.zones().get(0);
    Map<String, StatedFact> facts = new LinkedHashMap<>(zone.facts());
    Map<String, StatedFact> shared = new LinkedHashMap<>(site.facts());
    facts.remove(fact);
    shared.remove(fact);
    if (!value.isEmpty()) {
      facts.put(fact, new StatedFact(fact(fact, value), ""));
    }
    return new Site(
        site.name(),
        site.units(),
        shared,
        site.ground(),
        List.of(new Zone(zone.name(), facts, zone.ground(), "")),
        Map.of(),
        "");
  }

  /** The same site with other layers. */
  static Site with(Site site, GroundProfile ground) {
    return new Site(
        site.name(), site.units(), site.facts(), ground, site.zones(), Map.of(), site.note());
  }

  /** A layer with unit weight, strength and friction angle. */
  static GroundLayer layer(
      String soil, double top, double weight, double strength, double angle) {
    return new GroundLayer(
        soil,
        Quantity.of(top, Measure.LENGTH, "m"),
        Quantity.of(weight, Measure.UNIT_WEIGHT, "kN/m3"),
        strength > 0 ? Quantity.of(strength, Measure.PRESSURE, "kPa") : null,
        angle > 0 ? Quantity.of(angle, Measure.ANGLE, "deg") : null,
        null,
        null,
        null,
        null,
        null,
        null,
        "");
  }

  private static FactValue fact(String name, String typed) {
    return FactReader.read(FactDictionary.standard().require(name), typed)
        .fold(
            accepted -> accepted,
            () -> {
              throw new IllegalArgumentException(name + " may not be unknown here");
            },
            rejected -> {
              throw new IllegalArgumentException(name + ": " + rejected.explanation());
            });
  }

  static Site in(Site site, UnitSystem units) {
    return new Site(
        site.name(), units, site.facts(), site.ground(), site.zones(), Map.of(), site.note());
  }
}
