package underhold.consult.screening;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import underhold.consult.screening.CsvColumn.Kind;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.LayerFields;
import underhold.site.NearestName;
import underhold.site.PlainText;
import underhold.site.ZoneViews;

/** Reads the first row of a table of zones: which column holds what. */
final class CsvHeader {
  /** More layers than any boring log tells apart. */
  static final int MOST_LAYERS = 200;

  /** More columns than all facts and {@link #MOST_LAYERS} layers take, with room for one's own. */
  static final int MOST_COLUMNS = 5000;

  private static final int MOST_PROBLEMS = 50;
  private static final String ZONE = "zone";
  private static final String PASSED_OVER = "#";
  private static final Map<String, Kind> WORDS =
      Map.of(ZONE, Kind.ZONE, "site", Kind.SITE, "units", Kind.UNITS, "note", Kind.NOTE);
  private static final Pattern WITH_UNIT = Pattern.compile("(.*?)\\s*\\[\\s*([^\\[\\]]*?)\\s*\\]");
  private static final Pattern LAYER = Pattern.compile("layer([0-9]{1,3})\\.(\\w+)");
  private static final String LAYER_NOTE = "note";

  private final String file;
  private final int line;
  private final FactDictionary dictionary = FactDictionary.standard();
  private final Map<String, FactDefinition> layerFields = new LayerFields(dictionary).all();
  private final List<String> problems = new ArrayList<>();

  private CsvHeader(String file, int line) {
    this.file = file;
    this.line = line;
  }

  /**
   * What became of a header.
   *
   * @param columns its columns, the first one first
   * @param problems what has to be put right before any row can be read; empty where nothing has
   */
  record Reading(List<CsvColumn> columns, List<String> problems) {
    Reading {
      columns = List.copyOf(columns);
      problems = List.copyOf(problems);
    }
  }

  static Reading read(CsvRecord record, String file) {
    CsvHeader header = new CsvHeader(file, record.line());
    return new Reading(header.columns(record.cells()), header.problems);
  }

  private List<CsvColumn> columns(List<String> cells) {
    List<CsvColumn> columns = new ArrayList<>();
    Map<String, Integer> seen = new HashMap<>();
    if (cells.size() > MOST_COLUMNS) {
      problems.add(
          file
              + ":"
              + line
              + ": the header has "
              + cells.size()
              + " columns, more than the "
              + MOST_COLUMNS
              + " that a table may have; leave out what is not about the zones");
      return columns;
    }
    for (int i = 0; i < cells.size(); i++) {
      if (problems.size() == MOST_PROBLEMS) {
        problem(i + 1, "what is wrong from here on is not listed", "put right the columns before");
        return columns;
      }
      CsvColumn column = column(i + 1, cells.get(i).strip());
      columns.add(column);
      Integer before =
          column.kind() == Kind.PASSED_OVER ? null : seen.putIfAbsent(column.name(), i + 1);
      if (before != null) {
        problem(i + 1, "the column " + column.name() + " stands at " + before + " already", "");
      }
    }
    required(seen);
    return columns;
  }

  private void required(Map<String, Integer> seen) {
    List<String> names = new ArrayList<>(List.of(ZONE));
    dictionary.all().stream()
        .filter(FactDefinition::required)
        .forEach(definition -> names.add(definition.name()));
    for (String name : names) {
      if (!seen.containsKey(name)) {
        problems.add(
            file
                + ":"
                + line
                + ": there is no column "
                + name
                + ", which every zone needs; the first row holds the names of the columns"
                + " (screen --template prints one)");
      }
    }
  }

  private CsvColumn column(int number, String cell) {
    if (cell.isEmpty() || cell.startsWith(PASSED_OVER)) {
      return new CsvColumn(number, cell, Kind.PASSED_OVER, 0, "", "");
    }
    Matcher bracket = WITH_UNIT.matcher(cell);
    boolean united = bracket.matches();
    String name = united ? bracket.group(1) : cell;
    String unit = united ? bracket.group(2) : "";
    Kind word = WORDS.get(name);
    if (word != null) {
      refuseUnit(number, name, unit);
      return new CsvColumn(number, name, word, 0, name, "");
    }
    Matcher layer = LAYER.matcher(name);
    if (layer.matches()) {
      return layer(number, name, Integer.parseInt(layer.group(1)), layer.group(2), unit);
    }
    return dictionary
        .find(name)
        .map(definition -> fact(number, definition, unit))
        .orElseGet(() -> unknown(number, name));
  }

  private CsvColumn fact(int number, FactDefinition definition, String unit) {
    if (definition.derived()) {
      List<String> sources = ZoneViews.sources(definition.name());
      problem(
          number,
          definition.label()
              + " is never stated; it follows "
              + (sources.isEmpty()
                  ? "by rule from other facts"
                  : "from " + String.join(", ", sources)),
          "leave the column out");
    }
    return new CsvColumn(
        number,
        definition.name(),
        Kind.FACT,
        0,
        definition.name(),
        unit(number, definition.name(), definition, unit));
  }

  private CsvColumn layer(int number, String name, int layer, String field, String unit) {
    FactDefinition definition = layerFields.get(field);
    boolean note = field.equals(LAYER_NOTE);
    if (layer < 1 || layer > MOST_LAYERS) {
      problem(number, "layers are numbered from 1 to " + MOST_LAYERS + ", not " + layer, "");
    }
    if (definition == null && !note) {
      List<String> names = new ArrayList<>(layerFields.keySet());
      names.add(LAYER_NOTE);
      problem(
          number,
          "a layer has no field "
              + PlainText.quoted(field)
              + "; it has: "
              + String.join(", ", names),
          NearestName.question(field, names));
    }
    String known = definition == null ? "" : unit(number, name, definition, unit);
    return new CsvColumn(number, name, Kind.LAYER, layer, field, known);
  }

  private String unit(int number, String name, FactDefinition definition, String unit) {
    if (unit.isEmpty()) {
      return "";
    }
    if (!CsvColumn.takesUnit(definition)) {
      refuseUnit(number, name, unit);
      return "";
    }
    var measure = definition.requireRange().measure();
    if (measure.unit(unit).isEmpty()) {
      problem(
          number,
          PlainText.quoted(unit) + " is no unit of " + measure.phrase(),
          "such as " + name + " [" + measure.insideUnit() + "]");
    }
    return unit;
  }

  private void refuseUnit(int number, String name, String unit) {
    if (!unit.isEmpty()) {
      problem(number, name + " has no unit, but the header says [" + unit + "]", "leave it out");
    }
  }

  private CsvColumn unknown(int number, String name) {
    TreeSet<String> names = new TreeSet<>(WORDS.keySet());
    dictionary.all().stream()
        .filter(definition -> !definition.derived())
        .forEach(definition -> names.add(definition.name()));
    String near = NearestName.question(name, names);
    problem(
        number,
        "there is no fact " + PlainText.quoted(name),
        (near.isEmpty() ? "" : near + " ")
            + "facts lists the names; a column of your own begins with #");
    return new CsvColumn(number, name, Kind.PASSED_OVER, 0, "", "");
  }

  private void problem(int number, String message, String suggestion) {
    problems.add(
        file
            + ":"
            + line
            + ": column "
            + number
            + ": "
            + message
            + (suggestion.isEmpty() ? "" : "; " + suggestion));
  }
}
