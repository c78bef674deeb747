package underhold.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Settings and choices at the ends of their ranges, and every refusal in full; own cases. */
class SettingsByHandTest {
  private static final Source GUIDE = Source.memory("a guide");

  @Test
  void setting_accepts_its_ends_and_names_them() {
    Setting depth = new Setting("seat", "depth", Amount.length(1), 0.5, 2, GUIDE);
    assertThat(depth.accepts(0.5)).isTrue();
    assertThat(depth.accepts(2)).isTrue();
    assertThat(depth.accepts(0.4999)).isFalse();
    assertThat(depth.accepts(2.0001)).isFalse();
    assertThat(depth.accepts(Double.NaN)).isFalse();
    assertThat(depth.range()).isEqualTo("it must be from 0.5 m (1.64 ft) to 2 m (6.562 ft)");
    assertThat(depth.refusal(3))
        .isEqualTo("seat is 3 m (9.843 ft); it must be from 0.5 m (1.64 ft) to 2 m (6.562 ft)");
    assertThat(depth.refusal(Double.NaN)).startsWith("seat is NaN; it must be");
    assertThat(new Setting("f", "factor", Amount.ratio(2), 2, 2, GUIDE).range())
        .isEqualTo("it must be from 2 to 2");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Setting("f", "factor", Amount.ratio(2), 1, 1.9, GUIDE))
        .withMessage("f: the default is outside its range");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Setting("f", "factor", Amount.ratio(2), 2.1, 3, GUIDE));
    Double parsed = depth.parse("6 ft").fold(read -> read.quantity().si(), no -> 0.0);
    assertThat(parsed).isCloseTo(1.8288, within(1e-9));
  }

  @Test
  void choice_names_its_words() {
    Choice choice = new Choice("form", "form", List.of("asd", "lrfd"), GUIDE);
    assertThat(choice.fallback()).isEqualTo("asd");
    assertThat(choice.accepts("lrfd")).isTrue();
    assertThat(choice.accepts("LRFD")).isFalse();
    assertThat(choice.refusal("x")).isEqualTo("form is \"x\"; it must be one of: asd, lrfd");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Choice("form", "form", List.of(), GUIDE))
        .withMessage("form: there is nothing to choose");
  }

  private static final Setting SEAT =
      new Setting("seat-depth", "depth of the seat", Amount.length(1), 0.5, 2, GUIDE);
  private static final Choice FORM = new Choice("form", "form", List.of("asd", "lrfd"), GUIDE);
  private static final SettingTable TABLE = new SettingTable("props", List.of(SEAT), List.of(FORM));

  @Test
  void settings_are_found_however_their_name_is_written() {
    assertThat(TABLE.number("seatDepth")).contains(SEAT);
    assertThat(TABLE.number("SEAT_DEPTH")).contains(SEAT);
    assertThat(TABLE.number("seat depth")).contains(SEAT);
    assertThat(TABLE.number("seat")).isEmpty();
    assertThat(TABLE.choice("Form")).contains(FORM);
    assertThat(TABLE.choice("forms")).isEmpty();
    assertThat(TABLE.names()).containsExactly("seat-depth", "form");
  }

  @Test
  void words_that_cannot_be_read_are_named_in_full() {
    assertThat(TABLE.parse(List.of("seat-depth")).problems())
        .containsExactly("\"seat-depth\" is not NAME=VALUE, such as seat-depth=1 m");
    assertThat(new SettingTable("x", List.of(), List.of(FORM)).parse(List.of("y")).problems())
        .containsExactly("\"y\" is not NAME=VALUE");
    assertThat(TABLE.parse(List.of("sead-depth=1 m")).problems())
        .containsExactly(
            "there is no setting \"sead-depth\" for props, so \"1 m\" was not used; did you mean"
                + " \"seat-depth\"?");
    assertThat(TABLE.parse(List.of("zzzzzzzz=1")).problems())
        .containsExactly(
            "there is no setting \"zzzzzzzz\" for props, so \"1\" was not used; known: seat-depth,"
                + " form");
    assertThat(TABLE.parse(List.of("=1")).problems().get(0))
        .startsWith("there is no setting \"\" for props, so \"1\" was not used; ");
    assertThat(TABLE.parse(List.of("form=b=c")).problems())
        .containsExactly("form is \"b=c\"; it must be one of: asd, lrfd");
    assertThat(TABLE.parse(List.of("seat-depth=much")).problems().get(0))
        .startsWith("seat-depth is \"much\": ")
        .endsWith(" it must be from 0.5 m (1.64 ft) to 2 m (6.562 ft)");
    assertThat(TABLE.parse(List.of("seat-depth=2 m")).problems()).isEmpty();
    assertThat(TABLE.parse(List.of("seat-depth=2.01 m")).problems())
        .containsExactly(SEAT.refusal(2.01));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new SettingTable("props", List.of(SEAT, SEAT), List.of()))
        .withMessage("props: two settings are called seat-depth");
  }

  @Test
  void settings_in_force_know_their_value_and_origin() {
    Settings set = TABLE.defaults().with(SEAT, 2).with(FORM, "lrfd");
    assertThat(set.get(SEAT)).isEqualTo(2);
    assertThat(set.amount(SEAT)).isEqualTo(Amount.length(2));
    assertThat(set.get(FORM)).isEqualTo("lrfd");
    assertThat(set.origin(SEAT)).isEqualTo(Origin.SET_BY_USER);
    assertThat(set.origin(FORM)).isEqualTo(Origin.SET_BY_USER);
    assertThat(TABLE.defaults().amount(SEAT)).isEqualTo(Amount.length(1));
    assertThat(TABLE.defaults().with(SEAT, 2).with(SEAT, 1.5).get(SEAT)).isEqualTo(1.5);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> set.with(SEAT, 0.4))
        .withMessage(SEAT.refusal(0.4));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> set.with(FORM, "none"))
        .withMessage(FORM.refusal("none"));
  }
}
