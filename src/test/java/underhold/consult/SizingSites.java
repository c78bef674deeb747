package underhold.consult;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import underhold.advice.BuiltInPack;
import underhold.advice.Ranking;
import underhold.advice.Screener;
import underhold.advice.Screening;
import underhold.advice.Wording;
import underhold.quantity.Measure;
import underhold.quantity.Quantity;
import underhold.quantity.UnitSystem;
import underhold.site.FactDictionary;
import underhold.site.GroundLayer;
import underhold.site.GroundProfile;
import underhold.site.Site;
import underhold.site.SiteReader;
import underhold.site.SiteReading;
import underhold.site.Zone;
import underhold.site.ZoneViews;

/** Sites for tests of the sizing. */
public final class SizingSites {
  private static final List<String> SOILS =
      List.of(
          "rock",
          "decomposed-rock",
          "hard-clay-or-till",
          "cemented-sand",
          "dense-gravel",
          "dense-sand",
          "loose-sand",
          "mixed-fine-sand",
          "silt",
          "stiff-clay",
          "soft-clay",
          "cohesive-fill",
          "fill",
          "peat");

  private static final Screener SCREENER = new Screener(BuiltInPack.compiledEngine());

  private SizingSites() {}

  /** The advice of a zone without its open questions, which the sizing does not read. */
  public static ZoneAdvice advice(Site site, Zone zone) {
    Wording wording = new Wording(SCREENER.pack(), site.units());
    Screening screening =
        SCREENER.screen(ZoneViews.known(site, zone, FactDictionary.standard()), wording);
    return new ZoneAdvice(
        zone.name(),
        screening,
        Ranking.of(screening, SCREENER.pack(), wording),
        new OpenQuestions(List.of(), 0, 0),
        List.of(),
        Optional.empty());
  }

  public static Site demo(String name) {
    return read(Path.of("cases/demo/" + name + ".site.json"));
  }

  /** Our own case of a party wall, worked by hand. */
  public static Site ownPartyWall() {
    return read(Path.of("src/test/resources/underhold/consult/own-party-wall.site.json"));
  }

  static Site read(Path file) {
    return SiteReader.read(file)
        .fold(
            SiteReading.Valid::site,
            invalid -> {
              throw new AssertionError(invalid.problems().toString());
            });
  }

  /** Every demo site that can be read. */
  static List<Site> demos() {
    try (Stream<Path> files = Files.list(Path.of("cases/demo"))) {
      List<Site> sites = new ArrayList<>();
      for (Path file : files.sorted().toList()) {
        SiteReader.read(file).fold(valid -> sites.add(valid.site()), invalid -> false);
      }
      return sites;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The same site with other settings, and read in another unit system. */
  public static Site with(Site site, UnitSystem units, Map<String, String> settings) {
    return new Site(
        site.name(),
        units,
        site.facts(),
        site.ground(),
        site.zones(),
        Map.of("pits", settings),
        site.note());
  }

  /** Plausible sites with the numbers that only the sizing reads, some facts lost, some layers. */
  static List<Site> random(int count, long seed) {
    Random random = new Random(seed);
    PlausibleSites plausible = new PlausibleSites(seed);
    List<Site> sites = new ArrayList<>();
    while (sites.size() < count) {
      Map<String, String> facts = new LinkedHashMap<>(plausible.next());
      facts.put("footingWidth", (0.3 + random.nextInt(30) / 10.0) + " m");
      facts.put("wallThickness", (0.2 + random.nextInt(10) / 10.0) + " m");
      facts
          .keySet()
          .removeIf(
              name ->
                  !List.of("loadPattern", "excavationPosition").contains(name)
                      && random.nextInt(25) == 0);
      Site site = PlausibleSites.site(facts);
      GroundProfile ground = random.nextBoolean() ? layers(random) : GroundProfile.NONE;
      sites.add(
          new Site(site.name(), site.units(), site.facts(), ground, site.zones(), Map.of(), ""));
    }
    return sites;
  }

  private static GroundProfile layers(Random random) {
    List<GroundLayer> layers = new ArrayList<>();
    double top = 0;
    for (int i = 0; i <= random.nextInt(4); i++) {
      String soil = SOILS.get(random.nextInt(SOILS.size()));
      layers.add(
          new GroundLayer(
              soil,
              Quantity.of(top, Measure.LENGTH, "m"),
              Quantity.of(15 + random.nextInt(7), Measure.UNIT_WEIGHT, "kN/m3"),
              Quantity.of(5 + random.nextInt(200), Measure.PRESSURE, "kPa"),
              Quantity.of(random.nextInt(61), Measure.ANGLE, "deg"),
              null,
              random.nextBoolean() ? Quantity.of(random.nextInt(101), Measure.COUNT, "") : null,
              random.nextBoolean()
                  ? Quantity.of(random.nextInt(200_000), Measure.PRESSURE, "kPa")
                  : null,
              random.nextBoolean()
                  ? Quantity.of(random.nextInt(101) / 100.0, Measure.RATIO, "")
                  : null,
              null,
              random.nextBoolean() ? "hours" : null,
              ""));
      top += 0.5 + random.nextInt(8);
    }
    return new GroundProfile(layers);
  }
}
