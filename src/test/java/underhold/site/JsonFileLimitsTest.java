package underhold.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What is too much for a file is said with its place. */
class JsonFileLimitsTest {
  private static List<SiteProblem> problems(String text) {
    Problems problems = new Problems("x.json");
    JsonFile.read(text, problems);
    return problems.all();
  }

  @Test
  void a_number_of_too_many_digits_is_refused_where_it_stands() {
    assertThat(problems("{ \"a\":\n " + "9".repeat(5000) + " }"))
        .singleElement()
        .satisfies(problem -> assertThat(problem.line()).isEqualTo(2))
        .satisfies(
            problem ->
                assertThat(problem.message())
                    .contains("exceeds the maximum allowed (1000)")
                    .doesNotContain("StreamRead"));
  }

  @Test
  void more_values_than_any_file_has_are_not_read_to_the_end() {
    String many = "[\n" + "1,".repeat(JsonFile.MOST_VALUES) + "1]";

    assertThat(problems(many))
        .singleElement()
        .satisfies(problem -> assertThat(problem.line()).isEqualTo(2))
        .satisfies(problem -> assertThat(problem.code()).isEqualTo(SiteProblem.Code.TOO_MANY));
  }

  /** Zones with unsound names are named when a relation speaks of another one. */
  @Test
  void names_that_are_refused_are_not_repeated_as_they_are() {
    String site =
        """
        { "underhold": "site/1", "name": "Dock Row", "zones": [
            { "name": "w\\u009b", "facts": { "loadPattern": "continuous",
              "excavationPosition": "beside" } },
            { "name": "other", "facts": { "loadPattern": "continuous",
              "excavationPosition": "beside" } } ],
          "relations": [ { "zones": [ "zzz", "other" ], "facts": { "distance": "1 m" } } ] }
        """;

    List<SiteProblem> problems = ((SiteReading.Invalid) SiteReader.read(site, "x")).problems();

    assertThat(problems)
        .extracting(SiteProblem::text)
        .anyMatch(text -> text.contains("there is no zone \"zzz\"; zones are: w?, other"))
        .noneMatch(text -> text.contains("\u009b"));
  }
}
