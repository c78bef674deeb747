package underhold.report.dossier;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.report.document.Block;
import underhold.report.document.Section;

/** The quantities of whole sites: every part of a method, and like with like in the sums. */
class QuantitiesTest {
  private static List<Block.Table> tables(String demo) {
    Section section = QuantitiesSection.of(Demos.material(demo));
    return section.blocks().stream()
        .filter(Block.Table.class::isInstance)
        .map(Block.Table.class::cast)
        .toList();
  }

  private static Stream<String> rows(List<Block.Table> tables, String caption) {
    return tables.stream()
        .filter(table -> table.caption().startsWith(caption))
        .flatMap(table -> table.rows().stream())
        .map(row -> row.cells().stream().map(cell -> cell.text()).toList().toString());
  }

  @Test
  @DisplayName("a hybrid names its piles, by the sheet that sizes them")
  void piles_of_a_hybrid() {
    List<Block.Table> orchard = tables("orchard-line-box.site.json");

    assertThat(rows(orchard, "box, drilled piles with edge pits"))
        .anyMatch(row -> row.startsWith("[drilled piles, 187"));
    assertThat(orchard).extracting(Block.Table::caption).contains("box, drilled piles");
    assertThat(rows(orchard, "box, drilled piles")).anyMatch(row -> row.startsWith("[piles, 187"));
  }

  @Test
  @DisplayName("drilled piles and mini piles of brackets are not summed together")
  void kinds_apart() {
    List<Block.Table> bridges = tables("three-bridges-interchange.site.json");

    assertThat(rows(bridges, "Items of several zones"))
        .as("121 of the box and 14 of the end of the cut")
        .anyMatch(row -> row.startsWith("[piles, drilled piles, 135"))
        .noneMatch(row -> row.contains("122"));
    assertThat(rows(bridges, "Items of several zones"))
        .as("two zones bring soil, one of them by its pits and by their piles")
        .anyMatch(row -> row.startsWith("[spoil to cart") && row.contains("over 2 zones"));
    assertThat(tables("orchard-line-box.site.json"))
        .as("one zone has nothing to sum")
        .noneMatch(table -> table.caption().startsWith("Items of several zones"));
  }
}
