package underhold.site;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import underhold.site.SiteProblem.Code;

/** Reads the zones of a site. */
final class ZoneSection {
  /** More zones than one structure has. */
  static final int MOST_ZONES = 500;

  private static final List<String> NAMES = List.of("name", "note", "facts", "ground");

  private final FactDictionary dictionary;
  private final FactSection factSection;
  private final GroundSection groundSection;
  private final Problems problems;
  private final Set<String> namesSeen = new HashSet<>();

  ZoneSection(
      FactDictionary dictionary,
      FactSection factSection,
      GroundSection groundSection,
      Problems problems) {
    this.dictionary = dictionary;
    this.factSection = factSection;
    this.groundSection = groundSection;
    this.problems = problems;
  }

  List<Zone> read(ObjectEntries site, Map<String, StatedFact> siteFacts) {
    List<Zone> zones = new ArrayList<>();
    List<FileNode> items = site.list("zones", MOST_ZONES);
    for (int i = 0; i < items.size(); i++) {
      zones.add(zone(items.get(i), site.placeOf("zones") + "[" + i + "]", siteFacts));
    }
    boolean empty = site.entry("zones").map(node -> node.items().isEmpty()).orElse(true);
    if (empty && site.entry("zones").map(node -> node.kind() == FileNode.Kind.LIST).orElse(true)) {
      site.missing(
          "zones", "a site has at least one zone", "add \"zones\": [ { \"name\": \"…\" } ]");
    }
    return zones;
  }

  private Zone zone(FileNode node, String place, Map<String, StatedFact> siteFacts) {
    ObjectEntries entries = ObjectEntries.of(node, place, NAMES, problems);
    if (node.kind() != FileNode.Kind.OBJECT) {
      return new Zone("", Map.of(), GroundProfile.NONE, "");
    }
    String name = entries.requiredName("a zone");
    if (!name.isEmpty() && !namesSeen.add(name.toLowerCase(Locale.ROOT))) {
      problems.add(
          Code.DUPLICATE_ZONE,
          entries.placeOf("name"),
          "another zone is called " + PlainText.quoted(name),
          "give each zone its own name");
    }
    Map<String, StatedFact> facts =
        entries
            .entry("facts")
            .map(value -> factSection.read(value, entries.placeOf("facts")))
            .orElse(Map.of());
    Optional<GroundProfile> ground =
        entries
            .entry("ground")
            .flatMap(value -> groundSection.read(value, entries.placeOf("ground")));
    requireFacts(entries, facts, siteFacts);
    return new Zone(name, facts, ground.orElse(GroundProfile.NONE), entries.note());
  }

  private void requireFacts(
      ObjectEntries zone, Map<String, StatedFact> facts, Map<String, StatedFact> siteFacts) {
    for (FactDefinition definition : dictionary.all()) {
      if (!definition.required()) {
        continue;
      }
      StatedFact own = facts.get(definition.name());
      StatedFact stated = own == null ? siteFacts.get(definition.name()) : own;
      boolean known = stated != null && stated.value() != null;
      if (!known && !problems.hasAt(own == null ? "facts" : zone.placeOf("facts"), definition)) {
        zone.missing(
            "facts." + definition.name(),
            definition.label() + " must be known: " + definition.question(),
            "allowed: "
                + String.join(
                    ", ",
                    definition.values().stream().map(FactDefinition.Allowed::value).toList()));
      }
    }
  }
}
