package underhold.classroom;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import underhold.consult.Consultant;
import underhold.consult.trial.Changes;
import underhold.consult.trial.Outcome;
import underhold.consult.trial.Trials;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.FactValue;
import underhold.site.Site;
import underhold.site.Zone;

/**
 * Facts that turn the answer and cannot change alone, because other facts say more of the same
 * thing: with a dig beside a wall there is no undermined length. The answer is tried with the fact
 * changed all the same, which is what naming it means.
 */
final class HangingFacts {
  private HangingFacts() {}

  /**
   * Those that turn the answer, with what it would turn to.
   *
   * @param facts the facts to try, by their names
   */
  static Map<String, String> of(
      Consultant consultant, Site site, Zone zone, Collection<String> facts) {
    Map<String, String> found = new LinkedHashMap<>();
    Trials trials = consultant.trials(site, zone);
    Changes changes = trials.changes(zone);
    Outcome base = trials.of(zone);
    for (String name : facts) {
      FactDefinition definition = FactDictionary.standard().require(name);
      Optional<FactValue> was = base.view().fact(name).maybe();
      for (FactDefinition.Allowed allowed : definition.values()) {
        FactValue other = new FactValue.Choice(allowed.value());
        Zone tried = changes.with(name, other);
        if (was.filter(other::equals).isPresent() || changes.possible(tried)) {
          continue; // what is possible was tried already
        }
        Outcome after = trials.of(tried);
        if (!after.leader().equals(base.leader())) {
          found.put(
              name,
              "were it "
                  + allowed.value()
                  + ", with what hangs on it, "
                  + after
                      .leader()
                      .map(option -> option.label() + " first")
                      .orElse("no clear choice"));
          break;
        }
      }
    }
    return found;
  }
}
