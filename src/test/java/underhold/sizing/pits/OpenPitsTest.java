package underhold.sizing.pits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.sizing.BillItem;
import underhold.sizing.Given;
import underhold.sizing.SettingTable;
import underhold.sizing.Settings;
import underhold.sizing.Sheet;
import underhold.sizing.SheetBuilder;
import underhold.sizing.StepProof;
import underhold.sizing.pits.order.PitRow;
import underhold.sizing.pits.order.PlanChecker;
import underhold.sizing.zone.SoilClass;

class OpenPitsTest {
  private static final SettingTable TABLE =
      new SettingTable("other", OpenPits.settings(), List.of(PitsSettings.TIMBER));

  private static final PitsInput INPUT =
      PitsInput.builder()
          .amount(PitsFact.WALL_LINE_LOAD, 0)
          .amount(PitsFact.WALL_LENGTH, 9.6)
          .amount(PitsFact.FOOTING_WIDTH, 0.9)
          .amount(PitsFact.FOUNDING_DEPTH, 3)
          .amount(PitsFact.EXCAVATION_BELOW_FOOTING, 5)
          .amount(PitsFact.PIT_DEPTH, 5.6)
          .amount(PitsFact.WATER_ABOVE_PIT_BASE, 0)
          .material(Given.stated(WallMaterial.REINFORCED_CONCRETE))
          .condition(Given.stated(WallCondition.SOUND))
          .faceSoil(Given.stated(SoilClass.DENSE_SAND))
          .baseSoil(Given.stated(SoilClass.DENSE_SAND))
          .standUp(Given.stated(StandUp.HOURS))
          .build();

  private static OpenPits dig(Settings settings, SheetBuilder sheet) {
    return OpenPits.write(INPUT, settings, PitRow.equal(8, 1.2), sheet);
  }

  @Test
  @DisplayName("Own case by hand: 8 pits of 1.2 m: 14.69 m3 a pit, 4 days of digging, four rounds")
  void pits_of_a_given_row_are_dug_by_the_settings_of_pits() {
    SheetBuilder builder = SheetBuilder.titled("Other", "other");
    OpenPits dug = dig(TABLE.defaults(), builder);
    Sheet sheet = builder.build();
    StepProof.redo(sheet);
    // 1.2 x 0.9 x 5.6 + 1.2 x 1.5 x (3 + 1.8)
    assertThat(sheet.step("pit-volume").orElseThrow().result().si())
        .isCloseTo(14.688, within(1e-9));
    assertThat(dug.approachVolume()).isCloseTo(8.64, within(1e-9));
    assertThat(dug.boardArea())
        .isCloseTo(8 * (2 * 0.9 * 5.6 + 5.4 * 4.8) + 9.6 * 5.6, within(1e-9));
    // 14.688 / 6.1 x 1.5 = 3.61 days, in half days 4; 0.5 + 1 + 0.25 + 2 more
    assertThat(dug.plan().rules().times().openDays()).isCloseTo(7.75, within(1e-9));
    assertThat(dug.plan().roundCount()).isEqualTo(4);
    assertThat(PlanChecker.violations(dug.plan())).isEmpty();
    assertThat(sheet.check("open-length").orElseThrow().demand().si()).isCloseTo(2.4, within(1e-9));
    assertThat(sheet.time())
        .extracting(BillItem::name)
        .containsExactly(
            "one pit, digging and concrete",
            "one pit, first cut until a neighbour may start",
            "rounds",
            "calendar, all pits",
            "labour, digging and concrete");
    assertThat(sheet.time().get(0).amount().si()).isCloseTo(36, within(1e-9));
    assertThat(sheet.time().get(3).amount().si()).isCloseTo(31, within(1e-9));
    assertThat(sheet.time().get(4).amount().si()).isCloseTo(8 * 36 * 3, within(1e-9));
  }

  @Test
  void settings_of_the_other_method_reach_the_digging() {
    Settings one =
        TABLE
            .defaults()
            .with(PitsSetting.CREWS.setting(), 1)
            .with(PitsSettings.TIMBER, "mixed-oak");
    SheetBuilder builder = SheetBuilder.titled("Other", "other");
    OpenPits dug = dig(one, builder);
    assertThat(dug.plan().rules().crews()).isEqualTo(1);
    SheetBuilder usual = SheetBuilder.titled("Other", "other");
    dig(TABLE.defaults(), usual);
    assertThat(builder.build().check("board-bending").orElseThrow().capacity())
        .isNotEqualTo(usual.build().check("board-bending").orElseThrow().capacity());
  }
}
