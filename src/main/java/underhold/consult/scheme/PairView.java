package underhold.consult.scheme;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import underhold.quantity.Measure;
import underhold.quantity.Quantity;
import underhold.quantity.UnitSystem;
import underhold.site.Fact;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.FactValue;
import underhold.site.FactView;
import underhold.site.Origin;
import underhold.site.Relation;
import underhold.site.Site;
import underhold.site.StatedFact;

/**
 * What is known of two zones together: what the site file states of the pair, and what follows from
 * the zones and from the methods tried for them. Nothing is assumed.
 */
final class PairView {
  private static final FactDictionary DICTIONARY = FactDictionary.pairs();
  private static final String DISTANCE = "distance";

  private final Site site;
  private final ZoneChoice first;
  private final ZoneChoice second;
  private final Map<String, Fact> facts = new HashMap<>();

  private PairView(Site site, ZoneChoice first, ZoneChoice second) {
    this.site = site;
    this.first = first;
    this.second = second;
  }

  /** The view of two zones in that order. */
  static FactView of(Site site, ZoneChoice first, ZoneChoice second) {
    PairView view = new PairView(site, first, second);
    site.relation(first.name(), second.name()).ifPresent(view::stated);
    view.derived();
    return FactView.of(DICTIONARY, view.facts);
  }

  private void stated(Relation relation) {
    boolean turned = !relation.first().equalsIgnoreCase(first.name());
    for (Map.Entry<String, StatedFact> entry : relation.facts().entrySet()) {
      FactValue value = entry.getValue().value();
      if (value != null) {
        FactDefinition definition = DICTIONARY.require(entry.getKey());
        put(definition, Origin.STATED, turned ? turned(value) : value, entry.getValue().note());
      }
    }
  }

  /** What is said of the first zone of the file is said of the second of this view. */
  private static FactValue turned(FactValue value) {
    return switch (value.text()) {
      case "first" -> new FactValue.Choice("second");
      case "second" -> new FactValue.Choice("first");
      default -> value;
    };
  }

  private void derived() {
    word("firstMethod", Optional.of(first.methodId()), "chosen for " + first.name());
    word("secondMethod", Optional.of(second.methodId()), "chosen for " + second.name());
    copy("firstLoadPattern", first, "loadPattern");
    copy("secondEdgeUnretained", second, "edgeUnretained");
    copy("secondEdgeGround", second, "edgeGround");
    copy("secondDrawdownHarm", second, "drawdownHarm");
    copy("secondDrawdownAllowed", second, "drawdownAllowed");
    number(first, "drawdownNeeded")
        .ifPresent(si -> amount("firstDrawdown", si, "for a dry pit at " + first.name()));
    OptionalDouble step = step();
    step.ifPresent(si -> amount("secondDeeperBy", si, "the two depths of excavation"));
    Fact distance = facts.get(DISTANCE);
    if (step.isPresent()
        && step.getAsDouble() > 0
        && distance != null
        && distance.value() instanceof FactValue.Amount apart) {
      amount(
          "distanceOverStep",
          apart.quantity().si() / step.getAsDouble(),
          "distance over the step in depth");
    }
  }

  private OptionalDouble step() {
    OptionalDouble one = depth(first);
    OptionalDouble other = depth(second);
    return one.isPresent() && other.isPresent()
        ? OptionalDouble.of(other.getAsDouble() - one.getAsDouble())
        : OptionalDouble.empty();
  }

  private static OptionalDouble depth(ZoneChoice zone) {
    if (zone.zone().view().word("excavationPosition").filter("no-excavation"::equals).isPresent()) {
      return OptionalDouble.of(0);
    }
    return number(zone, "excavationDepth");
  }

  private static OptionalDouble number(ZoneChoice zone, String fact) {
    return zone.zone()
        .view()
        .amount(fact)
        .map(quantity -> OptionalDouble.of(quantity.si()))
        .orElse(OptionalDouble.empty());
  }

  private void copy(String name, ZoneChoice zone, String fact) {
    word(name, zone.zone().view().word(fact), fact + " of " + zone.name());
  }

  private void word(String name, Optional<String> word, String how) {
    FactDefinition definition = DICTIONARY.require(name);
    word.filter(text -> definition.allowed(text).isPresent())
        .ifPresent(text -> put(definition, Origin.DERIVED, new FactValue.Choice(text), how));
  }

  private void amount(String name, double si, String how) {
    FactDefinition definition = DICTIONARY.require(name);
    Measure measure = definition.requireRange().measure();
    String unit =
        site.units() == UnitSystem.US
            ? definition.requireRange().usUnit()
            : definition.requireRange().siUnit();
    put(definition, Origin.DERIVED, new FactValue.Amount(Quantity.of(si, measure, unit)), how);
  }

  private void put(FactDefinition definition, Origin origin, FactValue value, String how) {
    facts.put(definition.name(), new Fact(definition, origin, value, how));
  }
}
