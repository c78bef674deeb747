package underhold.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import underhold.review.file.FileReading;

/** A case that is not whole is refused, with all its problems and their places. */
class CaseReaderTest {
  private static final String CASE = Cases.text("bracken-lane");

  private static List<String> problems(String text) {
    FileReading<CaseStudy> reading = CaseReader.read(text, "x.case.json");
    assertThat(reading.content().isPresent()).isEqualTo(reading.problems().isEmpty());
    return reading.messages();
  }

  private static String changed(String from, String to) {
    assertThat(CASE).contains(from);
    return CASE.replace(from, to);
  }

  @Test
  void a_whole_case_has_no_problem() {
    assertThat(problems(CASE)).isEmpty();
  }

  @Test
  void problems_of_the_site_name_their_place() {
    assertThat(problems(changed("\"gapToExcavation\": \"0 m\"", "\"gapToExcavation\": \"0 kg\"")))
        .anySatisfy(text -> assertThat(text).contains("site.zones[0].facts.gapToExcavation"));
  }

  @Test
  void a_fact_that_no_stage_tells_and_one_that_the_site_lacks_are_told_together() {
    assertThat(problems(changed("\"wallThickness\",\n", "\"wallHeight\",\n")))
        .anySatisfy(text -> assertThat(text).contains("no stage tells wallThickness of gable"))
        .anySatisfy(text -> assertThat(text).contains("the site states no wallHeight of gable"));
  }

  @Test
  void names_that_could_steer_a_terminal_are_shown_without_doing_so() {
    String escape = "\\u001b[2J";
    assertThat(problems(changed("\"wallThickness\",\n", "\"wall" + escape + "\",\n")))
        .anySatisfy(text -> assertThat(text).contains("the site states no wall"))
        .allSatisfy(text -> assertThat(text).doesNotContain("\u001b"));
    String level = "\"level\": \"" + escape + "y".repeat(5000);
    assertThat(problems(changed("\"level\": \"", level)))
        .singleElement()
        .asString()
        .contains("there is no level")
        .doesNotContain("\u001b")
        .hasSizeLessThan(300);
  }

  @Test
  void what_contradicts_itself_at_a_stage_is_told_with_the_stage() {
    String believed =
        "\"believed\": [ { \"zone\": \"gable\", \"fact\": \"landRights\", \"value\": \"perhaps\" } ]";
    int first = CASE.indexOf("\"believed\": []");
    String text =
        CASE.substring(0, first) + believed + CASE.substring(first + "\"believed\": []".length());
    assertThat(problems(text)).anySatisfy(one -> assertThat(one).contains("stages[0]", "perhaps"));
  }

  @Test
  void a_belief_needs_a_later_stage() {
    String believed =
        "\"believed\": [ { \"zone\": \"gable\", \"fact\": \"wallLength\", \"value\": \"9 m\" } ]";
    int first = CASE.indexOf("\"believed\": []");
    String text =
        CASE.substring(0, first) + believed + CASE.substring(first + "\"believed\": []".length());
    assertThat(problems(text))
        .anySatisfy(one -> assertThat(one).contains("is not told by a later"));
  }

  @Test
  void words_that_are_none_are_refused() {
    assertThat(problems(changed("\"level\": \"first\"", "\"level\": \"easy\"")))
        .anySatisfy(text -> assertThat(text).contains("easy", "first, second, third"));
    assertThat(problems(changed("\"leader\": \"pits\"", "\"leader\": \"pitts\"")))
        .anySatisfy(text -> assertThat(text).contains("pitts", "bracket-piles"));
    assertThat(problems(changed("\"kind\": \"rounds\"", "\"kind\": \"guess\"")))
        .anySatisfy(text -> assertThat(text).contains("guess"));
    assertThat(problems(changed("\"basis\": \"common practice\"", "\"basis\": \"law\"")))
        .anySatisfy(text -> assertThat(text).contains("law"));
  }

  @Test
  void an_entry_twice_in_the_site_is_told() {
    assertThat(
            problems(
                changed(
                    "\"wallLength\": \"11 m\",",
                    "\"wallLength\": \"11 m\", \"wallLength\": \"12 m\",")))
        .anySatisfy(text -> assertThat(text).contains("wallLength", "twice"));
  }

  @Test
  void names_that_nothing_bears_are_refused() {
    assertThat(problems(changed("\"stage\": \"borings\"", "\"stage\": \"boring\"")))
        .anySatisfy(text -> assertThat(text).contains("questions[0].stage", "borings"));
  }

  @Test
  void other_files_are_told_apart() {
    assertThat(problems("{}")).hasSize(1);
    assertThat(problems("[1, 2")).isNotEmpty();
    assertThat(problems("{\"underhold\": \"site/1\"}").get(0)).contains("case for the classroom");
    assertThat(problems("{\"underhold\": \"case/1\"}")).hasSizeGreaterThan(8);
  }
}
