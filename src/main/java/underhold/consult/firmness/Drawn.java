package underhold.consult.firmness;

import java.util.Map;
import java.util.Objects;
import underhold.site.FactValue;

/**
 * One draw of the unknown facts.
 *
 * @param values what was drawn
 * @param stayed whether the answer stayed what it is
 */
record Drawn(Map<String, FactValue> values, boolean stayed) {
  Drawn {
    values = Map.copyOf(values);
  }

  boolean has(String fact) {
    return values.containsKey(fact);
  }

  String text(String fact) {
    return Objects.requireNonNull(values.get(fact)).text();
  }

  double amount(String fact) {
    return values.get(fact) instanceof FactValue.Amount amount ? amount.quantity().si() : 0;
  }
}
