package underhold.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.abort;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import underhold.site.FactView;

@DisplayName("Every rule is tried where it should fire, where it should not, and at its limits")
class RuleCasesTest {
  private static final RuleEngine ENGINE = BuiltInPack.compiledEngine();
  private static final RulePack PACK = ENGINE.pack();
  private static final Map<String, RuleCaseFile> FILES = RuleCaseFile.all();

  @TestFactory
  @DisplayName("own cases: what each rule ought to do, written from its sources")
  Stream<DynamicTest> cases() {
    return FILES.values().stream()
        .flatMap(
            file ->
                file.cases().stream()
                    .map(
                        item ->
                            DynamicTest.dynamicTest(
                                file.rule() + " " + item.title(), () -> check(file, item))));
  }

  private static void check(RuleCaseFile file, RuleCase item) {
    Rule rule = PACK.rule(file.rule()).orElseThrow();
    FactView view = item.view();
    boolean fired = ENGINE.fire(view, rule.phase()).contains(rule);
    assertThat(rule.holds(view) == Truth.TRUE)
        .as("the rule as read and the rule as compiled agree")
        .isEqualTo(fired);
    if (!item.disputed()) {
      assertThat(fired).as("%s fires on: %s", rule.id(), item.title()).isEqualTo(item.fires());
    } else if (fired == item.fires()) {
      throw new AssertionError("the rule now does what was disputed: take the mark away");
    } else {
      abort("disputed: it should " + (item.fires() ? "" : "not ") + "fire");
    }
  }

  @Test
  void every_file_stands_where_its_rule_stands() {
    Map<String, String> paths =
        PACK.all().stream().collect(Collectors.toMap(RuleCaseFile::path, Rule::id));
    assertThat(FILES)
        .isNotEmpty()
        .allSatisfy((path, file) -> assertThat(file.rule()).isEqualTo(paths.get(path)));
  }

  @Test
  void the_cases_of_a_rule_leave_no_gap() {
    Set<String> begun = foldersWithCases();
    List<String> gaps =
        PACK.all().stream()
            .filter(rule -> begun.contains(RuleCaseFile.folder(rule.file())))
            .flatMap(rule -> RuleCaseGaps.of(rule, PACK.limits(), FILES).stream())
            .toList();
    assertThat(gaps).isEmpty();
  }

  @Test
  void no_condition_could_be_left_out_of_a_rule_unnoticed() {
    List<String> idle =
        FILES.values().stream()
            .flatMap(
                file ->
                    RuleCaseGaps.idle(
                        PACK.rule(file.rule()).orElseThrow(), PACK.limits(), file.cases())
                        .stream())
            .toList();
    assertThat(idle).isEmpty();
  }

  @Test
  void every_folder_of_rules_has_cases() {
    Set<String> folders =
        PACK.all().stream()
            .map(rule -> RuleCaseFile.folder(rule.file()))
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(foldersWithCases()).isEqualTo(folders);
  }

  private static Set<String> foldersWithCases() {
    return FILES.keySet().stream()
        .map(RuleCaseFile::folder)
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
