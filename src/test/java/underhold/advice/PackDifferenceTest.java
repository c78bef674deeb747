package underhold.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.site.FactDictionary;

/** Small packs change what they say and nothing else, and every change is told. */
class PackDifferenceTest {
  private static final RulePack BUILT_IN = BuiltInPack.pack();
  private static final String HEAD =
      """
      package rules.house

      import underhold.advice.ZoneFacts
      global underhold.advice.FindingSink findings

      """;

  private final RulePackReader reader = new RulePackReader(FactDictionary.standard(), BUILT_IN);

  private RulePack small(String manifest, Map<String, String> files) {
    Optional<RulePack> pack =
        reader.read(
            name ->
                name.equals("pack.json")
                    ? Optional.of(
                        "{\"name\": \"x\", \"version\": \"1\", \"extends\": \"built-in\""
                            + manifest)
                    : Optional.ofNullable(files.get(name)),
            "x");
    assertThat(reader.problems()).isEmpty();
    return pack.orElseThrow();
  }

  /** The text of a built-in rule, from its file. */
  private static String text(Rule rule) {
    String file = BuiltInPack.text(rule.file()).orElseThrow();
    int start = file.indexOf("rule \"" + rule.sentence());
    return file.substring(start, file.indexOf("\nend", start) + 5);
  }

  @Test
  void a_pack_without_changes_says_the_same() {
    RulePack same = small("}", Map.of());
    PackDifference difference = PackDifference.of(same);

    assertThat(difference.none()).isTrue();
    assertThat(difference.sameTexts()).isFalse();
    assertThat(same.all()).isEqualTo(BUILT_IN.all());
    assertThat(PackDifference.of(BUILT_IN).sameTexts()).isTrue();
  }

  @Test
  @DisplayName(
      "a rule of a built-in id takes its place in the order, and every part changed is told")
  void a_rule_that_takes_the_place_of_another() {
    Rule was = BUILT_IN.rule("PIT-26").orElseThrow();
    String text =
        text(was)
            .replace("@basis(\"common practice\")", "@basis(\"judgement\")")
            .replace("\"moderate\"", "\"minor\"")
            .replace("loadPattern == \"continuous\"", "loadPattern in (\"continuous\", \"area\")");
    RulePack pack = small(", \"files\": [\"own.drl\"]}", Map.of("own.drl", HEAD + text));
    PackDifference difference = PackDifference.of(pack);

    assertThat(difference.rules()).isEqualTo(1);
    assertThat(difference.changed().get(0).parts())
        .containsExactlyInAnyOrder(
            PackDifference.Part.HEADER, PackDifference.Part.ACTION, PackDifference.Part.CONDITIONS);
    assertThat(difference.orderChanged()).isFalse();
    assertThat(pack.all())
        .extracting(Rule::id)
        .containsExactlyElementsOf(BUILT_IN.all().stream().map(Rule::id).toList());
    assertThat(difference.ruleOutsLost()).isEmpty();
  }

  @Test
  @DisplayName(
      "a rule-out that is removed, reaches fewer options or no longer holds is called lost")
  void safeties_taken_away_are_named() {
    Rule holding =
        BUILT_IN.rules().stream()
            .filter(r -> r.hold() == Rule.Hold.ALWAYS)
            .findFirst()
            .orElseThrow();
    Rule other =
        BUILT_IN.rules().stream()
            .filter(r -> r.effect() == Effect.RULE_OUT && !r.equals(holding))
            .findFirst()
            .orElseThrow();
    String weaker = text(holding).replaceFirst("\\n *@hold\\(\"always\"\\)", "");
    RulePack pack =
        small(
            ", \"files\": [\"own.drl\"], \"remove\": [\"" + other.id() + "\"]}",
            Map.of("own.drl", HEAD + weaker));

    assertThat(PackDifference.of(pack).ruleOutsLost())
        .extracting(Rule::id)
        .containsExactlyInAnyOrder(holding.id(), other.id());
    assertThat(pack.rule(other.id())).isEmpty();
  }

  @Test
  @DisplayName("another value of a limit is compared with by every built-in rule that names it")
  void a_changed_limit_is_in_force() {
    RulePack pack =
        small(
            "}",
            Map.of(
                "limits.json",
                "{\"limits\": [{\"name\": \"pit-depth-easy\", \"value\": \"8 ft\","
                    + " \"basis\": \"judgement\", \"source\": \"\"}]}"));
    double eightFeet = 8 * 0.3048; // the international foot is 0.3048 m by definition

    List<Condition> conditions =
        pack.all().stream()
            .flatMap(rule -> rule.conditions().stream())
            .filter(condition -> "pit-depth-easy".equals(condition.limit()))
            .toList();
    assertThat(conditions).isNotEmpty().allMatch(c -> Math.abs(c.threshold() - eightFeet) < 1e-12);
    PackDifference difference = PackDifference.of(pack);
    assertThat(difference.rules()).isZero();
    assertThat(difference.limitsChanged()).hasSize(1);
    assertThat(difference.limitsChanged().get(0).outsidePlausible()).isFalse();
  }

  @Test
  @DisplayName("the fingerprint follows the texts of the pack, and the trial set upon it")
  void fingerprints() {
    RulePack one = small("}", Map.of());
    RulePack noted = small(", \"note\": \"x\"}", Map.of());
    RulePack tried =
        LimitTrial.of(one, List.of("pit-width=1 m")).fold(pack -> pack, problems -> BUILT_IN);

    assertThat(List.of(BUILT_IN, one, noted, tried))
        .extracting(RulePack::fingerprint)
        .doesNotHaveDuplicates();
    assertThat(
            LimitTrial.of(one, List.of("pit-width=1 m"))
                .fold(RulePack::fingerprint, problems -> ""))
        .isEqualTo(tried.fingerprint());
  }

  @Test
  @DisplayName("the limits built in lie within what their facts can be")
  void the_built_in_pack_passes_as_a_whole_pack() {
    assertThat(
            PackFolder.read(java.nio.file.Path.of("rules"), "rules")
                .fold(PackDifference::of, problems -> null)
                .sameTexts())
        .isTrue();
  }
}
