package underhold.consult.screening;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import underhold.site.FileNode;
import underhold.site.PlainText;
import underhold.site.SiteProblem;
import underhold.site.SiteReader;
import underhold.site.SiteReading;

/**
 * One row of a table of zones, read as the site file of one zone would be: the same facts, the same
 * checks, and the same words for what is wrong.
 */
final class CsvRow {
  private static final String VERSION = "site/1";
  private static final Pattern FACT = Pattern.compile("(?:zones\\[0\\]\\.)?facts\\.(.+)");
  private static final Pattern LAYER =
      Pattern.compile("zones\\[0\\]\\.ground\\.layers\\[([0-9]+)\\](\\..+)?");

  private final Place place;
  private final String siteName;
  private final List<CsvColumn> columns;
  private final CsvRecord record;
  private final List<String> problems = new ArrayList<>();

  CsvRow(Place place, String siteName, List<CsvColumn> columns, CsvRecord record) {
    this.place = place;
    this.siteName = siteName;
    this.columns = columns;
    this.record = record;
  }

  /** The zone of the row, or all that is wrong with it in one line. */
  ZoneReading read() {
    checkLength();
    FileNode root = root();
    if (!problems.isEmpty()) {
      return refused();
    }
    return SiteReader.read(root, place.source()).fold(this::read, this::refused);
  }

  private ZoneReading read(SiteReading.Valid valid) {
    return new ZoneReading.Read(valid.site(), valid.site().zones().get(0));
  }

  private ZoneReading refused(SiteReading.Invalid invalid) {
    invalid.problems().forEach(problem -> problems.add(words(problem)));
    return refused();
  }

  private ZoneReading refused() {
    String zone = place.zone().isBlank() ? "the row" : PlainText.quoted(place.zone());
    return new ZoneReading.Refused(
        List.of(place.text() + ": " + zone + " is skipped: " + String.join(" | ", problems)));
  }

  private void checkLength() {
    if (!record.problem().isEmpty()) {
      problems.add(record.problem());
      return;
    }
    int cells = record.cells().size();
    boolean surplus =
        record.cells().stream().skip(columns.size()).anyMatch(cell -> !cell.isBlank());
    if (cells < columns.size() || surplus) {
      problems.add(
          "the row has "
              + cells
              + " cells, the header "
              + columns.size()
              + "; is a separator missing, or one inside a text without quotation marks?");
    }
  }

  private FileNode root() {
    Map<String, FileNode> site = new LinkedHashMap<>();
    Map<String, FileNode> zone = new LinkedHashMap<>();
    Map<String, FileNode> facts = new LinkedHashMap<>();
    Map<Integer, Map<String, FileNode>> layers = new TreeMap<>();
    site.put("underhold", text(VERSION, 0));
    site.put("name", text(siteName, 0));
    for (CsvColumn column : columns) {
      String typed =
          column.number() > record.cells().size()
              ? ""
              : column.typed(record.cells().get(column.number() - 1));
      FileNode node = text(typed, column.number());
      boolean said = !typed.isEmpty();
      switch (column.kind()) {
        case ZONE -> zone.put("name", node);
        case SITE -> put(site, "name", node, said);
        case UNITS -> put(site, "units", node, said);
        case NOTE -> put(zone, "note", node, said);
        case FACT -> put(facts, column.field(), node, said);
        case LAYER -> {
          if (said) {
            layers
                .computeIfAbsent(column.layer(), key -> new LinkedHashMap<>())
                .put(column.field(), node);
          }
        }
        case PASSED_OVER -> {}
      }
    }
    zone.put("facts", object(facts));
    if (!layers.isEmpty()) {
      checkLayers(new ArrayList<>(layers.keySet()));
      List<FileNode> list = new ArrayList<>();
      layers.values().forEach(layer -> list.add(object(layer)));
      zone.put("ground", object(Map.of("layers", list(list))));
    }
    site.put("zones", list(List.of(object(zone))));
    return object(site);
  }

  private static void put(Map<String, FileNode> entries, String name, FileNode node, boolean said) {
    if (said) {
      entries.put(name, node);
    }
  }

  private void checkLayers(List<Integer> numbers) {
    for (int i = 0; i < numbers.size(); i++) {
      if (numbers.get(i) != i + 1) {
        problems.add(
            "layer"
                + numbers.get(i)
                + " is filled in, but layer"
                + (i + 1)
                + " is empty; number the layers from the surface down without a gap");
        return;
      }
    }
  }

  private FileNode text(String text, int column) {
    return new FileNode(FileNode.Kind.TEXT, text, List.of(), List.of(), record.line(), column);
  }

  private FileNode list(List<FileNode> items) {
    return new FileNode(FileNode.Kind.LIST, "", List.of(), items, record.line(), 0);
  }

  private FileNode object(Map<String, FileNode> entries) {
    List<FileNode.Member> members = new ArrayList<>();
    entries.forEach(
        (name, node) -> members.add(new FileNode.Member(name, node, node.line(), node.column())));
    return new FileNode(FileNode.Kind.OBJECT, "", members, List.of(), record.line(), 0);
  }

  /** A problem, with the column in place of the entry of a site file. */
  private String words(SiteProblem problem) {
    String column = columnOf(problem.place());
    String at =
        problem.column() > 0
            ? "column " + problem.column() + ", " + column + ": "
            : column.isEmpty() ? "" : column + ": ";
    String suggestion = problem.suggestion().isEmpty() ? "" : "; " + problem.suggestion();
    return at + problem.message() + suggestion;
  }

  private static String columnOf(String place) {
    Matcher fact = FACT.matcher(place);
    if (fact.matches()) {
      return fact.group(1);
    }
    Matcher layer = LAYER.matcher(place);
    if (layer.matches()) {
      String field = layer.group(2);
      return "layer" + (Integer.parseInt(layer.group(1)) + 1) + (field == null ? "" : field);
    }
    return switch (place) {
      case "zones[0].name" -> "zone";
      case "zones[0].note" -> "note";
      case "name" -> "site";
      case "units" -> "units";
      default -> "";
    };
  }
}
