package underhold.consult.turning;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underhold.advice.Effect;
import underhold.advice.PlainRules;
import underhold.advice.Rule;
import underhold.advice.SupportOption;
import underhold.consult.trial.Changes;
import underhold.consult.trial.Outcome;
import underhold.consult.trial.Trials;
import underhold.site.Fact;
import underhold.site.FactValue;
import underhold.site.FactView;
import underhold.site.Zone;

/** One zone, how it stands, and how it would stand with facts changed. */
final class Trying {
  private final Trials trials;
  private final Zone zone;
  private final Changes changes;
  private final Outcome base;

  Trying(Trials trials, Zone zone) {
    this.trials = trials;
    this.zone = zone;
    this.changes = trials.changes(zone);
    this.base = trials.of(zone);
  }

  Trials trials() {
    return trials;
  }

  Changes changes() {
    return changes;
  }

  /** What is known of the zone with what follows by calculation, without the rules. */
  FactView calculated() {
    return trials.known(zone);
  }

  /** How the zone stands as it is. */
  Outcome base() {
    return base;
  }

  PlainRules rules() {
    return trials.rules();
  }

  Outcome outcome(Map<String, FactValue> values) {
    return trials.of(changes.with(values));
  }

  /** The same as to who leads and what is ruled out, which is all that goals ask for. */
  Outcome leading(Map<String, FactValue> values) {
    return trials.leading(changes.with(values));
  }

  /** Whether an option leads then. */
  boolean leads(Map<String, FactValue> values, SupportOption option) {
    return trials.leads(trials.view(changes.with(values)), option);
  }

  boolean possible(Map<String, FactValue> values) {
    return changes.possible(changes.with(values));
  }

  /** The turning point of changes, with the rules that make it turn for an option. */
  TurningPoint point(List<Change> made, Outcome after, Set<SupportOption> about) {
    Set<SupportOption> concerned = EnumSet.noneOf(SupportOption.class);
    concerned.addAll(about);
    base.leader().ifPresent(concerned::add);
    List<Rule> gained = bearing(after.fired(), base.fired(), concerned);
    List<Rule> lost = bearing(base.fired(), after.fired(), concerned);
    lost.addAll(bearing(base.holding(), after.holding(), concerned));
    return new TurningPoint(made, after, gained, lost, follows(made, after, gained, lost));
  }

  /** The rules among some and not among others that score, or rule out, one of the options. */
  private List<Rule> bearing(BitSet some, BitSet others, Set<SupportOption> options) {
    BitSet places = (BitSet) some.clone();
    places.andNot(others);
    List<Rule> bearing = new ArrayList<>();
    places.stream()
        .mapToObj(rules()::rule)
        .filter(rule -> rule.effect().scores() || rule.effect() == Effect.RULE_OUT)
        .filter(rule -> options.stream().anyMatch(rule::concerns))
        .forEach(bearing::add);
    return bearing;
  }

  private List<Fact> follows(List<Change> made, Outcome after, List<Rule> gained, List<Rule> lost) {
    List<String> changed = made.stream().map(change -> change.fact().name()).toList();
    List<Fact> follows = new ArrayList<>();
    for (Fact fact : after.view().all()) {
      boolean read =
          gained.stream().anyMatch(rule -> rule.facts().contains(fact.name()))
              || lost.stream().anyMatch(rule -> rule.facts().contains(fact.name()));
      Fact before = base.view().fact(fact.name());
      boolean other =
          fact.value() == null ? before.value() != null : !fact.value().equals(before.value());
      if (read && other && !changed.contains(fact.name()) && fact.value() != null) {
        follows.add(fact);
      }
    }
    return follows;
  }
}
