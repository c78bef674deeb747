package underhold.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import underhold.classroom.Answer;
import underhold.classroom.Days;
import underhold.classroom.Given;
import underhold.classroom.Question;
import underhold.classroom.SchemeAnswer;
import underhold.classroom.StudentSheet;
import underhold.quantity.Quantity;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.GroundLayer;
import underhold.site.Relation;
import underhold.site.StatedFact;
import underhold.site.Zone;

/** What one student has of a case: what is known, what more costs, what is asked. */
public final class ClassSheetText {
  private static final int MARGIN = 2;
  private static final int NAME = 27;

  private final StudentSheet sheet;
  private final TextPage page;

  private ClassSheetText(StudentSheet sheet, Look look) {
    this.sheet = sheet;
    this.page = new TextPage(look);
  }

  /** The sheet; nothing stands in it that the student does not know. */
  public static String of(StudentSheet sheet, Look look) {
    ClassSheetText text = new ClassSheetText(sheet, look);
    text.head();
    text.facts();
    text.relations();
    text.more();
    text.questions();
    text.own();
    return text.page.text();
  }

  private void head() {
    page.heading(
        safe(sheet.title()) + (sheet.student().isEmpty() ? "" : ", for " + safe(sheet.student())));
    page.para(0, safe(sheet.story()));
    for (StudentSheet.Told told : sheet.stages()) {
      page.heading(safe(told.title()) + ", " + Days.of(told.days()));
      page.para(MARGIN, safe(told.tells()));
    }
    page.blank();
    page.para(
        0,
        "Spent so far: "
            + Days.of(sheet.daysClass())
            + " by all, "
            + Days.of(sheet.daysAsked())
            + " by your own questions.");
  }

  private void facts() {
    page.heading("Known of the whole site");
    stated(sheet.site().facts());
    for (Zone zone : sheet.site().zones()) {
      page.heading("Known of " + safe(zone.name()));
      stated(zone.facts());
      if (sheet.layers(zone).isEmpty()) {
        page.item(MARGIN, "ground", NAME, "not explored yet");
      }
      for (GroundLayer layer : sheet.layers(zone)) {
        page.item(MARGIN, "ground from " + safe(layer.top().text()), NAME, safe(layer(layer)));
      }
    }
  }

  private void relations() {
    for (Relation relation : sheet.site().relations()) {
      page.heading(
          "How they lie: first " + safe(relation.first()) + ", second " + safe(relation.second()));
      for (FactDefinition definition : FactDictionary.pairs().all()) {
        StatedFact fact = relation.facts().get(definition.name());
        if (fact != null) {
          stated(definition, fact);
        }
      }
    }
  }

  private static String layer(GroundLayer layer) {
    List<String> parts = new ArrayList<>(List.of(layer.soil()));
    layer.maybeUnitWeight().ifPresent(weight -> parts.add(weight.text()));
    add(parts, "undrained strength", layer.undrainedStrength());
    add(parts, "friction angle", layer.frictionAngle());
    add(parts, "cohesion", layer.cohesion());
    add(parts, "blow count N60", layer.n60());
    add(parts, "unconfined strength", layer.unconfinedStrength());
    add(parts, "rock quality RQD", layer.rqd());
    add(parts, "permeability", layer.permeability());
    layer.maybeStandUp().ifPresent(word -> parts.add("face stands: " + word));
    return String.join(", ", parts);
  }

  private static void add(List<String> parts, String what, @Nullable Quantity value) {
    if (value != null) {
      parts.add(what + " " + value.text());
    }
  }

  private void stated(Map<String, StatedFact> facts) {
    if (facts.isEmpty()) {
      page.para(MARGIN, "Nothing.");
    }
    for (FactDefinition definition : FactDictionary.standard().all()) {
      StatedFact fact = facts.get(definition.name());
      if (fact != null) {
        stated(definition, fact);
      }
    }
  }

  private void stated(FactDefinition definition, StatedFact fact) {
    String value = fact.value() == null ? "nobody knows" : fact.value().text();
    page.item(MARGIN, definition.name(), NAME, safe(value) + " (" + definition.label() + ")");
  }

  private void more() {
    page.heading("What more could be found out");
    if (sheet.next().isEmpty()) {
      page.para(MARGIN, "Nothing more before the work.");
    }
    for (StudentSheet.Told told : sheet.next()) {
      page.item(MARGIN, "-", 2, safe(told.title()) + ", " + Days.of(told.days()));
    }
  }

  private void questions() {
    page.heading("To answer now");
    page.para(
        MARGIN,
        "For each zone: a method or none, the facts that decide it, what must be checked first, the"
            + " conditions, the dangers. class rubric shows what is given points and the words,"
            + " facts explains every fact. Questions of size and sequence come once your choice is"
            + " marked.");
    if (sheet.site().zones().size() > 1) {
      page.para(
          MARGIN,
          "For all zones together: their methods, the facts on which they meet, what must come before"
              + " what.");
    }
    for (Question question : sheet.questions()) {
      page.item(MARGIN, question.id(), NAME, safe(question.text()));
      sheet
          .beside()
          .getOrDefault(question.id(), List.of())
          .forEach(line -> page.para(MARGIN + NAME, safe(line)));
      page.tinted(Tint.QUIET, MARGIN + NAME, "Answer: " + question.asks().form());
    }
  }

  private void own() {
    if (sheet.answers().isEmpty() && sheet.schemes().isEmpty() && sheet.given().isEmpty()) {
      return;
    }
    page.heading("Answered so far");
    for (Answer answer : sheet.answers()) {
      page.item(
          MARGIN,
          safe(answer.zone()),
          NAME,
          sheet.stages().get(answer.stage()).title()
              + ": "
              + answer.method()
              + ClassMarksText.named("because of", answer.because())
              + ClassMarksText.named("to check", answer.check())
              + ClassMarksText.named("conditions", answer.condition())
              + ClassMarksText.named("dangers", answer.danger())
              + (sheet.counts(answer) ? "" : " (answered again since)"));
    }
    for (SchemeAnswer answer : sheet.schemes()) {
      page.item(
          MARGIN,
          "together",
          NAME,
          safe(
              sheet.stages().get(answer.stage()).title()
                  + ": "
                  + String.join(
                      ", ",
                      answer.methods().entrySet().stream()
                          .map(one -> one.getKey() + " " + one.getValue())
                          .toList())
                  + ClassMarksText.named("because of", answer.because())
                  + ClassMarksText.named(
                      "order", answer.order().stream().map(String::valueOf).toList())));
    }
    for (Given given : sheet.given()) {
      page.item(MARGIN, given.question(), NAME, safe(given.gives()));
    }
  }

  private static String safe(String text) {
    return SafeText.of(text);
  }
}
