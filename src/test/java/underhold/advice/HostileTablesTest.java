package underhold.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underhold.site.FactDictionary;

/** Tables of a pack that say what no pack may say are refused, with their line. */
@DisplayName("Tables that cannot be meant are refused with their line")
class HostileTablesTest {
  private final RulePackReader reader =
      new RulePackReader(FactDictionary.standard(), BuiltInPack.pack());

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '¦',
      textBlock =
          """
          a key twice            ¦ limits.json    ¦ {"limits": [], "limits": []}                                        ¦ "limits" stands twice
          a class named          ¦ limits.json    ¦ {"@class": "java.io.File", "limits": []}                            ¦ no field "@class"
          a field misspelt       ¦ limits.json    ¦ {"limits": [{"name": "needle-span", "vaule": "2 m"}]}               ¦ did you mean "value"
          a bare number          ¦ limits.json    ¦ {"limits": [{"name": "needle-span", "value": 5}]}                   ¦ value is a text in quotation marks, not a number
          not a number           ¦ limits.json    ¦ {"limits": [{"name": "needle-span", "value": NaN}]}                 ¦ not readable JSON
          infinite               ¦ limits.json    ¦ {"limits": [{"name": "needle-span", "value": "1e999 m", "basis": "judgement", "source": ""}]} ¦ limit needle-span
          no unit                ¦ limits.json    ¦ {"limits": [{"name": "needle-span", "value": "5", "basis": "judgement", "source": ""}]} ¦ unit
          another unit           ¦ limits.json    ¦ {"limits": [{"name": "needle-span", "value": "5 kPa", "basis": "judgement", "source": ""}]} ¦ a length is needed
          another measure        ¦ limits.json    ¦ {"limits": [{"name": "needle-span", "measure": "FORCE", "value": "5 kN", "basis": "judgement", "source": ""}]} ¦ measures LENGTH
          a negative length      ¦ limits.json    ¦ {"limits": [{"name": "needle-span", "value": "-5 m", "basis": "judgement", "source": ""}]} ¦ lies between
          out of any reach       ¦ limits.json    ¦ {"limits": [{"name": "needle-span", "value": "5000 m", "basis": "judgement", "source": ""}]} ¦ always or never fire
          somebody else's basis  ¦ limits.json    ¦ {"limits": [{"name": "needle-span", "value": "15 m"}]}              ¦ needs its own basis and source
          a claim without source ¦ limits.json    ¦ {"limits": [{"name": "needle-span", "value": "15 m", "basis": "standard", "source": ""}]} ¦ names no source
          a range upside down    ¦ limits.json    ¦ {"limits": [{"name": "needle-span", "value": "15 m", "basis": "judgement", "source": "", "plausible": ["9 m", "3 m"]}]} ¦ least and a greatest
          a limit twice          ¦ limits.json    ¦ {"limits": [{"name": "needle-span", "value": "15 m", "basis": "judgement", "source": ""}, {"name": "needle-span", "value": "16 m", "basis": "judgement", "source": ""}]} ¦ stands twice
          a new limit below 0    ¦ limits.json    ¦ {"limits": [{"name": "own", "label": "own", "measure": "LENGTH", "value": "-1 m", "basis": "judgement", "source": ""}]} ¦ below nothing
          a huge weight          ¦ strengths.json ¦ {"weights": {"decisive": 1e999}}                                    ¦ a whole number from 0 to 1000
          a negative weight      ¦ strengths.json ¦ {"weights": {"minor": -1}}                                          ¦ a whole number from 0 to 1000
          a broken weight        ¦ strengths.json ¦ {"weights": {"decisive": 8.9}}                                      ¦ a whole number from 0 to 1000
          a weight as text       ¦ strengths.json ¦ {"weights": {"decisive": "8"}}                                      ¦ a number, not a text
          strengths upside down  ¦ strengths.json ¦ {"weights": {"moderate": 5}}                                        ¦ decisive >= major >= moderate >= minor
          nothing weighs         ¦ strengths.json ¦ {"weights": {"decisive": 0, "major": 0, "moderate": 0, "minor": 0}} ¦ weighs nothing
          an unknown strength    ¦ strengths.json ¦ {"weights": {"fatal": 99}}                                          ¦ no field "fatal"
          a tie without end      ¦ strengths.json ¦ {"tie": 99999999999999999999999}                                    ¦ a whole number from 0 to 1000
          an option left out     ¦ strengths.json ¦ {"costOrder": ["pits"]}                                             ¦ every option but refer once
          an unknown option      ¦ strengths.json ¦ {"costOrder": ["pitz"]}                                             ¦ did you mean "pits"
          a source nobody read   ¦ sources.json   ¦ {"sources": [{"key": "own", "title": "Own", "read": "surely"}]}     ¦ what was read of it
          a key of blanks        ¦ sources.json   ¦ {"sources": [{"key": "a b", "title": "Own", "read": "in part"}]}    ¦ a key of letters
          a year as an object    ¦ sources.json   ¦ {"sources": [{"key": "own", "title": "Own", "read": "in part", "year": {}}]} ¦ year is a text
          an unknown criterion   ¦ criteria.json  ¦ {"criteria": [{"name": "luck", "meaning": "x"}]}                    ¦ no criterion "luck"
          a cause twice          ¦ criteria.json  ¦ {"criteria": [{"name": "water", "causes": ["frost", "frost"]}]}     ¦ stands twice
          another base           ¦ pack.json      ¦ {"name": "x", "version": "1", "extends": "file:///etc"}             ¦ extends "built-in" or nothing
          files that are objects ¦ pack.json      ¦ {"name": "x", "version": "1", "files": [{"@class": "x"}]}           ¦ files holds a text
          no name                ¦ pack.json      ¦ {"version": "1", "extends": "built-in"}                             ¦ needs a name
          removing the unknown   ¦ pack.json      ¦ {"name": "x", "version": "1", "extends": "built-in", "remove": ["PIT-99"]} ¦ which the built-in rules do not have
          removing from nothing  ¦ pack.json      ¦ {"name": "x", "version": "1", "files": ["a.drl"], "remove": ["PIT-04a"]} ¦ only a pack that "extends"
          """)
  void refuses(String what, String file, String text, String reason) {
    List<PackProblem> problems = problems(file, text, Optional.empty());

    assertThat(problems)
        .anySatisfy(
            problem -> {
              assertThat(problem.file()).isEqualTo(file);
              assertThat(problem.line()).isEqualTo(1);
              assertThat(problem.message()).contains(reason);
            });
  }

  private List<PackProblem> problems(String file, String text, Optional<String> rules) {
    String manifest =
        "{\"name\": \"x\", \"version\": \"1\", \"extends\": \"built-in\""
            + (rules.isPresent() ? ", \"files\": [\"own.drl\"]}" : "}");
    reader.read(
        name ->
            name.equals(file)
                ? Optional.of(text)
                : name.equals("pack.json")
                    ? Optional.of(manifest)
                    : name.equals("own.drl") ? rules : Optional.empty(),
        "x");
    return reader.problems();
  }

  @Test
  void a_fact_that_follows_from_its_own_absence_is_named() {
    String rules =
        rule("X-01", "sensitive == null", "firmFooting", "One follows while the other is open.")
            + rule("X-02", "firmFooting == \"yes\"", "sensitive", "The other follows from the one.")
                .substring(HEAD.length());

    assertThat(problems("none", "", Optional.of(rules)))
        .extracting(PackProblem::text)
        .anyMatch(
            text ->
                text.startsWith("own.drl:6: X-01 derives firmFooting while sensitive is not known")
                    && text.contains("firmFooting from sensitive from firmFooting"));
  }

  private static final String HEAD =
      """
      package rules.house

      import underhold.advice.ZoneFacts
      global underhold.advice.FindingSink findings

      """;

  private static String rule(String id, String condition, String fact, String sentence) {
    return HEAD
        + """
        rule "%s"
          @id("%s")
          @basis("judgement")
          @source("")
          @because("So it is.")
          @cause("derivation")
          agenda-group "derive"
        when
          ZoneFacts( %s )
        then
          findings.derive("%s", "yes", drools.getRule());
        end
        """
            .formatted(sentence, id, condition, fact);
  }
}
