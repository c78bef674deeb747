package underhold.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Answers with marks that were worked out by hand from the rubric, the facts of each case and the
 * rules as they read, and written down with their reasons before the program marked them.
 */
class HandMarksTest {
  private static JsonNode read() {
    try (InputStream text =
        HandMarksTest.class.getResourceAsStream("/underhold/classroom/hand-marks.json")) {
      return JsonMapper.shared().readTree(text);
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static List<String> words(JsonNode node) {
    List<String> words = new ArrayList<>();
    node.forEach(word -> words.add(word.asString()));
    return words;
  }

  private static Stream<JsonNode> each(JsonNode node) {
    return StreamSupport.stream(node.spliterator(), false);
  }

  private static Answer answer(JsonNode one) {
    return new Answer(
        "Ada",
        one.get("of").asString(),
        one.get("stage").asInt(),
        0,
        one.get("zone").asString(),
        one.get("method").asString(),
        words(one.get("because")),
        words(one.get("check")),
        words(one.get("condition")),
        words(one.get("danger")));
  }

  private static Mark zone(JsonNode one) {
    CaseStudy study = Cases.of(one.get("of").asString());
    ClassFile file = Cases.classOf(study, study.stages().size() - 1);
    JsonNode before = one.get("before");
    if (before != null) {
      file =
          file.with(
              new Answer(
                  "Ada",
                  study.name(),
                  before.get("stage").asInt(),
                  0,
                  one.get("zone").asString(),
                  before.get("method").asString(),
                  List.of(),
                  List.of(),
                  List.of(),
                  List.of()));
    }
    List<Mark> marks = Cases.marked(file.with(answer(one))).marks();
    return marks.get(marks.size() - 1);
  }

  private static Mark scheme(JsonNode one) {
    CaseStudy study = Cases.of(one.get("of").asString());
    Map<String, String> methods = new LinkedHashMap<>();
    one.get("methods")
        .properties()
        .forEach(zone -> methods.put(zone.getKey(), zone.getValue().asString()));
    List<SchemeAnswer.Wanted> orders = new ArrayList<>();
    for (String typed : words(one.get("order"))) {
      String word =
          OrderWords.all().stream()
              .map(Named::word)
              .filter(known -> typed.contains(" " + known + " "))
              .findFirst()
              .orElseThrow();
      String[] zones = typed.split(" " + word + " ");
      orders.add(new SchemeAnswer.Wanted(zones[0], word, zones[1]));
    }
    SchemeAnswer answer =
        new SchemeAnswer(
            "Ada",
            study.name(),
            one.get("stage").asInt(),
            0,
            methods,
            words(one.get("because")),
            orders);
    ClassFile file = Cases.classOf(study, study.stages().size() - 1).with(answer);
    return Cases.marked(file).marks().get(0);
  }

  private static void compare(JsonNode one, Mark mark, SoftAssertions all) {
    Map<String, Double> byHand = new LinkedHashMap<>();
    one.get("marks")
        .properties()
        .forEach(part -> byHand.put(part.getKey(), part.getValue().asDouble()));
    Map<String, Double> marked = new LinkedHashMap<>();
    mark.lines().forEach(line -> marked.put(line.part(), line.points()));
    all.assertThat(marked)
        .as(
            one.get("of").asString()
                + " "
                + one.get("stage")
                + ": "
                + one.get("why").asString()
                + "\n"
                + mark.lines())
        .isEqualTo(byHand);
  }

  @Test
  void answers_for_zones_have_the_marks_made_by_hand() {
    SoftAssertions all = new SoftAssertions();
    each(read().get("zones")).forEach(one -> compare(one, zone(one), all));
    all.assertAll();
  }

  @Test
  void answers_for_all_zones_together_have_the_marks_made_by_hand() {
    SoftAssertions all = new SoftAssertions();
    each(read().get("schemes")).forEach(one -> compare(one, scheme(one), all));
    all.assertAll();
  }

  @Test
  void answers_to_questions_have_the_points_made_by_hand() {
    SoftAssertions all = new SoftAssertions();
    each(read().get("questions"))
        .forEach(
            one -> {
              CaseStudy study = Cases.of(one.get("of").asString());
              ClassFile file =
                  Cases.classOf(study, study.stages().size() - 1)
                      .with(
                          new Given(
                              "Ada",
                              study.name(),
                              one.get("question").asString(),
                              one.get("gives").asString()));
              Mark mark = Cases.marked(file).marks().get(0);
              all.assertThat(mark.points())
                  .as(one.get("why").asString() + " " + mark.lines())
                  .isEqualTo(one.get("points").asDouble());
            });
    all.assertAll();
  }

  @Test
  void they_are_many_and_of_many_cases_and_each_has_its_reason() {
    List<JsonNode> all =
        Stream.of("zones", "schemes", "questions").flatMap(kind -> each(read().get(kind))).toList();
    Set<String> cases = new HashSet<>(all.stream().map(one -> one.get("of").asString()).toList());
    assertThat(all).hasSizeGreaterThanOrEqualTo(24);
    assertThat(cases).hasSizeGreaterThanOrEqualTo(8);
    assertThat(all).allSatisfy(one -> assertThat(one.get("why").asString()).hasSizeGreaterThan(10));
  }
}
