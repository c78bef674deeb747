package underhold.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class SettingTableTest {
  private static final Setting DEPTH =
      new Setting("seat-depth", "depth", Amount.length(1), 0.5, 2, Source.judgement());
  private static final Setting FACTOR =
      new Setting("factor", "factor", Amount.ratio(3), 2, 4, Source.memory("a manual"));
  private static final Choice METHOD =
      new Choice("method", "method", List.of("alpha", "beta"), Source.practice());
  private static final SettingTable TABLE =
      new SettingTable("props", List.of(DEPTH, FACTOR), List.of(METHOD));

  @Test
  void numbers_and_words_are_read_and_the_later_holds() {
    SettingTable.Read read =
        TABLE.parse(List.of("seatDepth=3 ft", "method=beta", "factor=2.5", "factor = 3.5"));
    assertThat(read.problems()).isEmpty();
    assertThat(read.settings().get(DEPTH)).isCloseTo(0.9144, within(1e-9));
    assertThat(read.settings().get(FACTOR)).isEqualTo(3.5);
    assertThat(read.settings().get(METHOD)).isEqualTo("beta");
    assertThat(read.settings().origin(METHOD)).isEqualTo(Origin.SET_BY_USER);
    assertThat(TABLE.defaults().origin(DEPTH)).isEqualTo(Origin.DEFAULT);
    assertThat(TABLE.defaults().origin(METHOD)).isEqualTo(Origin.DEFAULT);
    assertThat(TABLE.defaults().get(METHOD)).isEqualTo("alpha");
    assertThat(TABLE.defaults().get(FACTOR)).isEqualTo(3);
  }

  @Test
  void every_problem_is_named_and_nothing_else_changes() {
    SettingTable.Read read =
        TABLE.parse(
            List.of("seat-depth=3 m", "method=gamma", "factor", "factr=3", "factor=4 ft", "x=1"));
    assertThat(read.problems()).hasSize(6);
    assertThat(read.problems().get(0)).contains("seat-depth is 3 m", "0.5 m", "2 m");
    assertThat(read.problems().get(1)).contains("gamma", "alpha, beta");
    assertThat(read.problems().get(2)).contains("NAME=VALUE", "seat-depth=1 m");
    assertThat(read.problems().get(3)).contains("did you mean \"factor\"?", "for props");
    assertThat(read.problems().get(5)).contains("known: seat-depth, factor, method");
    assertThat(read.settings()).isEqualTo(TABLE.defaults());
  }

  @Test
  void a_sheet_shows_every_setting_with_its_origin() {
    SheetBuilder builder = SheetBuilder.titled("t", "props");
    TABLE.defaults().with(FACTOR, 2).with(METHOD, "beta").write(builder);
    Sheet sheet = builder.build();
    assertThat(sheet.inputs()).hasSize(3);
    assertThat(sheet.input("factor").orElseThrow().origin()).isEqualTo(Origin.SET_BY_USER);
    assertThat(sheet.input("factor").orElseThrow().amount().orElseThrow().si()).isEqualTo(2);
    assertThat(sheet.input("seat-depth").orElseThrow().origin()).isEqualTo(Origin.DEFAULT);
    assertThat(sheet.input("method").orElseThrow().words()).isEqualTo("beta");
  }

  @Test
  void what_cannot_be_is_refused() {
    assertThatThrownBy(() -> TABLE.defaults().with(FACTOR, 5)).hasMessageContaining("factor is 5");
    assertThatThrownBy(() -> TABLE.defaults().with(FACTOR, Double.NaN))
        .hasMessageContaining("factor");
    assertThatThrownBy(() -> TABLE.defaults().with(METHOD, "gamma")).hasMessageContaining("gamma");
    assertThatThrownBy(() -> new Choice("c", "c", List.of(), Source.practice()))
        .hasMessageContaining("nothing to choose");
    assertThatThrownBy(
            () ->
                new SettingTable(
                    "props",
                    List.of(DEPTH),
                    List.of(new Choice("seatDepth", "d", List.of("a"), Source.practice()))))
        .hasMessageContaining("seatDepth");
  }
}
