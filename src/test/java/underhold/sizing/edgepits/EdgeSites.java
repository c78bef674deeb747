package underhold.sizing.edgepits;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import underhold.site.ZoneViews;
import underhold.sizing.Amount;
import underhold.sizing.MissingInput;
import underhold.sizing.SettingTable;
import underhold.sizing.Sheet;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.drilledpiles.DrilledPiles;
import underhold.sizing.drilledpiles.PrimaryPiles;

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
  static PileSizer piles(double use) {
    return piles(use, 0);
  }

  /** The same, which leave a share of the structure's load on the soil. */
  static PileSizer piles(double use, double left) {
    return stub(
        SheetBuilder.titled("Piles", "drilled-piles"),
        left,
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
  static PileSizer asking(String name) {
    return stub(
        SheetBuilder.titled("Piles", "drilled-piles"),
        0,
        sheet -> sheet.missing(List.of(new MissingInput(name, "What?", "it is needed"))));
  }

  private interface Filling {
    void fill(SheetBuilder sheet);
  }

  private static PileSizer stub(SheetBuilder sheet, double left, Filling filling) {
    filling.fill(sheet);
    Sheet built = sheet.build();
    Optional<PrimaryPiles> piles =
        built.complete()
            ? Optional.of(
                new PrimaryPiles(12, 640, 7680, 0.24, 16, 8, 1.5, 1 - left, 40, List.of(1.5)))
            : Optional.empty();
    return (facts, ground, guesses) -> new DrilledPiles.Sized(built, piles);
  }

  static Sheet size(Site site, String... settings) {
    return size(site, piles(0.8), settings);
  }

  static Sheet size(Site site, PileSizer piles, String... settings) {
    EdgePitsMethod method = new EdgePitsMethod(piles);
    SettingTable.Read read = method.settings().parse(List.of(settings));
    if (!read.problems().isEmpty()) {
      throw new AssertionError(read.problems().toString());
    }
    return method.size(view(site), ground(site), read.settings());
  }

  /** The same from the facts alone, without what rules infer: quicker. */
  static Sheet quick(Site site, String... settings) {
    EdgePitsMethod method = new EdgePitsMethod(piles(0.8));
    SettingTable.Read read = method.settings().parse(List.of(settings));
    FactView view = ZoneViews.known(site, site.zones().get(0), FactDictionary.standard());
    return method.size(view, ground(site), read.settings());
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
  static GroundLayer layer(String soil, double top, double weight, double strength, double angle) {
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
