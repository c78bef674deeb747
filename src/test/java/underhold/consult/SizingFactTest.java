package underhold.consult;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import underhold.advice.BuiltInPack;
import underhold.advice.Effect;
import underhold.advice.Rule;
import underhold.advice.SupportOption;
import underhold.site.Fact;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.Origin;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.Sheet;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;

/** Own cases. */
class SizingFactTest {
  private static final FactDictionary DICTIONARY = FactDictionary.standard();

  private static Sheet sheet(Verdict bearing, Verdict settlement) {
    SheetBuilder sheet = SheetBuilder.titled("Needles", "needles");
    check(sheet, "seat-bearing", bearing);
    check(sheet, "seat-settlement", settlement);
    return sheet.build();
  }

  private static void check(SheetBuilder sheet, String id, Verdict verdict) {
    sheet.verdict(
        id,
        "check of " + id,
        Amount.force(1),
        Amount.force(2),
        verdict,
        Source.statics(),
        Phrase.of(""));
  }

  private static List<String> facts(Verdict bearing, Verdict settlement) {
    return SizingFact.of(SupportOption.NEEDLES, sheet(bearing, settlement), DICTIONARY).stream()
        .map(fact -> fact.name() + "=" + fact.text())
        .toList();
  }

  @Test
  void a_fact_fails_with_any_check_passes_with_all_and_is_unknown_while_one_refers() {
    assertThat(facts(Verdict.PASSES, Verdict.PASSES)).containsExactly("needleSeat=passes");
    assertThat(facts(Verdict.PASSES, Verdict.FAILS)).containsExactly("needleSeat=fails");
    assertThat(facts(Verdict.FAILS, Verdict.REFER)).containsExactly("needleSeat=fails");
    assertThat(facts(Verdict.PASSES, Verdict.REFER)).isEmpty();
    assertThat(SizingFact.of(SupportOption.PITS, sheet(Verdict.FAILS, Verdict.FAILS), DICTIONARY))
        .isEmpty();
  }

  @Test
  void a_fact_says_which_checks_it_stands_for() {
    Fact fact =
        SizingFact.of(SupportOption.NEEDLES, sheet(Verdict.PASSES, Verdict.FAILS), DICTIONARY)
            .get(0);
    assertThat(fact.origin()).isEqualTo(Origin.DERIVED);
    assertThat(fact.how())
        .isEqualTo("the quick sizing of needle beams, by its sheet: check of seat-settlement");
  }

  @Test
  void what_a_brace_may_carry_needs_support_where_it_lacks_capacity_by_itself() {
    SheetBuilder sheet = SheetBuilder.titled("Pits", "pits");
    sheet.verdict(
        "sliding-without",
        "sliding",
        Amount.force(3),
        Amount.force(2),
        Verdict.REFER,
        Source.statics(),
        Phrase.of(""));
    check(sheet, "overturning-without", Verdict.PASSES);
    Fact fact = SizingFact.of(SupportOption.PITS, sheet.build(), DICTIONARY).get(0);
    assertThat(fact.name() + "=" + fact.text()).isEqualTo("pierStability=needs-support");

    SheetBuilder guessed = SheetBuilder.titled("Pits", "pits");
    check(guessed, "sliding-without", Verdict.REFER); // would pass, but rests on a guess
    assertThat(SizingFact.of(SupportOption.PITS, guessed.build(), DICTIONARY)).isEmpty();
  }

  @Test
  void the_table_and_the_dictionary_name_the_same_facts() {
    assertThat(SizingFact.ALL.stream().map(SizingFact::fact))
        .containsExactlyElementsOf(
            DICTIONARY.all().stream()
                .filter(fact -> fact.group().equals("sizing"))
                .map(FactDefinition::name)
                .toList());
  }

  @Test
  void every_such_fact_is_read_by_a_rule_that_never_speaks_for_an_option() {
    List<Rule> rules =
        BuiltInPack.compiledEngine().pack().rules().stream()
            .filter(rule -> rule.phase() == Rule.Phase.CONFIRM)
            .toList();
    Set<String> read =
        rules.stream().flatMap(rule -> rule.facts().stream()).collect(Collectors.toSet());
    assertThat(read).containsAll(SizingFact.ALL.stream().map(SizingFact::fact).toList());
    assertThat(rules).allSatisfy(rule -> assertThat(rule.effect()).isNotEqualTo(Effect.FOR));
  }
}
