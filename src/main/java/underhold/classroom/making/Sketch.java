package underhold.classroom.making;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.classroom.FactPlace;
import underhold.site.JsonText;
import underhold.site.Site;
import underhold.site.SiteReader;
import underhold.site.SiteReading;

/**
 * A site in the making, with every fact as it would be typed. The zone whose method is wanted comes
 * first.
 */
final class Sketch {
  private static final String NAME_OF_NONE = "made";

  private final Draw draw;
  private final Map<String, String> site = new LinkedHashMap<>();
  private final List<Layer> layers = new ArrayList<>();
  private final Map<String, Map<String, String>> zones = new LinkedHashMap<>();
  private final Map<String, String> relation = new LinkedHashMap<>();
  private final List<Scene> scenes = new ArrayList<>();

  Sketch(Draw draw) {
    this.draw = draw;
  }

  Draw draw() {
    return draw;
  }

  Typing typing() {
    return draw.typing();
  }

  /** The facts stated for the whole site; may be added to. */
  Map<String, String> site() {
    return site;
  }

  List<Layer> layers() {
    return layers;
  }

  /** The facts of each zone by its name. */
  Map<String, Map<String, String>> zones() {
    return zones;
  }

  /** How the two zones lie to each other; empty where there is one. */
  Map<String, String> relation() {
    return relation;
  }

  /** The words of each zone, in their order. */
  List<Scene> scenes() {
    return scenes;
  }

  Scene scene() {
    return scenes.get(0);
  }

  /** Begins a zone. */
  Map<String, String> zone(Scene scene) {
    scenes.add(scene);
    Map<String, String> facts = new LinkedHashMap<>();
    zones.put(scene.zone(), facts);
    return facts;
  }

  /** The name of the zone whose method is wanted. */
  String first() {
    return scene().zone();
  }

  /** The value of a fact of a zone, as typed; none where it is not stated. */
  Optional<String> value(String zone, String fact) {
    String own = facts(zone).get(fact);
    return Optional.ofNullable(own == null ? site.get(fact) : own);
  }

  /** The value of a fact of the zone whose method is wanted. */
  Optional<String> value(String fact) {
    return value(first(), fact);
  }

  boolean is(String fact, String word) {
    return value(fact).filter(word::equals).isPresent();
  }

  /** A length of the zone whose method is wanted, in metres. */
  Optional<Double> metres(String fact) {
    return value(fact).map(Typing::metres);
  }

  Map<String, String> facts(String zone) {
    Map<String, String> found = zones.get(zone);
    if (found == null) {
      throw new IllegalStateException("there is no zone " + zone);
    }
    return found;
  }

  /** Where a fact of a zone is stated. */
  FactPlace place(String zone, String fact) {
    return new FactPlace(facts(zone).containsKey(fact) ? zone : "", fact);
  }

  /** Every fact stated, by its place. */
  List<FactPlace> places() {
    List<FactPlace> all = new ArrayList<>();
    site.keySet().forEach(fact -> all.add(new FactPlace("", fact)));
    zones.forEach((zone, facts) -> facts.keySet().forEach(f -> all.add(new FactPlace(zone, f))));
    return all;
  }

  /** The same with facts of the first zone otherwise, each where it is stated. */
  Sketch with(Change change) {
    Sketch other = new Sketch(draw);
    other.site.putAll(site);
    zones.forEach((zone, facts) -> other.zones.put(zone, new LinkedHashMap<>(facts)));
    other.relation.putAll(relation);
    other.scenes.addAll(scenes);
    other.layers.addAll(change.ofGround() ? change.ground() : layers);
    change
        .facts()
        .forEach(
            (fact, value) -> {
              boolean own = facts(first()).containsKey(fact) || !site.containsKey(fact);
              (own ? other.facts(first()) : other.site).put(fact, value);
            });
    return other;
  }

  /** The same with its zones in the other order. */
  Sketch turned() {
    Sketch other = new Sketch(draw);
    other.site.putAll(site);
    other.layers.addAll(layers);
    other.relation.putAll(relation);
    List<String> names = new ArrayList<>(zones.keySet());
    for (int i = names.size() - 1; i >= 0; i--) {
      other.zones.put(names.get(i), new LinkedHashMap<>(facts(names.get(i))));
      other.scenes.add(scenes.get(i));
    }
    return other;
  }

  /** The site; none where its facts contradict each other. */
  Optional<Site> read() {
    SiteReading reading = SiteReader.read(JsonText.of(tree(NAME_OF_NONE, "")), NAME_OF_NONE);
    return reading.fold(valid -> Optional.of(valid.site()), invalid -> Optional.empty());
  }

  /** What a site file holds. */
  Map<String, Object> tree(String title, String note) {
    Map<String, Object> tree = new LinkedHashMap<>();
    tree.put("underhold", "site/1");
    tree.put("name", title);
    tree.put("units", typing().units().name());
    tree.put("note", note);
    tree.put("facts", site);
    tree.put("ground", ground(layers));
    List<Object> all = new ArrayList<>();
    zones.forEach(
        (zone, facts) -> {
          Map<String, Object> one = new LinkedHashMap<>();
          one.put("name", zone);
          one.put("facts", facts);
          all.add(one);
        });
    tree.put("zones", all);
    if (!relation.isEmpty()) {
      Map<String, Object> between = new LinkedHashMap<>();
      between.put("zones", List.copyOf(zones.keySet()));
      between.put("facts", relation);
      tree.put("relations", List.of(between));
    }
    return tree;
  }

  /** Layers as a site file holds them. */
  static Map<String, Object> ground(List<Layer> layers) {
    return Map.of("layers", layers.stream().map(Layer::tree).toList());
  }
}
