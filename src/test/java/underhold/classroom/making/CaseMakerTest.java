package underhold.classroom.making;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.advice.SupportOption;
import underhold.classroom.CaseFile;
import underhold.classroom.CaseRef;
import underhold.classroom.CaseStage;
import underhold.classroom.CaseStudy;
import underhold.classroom.ClassDesk;
import underhold.classroom.ClassFile;
import underhold.classroom.Counterpart;
import underhold.classroom.Doing;
import underhold.classroom.Expected;
import underhold.classroom.FactPlace;
import underhold.classroom.Level;
import underhold.classroom.Mark;
import underhold.classroom.Marking;
import underhold.classroom.QuestionDesk;
import underhold.classroom.Reckoned;
import underhold.site.Site;

/**
 * Cases made to order, each held to what was asked: by reading its file again and by whole
 * consultations that know nothing of the search. With {@code -Dcases=all} 200 cases are made, else
 * 24; with {@code -Dcases.out=DIR} they are written there as well.
 */
class CaseMakerTest {
  private static final boolean ALL = "all".equals(System.getProperty("cases"));
  private static final int MOST = ALL ? 200 : 24;
  private static final int TRIES = ALL ? 600 : 1500;
  private static final int CLEAR = 4;
  private static final QuestionDesk QUESTIONS = new QuestionDesk(MadeCases.CONSULTANT);

  /** What a few seconds find every time, so that the build need not search for it. */
  private static final List<String> IN_THE_BUILD =
      List.of(
          "pits water first 3",
          "pits poor-ground second 2",
          "pits concentrated-against-continuous second 2",
          "pits when-to-refer third 2",
          "needles concentrated-against-continuous first 2",
          "needles spanning second 2",
          "needles spanning third 2",
          "drilled-piles poor-ground first 2",
          "drilled-piles access second 2",
          "drilled-piles unknown-foundations third 2",
          "drilled-piles married-methods second 2",
          "bracket-piles access first 2",
          "bracket-piles water second 2",
          "bracket-piles rock-or-earth third 2",
          "edge-pits rock-or-earth second 2",
          "edge-pits access second 2",
          "edge-pits when-to-refer second 2",
          "monitor when-not-to-underpin first 2",
          "monitor married-methods first 2",
          "monitor water second 2",
          "refer when-to-refer first 2",
          "refer access second 2",
          "refer water third 2",
          "refer surprise third 2");

  private record Made(Wish wish, CaseFile file, CaseStudy study) {}

  private static final List<Made> MADE = new ArrayList<>();
  private static final List<String> NOT_FOUND = new ArrayList<>();
  private static final Map<Boolean, Double> TIMES = new TreeMap<>();

  private static List<Made> made() throws IOException {
    if (MADE.isEmpty()) {
      CaseMaker maker = new CaseMaker(MadeCases.CONSULTANT);
      for (Wish wish :
          ALL ? everything() : IN_THE_BUILD.stream().map(CaseMakerTest::wish).toList()) {
        if (MADE.size() < MOST) {
          make(maker, wish);
        }
      }
      System.out.printf(
          "made %d cases in %.0f s; %d wishes not met in %.0f s%n",
          MADE.size(),
          TIMES.getOrDefault(true, 0.0),
          NOT_FOUND.size(),
          TIMES.getOrDefault(false, 0.0));
    }
    return MADE;
  }

  private static void make(CaseMaker maker, Wish wish) throws IOException {
    long began = System.nanoTime();
    Making making = maker.make(wish, TRIES);
    TIMES.merge(making instanceof Making.Found, (System.nanoTime() - began) / 1e9, Double::sum);
    if (making instanceof Making.Found found) {
      MADE.add(new Made(wish, found.file(), MadeCases.read(found.file())));
      String out = System.getProperty("cases.out");
      if (out != null) {
        Path folder = Files.createDirectories(Path.of(out));
        Files.writeString(
            folder.resolve(named(wish) + CaseFile.ENDING), CaseFile.FILES.text(found.file()));
      }
    } else {
      NOT_FOUND.add(named(wish));
    }
  }

  private static String named(Wish wish) {
    return String.join(
        "_",
        wish.leader().id(),
        wish.theme().word(),
        wish.level().word(),
        String.valueOf(wish.seed()));
  }

  private static Wish wish(String words) {
    String[] part = words.split(" ");
    return new Wish(
        SupportOption.find(part[0]).orElseThrow(),
        Level.find(part[2]).orElseThrow(),
        Theme.find(part[1]).orElseThrow(),
        Integer.parseInt(part[3]));
  }

  /** Every method with every theme at every level, one seed after the other. */
  private static List<Wish> everything() {
    List<Wish> wishes = new ArrayList<>();
    for (int seed = 1; seed <= 3; seed++) {
      for (Level level : Level.values()) {
        for (Theme theme : Theme.values()) {
          for (SupportOption option : SupportOption.values()) {
            wishes.add(new Wish(option, level, theme, seed));
          }
        }
      }
    }
    return wishes;
  }

  @Test
  void so_many_cases_are_made_of_every_method_level_and_theme() throws IOException {
    assertThat(made().size()).as(NOT_FOUND.toString()).isEqualTo(MOST);
    assertThat(made().stream().map(one -> one.wish.leader())).contains(SupportOption.values());
    assertThat(made().stream().map(one -> one.wish.level())).contains(Level.values());
    assertThat(made().stream().map(one -> one.wish.theme())).contains(Theme.values());
    spread("method", made().stream().map(one -> one.wish.leader().id()).toList());
    spread("level", made().stream().map(one -> one.wish.level().word()).toList());
    spread("theme", made().stream().map(one -> one.wish.theme().word()).toList());
    spread("structure", made().stream().map(one -> stated(one, "structureKind")).toList());
    spread("position", made().stream().map(one -> stated(one, "excavationPosition")).toList());
    spread("load", made().stream().map(one -> stated(one, "loadPattern")).toList());
    spread("ground", made().stream().map(CaseMakerTest::ground).toList());
    spread("decides", made().stream().flatMap(CaseMakerTest::deciding).toList());
    spread("units", made().stream().map(one -> one.study.full().units().name()).toList());
    spread("day one", made().stream().map(one -> one.file.expects().get(0).dayOne()).toList());
    System.out.println("not met: " + NOT_FOUND);
  }

  private static String stated(Made one, String fact) {
    Site site = one.study.full();
    var own = site.zones().get(0).facts().get(fact);
    return (own == null ? site.facts().get(fact) : own).value().text();
  }

  private static String ground(Made one) {
    var layers = one.study.full().ground().layers();
    return String.join(
        " over ", layers.subList(1, layers.size()).stream().map(layer -> layer.soil()).toList());
  }

  private static java.util.stream.Stream<String> deciding(Made one) {
    return one.file.made().orElseThrow().counterparts().stream()
        .flatMap(
            other ->
                other.ground().isPresent()
                    ? java.util.stream.Stream.of("the ground")
                    : other.facts().keySet().stream().limit(1));
  }

  private static void spread(String what, List<String> words) {
    Map<String, Integer> counts = new TreeMap<>();
    words.forEach(word -> counts.merge(word, 1, Integer::sum));
    System.out.println(what + ": " + counts);
  }

  @Test
  @DisplayName("A fresh consultation puts the method first that was asked for, and day one as told")
  void the_leader_is_the_one_asked_for() throws IOException {
    for (Made one : made()) {
      int last = one.study.stages().size() - 1;
      for (Expected expected : one.file.expects()) {
        List<String> first = MadeCases.first(MadeCases.known(one.study, last), expected.zone());
        assertThat(first).as(named(one.wish)).startsWith(expected.leader());
        assertThat(MadeCases.first(MadeCases.known(one.study, 0), expected.zone()))
            .as(named(one.wish) + " on day one")
            .startsWith(expected.dayOne());
      }
      assertThat(one.file.expects().get(0).leader()).isEqualTo(one.wish.leader().id());
      assertThat(one.study.known(last, Set.of()).zones()).hasSameSizeAs(one.study.full().zones());
    }
  }

  @Test
  @DisplayName(
      "The facts that a case names decide: with them otherwise a fresh consultation differs")
  void the_theme_is_true() throws IOException {
    for (Made one : made()) {
      List<Counterpart> others = one.file.made().orElseThrow().counterparts();
      assertThat(others).as(named(one.wish)).isNotEmpty();
      for (Counterpart other : others) {
        List<String> first = MadeCases.first(MadeCases.otherwise(one.file, other), other.zone());
        assertThat(first.get(0))
            .as(named(one.wish) + " " + other.facts())
            .isEqualTo(other.leader())
            .isNotEqualTo(one.wish.leader().id());
      }
      ofTheTheme(one, others.get(0));
    }
  }

  private static void ofTheTheme(Made one, Counterpart other) {
    Theme theme = one.wish.theme();
    Set<String> changed = new HashSet<>(other.facts().keySet());
    if (other.ground().isPresent()) {
      changed.add("ground");
    }
    switch (theme) {
      case MARRIED -> {
        assertThat(one.file.expects()).hasSize(2);
        assertThat(one.file.expects().get(1).leader())
            .isNotEqualTo(one.file.expects().get(0).leader())
            .isNotEqualTo(Expected.NO_METHOD);
      }
      case WATCHING ->
          assertThat(List.of(one.wish.leader().id(), other.leader())).contains("monitor");
      case REFER -> assertThat(List.of(one.wish.leader().id(), other.leader())).contains("refer");
      default -> assertThat(theme.facts()).as(named(one.wish)).containsAnyElementsOf(changed);
    }
  }

  @Test
  @DisplayName("Each level asks for what it says, found again from the file")
  void the_level_is_kept() throws IOException {
    for (Made one : made()) {
      int last = one.study.stages().size() - 1;
      String zone = one.study.full().zones().get(0).name();
      Expected expected = one.file.expects().get(0);
      List<String> first = MadeCases.first(MadeCases.known(one.study, last), zone);
      int lead = MadeCases.lead(MadeCases.known(one.study, last), zone, expected.leader());
      List<Counterpart> others = one.file.made().orElseThrow().counterparts();
      boolean misled = !Set.of(Expected.NO_METHOD, expected.leader()).contains(expected.dayOne());
      boolean late =
          one.study.stages().get(last).surprise()
              && !MadeCases.first(MadeCases.known(one.study, last - 1), zone)
                  .get(0)
                  .equals(expected.leader());
      switch (one.wish.level()) {
        case FIRST -> {
          assertThat(first).as(named(one.wish)).hasSize(1);
          assertThat(lead).as(named(one.wish)).isGreaterThanOrEqualTo(CLEAR);
          assertThat(others).hasSize(1);
          assertThat(misled).as(named(one.wish)).isFalse();
        }
        case SECOND -> {
          assertThat(first).as(named(one.wish)).hasSize(1);
          assertThat(misled || others.size() == 2).as(named(one.wish)).isTrue();
        }
        case THIRD -> assertThat(late || lead <= CLEAR).as(named(one.wish)).isTrue();
      }
      assertThat(one.study.stages().stream().anyMatch(CaseStage::surprise))
          .as(named(one.wish))
          .isEqualTo(late);
    }
  }

  @Test
  void no_two_cases_are_the_same_site() throws IOException {
    Map<String, String> seen = new LinkedHashMap<>();
    for (Made one : made()) {
      String before = seen.put(MadeCases.facts(one.file), named(one.wish));
      assertThat(before).as(named(one.wish)).isNull();
    }
  }

  @Test
  void the_same_seed_gives_the_same_bytes_and_another_one_another_site() {
    for (String words : List.of("bracket-piles access first", "refer access second")) {
      Wish wish = wish(words + " 11");
      CaseFile once = found(wish);
      assertThat(CaseFile.FILES.text(found(wish))).isEqualTo(CaseFile.FILES.text(once));
      assertThat(MadeCases.facts(found(wish(words + " 12")))).isNotEqualTo(MadeCases.facts(once));
    }
  }

  private static CaseFile found(Wish wish) {
    Making making = new CaseMaker(MadeCases.CONSULTANT).make(wish, TRIES);
    assertThat(making).isInstanceOf(Making.Found.class);
    return ((Making.Found) making).file();
  }

  @Test
  void every_question_can_be_answered_and_every_text_be_read() throws IOException {
    for (Made one : made()) {
      one.file
          .questions()
          .forEach(
              question ->
                  assertThat(QUESTIONS.of(one.study, question))
                      .as(named(one.wish))
                      .isNotInstanceOf(Reckoned.Nothing.class));
      assertThat(one.file.lesson().length()).as(named(one.wish)).isBetween(80, 800);
      List<String> texts = new ArrayList<>(List.of(one.file.lesson(), one.file.story()));
      one.study.stages().forEach(stage -> texts.add(stage.tells()));
      for (String text : texts) {
        assertThat(text)
            .as(named(one.wish))
            .matches("[A-Z][^{}<>]*[.]")
            .doesNotContain("  ", "null", "..", " ,", "[", "no method lead ");
      }
    }
  }

  @Test
  @DisplayName("What a story tells is known on day one: no amount in it comes from a later stage")
  void stories_tell_nothing_that_comes_later() throws IOException {
    for (Made one : made()) {
      for (CaseStage stage : one.study.stages().subList(1, one.study.stages().size())) {
        for (FactPlace place : stage.places()) {
          String value = value(one, place);
          if (value.matches(".*[0-9].*")) {
            assertThat(one.file.story()).as(named(one.wish)).doesNotContain(value);
            assertThat(one.study.stages().get(0).tells()).doesNotContain(" " + value + " ");
          }
        }
      }
    }
  }

  private static String value(Made one, FactPlace place) {
    Site site = one.study.full();
    return (place.zone().isEmpty()
            ? site.facts().get(place.fact())
            : MadeCases.zone(site, place.zone()).facts().get(place.fact()))
        .value()
        .text();
  }

  @Test
  @DisplayName("A made case runs a class: asked, revealed, answered, marked")
  void a_made_case_runs_a_class() throws IOException {
    for (Made one : made().subList(0, 6)) {
      String name = one.study.name();
      Map<String, CaseStudy> studies = Map.of(name, one.study);
      ClassFile file =
          new ClassFile(
              ClassFile.FORM,
              "test",
              List.of(new CaseRef(name, name + CaseFile.ENDING, 0)),
              List.of("Ada"),
              List.of(),
              List.of(),
              List.of(),
              List.of(),
              List.of());
      for (int stage = 1; stage < one.study.stages().size(); stage++) {
        file = done(new ClassDesk(file, studies, MadeCases.CONSULTANT.pack()).reveal(name));
      }
      String zone = one.file.expects().get(0).zone();
      String fact =
          one.file.made().orElseThrow().counterparts().get(0).facts().keySet().stream()
              .findFirst()
              .orElse("soilAtFooting");
      file =
          done(
              new ClassDesk(file, studies, MadeCases.CONSULTANT.pack())
                  .answer(
                      "Ada",
                      name,
                      zone,
                      one.wish.leader().id(),
                      List.of(fact),
                      List.of(),
                      List.of(),
                      List.of()));
      List<Mark> marks = new Marking(studies, MadeCases.CONSULTANT).mark(file).marks();
      assertThat(marks).hasSize(1);
      assertThat(marks.get(0).lines().get(0).points())
          .as(named(one.wish))
          .isEqualTo(marks.get(0).lines().get(0).of());
    }
  }

  private static ClassFile done(Doing doing) {
    assertThat(doing).isInstanceOf(Doing.Done.class);
    return ((Doing.Done) doing).file();
  }

  @Test
  @DisplayName("Watching is never a matter of what spans: said so, with how far the search came")
  void what_cannot_be_found_is_told() {
    Making making = new CaseMaker(MadeCases.CONSULTANT).make(wish("monitor spanning first 1"), 120);
    assertThat(making).isInstanceOf(Making.Nothing.class);
    assertThat(String.join(" ", ((Making.Nothing) making).says()))
        .contains("120 sites", "spanning", "first level", "seed 1", "The nearest");
  }
}
