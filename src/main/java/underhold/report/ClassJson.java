package underhold.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import underhold.advice.RulePack;
import underhold.classroom.CaseStudy;
import underhold.classroom.ClassFile;
import underhold.classroom.ConditionWords;
import underhold.classroom.DangerWords;
import underhold.classroom.Mark;
import underhold.classroom.OrderWords;
import underhold.classroom.Question;
import underhold.classroom.Rubric;
import underhold.classroom.StudentSheet;
import underhold.review.file.RecordTree;
import underhold.site.Relation;
import underhold.site.StatedFact;
import underhold.site.Zone;

/** What concerns a class, as JSON trees. */
public final class ClassJson {
  private ClassJson() {}

  /**
   * The cases there are.
   *
   * @param key whether to show what they teach
   */
  public static Object list(List<CaseStudy> studies, boolean key) {
    return studies.stream()
        .map(
            one -> {
              Map<String, Object> tree =
                  Json.object(
                      "case",
                      one.name(),
                      "title",
                      one.file().title(),
                      "level",
                      one.file().level(),
                      "stages",
                      one.stages().stream().filter(stage -> key || !stage.surprise()).count(),
                      "questions",
                      one.file().questions().size());
              if (key) {
                tree.put("teaches", one.file().teaches());
              }
              return tree;
            })
        .toList();
  }

  /**
   * Where a class stands.
   *
   * @param key whether to show what the cases teach
   */
  public static Object show(ClassFile file, Map<String, CaseStudy> studies, boolean key) {
    Map<String, Object> tree = new LinkedHashMap<>(RecordTree.of(file));
    if (key) {
      Map<String, Object> teaches = new LinkedHashMap<>();
      studies.forEach(
          (name, study) ->
              teaches.put(
                  name,
                  Json.object(
                      "teaches", study.file().teaches(),
                      "lesson", study.file().lesson(),
                      "basis", study.file().basis())));
      tree.put("key", teaches);
    }
    return tree;
  }

  /** What one student may see of a case. */
  public static Object sheet(StudentSheet sheet) {
    Map<String, Object> zones = new LinkedHashMap<>();
    for (Zone zone : sheet.site().zones()) {
      zones.put(
          zone.name(),
          Json.object(
              "facts",
              facts(zone.facts()),
              "ground",
              sheet.layers(zone).stream()
                  .map(layer -> Json.object("top", layer.top().text(), "soil", layer.soil()))
                  .toList()));
    }
    return Json.object(
        "case", sheet.of(),
        "title", sheet.title(),
        "story", sheet.story(),
        "student", sheet.student(),
        "stages", sheet.stages().stream().map(RecordTree::of).toList(),
        "next", sheet.next().stream().map(RecordTree::of).toList(),
        "daysByAll", sheet.daysClass(),
        "daysByOwnQuestions", sheet.daysAsked(),
        "facts", facts(sheet.site().facts()),
        "zones", zones,
        "relations", sheet.site().relations().stream().map(ClassJson::relation).toList(),
        "questions", sheet.questions().stream().map(question -> question(question, sheet)).toList(),
        "answers", sheet.answers().stream().map(RecordTree::of).toList(),
        "schemes", sheet.schemes().stream().map(RecordTree::of).toList(),
        "given", sheet.given().stream().map(RecordTree::of).toList());
  }

  private static Object relation(Relation relation) {
    return Json.object(
        "zones", List.of(relation.first(), relation.second()), "facts", facts(relation.facts()));
  }

  private static Object question(Question question, StudentSheet sheet) {
    return Json.object(
        "question", question.id(),
        "text", question.text(),
        "beside", sheet.beside().getOrDefault(question.id(), List.of()),
        "answer", question.asks().form());
  }

  private static Map<String, Object> facts(Map<String, StatedFact> facts) {
    Map<String, Object> tree = new LinkedHashMap<>();
    facts.forEach(
        (name, fact) -> tree.put(name, fact.value() == null ? "unknown" : fact.value().text()));
    return tree;
  }

  /** Marks with their reasons. */
  public static Object marks(List<Mark> marks) {
    return marks.stream()
        .map(
            mark -> {
              Map<String, Object> tree = new LinkedHashMap<>(RecordTree.of(mark));
              tree.put("points", mark.points());
              tree.put("outOf", mark.outOf());
              return tree;
            })
        .toList();
  }

  /** What is given points, and the words that answers can name. */
  public static Object rubric(RulePack pack) {
    return Json.object(
        "rubric", Rubric.rows().stream().map(RecordTree::of).toList(),
        "conditions", ConditionWords.of(pack).stream().map(RecordTree::of).toList(),
        "dangers", DangerWords.of(pack).stream().map(RecordTree::of).toList(),
        "orders", OrderWords.all().stream().map(RecordTree::of).toList());
  }
}
