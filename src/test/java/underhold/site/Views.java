package underhold.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import underhold.quantity.Measure;
import underhold.quantity.Quantity;

/** Views for tests. */
final class Views {
  private Views() {}

  /** What follows from facts typed as {@code "foundingDepth 1.8 m"}. */
  static FactView derived(GroundProfile ground, String... facts) {
    Map<String, String> typed = new LinkedHashMap<>();
    for (String fact : facts) {
      int blank = fact.indexOf(' ');
      typed.put(fact.substring(0, blank), fact.substring(blank + 1));
    }
    return ZoneViews.derived(Sites.stated(typed), ground);
  }

  /** Layers typed as {@code "2 m|silt"}. */
  static GroundProfile ground(String... layers) {
    List<GroundLayer> all = new ArrayList<>();
    for (String layer : layers) {
      String[] parts = layer.split("\\|");
      all.add(layer(parts[0], parts[1], null, null, null, null));
    }
    return new GroundProfile(all);
  }

  static GroundLayer layer(
      String top, String soil, String weight, String strength, String permeability, String stand) {
    return new GroundLayer(
        soil,
        quantity(top, Measure.LENGTH),
        weight == null ? null : quantity(weight, Measure.UNIT_WEIGHT),
        strength == null ? null : quantity(strength, Measure.PRESSURE),
        null,
        null,
        null,
        null,
        null,
        permeability == null ? null : quantity(permeability, Measure.SPEED),
        stand,
        "");
  }

  private static Quantity quantity(String text, Measure measure) {
    return Quantity.parse(text, measure).toOptional().orElseThrow();
  }
}
