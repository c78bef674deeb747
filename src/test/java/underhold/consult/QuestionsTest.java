package underhold.consult;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.advice.BuiltInPack;
import underhold.advice.OptionAdvice;
import underhold.advice.Ranking;
import underhold.advice.Standing;
import underhold.advice.SupportOption;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.FactReader;
import underhold.site.FactValue;
import underhold.site.Site;
import underhold.site.SiteChecks;
import underhold.site.StatedFact;
import underhold.site.Zone;

/** What the open questions promise, held to a fresh consultation of the site so answered. */
class QuestionsTest {
  private static final FactDictionary DICTIONARY = FactDictionary.standard();
  private static final int FORGOTTEN = 3;

  private final Consultant consultant = Consultant.toCheckBy(BuiltInPack.pack());

  @Test
  @DisplayName(
      "On every demo site with three facts set unknown each answer of each question leads where a fresh consultation of the site so answered leads, and wins and loses what it says")
  void answers_mean_what_they_say() throws Exception {
    int answers = 0;
    int turned = 0;
    for (Site site : demos()) {
      for (Zone zone : site.zones()) {
        Site less = forgotten(site, zone);
        Zone asked = zone(less, zone.name());
        Ranking before = consultant.ranking(less, asked);
        OpenQuestions questions = consultant.advise(less, asked).questions();
        for (OpenQuestion question : questions.list()) {
          assertThat(question.leader()).isEqualTo(leader(before));
          for (OpenQuestion.Answer answer : question.answers()) {
            Site answered = stated(less, asked, question.fact(), answer.value());
            Ranking after = consultant.ranking(answered, zone(answered, zone.name()));
            assertThat(answer.leader())
                .as(site.name() + ": " + question.fact().name() + " = " + answer.value())
                .isEqualTo(leader(after));
            assertThat(SiteChecks.contradictions(answered, DICTIONARY, "")).isEmpty();
            assertThat(answer.tied()).containsExactlyInAnyOrderElementsOf(tied(after));
            assertThat(answer.won()).isEqualTo(moved(before, after, true));
            assertThat(answer.lost()).isEqualTo(moved(before, after, false));
            turned += answer.leader().equals(question.leader()) ? 0 : 1;
            answers++;
          }
        }
      }
    }
    assertThat(answers).isGreaterThan(300);
    assertThat(turned).isGreaterThan(20);
  }

  @Test
  @DisplayName(
      "A question that can put another option first is asked before those that cannot, unless these free an option that is held")
  void what_could_turn_the_answer_comes_first() throws Exception {
    for (Site site : demos()) {
      for (Zone zone : site.zones()) {
        List<OpenQuestion> list = consultant.advise(site, zone).questions().list();
        for (int i = 1; i < list.size(); i++) {
          assertThat(list.get(i - 1).weight()).isGreaterThanOrEqualTo(list.get(i).weight());
        }
      }
    }
  }

  private static List<String> moved(Ranking before, Ranking after, boolean back) {
    List<String> moved = new ArrayList<>();
    for (SupportOption option : SupportOption.values()) {
      OptionAdvice then = before.of(option);
      OptionAdvice now = after.of(option);
      boolean usedToBe = then.standing() != Standing.RULED_OUT;
      boolean is = now.standing() != Standing.RULED_OUT;
      if (usedToBe != is && (contends(then) || contends(now)) && is == back) {
        moved.add(option.id());
      }
    }
    return moved;
  }

  private static List<String> tied(Ranking ranking) {
    return ranking.tiedWithLeader().stream().map(advice -> advice.option().id()).toList();
  }

  private static boolean contends(OptionAdvice advice) {
    return advice.spokenFor() && advice.score() > 0;
  }

  /** The site without every third word or amount stated for the zone, three of them. */
  private static Site forgotten(Site site, Zone zone) {
    Map<String, StatedFact> facts = new LinkedHashMap<>(zone.facts());
    List<String> names =
        facts.keySet().stream().filter(name -> !DICTIONARY.require(name).required()).toList();
    for (int i = 0; i < FORGOTTEN && !names.isEmpty(); i++) {
      facts.remove(names.get(i * names.size() / FORGOTTEN));
    }
    return with(site, new Zone(zone.name(), facts, zone.ground(), zone.note()));
  }

  private static Site stated(Site site, Zone zone, FactDefinition fact, String text) {
    FactValue value =
        FactReader.read(fact, text).fold(accepted -> accepted, () -> null, rejected -> null);
    assertThat(value).as(fact.name() + " = " + text).isNotNull();
    Map<String, StatedFact> facts = new LinkedHashMap<>(zone.facts());
    facts.put(fact.name(), new StatedFact(value, ""));
    return with(site, new Zone(zone.name(), facts, zone.ground(), zone.note()));
  }

  private static Site with(Site site, Zone changed) {
    List<Zone> zones =
        site.zones().stream().map(z -> z.name().equals(changed.name()) ? changed : z).toList();
    return new Site(
        site.name(), site.units(), site.facts(), site.ground(), zones, site.sizing(), site.note());
  }

  private static Zone zone(Site site, String name) {
    return site.zones().stream().filter(z -> z.name().equals(name)).findFirst().orElseThrow();
  }

  private static String leader(Ranking ranking) {
    return ranking.leader().map(OptionAdvice::option).map(SupportOption::id).orElse("");
  }

  private static List<Site> demos() throws Exception {
    try (Stream<Path> files = Files.list(Path.of("cases/demo"))) {
      return files
          .filter(file -> file.toString().endsWith(".site.json"))
          .sorted()
          .map(SizingSites::read)
          .toList();
    }
  }
}
