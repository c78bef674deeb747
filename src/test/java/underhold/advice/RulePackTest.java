package underhold.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;

class RulePackTest {
  private final RulePack pack = BuiltInPack.pack();

  @Test
  void the_pack_has_at_least_120_rules_of_every_effect() {
    assertThat(pack.all()).hasSizeGreaterThanOrEqualTo(120);
    assertThat(pack.all().stream().map(Rule::effect).collect(Collectors.toSet()))
        .containsExactlyInAnyOrder(Effect.values());
  }

  @Test
  void every_rule_has_its_header() {
    assertThat(pack.all())
        .allSatisfy(
            rule -> {
              assertThat(rule.id())
                  .matches("(ANY|NON|PIT|NDL|DRP|MPB|HYB|REF|INT|CNF|SCH)-\\d\\d[a-z]?");
              assertThat(rule.because()).isNotBlank();
              assertThat(rule.cause()).isNotBlank();
              assertThat(rule.conditions()).isNotEmpty();
              assertThat(rule.sentence()).endsWith(".");
            });
    assertThat(pack.all()).extracting(Rule::id).doesNotHaveDuplicates();
    assertThat(pack.all()).extracting(Rule::sentence).doesNotHaveDuplicates();
  }

  @Test
  @DisplayName(
      "A rule that claims a standard or a publication names it, and not one cited from memory only")
  void a_claim_to_be_published_names_a_source_that_was_read() {
    assertThat(pack.all())
        .filteredOn(rule -> rule.basis() == Basis.STANDARD || rule.basis() == Basis.PUBLISHED)
        .isNotEmpty()
        .allSatisfy(
            rule ->
                assertThat(rule.citations())
                    .as(rule.id())
                    .anyMatch(citation -> !pack.source(citation.key()).fromMemory()));
    assertThat(pack.all())
        .filteredOn(rule -> rule.basis() == Basis.FROM_MEMORY)
        .isNotEmpty()
        .allSatisfy(rule -> assertThat(rule.citations()).as(rule.id()).isNotEmpty());
    assertThat(pack.limits().all())
        .filteredOn(limit -> limit.basis() == Basis.STANDARD || limit.basis() == Basis.PUBLISHED)
        .allSatisfy(limit -> assertThat(limit.source()).as(limit.name()).isNotBlank());
  }

  @Test
  void sources_of_contractors_and_practitioners_name_no_firm() {
    assertThat(pack.sources().values())
        .filteredOn(source -> source.kind().startsWith("contractor"))
        .isNotEmpty()
        .allSatisfy(source -> assertThat(source.title()).startsWith("Contractor practice"));
    assertThat(pack.sources().values())
        .filteredOn(source -> source.kind().startsWith("practitioner"))
        .isNotEmpty()
        .allSatisfy(source -> assertThat(source.title()).startsWith("Practitioner opinion"));
  }

  @Test
  void every_limit_and_source_is_used_and_every_limit_has_a_basis() {
    Set<String> limits = new HashSet<>();
    Set<String> sources = new HashSet<>();
    Pattern placeholder = Pattern.compile("\\{limit:([^}]+)}");
    for (Rule rule : pack.all()) {
      rule.conditions().stream()
          .filter(condition -> condition.operator().isNumeric())
          .forEach(condition -> limits.add(condition.limitName()));
      placeholder.matcher(rule.because()).results().forEach(match -> limits.add(match.group(1)));
      rule.citations().forEach(citation -> sources.add(citation.key()));
    }
    assertThat(pack.limits().all()).extracting(Limit::name).hasSameElementsAs(limits);
    assertThat(pack.sources().keySet()).hasSameElementsAs(sources);
  }

  @Test
  void the_manifest_names_every_rule_file_once() throws IOException {
    Path rules = Path.of("rules");
    try (Stream<Path> walk = Files.walk(rules)) {
      Set<String> there =
          walk.filter(path -> path.toString().endsWith(".drl"))
              .map(path -> rules.relativize(path).toString().replace('\\', '/'))
              .collect(Collectors.toSet());
      assertThat(pack.all().stream().map(Rule::file).collect(Collectors.toSet()))
          .hasSameElementsAs(there);
    }
  }

  @Test
  void the_fingerprint_changes_with_any_file_and_not_with_line_ends() {
    RulePackReader reader = new RulePackReader(FactDictionary.standard());
    RulePack same = reader.read(BuiltInPack::text).orElseThrow();
    assertThat(same.fingerprint()).isEqualTo(pack.fingerprint()).hasSize(64);
    RulePack windows =
        reader.read(n -> BuiltInPack.text(n).map(t -> t.replace("\n", "\r\n"))).orElseThrow();
    assertThat(windows.fingerprint()).isEqualTo(pack.fingerprint());
    RulePack changed =
        reader.read(name -> changedLimit(name, BuiltInPack.text(name))).orElseThrow();
    assertThat(changed.fingerprint()).isNotEqualTo(pack.fingerprint());
  }

  private static Optional<String> changedLimit(String name, Optional<String> text) {
    return name.equals("limits.json")
        ? text.map(t -> t.replace("\"250 kN/m\"", "\"260 kN/m\""))
        : text;
  }

  @Test
  @DisplayName(
      "Every derived fact that calculation does not make is made by a rule, both ways where it is yes or no")
  void derived_facts_are_derived() {
    Set<String> made =
        pack.all().stream()
            .filter(rule -> rule.effect() == Effect.DERIVE)
            .map(rule -> rule.action().fact() + "=" + rule.action().value())
            .collect(Collectors.toSet());
    List<FactDefinition> byRule =
        FactDictionary.standard().all().stream()
            .filter(FactDefinition::derived)
            .filter(fact -> underhold.site.ZoneViews.sources(fact.name()).isEmpty())
            .filter(fact -> !fact.name().equals("ordinaryOptionsLeft"))
            .filter(fact -> !fact.group().equals("sizing")) // made by the sizing, not by rules
            .toList();
    assertThat(byRule)
        .isNotEmpty()
        .allSatisfy(
            fact ->
                assertThat(fact.values())
                    .allSatisfy(
                        value -> assertThat(made).contains(fact.name() + "=" + value.value())));
  }
}
