package underhold.classroom.making;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A layer of the ground of a site in the making.
 *
 * @param soil its soil class
 * @param top the depth of its top, as typed
 * @param properties what else is known of it, as typed
 */
record Layer(String soil, String top, Map<String, String> properties) {
  Layer {
    properties = Collections.unmodifiableMap(new LinkedHashMap<>(properties));
  }

  /** The layer as a site file holds it. */
  Map<String, Object> tree() {
    Map<String, Object> tree = new LinkedHashMap<>();
    tree.put("top", top);
    tree.put("soil", soil);
    tree.putAll(properties);
    return tree;
  }
}
