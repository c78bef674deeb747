package underhold.report.drawing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import underhold.advice.BuiltInPack;
import underhold.advice.Limits;
import underhold.advice.SupportOption;
import underhold.consult.Consultant;
import underhold.consult.Consultation;
import underhold.consult.Sized;
import underhold.consult.SizingDesk;
import underhold.consult.ZoneAdvice;
import underhold.site.Site;
import underhold.site.SiteReader;
import underhold.site.SiteReading;
import underhold.site.Zone;
import underhold.sizing.Sheet;

/** The demo sites, some with other words in their file, and the sheets of their zones. */
final class DemoDrawings {
  private static final Path DEMO = Path.of("cases/demo");
  private static final Map<String, Consultation> ADVISED = new ConcurrentHashMap<>();
  private static final SizingDesk DESK = new SizingDesk();

  private DemoDrawings() {}

  static List<String> names() {
    try (Stream<Path> files = Files.list(DEMO)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".site.json"))
          .map(name -> name.replace(".site.json", ""))
          .sorted()
          .toList();
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  /** A demo site whose file has some words replaced: old, new, old, new. */
  static Consultation advised(String name, String... changes) {
    return ADVISED.computeIfAbsent(
        name + String.join("|", changes), key -> Consultant.standard().advise(site(name, changes)));
  }

  static Site site(String name, String... changes) {
    try {
      String text = Files.readString(DEMO.resolve(name + ".site.json"));
      for (int i = 0; i < changes.length; i += 2) {
        if (!text.contains(changes[i])) {
          throw new IllegalArgumentException(name + " does not hold " + changes[i]);
        }
        text = text.replace(changes[i], changes[i + 1]);
      }
      SiteReading reading = SiteReader.read(text, name);
      if (reading instanceof SiteReading.Valid valid) {
        return valid.site();
      }
      throw new IllegalStateException(reading.toString());
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  /** The thresholds of the rules built in. */
  static Limits limits() {
    return BuiltInPack.pack().limits();
  }

  static Zone zone(Consultation consultation, String name) {
    return consultation.site().zones().stream()
        .filter(zone -> zone.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  static Optional<Sheet> sheet(
      Consultation consultation, ZoneAdvice zone, SupportOption option, String... settings) {
    Sized sized = DESK.size(consultation.site(), zone, option, List.of(settings));
    return sized instanceof Sized.Done done ? Optional.of(done.sheet()) : Optional.empty();
  }

  static Sheet sheet(Consultation consultation, SupportOption option, String... settings) {
    return sheet(consultation, consultation.zones().get(0), option, settings).orElseThrow();
  }
}
