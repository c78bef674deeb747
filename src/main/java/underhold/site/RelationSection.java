package underhold.site;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import underhold.site.SiteProblem.Code;

/**
 * Reads how the zones of a site lie to each other: a list of pairs, each with the two zones by name
 * and what is known of them together. Everything in it may be left out; what is left out is
 * unknown.
 */
final class RelationSection {
  /** Every pair of as many zones as a scheme compares, and more. */
  static final int MOST = 200;

  static final String ENTRY = "relations";
  static final String ZONES = "zones";

  /** Names that a message lists at most. */
  private static final int MOST_NAMED = 20;

  private static final List<String> NAMES = List.of(ZONES, "facts", "note");

  private final FactSection facts;
  private final Problems problems;
  private final Set<String> pairs = new HashSet<>();

  RelationSection(Problems problems) {
    this.facts = new FactSection(FactDictionary.pairs(), problems);
    this.problems = problems;
  }

  List<Relation> read(ObjectEntries site, List<Zone> zones) {
    List<Relation> relations = new ArrayList<>();
    List<FileNode> items = site.list(ENTRY, MOST);
    for (int i = 0; i < items.size(); i++) {
      relation(items.get(i), site.placeOf(ENTRY) + "[" + i + "]", zones).ifPresent(relations::add);
    }
    return relations;
  }

  private Optional<Relation> relation(FileNode node, String place, List<Zone> zones) {
    ObjectEntries entries = ObjectEntries.of(node, place, NAMES, problems);
    if (node.kind() != FileNode.Kind.OBJECT) {
      return Optional.empty();
    }
    if (entries.entry(ZONES).isEmpty()) {
      entries.missing(
          ZONES, "a relation names the two zones it is about", "add \"zones\": [\"…\", \"…\"]");
    }
    List<String> named = named(entries, zones);
    var stated =
        entries
            .entry("facts")
            .map(value -> facts.read(value, entries.placeOf("facts")))
            .orElse(java.util.Map.of());
    String note = entries.note();
    if (named.size() != 2) {
      return Optional.empty();
    }
    return Optional.of(new Relation(named.get(0), named.get(1), stated, note));
  }

  /** The two zones as the site writes them; fewer where something is wrong with them. */
  private List<String> named(ObjectEntries entries, List<Zone> zones) {
    List<FileNode> items = entries.list(ZONES, 2);
    String place = entries.placeOf(ZONES);
    boolean list = entries.entry(ZONES).filter(n -> n.kind() == FileNode.Kind.LIST).isPresent();
    if (list && items.size() < 2) {
      int given = entries.entry(ZONES).map(node -> node.items().size()).orElse(0);
      if (given < 2) {
        problems.add(
            Code.NOT_ALLOWED_VALUE,
            place,
            "a relation is about two zones, not " + given,
            "name two of the site's zones");
      }
      return List.of();
    }
    List<String> names = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      String at = place + "[" + i + "]";
      problems.visit(at, items.get(i));
      ObjectEntries.text(items.get(i), at, problems)
          .flatMap(typed -> find(typed, at, zones))
          .ifPresent(names::add);
    }
    return names.size() == 2 && sound(names, place) ? names : List.of();
  }

  private Optional<String> find(String typed, String place, List<Zone> zones) {
    List<String> there = zones.stream().map(Zone::name).toList();
    Optional<String> found =
        there.stream().filter(name -> name.equalsIgnoreCase(typed.strip())).findFirst();
    if (found.isEmpty()) {
      String suggestion = NearestName.question(typed, there);
      problems.add(
          Code.NOT_ALLOWED_VALUE,
          place,
          "there is no zone " + PlainText.quoted(typed),
          suggestion.isEmpty() ? "zones are: " + shown(there) : suggestion);
    }
    return found;
  }

  /** Names of zones may be unsound themselves, and many. */
  private static String shown(List<String> names) {
    return names.stream().limit(MOST_NAMED).map(PlainText::shown).collect(Collectors.joining(", "));
  }

  private boolean sound(List<String> names, String place) {
    if (names.get(0).equals(names.get(1))) {
      problems.add(
          Code.NOT_ALLOWED_VALUE, place, "both are the same zone", "name two different zones");
      return false;
    }
    String pair =
        String.join("\n", names.stream().map(n -> n.toLowerCase(Locale.ROOT)).sorted().toList());
    if (!pairs.add(pair)) {
      problems.add(
          Code.DUPLICATE_NAME,
          place,
          "another relation is about the same two zones",
          "say all of the two in one entry");
      return false;
    }
    return true;
  }
}
