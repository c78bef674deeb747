package underhold.consult.change;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import underhold.site.FactDefinition;
import underhold.site.Site;
import underhold.site.SiteProblem;
import underhold.site.StatedFact;

/**
 * Why a site with changed facts cannot be.
 *
 * @param place file and place
 * @param message what is wrong
 * @param together the facts stated that would have to change with it, by name; may be empty
 */
public record Contradiction(String place, String message, List<String> together) {
  public Contradiction {
    together = List.copyOf(together);
  }

  /**
   * A contradiction that a check found.
   *
   * @param changed names of the facts that were changed
   */
  static Contradiction of(SiteProblem problem, Site site, Set<String> changed) {
    List<String> together =
        Arrays.stream(problem.suggestion().split("[^A-Za-z]+", -1))
            .filter(name -> !changed.contains(name) && stated(site, name))
            .toList();
    return new Contradiction(place(problem.file(), problem.place()), problem.message(), together);
  }

  private static boolean stated(Site site, String name) {
    return known(site.facts().get(name))
        || site.zones().stream().anyMatch(zone -> known(zone.facts().get(name)));
  }

  private static boolean known(@Nullable StatedFact stated) {
    return stated != null && stated.value() != null;
  }

  static Contradiction missing(FactDefinition fact, String zone, String fileName) {
    return new Contradiction(
        place(fileName, ""),
        "zone \""
            + zone
            + "\": "
            + fact.label()
            + " cannot be unknown; no zone can be advised without "
            + fact.name(),
        List.of());
  }

  private static String place(String file, String place) {
    return place.isEmpty() ? file : file + ": " + place;
  }

  /** The whole in one line, with what to do. */
  public String text() {
    return place
        + ": "
        + message
        + (together.isEmpty()
            ? ""
            : "; change with it, or take away with FACT=unknown: " + String.join(", ", together));
  }
}
