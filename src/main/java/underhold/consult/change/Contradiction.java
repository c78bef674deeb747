package underhold.consult.change;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.SiteProblem;

/**
 * Why a site with changed facts cannot be.
 *
 * @param place file and place
 * @param message what is wrong
 * @param advice what to do
 */
public record Contradiction(String place, String message, String advice) {
  static Contradiction of(SiteProblem problem, Set<String> changed, FactDictionary dictionary) {
    List<String> facts =
        Arrays.stream(problem.suggestion().split("[^A-Za-z]+", -1))
            .filter(word -> dictionary.find(word).filter(fact -> !fact.derived()).isPresent())
            .toList();
    List<String> others = facts.stream().filter(name -> !changed.contains(name)).toList();
    String advice =
        others.isEmpty()
            ? problem.suggestion()
            : "change together with it, or take away with FACT=unknown: "
                + String.join(", ", others);
    return new Contradiction(place(problem.file(), problem.place()), problem.message(), advice);
  }

  static Contradiction missing(FactDefinition fact, String zone, String fileName) {
    return new Contradiction(
        place(fileName, ""),
        "zone \"" + zone + "\": " + fact.label() + " cannot be unknown",
        "no zone can be advised without " + fact.name());
  }

  private static String place(String file, String place) {
    return place.isEmpty() ? file : file + ": " + place;
  }

  /** The whole in one line. */
  public String text() {
    return place + ": " + message + (advice.isEmpty() ? "" : "; " + advice);
  }
}
