package underhold.hostile;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import tools.jackson.databind.json.JsonMapper;
import underhold.advice.BuiltInPack;
import underhold.advice.PlainEngine;
import underhold.consult.Consultant;
import underhold.consult.screening.BegunTable;
import underhold.consult.screening.HostileTables;
import underhold.consult.screening.HostileTables.Row;
import underhold.consult.screening.HostileTables.Told;
import underhold.consult.screening.ScreenedZone;
import underhold.consult.screening.TableForm;
import underhold.consult.screening.ZoneScreen;
import underhold.report.ScreeningBasis;
import underhold.report.ScreeningCsv;
import underhold.report.ScreeningJson;
import underhold.site.SiteReader;
import underhold.site.SiteWriter;

/** The readers of tables: those of zones, and those of a screening under way. */
final class TableDoors {

  /** What spreadsheets run; a plain number may begin with a sign. */
  private static final String FORMULA = "(?s)[\\s\"]*[=+@\uFF1D\uFF0B\uFF0D\uFF20-].*";

  private static final String NUMBER = "[-+]?[0-9]+(\\.[0-9]+)?([eE][-+]?[0-9]+)?";

  private final Path file;
  private final Path table;
  private final ScreeningBasis basis = new ScreeningBasis(BuiltInPack.pack(), 0, 1);
  private final ZoneScreen screen =
      new ZoneScreen(new Consultant(new PlainEngine(BuiltInPack.pack())), 0, 1);

  TableDoors(Path folder) {
    this.file = folder.resolve("input.zones.csv");
    this.table = folder.resolve("table");
  }

  /**
   * Pieces of the demo table, and a short one in the other system of units.
   *
   * @param rows how many each has
   */
  static List<byte[]> seeds(int rows) {
    String[] lines =
        new String(
                Seedlings.files("cases/demo", "riverside-estate.zones.csv").get(0),
                StandardCharsets.UTF_8)
            .split("\r?\n", -1);
    List<byte[]> all = new ArrayList<>();
    for (int from = 1; from + rows <= lines.length - 1; from += rows) {
      StringBuilder piece = new StringBuilder(lines[0]);
      for (int i = 0; i < rows; i++) {
        piece.append("\r\n").append(lines[from + i]);
      }
      all.add(Seedlings.bytes(piece + "\r\n"));
    }
    all.add(
        Seedlings.bytes(
            "zone,units,loadPattern,excavationPosition,foundingDepth [ft],excavationDepth,lineLoad,"
                + "layer1.top,layer1.soil,layer2.top,layer2.soil,note,# ours\n"
                + "a,US,continuous,beside,4,14 ft,12 kip/ft,0 ft,fill,4 ft,dense-sand,\"x, y\",=1\n"
                + "b,SI,concentrated,partly-under,1.2 m,4 m,,,,,,,\n"));
    return all;
  }

  /** A table of zones, read to its end. */
  Optional<String> table(byte[] bytes) {
    return read(bytes, Optional.empty());
  }

  /** The same, and each zone answered and written into a row. */
  Optional<String> screened(byte[] bytes) {
    return read(bytes, Optional.of(screen));
  }

  private Optional<String> read(byte[] bytes, Optional<ZoneScreen> with) {
    write(file, bytes);
    Told told = HostileTables.read(file, with);
    Optional<String> wrong = messages(told.problems(), file.toString());
    for (Row row : told.rows()) {
      wrong = wrong.or(() -> messages(row.messages(), row.place() + ": "));
      wrong = wrong.or(() -> row.screened().flatMap(zone -> outcome(zone, row.id())));
      wrong = wrong.or(() -> row.site().flatMap(TableDoors::otherwise));
    }
    return wrong;
  }

  private static Optional<String> messages(List<String> messages, String place) {
    return messages.stream()
        .filter(message -> !message.startsWith(place))
        .findFirst()
        .map(message -> "a message does not name the place: " + Messages.visible(message))
        .or(() -> Messages.wrong(pieces(messages)));
  }

  /** A row is told in one line with all that is wrong with it, which may be much. */
  private static List<String> pieces(List<String> messages) {
    return messages.stream().flatMap(message -> Arrays.stream(message.split(" \\| ", -1))).toList();
  }

  private static Optional<String> otherwise(underhold.site.Site site) {
    String written = SiteWriter.toText(site);
    boolean same =
        SiteReader.read(written, "written")
            .fold(again -> again.site().equals(site), invalid -> false);
    return same ? Optional.empty() : Optional.of("is another site when written");
  }

  private Optional<String> outcome(ScreenedZone zone, String id) {
    String row = new ScreeningCsv(basis).row(zone);
    String json = new ScreeningJson(basis).row(zone);
    if (row.matches("(?s).*[\r\n].*") || json.matches("(?s).*[\r\n].*")) {
      return Optional.of("a row of more than one line: " + Messages.visible(row));
    }
    if (!new ScreeningCsv(basis).id(row).equals(Optional.of(id))
        || !new ScreeningJson(basis).id(json).equals(Optional.of(id))) {
      return Optional.of("a row is not known again: " + Messages.visible(row));
    }
    if (!JsonMapper.shared().readTree(json).get("zone").asString().equals(zone.place().zone())) {
      return Optional.of("the zone has another name in JSON: " + Messages.visible(json));
    }
    for (String cell : cells(row)) {
      if (cell.matches(FORMULA) && !cell.strip().matches(NUMBER)) {
        return Optional.of("a spreadsheet would run " + Messages.visible(cell));
      }
    }
    return Messages.wrong(row);
  }

  private static List<String> cells(String row) {
    try (CSVParser parser = CSVParser.parse(new StringReader(row), CSVFormat.RFC4180)) {
      List<CSVRecord> records = parser.getRecords();
      return records.get(0).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private TableForm form(String ending) {
    return ending.equals("csv") ? new ScreeningCsv(basis) : new ScreeningJson(basis);
  }

  /** Screenings under way of that form, as a kill leaves them. */
  List<byte[]> begun(String ending) {
    TableForm form = form(ending);
    StringBuilder lines = new StringBuilder(form.head() + "\r\n");
    for (byte[] seed : seeds(2).subList(0, 1)) {
      write(file, seed);
      HostileTables.read(file, Optional.of(screen)).rows().stream()
          .flatMap(row -> row.screened().stream())
          .forEach(zone -> lines.append(form.row(zone)).append("\r\n"));
    }
    return List.of(
        Seedlings.bytes(lines.toString()),
        Seedlings.bytes(lines.substring(0, lines.length() / 2)),
        Seedlings.bytes(lines.substring(0, form.head().length() / 2)));
  }

  /** A screening under way: gone on with, or refused and left as it is. */
  Optional<String> begun(String ending, byte[] bytes) {
    TableForm form = form(ending);
    Path named = table.resolveSibling("table." + ending);
    write(BegunTable.begun(named, form), bytes);
    String problem = HostileTables.begun(named, form);
    return problem.isEmpty() ? Optional.empty() : Messages.wrong(List.of(problem));
  }

  private static void write(Path file, byte[] bytes) {
    try {
      Files.write(file, bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
