package underhold.classroom.making;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underhold.advice.OptionAdvice;
import underhold.advice.Ranking;
import underhold.advice.SupportOption;
import underhold.classroom.CaseFile;
import underhold.classroom.CaseReader;
import underhold.classroom.CaseStudy;
import underhold.classroom.Counterpart;
import underhold.classroom.Expected;
import underhold.consult.Consultant;
import underhold.review.file.FileReading;
import underhold.site.JsonText;
import underhold.site.Site;
import underhold.site.SiteReader;
import underhold.site.Zone;

/** Made cases read and judged afresh, by nothing but their files and whole consultations. */
final class MadeCases {
  static final Consultant CONSULTANT = Consultant.standard();

  private MadeCases() {}

  static CaseStudy read(CaseFile file) {
    FileReading<CaseStudy> reading = CaseReader.read(CaseFile.FILES.text(file), "test.case.json");
    assertThat(reading.messages()).isEmpty();
    return reading.content().orElseThrow();
  }

  /** The ids of what leads or ties, the leader first; the word for none where nothing does. */
  static List<String> first(Site site, String zone) {
    Ranking ranking = CONSULTANT.ranking(site, zone(site, zone));
    List<String> first = new ArrayList<>();
    ranking.leader().ifPresent(one -> first.add(one.option().id()));
    ranking.tiedWithLeader().stream()
        .map(one -> one.option().id())
        .filter(id -> !first.contains(id))
        .forEach(first::add);
    return first.isEmpty() ? List.of(Expected.NO_METHOD) : first;
  }

  static Zone zone(Site site, String name) {
    return site.zones().stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
  }

  static Site known(CaseStudy study, int stage) {
    return study.known(stage, Set.of());
  }

  /** The points of the leader above the next option that contends; all it has if none does. */
  static int lead(Site site, String zone, String leader) {
    Ranking ranking = CONSULTANT.ranking(site, zone(site, zone));
    OptionAdvice first = ranking.of(SupportOption.find(leader).orElseThrow());
    int next =
        ranking.options().stream()
            .filter(one -> one.ranked() && one.option() != first.option())
            .filter(one -> one.spokenFor() && one.score() > 0)
            .mapToInt(OptionAdvice::score)
            .max()
            .orElse(0);
    return first.score() - next;
  }

  /** The site with the facts of a counterpart, made from the file alone. */
  static Site otherwise(CaseFile file, Counterpart other) {
    Map<String, Object> tree = object(file.site().tree());
    Map<String, Object> common = object(tree.get("facts"));
    List<Object> zones = new ArrayList<>();
    for (Object item : (List<?>) tree.get("zones")) {
      Map<String, Object> zone = object(item);
      Map<String, Object> own = object(zone.get("facts"));
      if (other.zone().equals(zone.get("name"))) {
        other
            .facts()
            .forEach(
                (fact, value) ->
                    (common.containsKey(fact) && !own.containsKey(fact) ? common : own)
                        .put(fact, value));
      }
      zone.put("facts", own);
      zones.add(zone);
    }
    tree.put("facts", common);
    tree.put("zones", zones);
    other.ground().ifPresent(ground -> tree.put("ground", ground.tree()));
    return SiteReader.read(JsonText.of(tree), "counterpart")
        .fold(
            valid -> valid.site(),
            invalid -> {
              throw new AssertionError(invalid.problems().toString());
            });
  }

  /** The facts and the ground of the site without its names. */
  static String facts(CaseFile file) {
    Map<String, Object> tree = object(file.site().tree());
    List<Object> facts = new ArrayList<>();
    facts.add(tree.get("facts"));
    facts.add(tree.get("ground"));
    for (Object zone : (List<?>) tree.get("zones")) {
      facts.add(object(zone).get("facts"));
    }
    return JsonText.of(facts);
  }

  static Map<String, Object> object(Object part) {
    Map<String, Object> copy = new LinkedHashMap<>();
    ((Map<?, ?>) part).forEach((name, value) -> copy.put(String.valueOf(name), value));
    return copy;
  }
}
