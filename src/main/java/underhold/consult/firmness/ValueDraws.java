package underhold.consult.firmness;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import underhold.consult.trial.TypedAmounts;
import underhold.quantity.Measure;
import underhold.quantity.UnitSystem;
import underhold.site.FactDefinition;
import underhold.site.FactKind;
import underhold.site.FactValue;

/**
 * Draws a value for a fact of which nothing is known (judgement). Every word has the same chance.
 * An amount lies in the lower half of what the dictionary accepts, small ones more often: the cube
 * of an even draw, so that half of them lie below a sixteenth of the range; on both sides of zero
 * where it may be negative. A permeability is drawn evenly over its powers of ten.
 */
final class ValueDraws {
  private static final double PART = 0.5;

  private final TypedAmounts amounts;

  ValueDraws(UnitSystem units) {
    this.amounts = new TypedAmounts(units);
  }

  /** A value; none where such a fact is not drawn. */
  Optional<FactValue> draw(FactDefinition fact, Random random) {
    if (fact.kind() == FactKind.SLOPE) {
      return Optional.empty();
    }
    if (!fact.kind().isNumber()) {
      List<FactDefinition.Allowed> words = fact.values();
      return Optional.of(new FactValue.Choice(words.get(random.nextInt(words.size())).value()));
    }
    FactDefinition.Range range = fact.requireRange();
    double drawn = amounts.round(fact, amount(range, random));
    double within = Math.min(Math.max(drawn, range.min()), range.max());
    return Optional.of(amounts.of(fact, within));
  }

  private static double amount(FactDefinition.Range range, Random random) {
    double even = random.nextDouble();
    if (range.measure() == Measure.SPEED) {
      return range.min() * Math.pow(range.max() / range.min(), even);
    }
    if (range.min() < 0) {
      double side = 2 * even - 1;
      return PART * Math.max(-range.min(), range.max()) * side * side * side;
    }
    return range.min() + PART * (range.max() - range.min()) * even * even * even;
  }
}
