package underhold.shell;

import java.util.List;
import java.util.Optional;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.SiteProblem;
import underhold.site.SiteReader;
import underhold.site.SiteReading;
import underhold.site.SiteWriter;

/** Names of sites, zones and facts as users type them. */
final class Names {
  private Names() {}

  /**
   * Refuses what a site file would refuse as a name.
   *
   * @param whose whose name it is, for the message
   */
  static void check(String whose, String name) {
    why(name)
        .ifPresent(
            reason -> {
              throw Refusal.usage(
                  "\"" + name.strip() + "\" cannot be the name of " + whose + ": " + reason + ".");
            });
  }

  /** Why a text cannot be a name; empty if it can. */
  static Optional<String> why(String name) {
    return SiteReader.read(SiteWriter.toText(Edits.fresh(name, FIRST)), "")
        .fold(valid -> List.<SiteProblem>of(), SiteReading.Invalid::problems)
        .stream()
        .filter(problem -> problem.place().equals("name"))
        .map(SiteProblem::message)
        .findFirst();
  }

  private static final String FIRST = "zone";

  /**
   * The fact of that name, in any case.
   *
   * @throws Refusal if there is none, naming the nearest
   */
  static FactDefinition fact(String name) {
    List<FactDefinition> all = FactDictionary.standard().all();
    List<String> names = all.stream().map(FactDefinition::name).toList();
    return all.stream()
        .filter(fact -> fact.name().equalsIgnoreCase(name.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                Refusal.usage(
                    "There is no fact \"" + name + "\"." + Nearest.question(name, names),
                    "facts lists them all."));
  }

  /** The names of all facts that may be stated. */
  static List<String> statable() {
    return FactDictionary.standard().all().stream()
        .filter(fact -> !fact.derived())
        .map(FactDefinition::name)
        .toList();
  }
}
