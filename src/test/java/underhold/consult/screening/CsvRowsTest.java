package underhold.consult.screening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import underhold.quantity.UnitSystem;
import underhold.site.GroundLayer;
import underhold.site.Site;

/** What rows of a table of zones say, and what is told of those that cannot be used. */
class CsvRowsTest {
  private static final String HEAD =
      "zone,loadPattern,excavationPosition,foundingDepth [m],excavationDepth,gapToExcavation";

  @TempDir Path folder;

  private Site site(String head, String row) {
    try (ZoneInput input =
        Tables.input(Tables.file(folder, "estate.zones.csv", head + "\n" + row))) {
      ZoneReading reading = input.next().orElseThrow().reading().get();
      assertThat(reading).isInstanceOf(ZoneReading.Read.class);
      return ((ZoneReading.Read) reading).site();
    }
  }

  private static String stated(Site site, String fact) {
    return String.valueOf(
        site.zones().get(0).facts().get(fact) == null
            ? null
            : site.zones().get(0).facts().get(fact).value().text());
  }

  private List<String> problems(String... rows) {
    return Tables.readings(
        Tables.file(folder, "bad.csv", HEAD + "\n" + String.join("\n", rows) + "\n"));
  }

  private List<String> headProblems(String head) {
    return ZoneInput.of(List.of(Tables.file(folder, "head.csv", head + "\n"))).problems();
  }

  @Test
  @DisplayName(
      "A bare number takes the unit of the header, another keeps its own as typed; an empty cell is unknown")
  void units_stand_in_the_header_or_in_the_cell() {
    Site metres = site(HEAD, "a,continuous,beside,1.2,4 m,");
    assertThat(stated(metres, "foundingDepth")).isEqualTo("1.2 m");
    assertThat(stated(metres, "gapToExcavation")).isEqualTo("null");
    assertThat(metres.units()).isEqualTo(UnitSystem.SI);
    assertThat(metres.name()).isEqualTo("estate");

    Site feet = site(HEAD, "b,continuous,beside,4 ft,13 ft 6 in,2 ft");
    assertThat(stated(feet, "foundingDepth")).isEqualTo("4 ft");
    assertThat(stated(feet, "excavationDepth")).isEqualTo("13 ft 6 in");
    assertThat(feet.units()).isEqualTo(UnitSystem.US);
  }

  @Test
  void the_ground_stands_in_numbered_columns() {
    Site site =
        site(
            "zone,loadPattern,excavationPosition,layer1.top [ft],layer1.soil,layer2.top [ft],layer2.soil,"
                + "layer2.n60,layer3.top [ft],layer3.soil,units,site,# ours",
            "a,continuous,beside,0,fill,4,dense-sand,31,,,US,Weir Street,17-b");

    assertThat(site.zones().get(0).ground().layers())
        .extracting(GroundLayer::soil)
        .containsExactly("fill", "dense-sand");
    assertThat(site.zones().get(0).ground().layers().get(1).top().text()).isEqualTo("4 ft");
    assertThat(site.name()).isEqualTo("Weir Street");
  }

  @Test
  void all_problems_of_a_row_stand_in_one_line_with_column_value_limit_and_what_to_do() {
    List<String> told =
        problems(
            "good,continuous,beside,1,4 m,0 m",
            "north wall,continous,beside,900,3 bananas,-1 m",
            "no pattern,,beside,1,4 m,0 m",
            ",continuous,beside,1,4 m,0 m",
            "short,continuous,beside",
            "long,continuous,beside,1,4 m,0 m,and more",
            "deep,continuous,beside,5,4 m,\"1,5 m\"");

    assertThat(told).hasSize(7);
    assertThat(told.get(0)).isEmpty();
    assertThat(told.get(1))
        .doesNotContain("\n")
        .contains("bad.csv:3: \"north wall\" is skipped: ")
        .contains("column 2, loadPattern: \"continous\" is not a value")
        .contains("did you mean \"continuous\"?")
        .contains("column 4, foundingDepth: ")
        .contains("900 m")
        .contains("must lie between")
        .contains("column 5, excavationDepth: ")
        .contains("bananas")
        .contains("column 6, gapToExcavation: ");
    assertThat(told.get(2)).contains("loadPattern").contains("must be known").contains("allowed:");
    assertThat(told.get(3)).contains("column 1, zone: the name is empty");
    assertThat(told.get(4)).contains("3 cells, the header 6");
    assertThat(told.get(5)).contains("7 cells, the header 6");
    assertThat(told.get(6)).contains("column 6, gapToExcavation: ");
  }

  @Test
  void facts_that_cannot_all_be_true_are_told_as_in_a_site_file() {
    String head =
        "zone,loadPattern,excavationPosition,foundingDepth,excavationDepth,excavationBelowFooting";

    List<String> told =
        Tables.readings(Tables.file(folder, "c.csv", head + "\na,continuous,beside,1 m,4 m,9 m\n"));

    assertThat(told.get(0)).contains("correct or leave out one of");
  }

  @Test
  void a_layer_may_not_be_left_out() {
    String head =
        "zone,loadPattern,excavationPosition,layer1.top,layer1.soil,layer2.top,layer2.soil";

    List<String> told =
        Tables.readings(
            Tables.file(
                folder,
                "l.csv",
                head
                    + "\na,continuous,beside,,,0 m,fill"
                    + "\nb,continuous,beside,0 m,fill,0 m,peat"
                    + "\nc,continuous,beside,0 m,,2 m,mud\n"));

    assertThat(told.get(0)).contains("layer2 is filled in, but layer1 is empty");
    assertThat(told.get(1)).contains("column 6, layer2.top: the layer begins at 0 m");
    assertThat(told.get(2))
        .contains("layer1.soil: a layer needs a soil class")
        .contains("layer2.soil");
  }

  @Test
  void a_header_is_refused_with_all_that_is_wrong_with_it() {
    assertThat(
            headProblems("zone,loadPatern,excavationPosition,excavationPosition").stream()
                .collect(Collectors.joining("\n")))
        .contains("head.csv:1: column 2: there is no fact \"loadPatern\"")
        .contains("did you mean \"loadPattern\"?")
        .contains("excavationPosition stands at 3 already")
        .contains("there is no column loadPattern");
    assertThat(
            headProblems("zone,loadPattern,excavationPosition,foundingDepth [kPa],wallsTied [m]"))
        .anyMatch(told -> told.contains("\"kPa\" is no unit of a length"))
        .anyMatch(told -> told.contains("wallsTied has no unit"));
    assertThat(headProblems("zone,loadPattern,excavationPosition,layer1.depth,layer0.top"))
        .anyMatch(told -> told.contains("a layer has no field \"depth\""))
        .anyMatch(told -> told.contains("from 1 to 200, not 0"));
    assertThat(headProblems("")).anyMatch(told -> told.contains("the file is empty"));
    assertThat(headProblems("zone,loadPattern,excavationPosition,pitDepth"))
        .anyMatch(told -> told.contains("never stated"));
  }

  @Test
  @DisplayName("Headers and rows of very many cells are told in a few lines, and not kept")
  void tables_are_no_wider_than_any_zone_needs() {
    String nonsense = ",colum".repeat(CsvHeader.MOST_COLUMNS - 10);

    assertThat(headProblems(HEAD + ",#".repeat(CsvHeader.MOST_COLUMNS)))
        .singleElement()
        .asString()
        .contains("head.csv:1: the header has 5006 columns, more than the 5000");
    assertThat(headProblems(HEAD + nonsense)).hasSizeLessThan(60);
    assertThat(headProblems(HEAD + nonsense)).last().asString().contains("is not listed");
    assertThat(problems("a,continuous,beside,1,4 m,0 m" + ",x".repeat(6000), "b,,,,,"))
        .first()
        .asString()
        .contains("bad.csv:2: \"a\" is skipped: the row has 6006 cells, the header 6");
  }

  @Test
  void a_device_is_called_one() {
    Path device = Path.of("/dev/null");
    assumeTrue(Files.exists(device));

    assertThat(ZoneInput.of(List.of(device)).problems())
        .containsExactly("/dev/null is a device or pipe, not a file.");
  }
}
