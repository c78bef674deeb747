package underhold.consult;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import underhold.advice.BuiltInPack;
import underhold.advice.Ranking;
import underhold.advice.RuleEngine;
import underhold.advice.Screener;
import underhold.advice.Screening;
import underhold.advice.Wording;
import underhold.quantity.UnitSystem;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.FactReader;
import underhold.site.GroundProfile;
import underhold.site.Relation;
import underhold.site.Site;
import underhold.site.StatedFact;
import underhold.site.Zone;
import underhold.site.ZoneViews;

/**
 * Random sites of several zones, with relations of which some are stated, and their advice without
 * the open questions, which a scheme does not read.
 */
public final class RandomZones {
  private static final RuleEngine ENGINE = BuiltInPack.compiledEngine();
  private static final Screener SCREENER = new Screener(ENGINE);
  private static final SizingDesk DESK = new SizingDesk();
  private static final List<String> DISTANCES = List.of("0 m", "2 m", "6 m", "15 m", "80 m");

  private final Random random;
  private final PlausibleSites zones;

  public RandomZones(long seed) {
    this.random = new Random(seed);
    this.zones = new PlausibleSites(seed);
  }

  public static RuleEngine engine() {
    return ENGINE;
  }

  /** A site of that many zones; a share of the facts of zones and pairs is forgotten. */
  public Site site(int count, double forgotten) {
    List<Zone> all = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Map<String, String> facts = zones.forget(zones.next(), random.nextDouble() * forgotten);
      Zone one = PlausibleSites.site(facts).zones().get(0);
      all.add(new Zone("zone " + (i + 1), one.facts(), one.ground(), ""));
    }
    List<Relation> relations = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      for (int j = i + 1; j < count; j++) {
        if (random.nextDouble() > forgotten) {
          relations.add(relation(all.get(i).name(), all.get(j).name(), forgotten));
        }
      }
    }
    return new Site(
        "random", UnitSystem.SI, Map.of(), GroundProfile.NONE, all, relations, Map.of(), "");
  }

  private Relation relation(String one, String other, double forgotten) {
    Map<String, StatedFact> facts = new LinkedHashMap<>();
    for (FactDefinition fact : FactDictionary.pairs().all()) {
      if (!fact.derived() && random.nextDouble() > forgotten / 2) {
        List<String> words =
            fact.kind().isNumber()
                ? DISTANCES
                : fact.values().stream().map(FactDefinition.Allowed::value).toList();
        String typed = words.get(random.nextInt(words.size()));
        FactReader.read(fact, typed)
            .fold(
                value -> facts.put(fact.name(), new StatedFact(value, "")),
                () -> null,
                rejected -> {
                  throw new IllegalArgumentException(rejected.explanation());
                });
      }
    }
    return random.nextBoolean()
        ? new Relation(one, other, facts, "")
        : new Relation(other, one, facts, "");
  }

  /** The advice on every zone of a site, without open questions. */
  public static Consultation advise(Site site) {
    return new Consultation(
        site, ENGINE.pack(), site.zones().stream().map(zone -> advise(site, zone)).toList());
  }

  private static ZoneAdvice advise(Site site, Zone zone) {
    Wording wording = new Wording(ENGINE.pack(), site.units());
    QuickDesk quick = new QuickDesk(DESK, site, zone.name());
    Screening screening =
        SCREENER.screen(ZoneViews.known(site, zone, FactDictionary.standard()), wording, quick);
    return new ZoneAdvice(
        zone.name(),
        screening,
        Ranking.of(screening, ENGINE.pack(), wording),
        new OpenQuestions(List.of(), 0, 0),
        quick.sizings());
  }
}
