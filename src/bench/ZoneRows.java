package bench;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;

/**
 * Writes a table of many zones: the rows of a table again and again, every amount up to a seventh
 * larger or smaller, and one cell in ten emptied. Usage: ZoneRows FROM.csv ROWS SEED TO.csv
 */
final class ZoneRows {
  private static final Pattern AMOUNT = Pattern.compile("([0-9.]+)( \\D.*)");
  private static final double SPREAD = 0.15;
  private static final int FORGOTTEN = 10;
  private static final List<String> KEPT =
      List.of("zone", "loadPattern", "excavationPosition", "units");

  private ZoneRows() {}

  public static void main(String[] words) throws IOException {
    List<CSVRecord> rows;
    try (Reader reader = Files.newBufferedReader(Path.of(words[0]));
        CSVParser parser = CSVParser.parse(reader, CSVFormat.RFC4180)) {
      rows = parser.getRecords();
    }
    Random random = new Random(Long.parseLong(words[2]));
    CSVRecord head = rows.get(0);
    try (Writer writer = Files.newBufferedWriter(Path.of(words[3]));
        CSVPrinter printer = new CSVPrinter(writer, CSVFormat.RFC4180)) {
      printer.printRecord(head);
      for (int i = 0; i < Integer.parseInt(words[1]); i++) {
        CSVRecord row = rows.get(1 + i % (rows.size() - 1));
        List<String> cells = new ArrayList<>();
        for (int j = 0; j < row.size(); j++) {
          String column = head.get(j);
          boolean kept = KEPT.contains(column) || column.startsWith("layer");
          String cell = column.equals("zone") ? row.get(j) + ", " + i : row.get(j);
          cells.add(!kept && random.nextInt(FORGOTTEN) == 0 ? "" : varied(cell, random));
        }
        printer.printRecord(cells);
      }
    }
  }

  private static String varied(String cell, Random random) {
    Matcher amount = AMOUNT.matcher(cell);
    if (!amount.matches()) {
      return cell;
    }
    double factor = 1 + SPREAD * (2 * random.nextDouble() - 1);
    double value = Double.parseDouble(amount.group(1)) * factor;
    return new BigDecimal(value).round(new MathContext(3)).toPlainString() + amount.group(2);
  }
}
