package underhold.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.quantity.Measure;
import underhold.quantity.UnitSystem;

/** The parts of a sheet, each value by hand; own cases. */
class SheetByHandTest {
  private static final Source GUIDE = Source.memory("a guide");

  @Test
  @DisplayName(
      "Exact factors: 1 ft 0.3048 m, 1 lb 0.45359237 kg at 9.80665 m/s2, 1 yd3 0.764555 m3")
  void amounts_in_both_unit_systems() {
    assertThat(both(Amount.length(3.048))).containsExactly("3.048 m", "10 ft");
    assertThat(both(Amount.thickness(0.0254))).containsExactly("25.4 mm", "1 in");
    assertThat(both(Amount.area(0.09290304))).containsExactly("0.0929 m2", "1 ft2");
    assertThat(both(Amount.modulusPerLength(0.00064516))).containsExactly("645.2 mm2", "1 in2");
    assertThat(both(Amount.volume(0.764554857984))).containsExactly("0.7646 m3", "1 yd3");
    assertThat(both(Amount.force(4.4482216152605))).containsExactly("4.448 kN", "1 kip");
    assertThat(both(Amount.lineLoad(14.593902937))).containsExactly("14.59 kN/m", "1000 lb/ft");
    assertThat(both(Amount.pressure(4.788025898))).containsExactly("4.788 kPa", "100 psf");
    assertThat(both(Amount.stress(6894.757293168361))).containsExactly("6.895 MPa", "1000 psi");
    assertThat(both(Amount.unitWeight(15.70874638))).containsExactly("15.71 kN/m3", "100 pcf");
    assertThat(both(Amount.angle(30))).containsExactly("30 deg", "30 deg");
    assertThat(both(Amount.hours(8))).containsExactly("8 h", "8 h");
    assertThat(both(Amount.moment(1.3558179483))).containsExactly("1.356 kN·m", "1 kip-ft");
    assertThat(both(Amount.momentPerLength(4.4482216152605)))
        .containsExactly("4.448 kN·m/m", "1000 lb-ft/ft");
    assertThat(both(Amount.count(7))).containsExactly("7", "7");
    assertThat(both(Amount.ratio(1.5))).containsExactly("1.5", "1.5");
    assertThat(Amount.thickness(1).with(2).in(UnitSystem.SI)).isEqualTo("2000 mm");
    assertThat(Amount.length(1).unit(UnitSystem.US)).isEqualTo("ft");
    assertThat(Amount.length(1).unit(UnitSystem.SI)).isEqualTo("m");
    assertThat(Amount.of(1, Measure.LENGTH)).isEqualTo(Amount.length(1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Amount.length(Double.POSITIVE_INFINITY))
        .withMessageContaining("must be finite, not Infinity");
  }

  private static List<String> both(Amount amount) {
    return List.of(amount.in(UnitSystem.SI), amount.in(UnitSystem.US));
  }

  @Test
  void labels_are_words_for_the_reader() {
    assertThat(Arrays.stream(Basis.values()).map(Basis::label))
        .containsExactly(
            "standard",
            "published",
            "common practice",
            "site fact",
            "by statics",
            "judgement",
            "from memory, verify");
    assertThat(Arrays.stream(Origin.values()).map(Origin::label))
        .containsExactly("stated", "derived", "assumed", "default", "set by user");
    assertThat(Arrays.stream(Verdict.values()).map(Verdict::label))
        .containsExactly("passes", "fails", "refer");
    assertThat(Source.standard(" a code ").words()).isEqualTo("a code (standard)");
    assertThat(Source.published("a book").words()).isEqualTo("a book (published)");
    assertThat(GUIDE.words()).isEqualTo("a guide (from memory, verify)");
    assertThat(Source.statics().words()).isEqualTo("by statics");
    assertThat(Source.judgement().words()).isEqualTo("judgement");
    assertThat(Source.practice().words()).isEqualTo("common practice");
    assertThatIllegalArgumentException().isThrownBy(() -> Source.published(""));
    assertThat(Source.memory("").citation()).isEmpty();
  }

  @Test
  void given_values_say_where_they_come_from() {
    assertThat(Given.stated(2).origin()).isEqualTo(Origin.STATED);
    assertThat(Given.stated(2).source().words()).isEqualTo("site fact");
    assertThat(Given.derived(2, "by sum").origin()).isEqualTo(Origin.DERIVED);
    assertThat(Given.derived(2, "by sum").source().words()).isEqualTo("by sum (by statics)");
    assertThat(Given.assumed(2, GUIDE)).isEqualTo(new Given<>(2, Origin.ASSUMED, GUIDE));
  }

  @Test
  void a_capacity_covers_its_demand_but_for_rounding() {
    assertThat(Check.covers(10, 10)).isTrue();
    assertThat(Check.covers(10 + 9e-9, 10)).isTrue();
    assertThat(Check.covers(10 + 1.1e-8, 10)).isFalse();
    assertThat(Check.covers(0, 0)).isTrue();
    assertThat(Check.covers(1e-12, 0)).isFalse();
    assertThat(Check.covers(-10 + 9e-9, -10)).isTrue();
    assertThat(Check.covers(-10 + 1.1e-8, -10)).isFalse();
  }

  @Test
  void utilisation_is_demand_over_capacity() {
    assertThat(check(3, 4).utilisation()).hasValue(0.75);
    assertThat(check(0, 0).utilisation()).hasValue(0);
    assertThat(check(-1, 4).utilisation()).hasValue(0);
    assertThat(check(1, 0).utilisation()).isEmpty();
    assertThat(check(1, -2).utilisation()).isEmpty();
    assertThat(check(1e300, 1e-300).utilisation()).isEmpty();
  }

  private static Check check(double demand, double capacity) {
    return new Check(
        "c",
        "check",
        Amount.force(demand),
        Amount.force(capacity),
        Verdict.REFER,
        Source.statics(),
        Phrase.of(""));
  }

  @Test
  void a_failing_check_may_have_any_numbers_but_a_passing_one_not() {
    Check fails =
        new Check(
            "c",
            "check",
            Amount.force(1),
            Amount.force(2),
            Verdict.FAILS,
            Source.statics(),
            Phrase.of(""));
    assertThat(fails.verdict()).isEqualTo(Verdict.FAILS);
  }

  @Test
  void formula_in_symbols_and_in_numbers() {
    Formula formula =
        new Formula(
            "r = 2 × {a} + {b} - {c}",
            "r = 3 × {a} + {b} - {c}",
            List.of(
                new Formula.Symbol("a", "first", Amount.length(1)),
                new Formula.Symbol("b", "second", Amount.ratio(4)),
                new Formula.Symbol("c", "third", Amount.ratio(-5))));
    assertThat(formula.text(UnitSystem.SI)).isEqualTo("r = 2 × a + b - c");
    assertThat(formula.text(UnitSystem.US)).isEqualTo("r = 3 × a + b - c");
    assertThat(formula.substituted(UnitSystem.SI)).isEqualTo("2 × (1 m) + 4 - (-5)");
    assertThat(formula.substituted(UnitSystem.US)).isEqualTo("3 × (3.281 ft) + 4 - (-5)");
    assertThat(formula.leftHandSide()).isEqualTo("r");
    assertThat(formula.rightHandSide(UnitSystem.US)).isEqualTo("3 × {a} + {b} - {c}");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Formula("2 × 3", "2 × 3", List.of()))
        .withMessage("\"2 × 3\" does not say what it gives");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Formula("r = 1", "r = {x}", List.of()))
        .withMessage("the formula lacks a value for x");
  }

  @Test
  void phrase_puts_each_amount_in_its_place() {
    Phrase two =
        Phrase.of("from {a} to {b}, {a}", "a", Amount.length(1), "b", Amount.length(3.048));
    assertThat(two.in(UnitSystem.SI)).isEqualTo("from 1 m to 3.048 m, 1 m");
    assertThat(two.in(UnitSystem.US)).isEqualTo("from 3.281 ft to 10 ft, 3.281 ft");
    assertThat(Phrase.of("costs $5 {n}", Map.of("n", Amount.count(2))).in(UnitSystem.SI))
        .isEqualTo("costs $5 2");
    assertThat(Phrase.of("words").in(UnitSystem.US)).isEqualTo("words");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Phrase.of("{a} and {b}", "a", Amount.count(1)))
        .withMessage("\"{a} and {b}\" lacks a value for b");
  }

  private static SheetBuilder builder() {
    return SheetBuilder.titled("Props", "props");
  }

  private static SheetBuilder checked(Verdict... verdicts) {
    SheetBuilder sheet = builder();
    for (int i = 0; i < verdicts.length; i++) {
      sheet =
          sheet.verdict(
              "c" + i,
              "check",
              Amount.force(1),
              Amount.force(2),
              verdicts[i],
              Source.statics(),
              Phrase.of(""));
    }
    return sheet;
  }

  @Test
  void worst_verdict_counts_for_the_sheet() {
    assertThat(checked().build().verdict()).isEqualTo(Verdict.PASSES);
    assertThat(checked(Verdict.PASSES).build().verdict()).isEqualTo(Verdict.PASSES);
    assertThat(checked(Verdict.PASSES, Verdict.REFER).build().verdict()).isEqualTo(Verdict.REFER);
    assertThat(checked(Verdict.REFER, Verdict.FAILS).build().verdict()).isEqualTo(Verdict.FAILS);
    MissingInput question = new MissingInput("a", "How?", "so");
    assertThat(checked(Verdict.PASSES).missing(List.of(question)).build().verdict())
        .isEqualTo(Verdict.REFER);
    assertThat(checked(Verdict.FAILS).missing(List.of(question)).build().verdict())
        .isEqualTo(Verdict.FAILS);
    assertThat(checked(Verdict.PASSES, Verdict.PASSES).allPass()).isTrue();
    assertThat(checked(Verdict.PASSES, Verdict.REFER).allPass()).isFalse();
    assertThat(checked().allPass()).isTrue();
  }

  @Test
  void check_that_does_not_pass_takes_the_verdict_given() {
    SheetBuilder sheet = builder();
    assertThat(
            sheet.check(
                "a",
                "a",
                Amount.force(2),
                Amount.force(1),
                Verdict.REFER,
                GUIDE,
                Phrase.of("note")))
        .isFalse();
    assertThat(sheet.check("b", "b", Amount.force(1), Amount.force(1), GUIDE, "")).isTrue();
    Sheet done = sheet.build();
    assertThat(done.check("a").orElseThrow().verdict()).isEqualTo(Verdict.REFER);
    assertThat(done.check("a").orElseThrow().source()).isEqualTo(GUIDE);
    assertThat(done.check("b").orElseThrow().verdict()).isEqualTo(Verdict.PASSES);
    assertThat(done.check("c")).isEmpty();
  }

  /** A sheet that has one of everything. */
  private static Sheet full() {
    SheetBuilder sheet =
        builder()
            .input("load", "load", Amount.force(10), Origin.STATED, GUIDE)
            .input("soil", "soil", "clay", Origin.ASSUMED, Source.judgement())
            .missing(List.of(new MissingInput("depth", "How deep?", "it counts")));
    double twice =
        sheet
            .step("twice", "Twice the load", "F = 2 × {P}")
            .with("P", "load", Amount.force(10))
            .from(GUIDE)
            .note("A remark.")
            .gives(Amount.force(20));
    sheet
        .step("root", "Root", "r = 0.5 × sqrt({x})", "r = 6 × sqrt({x})")
        .with("x", "strength", Amount.stress(4000))
        .note(Phrase.of("For {h}.", "h", Amount.length(3.048)))
        .gives(Amount.ratio(1));
    sheet.check("c", "Load", Amount.force(twice), Amount.force(40), GUIDE, "Fine.");
    sheet.check("n", "None", Amount.force(1), Amount.force(0), GUIDE, "");
    return sheet
        .quantity("steel", Amount.count(3), "bars")
        .time("days", Amount.count(4), Phrase.of("working"))
        .stage(
            new Stage(
                StageRole.PREPARE,
                "First",
                List.of(Phrase.of("Dig {d}.", "d", Amount.length(1))),
                List.of(new HoldPoint(Phrase.of("Dry"), "engineer"))))
        .caution("cave-in", Phrase.of("Stay out."), "the competent person", GUIDE)
        .notCovered("wind")
        .build();
  }

  @Test
  void sheet_as_lines() {
    assertThat(SheetText.lines(full(), UnitSystem.SI))
        .containsExactly(
            "Props [props]",
            "  load: 10 kN [stated; a guide (from memory, verify)]",
            "  soil: clay [assumed; judgement]",
            "  MISSING depth: How deep?",
            "  step Twice the load [a guide (from memory, verify)]",
            "    F = 2 × P",
            "      P = 10 kN, load",
            "    F = 2 × (10 kN) = 20 kN",
            "    A remark.",
            "  step Root [by statics]",
            "    r = 0.5 × sqrt(x)",
            "      x = 4 MPa, strength",
            "    r = 0.5 × sqrt((4 MPa)) = 1",
            "    For 3.048 m.",
            "  check Load: 20 kN of 40 kN, 50 %: passes [a guide (from memory, verify)] Fine.",
            "  check None: 1 kN of 0 kN, no capacity: fails [a guide (from memory, verify)] ",
            "  quantity steel: 3 bars",
            "  time days: 4 working",
            "  stage First",
            "    Dig 1 m.",
            "    HOLD Dry - engineer",
            "  caution cave-in: Stay out. Decides: the competent person.",
            "  not covered: wind");
    assertThat(SheetText.lines(full(), UnitSystem.US))
        .contains("    r = 6 × sqrt(x)", "    r = 6 × sqrt((580.2 psi)) = 1", "    For 10 ft.");
  }

  @Test
  void sheet_finds_its_parts_and_changes_only_what_is_asked() {
    Sheet sheet = full();
    assertThat(sheet.step("twice").orElseThrow().result()).isEqualTo(Amount.force(20));
    assertThat(sheet.step("none")).isEmpty();
    assertThat(sheet.input("soil").orElseThrow().value(UnitSystem.SI)).isEqualTo("clay");
    assertThat(sheet.input("load").orElseThrow().value(UnitSystem.US)).isEqualTo("2.248 kip");
    assertThat(sheet.input("none")).isEmpty();
    assertThat(sheet.complete()).isFalse();
    Sheet bare = sheet.withMissing(List.of());
    assertThat(bare.complete()).isTrue();
    assertThat(bare.withMissing(sheet.missing())).isEqualTo(sheet);
    assertThat(sheet.withChecks(List.of()).checks()).isEmpty();
    assertThat(sheet.withChecks(List.of()).withChecks(sheet.checks())).isEqualTo(sheet);
    Caution first = new Caution("gas", Phrase.of("Test."), "the owner", GUIDE);
    Sheet cautioned = sheet.withFirst(first);
    assertThat(cautioned.cautions()).containsExactly(first, sheet.cautions().get(0));
    assertThat(cautioned.steps()).isEqualTo(sheet.steps());
    assertThat(cautioned.notCovered()).isEqualTo(sheet.notCovered());
  }

  @Test
  void an_input_is_an_amount_or_words() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                new SheetInput("a", "a", Optional.of(Amount.count(1)), "one", Origin.STATED, GUIDE))
        .withMessage("a must be an amount or words");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new SheetInput("a", "a", Optional.empty(), "", Origin.STATED, GUIDE));
  }

  @Test
  void ids_are_unique_among_steps_and_among_checks_but_may_be_shared() {
    SheetBuilder sheet = builder();
    sheet.step("a", "a", "x = 1").gives(Amount.ratio(1));
    sheet.check("a", "a", Amount.ratio(1), Amount.ratio(2), GUIDE, "");
    assertThat(sheet.build().steps()).hasSize(1);
    sheet.step("a", "a", "x = 1").gives(Amount.ratio(1));
    assertThatIllegalArgumentException()
        .isThrownBy(sheet::build)
        .withMessage("step a occurs twice");
  }
}
