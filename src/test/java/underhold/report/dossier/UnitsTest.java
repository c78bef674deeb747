package underhold.report.dossier;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import underhold.quantity.Measure;
import underhold.quantity.UnitSystem;
import underhold.report.document.Block;
import underhold.report.document.Document;
import underhold.report.document.Prose;
import underhold.report.document.Section;

/**
 * Every amount in a sheet, a bill and a working has its unit, or says that it is a count or a
 * ratio. The units are those the program knows; the numbers are found in the text by themselves.
 */
class UnitsTest {
  private static final String NUMBER = "-?\\d+(?:\\.\\d+)?(?:e-?\\d+)?";

  /** Every unit of every measure, the longest first. */
  private static final String UNITS =
      Arrays.stream(Measure.values())
          .flatMap(measure -> measure.units().stream())
          .map(unit -> unit.symbol())
          .filter(symbol -> !symbol.isEmpty())
          .distinct()
          .sorted((one, other) -> other.length() - one.length())
          .map(Pattern::quote)
          .collect(Collectors.joining("|"));

  private static final Pattern AMOUNT =
      Pattern.compile(NUMBER + " (?:(?:" + UNITS + ")|\\(count\\)|\\(ratio\\)|working days?|%)");

  /** Columns whose amounts are no quantities: places in an order, points, and shares. */
  private static final Set<String> PLAIN =
      Set.of("Number", "Stage", "Points", "First, of 100 draws", "Stays, of 100 draws");

  static Stream<String> demos() {
    return Demos.names();
  }

  @ParameterizedTest
  @MethodSource("demos")
  void every_amount_has_its_unit(String demo) {
    Material material = Demos.material(demo);
    check(Demos.whole(demo), material.sheets().size() > 0);
  }

  @Test
  void every_amount_has_its_unit_in_us_units_too() {
    Material material =
        Demos.material(Demos.in(UnitSystem.US, Demos.site("alder-row-party-wall.site.json")));
    Document document = Demos.document(material, Audience.REVIEWER);

    check(document, true);
    assertThat(document.toString()).contains(" kip", " ft");
  }

  /** The scan itself: what it lets pass and what it finds. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "4 m;true",
        "-3.8 m;true",
        "1e-6 m/s;true",
        "12 (count);true",
        "0.25 (ratio);true",
        "86 %;true",
        "52.3 kN·m;true",
        "4;false",
        "4 metres;false",
        "4 m 5;false",
        "m;false"
      })
  void the_scan_knows_an_amount(String text, boolean amount) {
    assertThat(AMOUNT.matcher(text).matches()).isEqualTo(amount);
  }

  private static void check(Document document, boolean sized) {
    List<Block> blocks = new ArrayList<>();
    document.sections().forEach(section -> gather(section, blocks));
    int amounts = 0;
    int workings = 0;
    for (Block block : blocks) {
      if (block instanceof Block.Table table) {
        amounts += table(table);
      }
      if (block instanceof Block.Working working) {
        working(working);
        workings++;
      }
    }
    if (sized) {
      assertThat(amounts).isPositive();
    }
    assertThat(workings).isNotNegative();
  }

  private static int table(Block.Table table) {
    int amounts = 0;
    for (int i = 0; i < table.columns().size(); i++) {
      Block.Column column = table.columns().get(i);
      if (column.amounts() && !PLAIN.contains(column.title())) {
        for (Block.Row row : table.rows()) {
          String text = row.cells().get(i).text();
          if (isNumber(text) && !isTyped(row.cells().get(i))) {
            assertThat(text).as(table.caption() + ": " + row).matches(AMOUNT);
            amounts++;
          }
        }
      }
    }
    return amounts;
  }

  /** Whether a cell says a number, not a word that has one in it, such as a row of a table. */
  private static boolean isNumber(String text) {
    return text.matches("-?[\\d.].*") && !text.startsWith("day ");
  }

  /** Words chosen stand as typed, even where they are years or sizes: {@code 1999}. */
  private static boolean isTyped(Prose cell) {
    return cell.spans().stream().allMatch(span -> span.style() == Prose.Style.TYPED);
  }

  private static void working(Block.Working working) {
    for (Block.Symbol symbol : working.symbols()) {
      assertThat(symbol.value()).as(working.title() + ", " + symbol).matches(AMOUNT);
    }
    String result = working.result().substring(working.result().indexOf(" = ") + 3);
    assertThat(result).as(working.title()).matches(AMOUNT);
    substituted(working, result);
  }

  /** What is put in are the symbols and nothing else; other numbers stand in the formula itself. */
  private static void substituted(Block.Working working, String result) {
    String bare = bare(result);
    assertThat(working.substituted()).as(working.title()).endsWith(" = " + bare);
    String rest =
        working.substituted().substring(0, working.substituted().length() - bare.length());
    for (Block.Symbol symbol : working.symbols()) {
      rest = rest.replace("(" + bare(symbol.value()) + ")", "");
    }
    Set<String> own = numbers(working.formula());
    working.symbols().forEach(symbol -> own.addAll(numbers(bare(symbol.value()))));
    assertThat(own).as(working.title() + ": " + rest).containsAll(numbers(rest));
  }

  private static String bare(String amount) {
    return amount.replace(" (count)", "").replace(" (ratio)", "");
  }

  private static Set<String> numbers(String text) {
    return Pattern.compile("(?<![\\w.])\\d+(?:\\.\\d+)?(?:e-?\\d+)?")
        .matcher(text)
        .results()
        .map(found -> found.group())
        .collect(Collectors.toSet());
  }

  private static void gather(Section section, List<Block> blocks) {
    blocks.addAll(section.blocks());
    section.parts().forEach(part -> gather(part, blocks));
  }
}
