package underhold.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import underhold.advice.Effect;
import underhold.advice.Finding;
import underhold.advice.OptionAdvice;
import underhold.advice.Strength;
import underhold.advice.SupportOption;
import underhold.consult.Consultant;
import underhold.site.FactDictionary;
import underhold.site.FactReader;
import underhold.site.FactValue;
import underhold.site.Site;
import underhold.site.StatedFact;
import underhold.site.Zone;

/**
 * The ranking against jobs that were built and published. What a job calls for was judged from its
 * source, not from what the rules say. A disagreement stays a disagreement: it is on record in the
 * cases with its reason, and a rule that mends it, or makes another, fails here.
 */
class PublishedJobsTest {
  private static final Path FOLDER = Path.of("cases/published");
  private static final String MARK = "(stated|inferred|recalled, verify)(: \\S.*)?";

  private static final List<PublishedJob> JOBS = PublishedJobs.builtIn();
  private static final Consultant CONSULTANT = Consultant.standard();
  private static final AgreementTable TABLE = AgreementTable.of(CONSULTANT, JOBS);

  @TestFactory
  @DisplayName("A published job")
  Stream<DynamicTest> published_jobs() {
    return TABLE.rows().stream().map(row -> dynamicTest(title(row), () -> judge(row)));
  }

  private static String title(Agreement row) {
    return row.job().site().name() + ": " + row.expected().zone() + " [" + row.job().source() + "]";
  }

  /** Written apart from {@link Agreement#outcome}, so that each checks the other. */
  private static void judge(Agreement row) {
    Expectation expected = row.expected();
    assertThat(row.silent()).as("rules that must speak here").isEmpty();
    assertThat(row.answer().screening().conflicts()).isEmpty();
    if (!expected.scored()) {
      assertThat(row.outcome()).isEqualTo(Outcome.NOT_SCORED);
      return;
    }
    Optional<OptionAdvice> leader = row.answer().ranking().leader();
    List<SupportOption> first = new ArrayList<>();
    leader.ifPresent(advice -> first.add(advice.option()));
    row.answer().ranking().tiedWithLeader().forEach(advice -> first.add(advice.option()));
    if (expected.known().isEmpty()) {
      assertThat(leader).as("a choice").isPresent();
      assertThat(first).as("must not lead").noneMatch(expected.out()::contains);
      assertThat(row.letThrough()).as("must not lead and is not kept back").isEmpty();
      boolean targetInFront = first.stream().anyMatch(expected.target()::contains);
      boolean fairLeads = expected.alsoFair().contains(first.get(0));
      assertThat(targetInFront || fairLeads).as("leads: " + first).isTrue();
    } else {
      assertThat(row.outcome()).as("on record").isEqualTo(expected.known().get().outcome());
      assertThat(leader.isEmpty()).isEqualTo(row.outcome() == Outcome.NO_CHOICE);
    }
  }

  @Test
  void the_disagreements_are_just_those_on_record() {
    assertThat(TABLE.rows()).allMatch(Agreement::asRecorded);
    List<String> onRecord =
        TABLE.rows().stream()
            .filter(row -> row.expected().known().isPresent())
            .map(PublishedJobsTest::title)
            .toList();
    List<String> found =
        TABLE.rows().stream()
            .filter(row -> row.expected().scored() && !row.outcome().agrees())
            .map(PublishedJobsTest::title)
            .toList();
    assertThat(found).isEqualTo(onRecord);
    assertThat(TABLE.rows())
        .filteredOn(row -> row.expected().known().isPresent())
        .allSatisfy(
            row ->
                assertThat(row.expected().known().orElseThrow().because()).hasSizeGreaterThan(60));
  }

  @Test
  void every_file_is_a_job_and_every_job_a_file() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      List<String> names =
          files
              .map(path -> path.getFileName().toString())
              .filter(name -> name.endsWith(PublishedJobs.ENDING))
              .map(name -> name.replace(PublishedJobs.ENDING, ""))
              .toList();
      assertThat(names).hasSize(28);
      assertThat(JOBS).extracting(PublishedJob::name).containsExactlyInAnyOrderElementsOf(names);
    }
    PublishedJobs reader = new PublishedJobs();
    assertThat(reader.read(PublishedJobsTest::onDisk)).isEqualTo(JOBS);
    assertThat(reader.problems()).isEmpty();
  }

  private static Optional<String> onDisk(String name) {
    try {
      return Optional.of(Files.readString(FOLDER.resolve(name)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void every_fact_says_whether_the_source_states_it() {
    for (PublishedJob job : JOBS) {
      List<Map<String, StatedFact>> blocks = new ArrayList<>();
      blocks.add(job.site().facts());
      job.site().zones().forEach(zone -> blocks.add(zone.facts()));
      for (Map<String, StatedFact> block : blocks) {
        block.forEach(
            (name, fact) -> assertThat(fact.note()).as(job.name() + ": " + name).matches(MARK));
      }
    }
  }

  @Test
  void sources_are_named_and_firms_are_not() {
    assertThat(JOBS)
        .allSatisfy(
            job -> {
              assertThat(job.source()).hasSizeGreaterThan(15);
              assertThat(job.site().note())
                  .doesNotContainPattern(
                      "(?i)https?:|www\\.|\\.(com|org|net|co\\.uk|edu)\\b|\\b(inc|llc|ltd)\\b");
            });
  }

  @Test
  @DisplayName(
      "CROSS-UK report 800: pins of a basement with nothing to brace them raise the strongest caution")
  void unbraced_pins_raise_the_strongest_caution() {
    PublishedJob job = job("london-terrace-basement");
    Site unbraced = with(job.site(), Map.of("bracingRoom", "no", "excavationBelowFooting", "3 m"));
    List<Finding> cautions =
        CONSULTANT.weigh(unbraced, unbraced.zones().get(0)).screening().findings().stream()
            .filter(f -> f.effect() == Effect.CAUTION && f.rule().concerns(SupportOption.PITS))
            .filter(f -> f.strength().filter(Strength.DECISIVE::equals).isPresent())
            .toList();
    assertThat(cautions).extracting(f -> f.rule().id()).containsExactly("PIT-24b");
  }

  @Test
  @DisplayName(
      "DFI 2008, No. 1 subway line: ends of the box go to a specialist because of the water, and no longer once it may be lowered")
  void water_sends_the_edge_to_a_specialist() {
    Site site = job("subway-box-world-trade-center").site();
    Zone ends = site.zones().get(1);
    assertThat(leader(site, ends)).contains(SupportOption.REFER);
    Map<String, StatedFact> facts = new LinkedHashMap<>(site.facts());
    facts.remove("drawdownAllowed");
    Site open =
        new Site(
            site.name(), site.units(), facts, site.ground(), site.zones(), Map.of(), site.note());
    assertThat(leader(open, ends)).isNotEqualTo(Optional.of(SupportOption.REFER));
  }

  private static Optional<SupportOption> leader(Site site, Zone zone) {
    return CONSULTANT.weigh(site, zone).ranking().leader().map(OptionAdvice::option);
  }

  @Test
  @DisplayName("The answer weighed for the table is the answer of the whole consultation")
  void the_table_holds_the_answers_of_the_whole_consultation() {
    for (String name : List.of("princeton-hall", "columbus-monument", "winchester-cathedral")) {
      Site site = job(name).site();
      CONSULTANT
          .advise(site)
          .zones()
          .forEach(
              zone -> {
                Agreement row = row(name, zone.name());
                assertThat(row.answer().ranking()).isEqualTo(zone.ranking());
                assertThat(row.answer().screening().findings())
                    .isEqualTo(zone.screening().findings());
              });
    }
  }

  @Test
  @DisplayName("DEVELOPERS.md shows the counts of the table")
  void the_guide_shows_the_counts() throws IOException {
    String guide = Files.readString(Path.of("DEVELOPERS.md"));
    for (Outcome outcome : Outcome.values()) {
      assertThat(guide).contains("| " + outcome.word() + " | " + TABLE.rows(outcome).size() + " |");
    }
    assertThat(guide)
        .contains("| jobs encoded | " + TABLE.jobs() + " |")
        .contains("| zones | " + TABLE.rows().size() + " |")
        .contains(
            "| kept back, of options that must not lead | "
                + (TABLE.named() - TABLE.letThrough())
                + " of "
                + TABLE.named()
                + " |");
    TABLE.rows().stream()
        .filter(row -> row.expected().scored() && !row.outcome().agrees())
        .forEach(
            row -> assertThat(guide).contains(row.job().name() + ": " + row.expected().zone()));
  }

  private static PublishedJob job(String name) {
    return JOBS.stream().filter(job -> job.name().equals(name)).findFirst().orElseThrow();
  }

  private static Agreement row(String job, String zone) {
    return TABLE.rows().stream()
        .filter(row -> row.job().name().equals(job) && row.expected().zone().equals(zone))
        .findFirst()
        .orElseThrow();
  }

  /** The site with facts of its only zone changed. */
  private static Site with(Site site, Map<String, String> changes) {
    Zone zone = site.zones().get(0);
    Map<String, StatedFact> facts = new LinkedHashMap<>(zone.facts());
    changes.forEach((name, typed) -> facts.put(name, new StatedFact(value(name, typed), "")));
    Zone changed = new Zone(zone.name(), facts, zone.ground(), zone.note());
    return new Site(
        site.name(),
        site.units(),
        site.facts(),
        site.ground(),
        List.of(changed),
        site.sizing(),
        site.note());
  }

  private static FactValue value(String name, String typed) {
    return FactReader.read(FactDictionary.standard().require(name), typed)
        .fold(
            value -> value,
            () -> {
              throw new IllegalArgumentException(name);
            },
            rejected -> {
              throw new IllegalArgumentException(rejected.explanation());
            });
  }
}
