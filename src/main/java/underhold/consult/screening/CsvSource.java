package underhold.consult.screening;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.consult.screening.CsvColumn.Kind;

/** The rows of a table of zones. */
final class CsvSource implements Source {
  /** The ending of such a table, and what is left out where its name stands for that of a site. */
  static final String ENDING = ".csv";

  private static final String LONG_ENDING = ".zones.csv";

  private final String name;
  private final CsvRecords records;
  private final List<CsvColumn> columns;
  private final List<String> names;
  private final int zoneColumn;
  private final String siteName;

  private CsvSource(String name, String siteName, CsvRecords records, List<CsvColumn> columns) {
    this.name = name;
    this.siteName = siteName;
    this.records = records;
    this.columns = columns;
    this.names = columns.stream().map(column -> column.name() + " " + column.unit()).toList();
    this.zoneColumn =
        columns.stream()
            .filter(column -> column.kind() == Kind.ZONE)
            .mapToInt(CsvColumn::number)
            .findFirst()
            .orElse(0);
  }

  /** What became of opening a table: a source, or what is wrong with its header. */
  record Opened(Optional<CsvSource> source, List<String> problems) {
    Opened {
      problems = List.copyOf(problems);
    }
  }

  /**
   * Opens a table and reads its header.
   *
   * @param file the file
   * @param name the name that messages show
   */
  static Opened open(Path file, String name) throws IOException {
    CsvRecords records = CsvRecords.open(file);
    boolean kept = false;
    try {
      Optional<CsvRecord> first = records.next();
      if (first.isEmpty() || !first.get().problem().isEmpty()) {
        String why =
            first
                .map(CsvRecord::problem)
                .orElse("the file is empty; its first row names the columns");
        return new Opened(Optional.empty(), List.of(name + ":1: " + why));
      }
      CsvHeader.Reading header = CsvHeader.read(first.get(), name);
      if (!header.problems().isEmpty()) {
        return new Opened(Optional.empty(), header.problems());
      }
      kept = true;
      return new Opened(
          Optional.of(new CsvSource(name, stem(file), records, header.columns())), List.of());
    } finally {
      if (!kept) {
        records.close();
      }
    }
  }

  private static String stem(Path file) {
    String whole = String.valueOf(file.getFileName());
    String ending = whole.endsWith(LONG_ENDING) ? LONG_ENDING : ENDING;
    String stem = whole.substring(0, Math.max(0, whole.length() - ending.length()));
    return stem.isBlank() ? whole : stem;
  }

  @Override
  public Optional<ZoneEntry> next() {
    return records.next().map(this::entry);
  }

  private ZoneEntry entry(CsvRecord record) {
    List<String> cells = record.cells();
    String zone = zoneColumn > cells.size() ? "" : cells.get(zoneColumn - 1).strip();
    Place place = new Place(name, record.line(), zone);
    List<String> texts = new ArrayList<>(names);
    texts.add(String.valueOf(record.line()));
    texts.addAll(cells);
    CsvRecord kept = bounded(record);
    return new ZoneEntry(
        place, Digest.id(texts), () -> new CsvRow(place, siteName, columns, kept).read());
  }

  /** Many rows wait at a time: one of very many cells is refused here and its cells let go. */
  private CsvRecord bounded(CsvRecord record) {
    int cells = record.cells().size();
    return cells <= CsvHeader.MOST_COLUMNS
        ? record
        : new CsvRecord(
            record.line(),
            List.of(),
            "the row has "
                + cells
                + " cells, the header "
                + columns.size()
                + "; no table has more than "
                + CsvHeader.MOST_COLUMNS,
            false);
  }

  @Override
  public long bytesRead() {
    return records.bytesRead();
  }

  @Override
  public void close() throws IOException {
    records.close();
  }
}
