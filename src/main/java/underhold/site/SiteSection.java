package underhold.site;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import underhold.quantity.Quantity;
import underhold.quantity.UnitSystem;
import underhold.site.SiteProblem.Code;

/** Reads the whole of a site file. */
final class SiteSection {
  /** The form of site file that this program reads and writes. */
  static final String VERSION = "site/1";

  private static final List<String> NAMES =
      List.of(
          "underhold", "name", "units", "note", "facts", "ground", "zones", "relations", "sizing");

  private final FactDictionary dictionary;
  private final Problems problems;

  SiteSection(FactDictionary dictionary, Problems problems) {
    this.dictionary = dictionary;
    this.problems = problems;
  }

  /** The site, as far as it could be read; empty where there is too little to check further. */
  Optional<Site> read(FileNode root) {
    ObjectEntries entries = ObjectEntries.of(root, "", NAMES, problems);
    if (root.kind() != FileNode.Kind.OBJECT || !version(entries)) {
      return Optional.empty();
    }
    FactSection factSection = new FactSection(dictionary, problems);
    GroundSection groundSection = new GroundSection(new LayerFields(dictionary), problems);
    String name = entries.requiredName("the site");
    Optional<UnitSystem> units = units(entries);
    Map<String, StatedFact> facts =
        entries.entry("facts").map(node -> factSection.read(node, "facts")).orElse(Map.of());
    GroundProfile ground =
        entries
            .entry("ground")
            .flatMap(node -> groundSection.read(node, "ground"))
            .orElse(GroundProfile.NONE);
    List<Zone> zones =
        new ZoneSection(dictionary, factSection, groundSection, problems).read(entries, facts);
    List<Relation> relations = new RelationSection(problems).read(entries, zones);
    Map<String, Map<String, String>> sizing =
        entries
            .entry("sizing")
            .map(node -> new SizingSection(dictionary, problems).read(node, "sizing"))
            .orElse(Map.of());
    String note = entries.note();
    if (zones.isEmpty() || groundSection.failed()) {
      return Optional.empty();
    }
    UnitSystem system = units.orElseGet(() -> majority(facts, ground, zones));
    return Optional.of(new Site(name, system, facts, ground, zones, relations, sizing, note));
  }

  private boolean version(ObjectEntries entries) {
    if (entries.entry("underhold").isEmpty()) {
      entries.missing(
          "underhold",
          "the file does not say that it is a site",
          "add \"underhold\": \"" + VERSION + "\"");
      return true;
    }
    Optional<String> version = entries.text("underhold");
    if (version.isPresent() && !version.get().equals(VERSION)) {
      problems.add(
          Code.WRONG_VERSION,
          "underhold",
          "this program reads \"" + VERSION + "\", not " + PlainText.quoted(version.get()),
          "");
      return false;
    }
    return true;
  }

  private Optional<UnitSystem> units(ObjectEntries entries) {
    Optional<String> typed = entries.text("units");
    if (typed.isEmpty()) {
      return Optional.empty();
    }
    for (UnitSystem system : UnitSystem.values()) {
      if (system.name().equals(typed.get().strip().toUpperCase(Locale.ROOT))) {
        return Optional.of(system);
      }
    }
    problems.add(
        Code.NOT_ALLOWED_VALUE,
        "units",
        PlainText.quoted(typed.get()) + " is no unit system; allowed: SI, US",
        "");
    return Optional.empty();
  }

  private static UnitSystem majority(
      Map<String, StatedFact> facts, GroundProfile ground, List<Zone> zones) {
    Stream<FactValue> fromFacts =
        Stream.concat(
                facts.values().stream(),
                zones.stream().flatMap(zone -> zone.facts().values().stream()))
            .flatMap(fact -> Stream.ofNullable(fact.value()));
    Stream<FactValue> fromLayers =
        Stream.concat(
                ground.layers().stream(),
                zones.stream().flatMap(zone -> zone.ground().layers().stream()))
            .flatMap(layer -> LayerValues.of(layer).values().stream());
    List<Quantity> amounts =
        Stream.concat(fromFacts, fromLayers)
            .flatMap(
                value ->
                    value instanceof FactValue.Amount amount
                        ? Stream.of(amount.quantity())
                        : Stream.empty())
            .toList();
    return UnitMajority.of(amounts);
  }
}
