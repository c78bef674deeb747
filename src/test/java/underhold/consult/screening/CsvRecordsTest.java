package underhold.consult.screening;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rows as RFC 4180 (Shafranovich, 2005, section 2) has them. */
class CsvRecordsTest {
  @TempDir Path folder;

  private List<CsvRecord> records(byte[] bytes) throws IOException {
    List<CsvRecord> all = new ArrayList<>();
    try (CsvRecords records = CsvRecords.open(Files.write(folder.resolve("a.csv"), bytes))) {
      Optional<CsvRecord> next = records.next();
      while (next.isPresent()) {
        all.add(next.get());
        next = records.next();
      }
      assertThat(records.bytesRead()).isEqualTo(bytes.length);
    }
    return all;
  }

  private List<List<String>> cells(String text) throws IOException {
    return records(text.getBytes(StandardCharsets.UTF_8)).stream().map(CsvRecord::cells).toList();
  }

  @Test
  @DisplayName(
      "RFC 4180 rules 1 to 7: line ends, last row without one, quotes, commas and lines in quotes")
  void the_rules_of_the_standard() throws IOException {
    assertThat(cells("zone,b\r\naaa,bbb\r\n\"a,1\",\"b \"\"q\"\" \r\n2\"\r\nx,"))
        .containsExactly(
            List.of("zone", "b"),
            List.of("aaa", "bbb"),
            List.of("a,1", "b \"q\" \r\n2"),
            List.of("x", ""));
  }

  @Test
  void a_byte_order_mark_is_no_part_of_the_first_name() throws IOException {
    assertThat(cells("\uFEFFzone,b\n1,2\n"))
        .containsExactly(List.of("zone", "b"), List.of("1", "2"));
  }

  @Test
  void semicolons_separate_where_the_first_row_has_more_of_them() throws IOException {
    assertThat(cells("zone;b;c\n1,5;\"2;x\";3\n"))
        .containsExactly(List.of("zone", "b", "c"), List.of("1,5", "2;x", "3"));
  }

  @Test
  void an_inch_sign_inside_a_cell_is_no_quotation_mark() throws IOException {
    assertThat(cells("zone,b\n4\",5 ft 6\"\n7,8\n"))
        .containsExactly(List.of("zone", "b"), List.of("4\"", "5 ft 6\""), List.of("7", "8"));
  }

  @Test
  void lines_are_counted_through_quoted_line_ends_and_blank_rows() throws IOException {
    List<CsvRecord> all =
        records("zone,b\n\n\"1\n1\",2\r\n,\n3,4".getBytes(StandardCharsets.UTF_8));

    assertThat(all).extracting(CsvRecord::line).containsExactly(1, 3, 6);
  }

  @Test
  void a_row_that_breaks_the_rules_is_told_and_the_next_one_is_read() throws IOException {
    List<CsvRecord> all = records("zone,b\n\"a\"x,1\nc,2\n".getBytes(StandardCharsets.UTF_8));

    assertThat(all.get(1).problem()).contains("quotation mark").contains("twice");
    assertThat(all.get(2).cells()).containsExactly("c", "2");
  }

  @Test
  void an_open_quotation_mark_ends_the_reading_where_it_began() throws IOException {
    List<CsvRecord> all = records("zone,b\na,1\n\"b,2\nc,3\n".getBytes(StandardCharsets.UTF_8));

    assertThat(all).hasSize(3);
    assertThat(all.get(2).line()).isEqualTo(3);
    assertThat(all.get(2).problem()).contains("left open").contains("was not read");
  }

  @Test
  @DisplayName(
      "A quotation mark left open in an endless file takes no more memory than a row may have")
  void an_endless_row_is_cut() throws IOException {
    String text = "zone\n\"" + "x\n".repeat(CsvRecords.LONGEST_ROW);
    Path file = Files.writeString(folder.resolve("long.csv"), text);
    try (CsvRecords records = CsvRecords.open(file)) {
      records.next();
      assertThat(records.next().orElseThrow().problem()).contains("500000 characters");
      assertThat(records.next()).isEmpty();
    }
  }

  @Test
  void bytes_that_are_no_utf8_end_the_reading() throws IOException {
    byte[] latin = "zone,b\na,1\nMühle,2\n".getBytes(StandardCharsets.ISO_8859_1);

    List<CsvRecord> all = new ArrayList<>();
    try (CsvRecords records = CsvRecords.open(Files.write(folder.resolve("b.csv"), latin))) {
      records.next().ifPresent(all::add);
    }
    assertThat(all.get(0).problem()).contains("not UTF-8").contains("save it as CSV in UTF-8");
  }
}
