package underhold.review;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import underhold.advice.SupportOption;
import underhold.site.Site;
import underhold.site.SiteReader;
import underhold.site.Zone;

/**
 * Reads the published jobs: {@code expected.json} names the site files and says what each zone
 * calls for. All problems are collected.
 */
public final class PublishedJobs {
  static final String EXPECTED = "expected.json";
  static final String ENDING = ".site.json";
  private static final String FOLDER = "/underhold/published/";

  private final List<String> problems = new ArrayList<>();

  /** Gives the text of a file; empty where there is none. */
  @FunctionalInterface
  interface Files {
    Optional<String> text(String name);
  }

  /** The jobs inside the program. */
  public static List<PublishedJob> builtIn() {
    PublishedJobs reader = new PublishedJobs();
    List<PublishedJob> jobs = reader.read(PublishedJobs::inside);
    if (!reader.problems.isEmpty()) {
      throw new IllegalStateException("the published jobs are not in order: " + reader.problems);
    }
    return jobs;
  }

  private static Optional<String> inside(String name) {
    try (InputStream in = PublishedJobs.class.getResourceAsStream(FOLDER + name)) {
      return in == null
          ? Optional.empty()
          : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What was wrong with the jobs last read. */
  List<String> problems() {
    return List.copyOf(problems);
  }

  /** The jobs that could be read, in the order of the list. */
  List<PublishedJob> read(Files files) {
    problems.clear();
    List<PublishedJob> jobs = new ArrayList<>();
    Optional<JsonNode> expected = files.text(EXPECTED).flatMap(this::tree);
    if (expected.isEmpty()) {
      problems.add(EXPECTED + " is not there or is not JSON");
      return jobs;
    }
    Set<String> names = new HashSet<>();
    for (JsonNode node : expected.get().path("jobs")) {
      String name = node.path("site").asString("");
      if (!names.add(name)) {
        problems.add(name + " stands twice in " + EXPECTED);
      }
      job(name, node, files).ifPresent(jobs::add);
    }
    return jobs;
  }

  private Optional<JsonNode> tree(String text) {
    try {
      return Optional.of(JsonMapper.shared().readTree(text));
    } catch (JacksonException e) {
      return Optional.empty();
    }
  }

  private Optional<PublishedJob> job(String name, JsonNode node, Files files) {
    Optional<String> text = files.text(name + ENDING);
    if (text.isEmpty()) {
      problems.add(EXPECTED + " names " + name + ENDING + ", which is not there");
      return Optional.empty();
    }
    Optional<Site> site =
        SiteReader.read(text.get(), name + ENDING)
            .fold(
                valid -> Optional.of(valid.site()),
                invalid -> {
                  invalid.problems().forEach(problem -> problems.add(problem.toString()));
                  return Optional.empty();
                });
    if (node.path("teaches").asString("").isBlank()) {
      problems.add(name + " says not what it teaches");
    }
    return site.map(
        read -> {
          PublishedJob job =
              new PublishedJob(
                  name, read, node.path("teaches").asString(""), expectations(name, node));
          check(job);
          return job;
        });
  }

  private List<Expectation> expectations(String name, JsonNode job) {
    List<Expectation> expectations = new ArrayList<>();
    for (JsonNode node : job.path("zones")) {
      String place = name + ": " + node.path("zone").asString("");
      JsonNode scored = node.path("scored");
      if (!scored.isBoolean()) {
        problems.add(place + ": scored is to be true or false");
      }
      expectations.add(
          new Expectation(
              node.path("zone").asString(""),
              node.path("done").asString(""),
              options(place, node.path("used")),
              options(place, node.path("target")),
              options(place, node.path("alsoFair")),
              options(place, node.path("out")),
              words(node.path("says")),
              scored.asBoolean(false),
              node.path("because").asString(""),
              departure(place, node.path("departure")).orElse(null)));
    }
    return expectations;
  }

  private Optional<Expectation.Departure> departure(String place, JsonNode node) {
    if (node.isMissingNode()) {
      return Optional.empty();
    }
    Optional<Outcome> outcome = Outcome.find(node.path("outcome").asString(""));
    String because = node.path("because").asString("");
    if (outcome.isEmpty() || outcome.get().agrees() || because.isBlank()) {
      problems.add(place + ": a departure needs a miss or no choice, and a reason");
      return Optional.empty();
    }
    return Optional.of(new Expectation.Departure(outcome.get(), because));
  }

  private List<SupportOption> options(String place, JsonNode list) {
    List<SupportOption> options = new ArrayList<>();
    for (String id : words(list)) {
      SupportOption.find(id)
          .ifPresentOrElse(options::add, () -> problems.add(place + ": there is no option " + id));
    }
    return options;
  }

  private static List<String> words(JsonNode list) {
    List<String> words = new ArrayList<>();
    list.forEach(word -> words.add(word.asString("")));
    return words;
  }

  /** Every zone has its expectation, and no option is both fair and out. */
  private void check(PublishedJob job) {
    List<String> zones = job.site().zones().stream().map(Zone::name).toList();
    List<String> expected = job.expectations().stream().map(Expectation::zone).toList();
    if (!zones.equals(expected)) {
      problems.add(job.name() + " has the zones " + zones + ", expected are " + expected);
    }
    if (job.source().isBlank()) {
      problems.add(job.name() + " names no source in its note");
    }
    for (Expectation zone : job.expectations()) {
      if (zone.scored() == zone.target().isEmpty()) {
        problems.add(
            job.name() + ": " + zone.zone() + " is scored without a target, or the reverse");
      }
      if (!zone.scored() && zone.because().isBlank()) {
        problems.add(job.name() + ": " + zone.zone() + " says not why it is not scored");
      }
      zone.out().stream()
          .filter(option -> zone.target().contains(option) || zone.alsoFair().contains(option))
          .forEach(
              option ->
                  problems.add(
                      job.name() + ": " + zone.zone() + ": " + option.id() + " is fair and out"));
    }
  }
}
