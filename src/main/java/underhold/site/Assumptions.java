package underhold.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import underhold.quantity.Quantity;
import underhold.quantity.UnitSystem;

/** The worse values that the dictionary assumes for what nobody knows. */
final class Assumptions {
  private Assumptions() {}

  /** The view with every assumption added; what is known stays as it is. */
  static FactView added(FactView known) {
    List<Fact> assumed = new ArrayList<>();
    UnitSystem system = system(known);
    for (Fact fact : known.all()) {
      Unknown unknown = fact.definition().unknown();
      if (fact.origin() == Origin.UNKNOWN && unknown != null) {
        Optional<Unknown.Case> special =
            unknown.cases().stream().filter(item -> holds(item.when(), known)).findFirst();
        String text = special.map(Unknown.Case::value).orElse(unknown.value());
        if (text != null && unknown.treatment() == Unknown.Treatment.ASSUME) {
          String because = special.map(Unknown.Case::because).orElse(unknown.because());
          assumed.add(assumed(fact.definition(), text, because, system, known));
        }
      }
    }
    return known.with(assumed);
  }

  private static boolean holds(Map<String, Set<String>> when, FactView known) {
    return when.entrySet().stream()
        .allMatch(
            entry -> {
              Optional<String> word = known.word(entry.getKey());
              return word.isPresent() && entry.getValue().contains(word.get());
            });
  }

  private static Fact assumed(
      FactDefinition definition, String text, String because, UnitSystem system, FactView known) {
    FactValue value =
        FactReader.read(definition, text)
            .fold(
                accepted -> accepted,
                () -> {
                  throw new IllegalStateException(definition.name() + " is assumed unknown");
                },
                rejected -> {
                  throw new IllegalStateException(rejected.explanation());
                });
    FactValue bounded = AssumptionBounds.bounded(definition.name(), value, known);
    String how =
        bounded.equals(value) ? because : because + " Held to what is known: " + bounded.text();
    return new Fact(definition, Origin.ASSUMED, inSystem(definition, bounded, system), how);
  }

  /** The same amount, printed for users of US customary units where the site is typed in them. */
  private static FactValue inSystem(FactDefinition definition, FactValue value, UnitSystem system) {
    if (!(value instanceof FactValue.Amount amount)
        || definition.kind() != FactKind.QUANTITY
        || UnitSystem.statedBy(amount.quantity()).orElse(system) == system) {
      return value;
    }
    FactDefinition.Range range = definition.requireRange();
    Quantity typed = amount.quantity();
    return new FactValue.Amount(
        Quantity.of(typed.si(), typed.measure(), Inputs.unit(range, system)));
  }

  /** The system of most amounts that are known; SI where they are even. */
  private static UnitSystem system(FactView known) {
    List<Quantity> amounts = new ArrayList<>();
    for (Fact fact : known.present()) {
      if (fact.value() instanceof FactValue.Amount amount) {
        amounts.add(amount.quantity());
      }
    }
    return UnitMajority.of(amounts);
  }
}
