package underhold.report.dossier;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import underhold.advice.Standing;
import underhold.consult.Consultant;
import underhold.consult.Consultation;
import underhold.consult.Sized;
import underhold.consult.SizingDesk;
import underhold.consult.ZoneAdvice;
import underhold.consult.scheme.SchemeDesk;
import underhold.consult.scheme.SchemeOutcome;
import underhold.consult.stage.PlanSettings;
import underhold.consult.stage.StagePlanner;
import underhold.quantity.UnitSystem;
import underhold.report.document.Document;
import underhold.site.Site;
import underhold.site.SiteReader;

/** The demo sites with what packages are made from, each consulted once for all tests. */
final class Demos {
  static final LocalDate DATE = LocalDate.of(2026, 3, 14);
  static final Consultant CONSULTANT = Consultant.standard();
  private static final Map<String, Material> GATHERED = new ConcurrentHashMap<>();
  private static final Map<String, Document> WHOLE = new ConcurrentHashMap<>();

  private Demos() {}

  /** The names of all demo sites. */
  static Stream<String> names() {
    try (Stream<Path> files = Files.list(Path.of("cases/demo"))) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".site.json"))
          .sorted()
          .toList()
          .stream();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Site site(String name) {
    return SiteReader.read(Path.of("cases/demo", name))
        .fold(
            valid -> valid.site(),
            invalid -> {
              throw new IllegalStateException(invalid.problems().toString());
            });
  }

  /** Without firmness and turning points, which take the longest. */
  static Material material(String name) {
    return GATHERED.computeIfAbsent(name, key -> material(site(key)));
  }

  static Material material(Site site) {
    List<ZoneAdvice> zones =
        site.zones().stream().map(zone -> CONSULTANT.advise(site, zone)).toList();
    Consultation answer = new Consultation(site, CONSULTANT.pack(), zones);
    SchemeOutcome scheme = new SchemeDesk(CONSULTANT.engine()).scheme(answer);
    return new Material(
        answer,
        Map.of(),
        scheme,
        scheme instanceof SchemeOutcome.Made made
            ? Optional.of(StagePlanner.plan(made.scheme(), PlanSettings.TABLE.defaults()))
            : Optional.empty(),
        sheets(answer));
  }

  private static List<ZoneSheet> sheets(Consultation answer) {
    List<ZoneSheet> sheets = new ArrayList<>();
    for (int i = 0; i < answer.zones().size(); i++) {
      ZoneAdvice zone = answer.zones().get(i);
      int number = i + 1;
      zone.ranking().options().stream()
          .filter(option -> option.standing() != Standing.RULED_OUT)
          .forEach(
              option -> {
                if (new SizingDesk().size(answer.site(), zone, option.option(), List.of())
                    instanceof Sized.Done done) {
                  sheets.add(new ZoneSheet(number, option.option(), done.sheet()));
                }
              });
    }
    return sheets;
  }

  /** The same site read in other units. */
  static Site in(UnitSystem units, Site site) {
    return new Site(
        site.name(),
        units,
        site.facts(),
        site.ground(),
        site.zones(),
        site.relations(),
        site.sizing(),
        site.note());
  }

  /** The reviewer's package of a demo site. */
  static Document whole(String name) {
    return WHOLE.computeIfAbsent(name, key -> document(material(key), Audience.REVIEWER));
  }

  static Document document(Material material, Audience audience) {
    return Dossier.of(material, Commission.of(audience, DATE), Illustrations.NONE);
  }
}
