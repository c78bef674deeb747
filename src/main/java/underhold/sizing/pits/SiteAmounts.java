package underhold.sizing.pits;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.sizing.Given;
import underhold.sizing.MissingInput;

/** Puts the site's numbers into the input; one outside the sheet's range is asked for instead. */
final class SiteAmounts {
  private final PitsInputBuilder input;
  private final List<MissingInput> refused = new ArrayList<>();

  SiteAmounts(PitsInputBuilder input) {
    this.input = input;
  }

  void put(PitsFact fact, Given<Double> given) {
    if (fact.accepts(given.value())) {
      input.amount(fact, given);
    } else {
      refused.add(
          new MissingInput(
              fact.id(),
              fact.question().isEmpty() ? "Is the " + fact.label() + " right?" : fact.question(),
              "the " + fact.refusal(given.value()) + ", beyond which this sheet does not hold"));
    }
  }

  void put(PitsFact fact, Optional<Given<Double>> given) {
    given.ifPresent(value -> put(fact, value));
  }

  List<MissingInput> refused() {
    return List.copyOf(refused);
  }
}
