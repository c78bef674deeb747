package underhold.report.handout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.classroom.Believed;
import underhold.classroom.CaseStage;
import underhold.classroom.CaseStudy;
import underhold.classroom.Days;
import underhold.classroom.FactPlace;
import underhold.classroom.KeyMaker;
import underhold.classroom.Level;
import underhold.classroom.Question;
import underhold.classroom.QuestionDesk;
import underhold.consult.Consultant;
import underhold.report.Program;
import underhold.report.document.Block;
import underhold.report.document.Document;
import underhold.report.document.LiveLinks;
import underhold.report.document.Prose;
import underhold.report.document.Section;
import underhold.site.FactDictionary;
import underhold.site.Zone;

/**
 * The trainer's key of a case: what leads at every stage and why, what each fact would turn, what
 * must be named, the answers of the questions with their working, the rubric, the trace of the
 * rules and the sources. All of it is reckoned; nothing is read from what the case expects but the
 * lesson.
 */
public final class KeyHandout {
  private static final String STATUS = "For the trainer, not for students: not for construction";

  private final CaseStudy study;
  private final Consultant consultant;
  private final KeyMaker keys;
  private final Sources sources = new Sources();

  private KeyHandout(CaseStudy study, Consultant consultant) {
    this.study = study;
    this.consultant = consultant;
    this.keys = new KeyMaker(consultant);
  }

  /** The key by the rules of a consultant. */
  public static Document of(CaseStudy study, Consultant consultant) {
    return LiveLinks.only(new KeyHandout(study, consultant).document());
  }

  private Document document() {
    List<Section> sections = new ArrayList<>();
    sections.add(lesson());
    sections.add(stages());
    KeyZones zones = new KeyZones(study, keys, sources);
    sections.addAll(zones.sections());
    if (study.full().zones().size() > 1) {
      sections.add(new KeyTogether(study, keys, sources).section());
    }
    if (!study.file().questions().isEmpty()) {
      sections.add(questions());
    }
    sections.add(
        Section.of(
            "marks", "What is given points", RubricTables.of(study.full().zones().size() > 1)));
    sections.add(facts());
    Section trace = new KeyTrace(study, keys, sources).section();
    sections.add(sources.section());
    sections.add(trace);
    return new Document(study.file().title() + ": trainer's key", STATUS, cover(), sections);
  }

  private List<Document.Entry> cover() {
    String level =
        Level.find(study.file().level())
            .map(found -> found.word() + ": " + found.means())
            .orElse(study.file().level());
    return List.of(
        entry("Job", study.file().title()),
        entry("Case", study.name()),
        entry("Level", level),
        entry("Teaches", study.file().teaches()),
        entry("Place", "Invented for teaching."),
        entry("Program", "Underhold " + Program.version()),
        entry(
            "Rules", consultant.pack().name() + ", fingerprint " + consultant.pack().fingerprint()),
        entry("Caution", Program.CAUTION));
  }

  private static Document.Entry entry(String label, String words) {
    return new Document.Entry(label, Prose.of(words));
  }

  private Section lesson() {
    return Section.of(
        "lesson",
        "The lesson, for the close",
        List.of(
            Pieces.paragraph(study.file().lesson() + " [" + study.file().basis() + "]"),
            Pieces.paragraph(
                "Answers are marked against what the rules say of the facts that a student had at the"
                    + " time. What stands here is what all students know at each stage; who asked for"
                    + " more is held against more.")));
  }

  private Section stages() {
    List<Block.Row> rows = new ArrayList<>();
    for (CaseStage stage : study.stages()) {
      rows.add(
          Block.Row.of(
              Prose.of(
                  stage.title() + (stage.surprise() ? " (a surprise: cannot be asked for)" : "")),
              Prose.of(Days.of(stage.days())),
              Prose.of(stage.tells()),
              Prose.of(revealed(stage))));
    }
    return Section.of(
        "stages",
        "The stages",
        List.of(
            new Block.Table(
                "What each stage tells",
                Pieces.columns("Stage", "Cost", "What students read", "What becomes known"),
                rows)));
  }

  private static String revealed(CaseStage stage) {
    Map<String, List<String>> zones = new LinkedHashMap<>();
    for (FactPlace place : stage.places()) {
      zones.computeIfAbsent(place.zone(), zone -> new ArrayList<>()).add(place.fact());
    }
    List<String> words = new ArrayList<>();
    zones.forEach(
        (zone, facts) ->
            words.add((zone.isEmpty() ? "the site" : zone) + ": " + String.join(", ", facts)));
    if (stage.ground()) {
      words.add("the ground");
    }
    String told = String.join("; ", words);
    List<String> believed = stage.believed().stream().map(KeyHandout::believed).toList();
    return told
        + (believed.isEmpty()
            ? ""
            : "; believed until a later stage shows otherwise: " + String.join(", ", believed));
  }

  private static String believed(Believed one) {
    return one.place() + " " + one.value();
  }

  private Section questions() {
    QuestionDesk desk = new QuestionDesk(consultant);
    List<Section> parts = new ArrayList<>();
    for (Question question : study.file().questions()) {
      parts.add(
          Section.of(
              "question-" + (parts.size() + 1),
              question.id() + ", " + question.zone(),
              new KeyQuestion(study, question, desk).blocks()));
    }
    return new Section(
        "questions",
        "Questions of size and sequence",
        List.of(
            Pieces.paragraph(
                "Reckoned from what all know at the stage of each question. A question comes once the"
                    + " student's choice at that stage is marked.")),
        parts);
  }

  private Section facts() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        FactTables.known(
            "The whole site",
            study.full().facts(),
            FactDictionary.standard(),
            "Nothing is stated for the whole site."));
    List<Section> parts = new ArrayList<>();
    for (Zone zone : study.full().zones()) {
      parts.add(
          Section.of(
              "facts-" + (parts.size() + 1),
              "Zone: " + zone.name(),
              List.of(
                  FactTables.known(
                      zone.name(), zone.facts(), FactDictionary.standard(), "Nothing is stated."),
                  FactTables.ground(
                      "Ground at " + zone.name(),
                      Optional.of(zone.ground())
                          .filter(ground -> !ground.isEmpty())
                          .orElse(study.full().ground())
                          .layers()))));
    }
    return new Section("facts", "All the facts, as they are", blocks, parts);
  }
}
