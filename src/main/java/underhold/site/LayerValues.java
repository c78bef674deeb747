package underhold.site;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import underhold.quantity.Quantity;

/** What a layer states, by the names of {@link LayerFields} and in their order. */
final class LayerValues {
  private final Map<String, FactValue> values = new LinkedHashMap<>();

  private LayerValues() {}

  static Map<String, FactValue> of(GroundLayer layer) {
    LayerValues all = new LayerValues();
    all.put(LayerFields.TOP, layer.top());
    all.put(LayerFields.SOIL, layer.soil());
    all.put("unitWeight", layer.unitWeight());
    all.put("undrainedStrength", layer.undrainedStrength());
    all.put("frictionAngle", layer.frictionAngle());
    all.put("cohesion", layer.cohesion());
    all.put("n60", layer.n60());
    all.put("unconfinedStrength", layer.unconfinedStrength());
    all.put("rqd", layer.rqd());
    all.put("permeability", layer.permeability());
    all.put("standUp", layer.standUp());
    return all.values;
  }

  private void put(String name, @Nullable Quantity quantity) {
    if (quantity != null) {
      values.put(name, new FactValue.Amount(quantity));
    }
  }

  private void put(String name, @Nullable String word) {
    if (word != null) {
      values.put(name, new FactValue.Choice(word));
    }
  }
}
