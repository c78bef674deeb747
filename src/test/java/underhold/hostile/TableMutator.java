package underhold.hostile;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;

/**
 * Makes hostile tables out of sound ones: cells changed, moved and doubled, columns that do not
 * belong, other separators, line ends and quotation marks, and whatever else breaks a file.
 */
final class TableMutator {
  private static final int MOST_CHANGES = 4;
  private static final int HUGE_IN = 2000;
  private static final Pattern NUMBER = Pattern.compile("[0-9]+(?:\\.[0-9]+)?");

  /** What stands between cells or closes them, and what spreadsheets run. */
  private static final List<String> CELLS =
      List.of(
          "\"",
          "\"\"",
          "a\"b",
          "\"a",
          ",",
          ";",
          "\t",
          "\r",
          "\n",
          "\r\n",
          "a,b",
          "=1+1",
          "+1+1",
          "-1+1",
          "@A1",
          "=cmd|' /C calc'!A0",
          "\t=1",
          " =1",
          "\uFF1D1",
          "'=1",
          "#",
          "# =1",
          "=HYPERLINK(\"http://x\",\"y\")",
          "1e999 m",
          "-1e999 m",
          "1e-999 m",
          "NaN",
          "Infinity m",
          "1.2.3 m",
          "1,2 m",
          "1 m 2 m",
          "5' 6\"",
          "9 m9",
          "unknown",
          "none",
          "yes,no");

  private static final List<String> COLUMNS =
      List.of(
          "zone",
          "site",
          "units",
          "note",
          "facts",
          "underhold",
          "zones",
          "name",
          "layer0.top",
          "layer1.top",
          "layer1.top [m]",
          "layer200.soil",
          "layer201.top",
          "layer999.soil",
          "layer1000.top",
          "layer1.",
          "layer1.note",
          "layer1.notes",
          "layer.top",
          "lineLoad [m]",
          "lineLoad [kN/m]",
          "lineLoad [",
          "lineLoad []",
          "lineLoad [[m]]",
          "[m]",
          "zone [m]",
          "lineLoad [kN/m] ",
          " lineLoad",
          "LINELOAD",
          "lineload",
          "pitDepth",
          "#",
          "",
          "#lineLoad",
          "\uFEFFzone",
          "zone\u0000",
          "=zone",
          "worstSoil [kPa]",
          "movementLimit [mm] [in]");

  private static final List<String> FACTORS =
      List.of("0", "0.0", "-1", "1e-9", "0.001", "0.1", "10", "1000", "1e6", "1e12", "1e300");

  private final Random random;
  private final List<List<List<String>>> tables;
  private final List<byte[]> seeds;
  private final Mutator mutator;
  private final boolean withHuge;

  /**
   * Makes tables out of the seeds.
   *
   * @param mutator breaks bytes and encodings
   */
  TableMutator(Random random, List<byte[]> seeds, Mutator mutator, boolean withHuge) {
    this.random = random;
    this.seeds = seeds;
    this.tables = seeds.stream().map(TableMutator::rows).toList();
    this.mutator = mutator;
    this.withHuge = withHuge;
  }

  private static List<List<String>> rows(byte[] table) {
    String text = new String(table, StandardCharsets.UTF_8);
    try (CSVParser parser = CSVParser.parse(text, CSVFormat.RFC4180)) {
      return parser.getRecords().stream().map(record -> record.toList()).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The next table. */
  byte[] next() {
    if (withHuge && random.nextInt(HUGE_IN) == 0) {
      return huge();
    }
    int which = random.nextInt(tables.size());
    int way = random.nextInt(20);
    if (way < 14) {
      return text(which).getBytes(StandardCharsets.UTF_8);
    }
    if (way < 16) {
      return mutator.encoded(text(which));
    }
    return way < 19 ? mutator.broken(seeds.get(which).clone()) : mutator.noise();
  }

  private String text(int which) {
    List<List<String>> table = new ArrayList<>();
    tables.get(which).forEach(row -> table.add(new ArrayList<>(row)));
    int changes = random.nextInt(MOST_CHANGES + 1);
    for (int i = 0; i < changes; i++) {
      change(table);
    }
    return written(table);
  }

  private void change(List<List<String>> table) {
    int line = random.nextInt(4) == 0 ? 0 : random.nextInt(table.size());
    List<String> row = table.get(line);
    if (row.isEmpty()) {
      row.add(one(CELLS));
      return;
    }
    int at = random.nextInt(row.size());
    switch (random.nextInt(12)) {
      case 0 -> row.remove(at);
      case 1 -> row.add(at, row.get(random.nextInt(row.size())));
      case 2 -> row.set(at, row.get(random.nextInt(row.size())));
      case 3 -> table.add(line, new ArrayList<>(one(table)));
      case 4 -> column(table, at);
      case 5 -> row.set(at, one(line == 0 ? COLUMNS : CELLS));
      case 6 -> row.set(at, inside(row.get(at), one(CELLS)));
      default -> row.set(at, line == 0 ? one(COLUMNS) : cell(table, at, row.get(at)));
    }
  }

  /** A column more, with something in some of its cells. */
  private void column(List<List<String>> table, int at) {
    for (int i = 0; i < table.size(); i++) {
      List<String> row = table.get(i);
      String cell = i == 0 ? one(COLUMNS) : random.nextBoolean() ? "" : one(CELLS);
      row.add(Math.min(at, row.size()), cell);
    }
  }

  /** Mostly something that can be read, so that more than the first check is met. */
  private String cell(List<List<String>> table, int at, String was) {
    List<String> other = one(table);
    return switch (random.nextInt(6)) {
      case 0 -> HostileWords.text(random);
      case 1 -> inside(was, HostileWords.text(random));
      case 2 -> "";
      case 3 -> other.size() > at ? other.get(at) : was;
      default -> times(was);
    };
  }

  /** An amount times something. */
  private String times(String was) {
    Matcher number = NUMBER.matcher(was);
    if (!number.find()) {
      return one(CELLS);
    }
    double value = Double.parseDouble(number.group()) * Double.parseDouble(one(FACTORS));
    return was.substring(0, number.start()) + value + was.substring(number.end());
  }

  private String inside(String was, String put) {
    int at = random.nextInt(was.length() + 1);
    return was.substring(0, at) + put + was.substring(at);
  }

  private String written(List<List<String>> table) {
    char separator = random.nextInt(4) == 0 ? one(List.of(';', '\t', '|')) : ',';
    String end = random.nextInt(3) == 0 ? one(List.of("\n", "\r", "\r\n\r\n", "\u2028")) : "\r\n";
    int quotes = random.nextInt(8);
    StringBuilder text = new StringBuilder(random.nextInt(6) == 0 ? "\uFEFF" : "");
    for (List<String> row : table) {
      List<String> cells = row.stream().map(cell -> quoted(cell, separator, quotes)).toList();
      text.append(String.join(String.valueOf(separator), cells)).append(end);
    }
    return text.toString();
  }

  /** As it should be, in quotation marks always, or as it is however that ends. */
  private static String quoted(String cell, char separator, int way) {
    boolean needed =
        cell.chars().anyMatch(sign -> sign == separator || "\"\r\n".indexOf(sign) >= 0);
    boolean quote = way == 0 || (way > 1 && needed);
    return quote ? "\"" + cell.replace("\"", "\"\"") + "\"" : cell;
  }

  private byte[] huge() {
    List<byte[]> all = huge(seeds.get(0));
    return all.get(random.nextInt(all.size()));
  }

  /** Tables with very much of something. */
  static List<byte[]> huge(byte[] seed) {
    int many = 200_000;
    String text = new String(seed, StandardCharsets.UTF_8);
    String head = text.substring(0, text.indexOf('\n') + 1);
    String row = text.substring(head.length());
    List<byte[]> all = new ArrayList<>();
    for (String made :
        List.of(
            head + "x".repeat(many) + row,
            head + "\"" + "x\r\n".repeat(many / 3) + "\"" + row,
            head + "\"" + "\"\"".repeat(many) + "\"" + row,
            head + "\"" + row.repeat(many / 300),
            head + ",".repeat(many) + "\r\n" + row,
            head + ("x" + ",".repeat(many) + "\r\n").repeat(20),
            head.strip() + ",".repeat(many) + "\r\n" + row,
            head.strip() + ",x".repeat(many) + "\r\n" + row,
            head.strip() + ",lineLoa".repeat(many / 20) + "\r\n" + row,
            head.strip() + ",#x".repeat(many) + "\r\n" + row,
            "x".repeat(many) + head + row,
            "\r\n".repeat(many) + head + row,
            head + "\r\n".repeat(many) + row,
            head + " , ,\r\n".repeat(many / 10) + row,
            head + "9".repeat(many) + " m," + row,
            head + "=1,".repeat(many / 3) + "\r\n" + row,
            head + "\u001b".repeat(many) + row)) {
      all.add(Seedlings.bytes(made));
    }
    return all;
  }

  private <T> T one(List<T> all) {
    return all.get(random.nextInt(all.size()));
  }
}
