package underhold.sizing.pits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import underhold.sizing.Basis;

class PitsSettingsTest {
  @Test
  void values_are_read_as_quantities() {
    PitsSettings.Read read =
        PitsSettings.parse(
            List.of(
                "widest-pit=3 ft 6 in",
                "open-share=20 %",
                "timber=mixed-oak",
                "dry-pack-wait=2 days"));
    assertThat(read.problems()).isEmpty();
    assertThat(read.settings().get(PitsSetting.WIDEST_PIT)).isCloseTo(1.0668, within(1e-9));
    assertThat(read.settings().get(PitsSetting.OPEN_SHARE)).isCloseTo(0.2, within(1e-12));
    assertThat(read.settings().get(PitsSetting.DRY_PACK_WAIT)).isEqualTo(48);
    assertThat(read.settings().timber()).isEqualTo("mixed-oak");
    assertThat(read.settings().get(PitsSetting.CREWS)).isEqualTo(2);
  }

  @Test
  void every_problem_is_listed() {
    PitsSettings.Read read =
        PitsSettings.parse(
            List.of("widest-pit=2 m", "depth=1 m", "timber=bamboo", "crews", "open-share=4 ft"));
    assertThat(read.problems()).hasSize(5);
    assertThat(read.problems().get(0))
        .contains("widest-pit is 2 m (6.562 ft)")
        .contains("1.524 m (5 ft)");
    assertThat(read.problems().get(1)).contains("no setting \"depth\"");
    assertThat(read.problems().get(2)).contains("douglas-fir-larch");
    assertThat(read.settings()).isEqualTo(PitsSettings.defaults());
  }

  @Test
  void every_setting_has_a_source_and_a_unique_name() {
    assertThat(Arrays.stream(PitsSetting.values()).map(one -> one.setting().name()))
        .doesNotHaveDuplicates();
    assertThat(PitsSetting.values())
        .allSatisfy(
            one -> {
              boolean named = !one.setting().source().citation().isEmpty();
              Basis basis = one.setting().source().basis();
              assertThat(named || basis == Basis.JUDGEMENT || basis == Basis.COMMON_PRACTICE)
                  .isTrue();
              assertThat(PitsSettings.TABLE.number(one.setting().name())).contains(one.setting());
            });
  }

  @Test
  void impossible_values_are_refused() {
    assertThatThrownBy(() -> PitsSettings.defaults().with(PitsSetting.OPEN_SHARE, 0.9))
        .hasMessageContaining("open-share");
    assertThatThrownBy(() -> PitsSettings.defaults().with(PitsSetting.OPEN_SHARE, Double.NaN))
        .hasMessageContaining("open-share");
    assertThatThrownBy(() -> PitsInput.builder().amount(PitsFact.WALL_LENGTH, Double.NaN).build())
        .hasMessageContaining("length of wall");
    assertThatThrownBy(() -> PitsInput.builder().amount(PitsFact.FOOTING_WIDTH, -1).build())
        .hasMessageContaining("width of the footing");
  }
}
