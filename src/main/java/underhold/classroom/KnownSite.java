package underhold.classroom;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underhold.site.JsonText;
import underhold.site.SiteReader;
import underhold.site.SiteReading;

/** Takes from the site file of a case what is not known yet. */
final class KnownSite {
  static final String FACTS = "facts";
  static final String ZONES = "zones";
  static final String GROUND = "ground";
  static final String NAME = "name";
  static final String NOTE = "note";

  private final CaseFile file;
  private final String title;

  KnownSite(String title, CaseFile file) {
    this.title = title;
    this.file = file;
  }

  /** Everything. */
  SiteReading full() {
    return SiteReader.read(JsonText.of(file.site().tree()), title);
  }

  /** What is known once a stage is reached, with facts asked for beside. */
  SiteReading reading(int stage, Set<FactPlace> asked) {
    Set<FactPlace> known = new HashSet<>(asked);
    Map<FactPlace, String> believed = new HashMap<>();
    boolean ground = false;
    for (CaseStage one : file.stages().subList(0, stage + 1)) {
      known.addAll(one.places());
      one.believed().forEach(belief -> believed.put(belief.place(), belief.value()));
      ground |= one.ground();
    }
    Map<String, Object> tree = new LinkedHashMap<>(object(file.site().tree()));
    tree.remove(NOTE);
    facts(tree, "", known, believed);
    if (!ground) {
      tree.remove(GROUND);
    }
    List<Object> zones = new ArrayList<>();
    for (Object item : list(tree.get(ZONES))) {
      Map<String, Object> zone = new LinkedHashMap<>(object(item));
      zone.remove(NOTE);
      facts(zone, String.valueOf(zone.get(NAME)), known, believed);
      if (!ground) {
        zone.remove(GROUND);
      }
      zones.add(zone);
    }
    tree.put(ZONES, zones);
    return SiteReader.read(JsonText.of(tree), title);
  }

  private static void facts(
      Map<String, Object> section,
      String zone,
      Set<FactPlace> known,
      Map<FactPlace, String> believed) {
    Map<String, Object> left = new LinkedHashMap<>();
    object(section.get(FACTS))
        .forEach(
            (name, value) -> {
              FactPlace place = new FactPlace(zone, name);
              String belief = believed.get(place);
              if (known.contains(place)) {
                left.put(name, value);
              } else if (belief != null) {
                left.put(name, belief);
              }
            });
    section.put(FACTS, left);
  }

  /** The entries of a part that should be an object; none where it is something else. */
  static Map<String, Object> object(@org.jspecify.annotations.Nullable Object part) {
    Map<String, Object> entries = new LinkedHashMap<>();
    if (part instanceof Map<?, ?> map) {
      map.forEach((name, value) -> entries.put(String.valueOf(name), value));
    }
    return entries;
  }

  /** The items of a part that should be a list; none where it is something else. */
  static List<Object> list(@org.jspecify.annotations.Nullable Object part) {
    return part instanceof List<?> items ? new ArrayList<>(items) : List.of();
  }
}
