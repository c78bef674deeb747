package underhold.consult.screening;

import java.io.BufferedReader;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import underhold.site.PlainText;

/**
 * The rows of a file of comma-separated values (RFC 4180) in UTF-8, with or without byte order
 * mark, read one at a time. Semicolons separate where the first row has more of them than commas. A
 * row that breaks the rules is told and passed over; only an open quotation mark, or bytes that are
 * not UTF-8, end the reading, for then nothing says where the next row begins.
 */
final class CsvRecords implements Closeable {
  /** More characters than any row has: a quotation mark was left open. */
  static final int LONGEST_ROW = 500_000;

  private static final char QUOTE = '"';
  private static final char MARK = '\uFEFF';
  private static final int END = -1;

  private final BufferedReader reader;
  private char separator;
  private int line = 1;
  private long bytesRead;
  private boolean ended;

  private CsvRecords(InputStream bytes) {
    this.reader =
        new BufferedReader(
            new InputStreamReader(
                bytes,
                StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)));
  }

  static CsvRecords open(Path file) throws IOException {
    return new CsvRecords(Files.newInputStream(file));
  }

  /** How many bytes the rows handed out so far take in the file. */
  long bytesRead() {
    return bytesRead;
  }

  /** The next row that is not blank; empty at the end. */
  Optional<CsvRecord> next() {
    while (!ended) {
      CsvRecord record = read();
      if (!record.blank()) {
        return Optional.of(record);
      }
    }
    return Optional.empty();
  }

  private CsvRecord read() {
    int first = line;
    StringBuilder row = new StringBuilder();
    try {
      if (!take(row)) {
        return stopped(
            first,
            "the row that begins here has no end: a quotation mark is left open, or it has more than "
                + LONGEST_ROW
                + " characters; close the quotation mark (inside a text it is written twice). The"
                + " rest of the file was not read");
      }
    } catch (CharacterCodingException e) {
      return stopped(
          first,
          "from about here the file is not UTF-8 text; save it as CSV in UTF-8. The rest of the file"
              + " was not read");
    } catch (IOException e) {
      return stopped(
          first, "the file cannot be read on: " + PlainText.shown(String.valueOf(e.getMessage())));
    }
    if (separator == 0 && !row.toString().isBlank()) {
      separator = separator(row);
    }
    return split(first, row.toString());
  }

  private CsvRecord stopped(int first, String problem) {
    ended = true;
    return new CsvRecord(first, List.of(), problem, true);
  }

  /** Takes the characters of one row, without its end; false where the row does not end. */
  private boolean take(StringBuilder row) throws IOException {
    boolean quoted = false;
    boolean cellBegins = true;
    while (row.length() <= LONGEST_ROW) {
      int next = read(reader);
      if (next == END) {
        ended = true;
        return !quoted;
      }
      char sign = (char) next;
      if (sign == MARK && line == 1 && row.isEmpty()) {
        continue;
      }
      if (sign == '\r' || sign == '\n') {
        line++;
        boolean pair = sign == '\r' && follows('\n');
        if (!quoted) {
          return true;
        }
        row.append(pair ? "\r\n" : String.valueOf(sign));
        continue;
      }
      row.append(sign);
      if (quoted) {
        if (sign == QUOTE) {
          if (follows(QUOTE)) {
            row.append(QUOTE);
          } else {
            quoted = false;
          }
        }
      } else {
        quoted = sign == QUOTE && cellBegins;
        cellBegins = separates(sign);
      }
    }
    return false;
  }

  private boolean separates(char sign) {
    return separator == 0 ? sign == ',' || sign == ';' : sign == separator;
  }

  private int read(Reader signs) throws IOException {
    int next = signs.read();
    bytesRead += next == END ? 0 : bytes(next);
    return next;
  }

  /** The bytes of a sign in UTF-8; one half of a pair has two of its four. */
  private static int bytes(int sign) {
    boolean half = Character.isSurrogate((char) sign);
    return sign < 0x80 ? 1 : sign < 0x800 || half ? 2 : 3;
  }

  /** Takes the sign if it comes next. */
  private boolean follows(char wanted) throws IOException {
    reader.mark(1);
    if (reader.read() == wanted) {
      bytesRead++;
      return true;
    }
    reader.reset();
    return false;
  }

  private static char separator(CharSequence row) {
    long semicolons = row.chars().filter(sign -> sign == ';').count();
    long commas = row.chars().filter(sign -> sign == ',').count();
    return semicolons > commas ? ';' : ',';
  }

  private CsvRecord split(int first, String row) {
    char by = separator == 0 ? ',' : separator;
    CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(by).get();
    try (CSVParser parser = CSVParser.parse(row, format)) {
      List<org.apache.commons.csv.CSVRecord> records = parser.getRecords();
      return new CsvRecord(
          first, records.isEmpty() ? List.of() : records.get(0).toList(), "", false);
    } catch (IOException | java.io.UncheckedIOException e) {
      return new CsvRecord(
          first,
          List.of(),
          "the row cannot be split into cells: after the quotation mark that closes a cell something"
              + " stands before the next separator; write a quotation mark inside a text twice",
          false);
    }
  }

  @Override
  public void close() throws IOException {
    reader.close();
  }
}
