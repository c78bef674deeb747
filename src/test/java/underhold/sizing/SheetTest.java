package underhold.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.quantity.Measure;
import underhold.quantity.UnitSystem;

class SheetTest {
  @Test
  @DisplayName("Own case: a step prints its formula and its numbers in both unit systems")
  void a_step_prints_in_both_systems() {
    SheetBuilder sheet = SheetBuilder.titled("Board", "pits");
    double moment =
        sheet
            .step("m", "Moment", "M = {p} × {L}^2 / 8")
            .with("p", "pressure", Amount.pressure(20))
            .with("L", "span", Amount.length(1.2))
            .gives(Amount.momentPerLength(3.6));
    Step step = sheet.build().step("m").orElseThrow();
    assertThat(moment).isEqualTo(3.6);
    assertThat(step.formulaText(UnitSystem.SI)).isEqualTo("M = p × L^2 / 8");
    assertThat(step.calculation(UnitSystem.SI))
        .isEqualTo("M = (20 kPa) × (1.2 m)^2 / 8 = 3.6 kN·m/m");
    assertThat(step.calculation(UnitSystem.US))
        .isEqualTo("M = (417.7 psf) × (3.937 ft)^2 / 8 = 809.3 lb-ft/ft");
  }

  @Test
  void a_formula_without_a_value_for_a_symbol_is_refused() {
    SheetBuilder sheet = SheetBuilder.titled("t", "pits");
    assertThatThrownBy(
            () ->
                sheet
                    .step("m", "Moment", "M = {p} × {L}")
                    .with("p", "pressure", Amount.ratio(1))
                    .gives(Amount.ratio(1)))
        .hasMessageContaining("lacks a value for L");
    assertThatThrownBy(() -> Phrase.of("{x} of it")).hasMessageContaining("lacks a value");
    assertThat(Phrase.of("{x} of it", "x", Amount.length(0.3048)).in(UnitSystem.US))
        .isEqualTo("1 ft of it");
  }

  @Test
  void a_check_knows_its_utilisation() {
    SheetBuilder sheet = SheetBuilder.titled("t", "pits");
    assertThat(sheet.check("a", "a", Amount.force(3), Amount.force(4), Source.statics(), ""))
        .isTrue();
    assertThat(sheet.check("b", "b", Amount.force(5), Amount.force(4), Source.statics(), ""))
        .isFalse();
    sheet.check(
        "c", "c", Amount.force(5), Amount.force(0), Verdict.REFER, Source.statics(), Phrase.of(""));
    sheet.check("d", "d", Amount.force(0), Amount.force(0), Source.statics(), "");
    Sheet done = sheet.build();
    assertThat(done.check("a").orElseThrow().utilisation()).hasValue(0.75);
    assertThat(done.check("b").orElseThrow().verdict()).isEqualTo(Verdict.FAILS);
    assertThat(done.check("c").orElseThrow().utilisation()).isEmpty();
    assertThat(done.check("d").orElseThrow().verdict()).isEqualTo(Verdict.PASSES);
    assertThat(done.verdict()).isEqualTo(Verdict.FAILS);
  }

  @Test
  void contradictions_are_refused() {
    assertThatThrownBy(
            () ->
                new Check(
                    "x",
                    "x",
                    Amount.force(5),
                    Amount.force(4),
                    Verdict.PASSES,
                    Source.statics(),
                    Phrase.of("")))
        .hasMessageContaining("cannot pass");
    assertThatThrownBy(
            () ->
                new Check(
                    "x",
                    "x",
                    Amount.force(5),
                    Amount.length(4),
                    Verdict.FAILS,
                    Source.statics(),
                    Phrase.of("")))
        .hasMessageContaining("measures");
    assertThatThrownBy(() -> Amount.force(Double.NaN)).hasMessageContaining("finite");
    assertThatThrownBy(() -> Source.standard(" ")).hasMessageContaining("cited");
    assertThatThrownBy(() -> new Setting("n", "n", Amount.ratio(2), 3, 4, Source.judgement()))
        .hasMessageContaining("outside");
    SheetBuilder twice = SheetBuilder.titled("t", "pits");
    twice.check("a", "a", Amount.force(1), Amount.force(2), Source.statics(), "");
    twice.check("a", "a", Amount.force(1), Amount.force(2), Source.statics(), "");
    assertThatThrownBy(twice::build).hasMessageContaining("twice");
  }

  @Test
  void a_sheet_with_questions_refers() {
    Sheet sheet =
        SheetBuilder.titled("t", "pits")
            .missing(List.of(new MissingInput("a", "How?", "so")))
            .build();
    assertThat(sheet.verdict()).isEqualTo(Verdict.REFER);
    assertThat(sheet.complete()).isFalse();
    assertThat(SheetText.lines(sheet, UnitSystem.US)).contains("  MISSING a: How?");
  }

  @Test
  @DisplayName("The test's own evaluator works out formulas as a reviewer does")
  void the_evaluator_follows_the_usual_order() {
    assertThat(FormulaEvaluator.evaluate("2 + 3 × {a}^2 / 4 - max(1, 2)", Map.of("a", 2.0)))
        .isEqualTo(3);
    assertThat(FormulaEvaluator.evaluate("tan(45 - {f} / 2)^2", Map.of("f", 30.0)))
        .isCloseTo(1.0 / 3, within(1e-12));
    assertThatThrownBy(() -> FormulaEvaluator.evaluate("2 ?", Map.of()))
        .hasMessageContaining("cannot read");
  }

  @Test
  void amounts_choose_units_that_read_well() {
    assertThat(Amount.stress(6.894757293168361 * 1500).in(UnitSystem.US)).isEqualTo("1500 psi");
    assertThat(Amount.thickness(0.0508).in(UnitSystem.US)).isEqualTo("2 in");
    assertThat(Amount.of(3, Measure.FORCE).in(UnitSystem.SI)).isEqualTo("3 kN");
    assertThat(Origin.SET_BY_USER.label()).isEqualTo("set by user");
    assertThat(Source.practice().words()).isEqualTo("common practice");
  }
}
