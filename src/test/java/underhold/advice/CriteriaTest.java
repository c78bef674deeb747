package underhold.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underhold.site.FactDictionary;

/** The table that says what each cause of a rule speaks of. */
class CriteriaTest {
  private final RulePack pack = BuiltInPack.pack();

  @Test
  void every_cause_of_a_rule_about_options_has_a_criterion_and_every_cause_listed_is_used() {
    Set<String> causes =
        pack.rules().stream()
            .filter(rule -> rule.effect() != Effect.DERIVE)
            .map(Rule::cause)
            .collect(Collectors.toSet());

    assertThat(causes).hasSizeGreaterThan(40);
    assertThat(pack.criteria().byCause().keySet()).hasSameElementsAs(causes);
    assertThat(pack.criteria().byCause().values()).contains(Criterion.values());
    for (Criterion criterion : Criterion.values()) {
      assertThat(pack.criteria().meaning(criterion)).isNotBlank().doesNotEndWith(".");
    }
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '¦',
      textBlock =
          """
          a cause left out       ¦ "load pattern",        ¦                           ¦ pits/load.drl
          a cause left out       ¦ "load pattern",        ¦                           ¦ no criterion of criteria.json lists the cause "load pattern" of PIT-26; add it to one
          a cause twice          ¦ "load pattern",        ¦ "load pattern", "water",  ¦ the cause "water" stands twice, under water and under load
          an unknown criterion   ¦ "name": "cost"         ¦ "name": "costs"           ¦ there is no criterion "costs"; there are ground, water, load
          a criterion left out   ¦ "name": "cost"         ¦ "name": "time"            ¦ the criterion cost is missing
          a criterion twice      ¦ "name": "cost"         ¦ "name": "time"            ¦ the criterion time stands twice
          no meaning             ¦ how long the work takes and may take ¦             ¦ the criterion time has no meaning
          a cause without a name ¦ ["programme"]          ¦ ["programme", 7, ""]      ¦ the criterion time lists a cause without a name
          """)
  void a_pack_with_a_broken_table_is_refused(
      String what, String sound, String broken, String expected) {
    RulePackReader reader = new RulePackReader(FactDictionary.standard());
    Optional<RulePack> read =
        reader.read(
            name ->
                BuiltInPack.text(name)
                    .map(
                        text ->
                            name.equals("criteria.json")
                                ? replaced(text, sound, broken == null ? "" : broken)
                                : text));

    assertThat(read).as(what).isEmpty();
    assertThat(reader.problems().stream().map(PackProblem::text))
        .anyMatch(problem -> problem.contains(expected));
  }

  private static String replaced(String text, String sound, String broken) {
    assertThat(text).contains(sound);
    return text.replace(sound, broken);
  }

  @Test
  void a_pack_without_the_table_is_refused() {
    RulePackReader reader = new RulePackReader(FactDictionary.standard());

    assertThat(
            reader.read(
                name -> name.equals("criteria.json") ? Optional.empty() : BuiltInPack.text(name)))
        .isEmpty();
    assertThat(reader.problems())
        .extracting(PackProblem::text)
        .containsExactly("criteria.json: the pack lacks this file");
  }

  @Test
  void the_table_is_in_the_fingerprint() {
    RulePackReader reader = new RulePackReader(FactDictionary.standard());
    RulePack changed =
        reader
            .read(
                name ->
                    BuiltInPack.text(name)
                        .map(
                            text ->
                                name.equals("criteria.json")
                                    ? replaced(text, "how long the work takes", "how long it takes")
                                    : text))
            .orElseThrow();

    assertThat(changed.fingerprint()).isNotEqualTo(pack.fingerprint());
  }
}
