package underhold.consult.firmness;

import java.util.Map;
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
}
