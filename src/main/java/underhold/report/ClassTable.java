package underhold.report;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import underhold.classroom.ClassFile;
import underhold.classroom.Mark;

/**
 * The marks of a class as comma-separated values (RFC 4180), one line a mark. A text that a
 * spreadsheet would take for a formula begins with an apostrophe.
 */
public final class ClassTable {
  private static final String FORMULA = "=+-@\t\r";

  private ClassTable() {}

  /** The table with its heading. */
  public static String of(ClassFile file) {
    Stream<List<String>> heading =
        Stream.of(List.of("student", "case", "stage", "about", "points", "of"));
    Stream<List<String>> rows = file.marks().stream().map(ClassTable::row);
    return Stream.concat(heading, rows)
        .map(row -> row.stream().map(ClassTable::field).collect(Collectors.joining(",")) + "\r\n")
        .collect(Collectors.joining());
  }

  private static List<String> row(Mark mark) {
    return List.of(
        mark.student(),
        mark.of(),
        String.valueOf(mark.stage() + 1),
        mark.about(),
        ClassMarksText.points(mark.points()),
        ClassMarksText.points(mark.outOf()));
  }

  private static String field(String text) {
    String safe = SafeText.of(text);
    String plain = !safe.isEmpty() && FORMULA.indexOf(safe.charAt(0)) >= 0 ? "'" + safe : safe;
    return plain.matches("[^\",\\r\\n]*") ? plain : "\"" + plain.replace("\"", "\"\"") + "\"";
  }
}
