package underhold.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import underhold.report.Look;

/** What the Tab key offers. */
class WordCompleterTest {
  private final WordCompleter completer =
      new WordCompleter(
          Commands.registry(
              new Session(
                  true,
                  (prompt, words) -> java.util.Optional.empty(),
                  new Output(writer(), writer(), writer(), Look.PLAIN, false))));

  private static java.io.PrintWriter writer() {
    return new java.io.PrintWriter(new java.io.StringWriter());
  }

  @Test
  void commands_come_first_and_once() {
    assertThat(completer.words(List.of()))
        .contains("advise", "site", "rules", "interview")
        .doesNotHaveDuplicates();
    assertThat(completer.words(List.of("rules")))
        .containsExactly("audit", "differences", "find", "limits", "list", "show", "use");
  }

  @Test
  void methods_facts_and_rules_are_offered_where_they_belong() {
    assertThat(completer.words(List.of("why"))).contains("pits", "edge-pits", "--zone");
    assertThat(completer.words(List.of("compare", "pits"))).contains("needles");
    assertThat(completer.words(List.of("facts"))).contains("loadPattern");
    assertThat(completer.words(List.of("rules", "show"))).contains("PIT-04a");
    assertThat(completer.words(List.of("site", "set", "storeys=4"))).contains("gapToExcavation=");
    assertThat(completer.words(List.of("why", "pits", "x.json"))).doesNotContain("pits");
  }
}
