package underhold.site;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import underhold.quantity.Quantity;
import underhold.site.SiteProblem.Code;

/** Reads a ground profile. */
final class GroundSection {
  /** More layers than any boring log tells apart. */
  static final int MOST_LAYERS = 200;

  private final LayerFields fields;
  private final List<String> names;
  private final Problems problems;
  private boolean failed;

  GroundSection(LayerFields fields, Problems problems) {
    this.fields = fields;
    this.names = new ArrayList<>(fields.all().keySet());
    this.names.add(LayerFields.NOTE);
    this.problems = problems;
  }

  /** The profile; empty, with problems, where it cannot be relied on. */
  Optional<GroundProfile> read(FileNode node, String place) {
    int before = problems.count();
    ObjectEntries entries = ObjectEntries.of(node, place, List.of("layers"), problems);
    if (problems.count() == before && entries.entry("layers").isEmpty()) {
      entries.missing("layers", "the ground has no layers", "add \"layers\": […] or leave it out");
    }
    List<GroundLayer> layers = new ArrayList<>();
    int index = 0;
    for (FileNode item : entries.list("layers", MOST_LAYERS)) {
      String layerPlace = entries.placeOf("layers") + "[" + index++ + "]";
      layer(item, layerPlace)
          .ifPresent(
              layer -> {
                checkOrder(layers, layer, layerPlace);
                layers.add(layer);
              });
    }
    if (problems.count() > before) {
      failed = true;
      return Optional.empty();
    }
    return Optional.of(new GroundProfile(layers));
  }

  /** Whether a profile read so far cannot be relied on. */
  boolean failed() {
    return failed;
  }

  private void checkOrder(List<GroundLayer> above, GroundLayer layer, String place) {
    if (above.isEmpty()) {
      return;
    }
    Quantity last = above.get(above.size() - 1).top();
    if (layer.top().si() <= last.si()) {
      problems.add(
          Code.LAYERS_OUT_OF_ORDER,
          place + "." + LayerFields.TOP,
          "the layer begins at "
              + PlainText.shown(layer.top().text())
              + ", not below the top of the layer before it, "
              + PlainText.shown(last.text()),
          "list the layers from the surface down");
    }
  }

  private Optional<GroundLayer> layer(FileNode node, String place) {
    ObjectEntries entries = ObjectEntries.of(node, place, names, problems);
    Map<String, FactValue> values = new HashMap<>();
    for (Map.Entry<String, FileNode> entry : entries.all().entrySet()) {
      FactDefinition definition = fields.all().get(entry.getKey());
      if (definition != null) {
        FactSection.value(definition, entry.getValue(), entries.placeOf(entry.getKey()), problems)
            .ifPresent(value -> values.put(entry.getKey(), value));
      }
    }
    String soil = word(values, LayerFields.SOIL);
    Quantity top = amount(values, LayerFields.TOP);
    require(entries, LayerFields.SOIL, soil != null, "a soil class");
    require(entries, LayerFields.TOP, top != null, "the depth of its top");
    String note = entries.note();
    if (soil == null || top == null) {
      return Optional.empty();
    }
    return Optional.of(
        new GroundLayer(
            soil,
            top,
            amount(values, "unitWeight"),
            amount(values, "undrainedStrength"),
            amount(values, "frictionAngle"),
            amount(values, "cohesion"),
            amount(values, "n60"),
            amount(values, "unconfinedStrength"),
            amount(values, "rqd"),
            amount(values, "permeability"),
            word(values, "standUp"),
            note));
  }

  private void require(ObjectEntries entries, String name, boolean present, String what) {
    boolean saidUnknown =
        entries
            .entry(name)
            .map(value -> value.text().strip().equalsIgnoreCase(FactReader.UNKNOWN))
            .orElse(true);
    if (!present && saidUnknown) {
      entries.missing(name, "a layer needs " + what, "add \"" + name + "\"");
    }
  }

  private static @Nullable Quantity amount(Map<String, FactValue> values, String name) {
    return values.get(name) instanceof FactValue.Amount amount ? amount.quantity() : null;
  }

  private static @Nullable String word(Map<String, FactValue> values, String name) {
    return values.get(name) instanceof FactValue.Choice choice ? choice.text() : null;
  }
}
