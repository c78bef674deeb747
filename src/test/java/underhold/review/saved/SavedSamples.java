package underhold.review.saved;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import underhold.consult.Consultant;
import underhold.consult.Consultation;
import underhold.site.Site;
import underhold.site.SiteReader;

/** Saved consultations of the demo sites, each made once, without how firm they are. */
public final class SavedSamples {
  public static final Consultant CONSULTANT = Consultant.standard();
  public static final SavedMaking MAKING =
      new SavedMaking("underhold", "test", Instant.parse("2026-03-05T14:30:00Z"), "caution");

  private static final Path DEMO = Path.of("cases/demo");
  private static final String ENDING = ".site.json";
  private static final Map<String, SavedAdvice> MADE = new ConcurrentHashMap<>();

  private SavedSamples() {}

  /** The names of all demo sites. */
  public static List<String> names() {
    try (Stream<Path> files = Files.list(DEMO)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(ENDING))
          .map(name -> name.substring(0, name.length() - ENDING.length()))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static Site site(String name) {
    return SiteReader.read(DEMO.resolve(name + ENDING))
        .fold(
            valid -> valid.site(),
            invalid -> {
              throw new IllegalStateException(invalid.problems().toString());
            });
  }

  public static SavedAdvice saved(String name) {
    return MADE.computeIfAbsent(name, key -> save(site(key), CONSULTANT));
  }

  /** What a consultant answers to a site, saved. */
  public static SavedAdvice save(Site site, Consultant consultant) {
    Consultation answer =
        new Consultation(
            site,
            consultant.pack(),
            site.zones().stream().map(zone -> consultant.advise(site, zone)).toList());
    return new AdviceSaver(consultant.engine()).save(answer, MAKING);
  }
}
