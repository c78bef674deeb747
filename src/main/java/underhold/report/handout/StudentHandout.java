package underhold.report.handout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import underhold.advice.RulePack;
import underhold.classroom.ConditionWords;
import underhold.classroom.DangerWords;
import underhold.classroom.Days;
import underhold.classroom.OrderWords;
import underhold.classroom.Question;
import underhold.classroom.Rubric;
import underhold.classroom.StudentSheet;
import underhold.report.Program;
import underhold.report.document.Block;
import underhold.report.document.Document;
import underhold.report.document.Prose;
import underhold.report.document.Section;
import underhold.report.drawing.section.SectionDrawing;
import underhold.site.FactDictionary;
import underhold.site.Relation;
import underhold.site.Zone;

/**
 * The sheet of a student as a document to be printed. It is made of a {@link StudentSheet} and of
 * what is the same for every case, so that nothing of the key can get in; its drawings are made of
 * the site as the student knows it.
 */
public final class StudentHandout {
  private static final String STATUS = "For teaching: not for construction";
  private static final int LINES = 3;

  private final StudentSheet sheet;
  private final RulePack pack;

  private StudentHandout(StudentSheet sheet, RulePack pack) {
    this.sheet = sheet;
    this.pack = pack;
  }

  /** The sheet; the words are those of the rules in use. */
  public static Document of(StudentSheet sheet, RulePack pack) {
    StudentHandout handout = new StudentHandout(sheet, pack);
    return new Document(
        sheet.title() + ": student sheet", STATUS, handout.cover(), handout.sections());
  }

  private List<Document.Entry> cover() {
    return List.of(
        entry("Job", sheet.title()),
        entry("Student", sheet.student().isEmpty() ? Pieces.ROOM : sheet.student()),
        entry("Open", sheet.stages().get(sheet.stages().size() - 1).title()),
        entry(
            "Spent so far",
            Days.of(sheet.daysClass())
                + " by all"
                + (sheet.daysAsked() > 0
                    ? ", " + Days.of(sheet.daysAsked()) + " by yourself"
                    : "")),
        entry("Place", "Invented for teaching."),
        entry("Program", "Underhold " + Program.version()),
        entry("Caution", Program.CAUTION));
  }

  private static Document.Entry entry(String label, String words) {
    return new Document.Entry(label, Prose.of(words));
  }

  private List<Section> sections() {
    List<Section> sections = new ArrayList<>();
    sections.add(told());
    sections.add(known());
    sections.add(more());
    sections.add(answer());
    if (!sheet.questions().isEmpty()) {
      sections.add(questions());
    }
    sections.add(methods());
    sections.add(words());
    sections.add(marks());
    sections.add(facts());
    return sections;
  }

  private Section told() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Pieces.paragraph(sheet.story()));
    blocks.add(
        new Block.Table(
            "What was done so far",
            Pieces.columns("Work", "What it cost", "What happened"),
            sheet.stages().stream()
                .map(
                    stage ->
                        Block.Row.of(
                            Prose.of(stage.title()),
                            Prose.of(Days.of(stage.days())),
                            Prose.of(stage.tells())))
                .toList()));
    blocks.add(
        new Block.Notice(
            Block.Tone.CAUTION,
            "Caution",
            Prose.of(
                "This is an exercise. On a site nobody digs beside a structure, goes into a pit or"
                    + " works near a held load on the strength of a sheet like this: a licensed"
                    + " engineer decides what holds the structure up, a competent person who may"
                    + " enter a pit, and the owner or the railway what may move and who stops the"
                    + " work.")));
    return Section.of("told", "The job", blocks);
  }

  private Section known() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Pieces.paragraph(
            "What stands here is all that is known now. What does not stand here nobody on the job"
                + " knows yet, and it may turn out badly."));
    blocks.add(
        FactTables.known(
            "Known of the whole site",
            sheet.site().facts(),
            FactDictionary.standard(),
            "Of the whole site nothing is known."));
    for (Relation relation : sheet.site().relations()) {
      blocks.add(
          FactTables.known(
              "How two zones lie: first " + relation.first() + ", second " + relation.second(),
              relation.facts(),
              FactDictionary.pairs(),
              "How they lie to each other is not known."));
    }
    List<Section> parts = new ArrayList<>();
    for (Zone zone : sheet.site().zones()) {
      parts.add(zone(zone, parts.size() + 1));
    }
    return new Section("known", "What is known", blocks, parts);
  }

  private Section zone(Zone zone, int number) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        FactTables.known(
            "Known of " + zone.name(),
            zone.facts(),
            FactDictionary.standard(),
            "Of this zone nothing is known."));
    blocks.add(FactTables.ground("Ground at " + zone.name(), sheet.layers(zone)));
    blocks.addAll(
        Pieces.drawn(
            SectionDrawing.of(
                sheet.site(),
                zone,
                pack.limits(),
                sheet.site().units(),
                "figure-known-" + number)));
    return Section.of("known-" + number, "Zone: " + zone.name(), blocks);
  }

  private Section more() {
    List<Block.Row> rows =
        sheet.next().stream()
            .map(stage -> Block.Row.of(Prose.of(stage.title()), Prose.of(Days.of(stage.days()))))
            .toList();
    return Section.of(
        "more",
        "What more can be found out",
        List.of(
            Pieces.table(
                "Works that could be done",
                Pieces.columns("Work", "What it costs"),
                rows,
                "Nothing more can be found out before the work."),
            Pieces.paragraph(
                "Ask your trainer for any fact by its name. It costs the working days of the work"
                    + " that finds it, once for all that this work finds; what only shows itself"
                    + " during the work cannot be asked for. The names stand at the end.")));
  }

  private Section answer() {
    List<Section> parts = new ArrayList<>();
    for (Zone zone : sheet.site().zones()) {
      List<Block.Row> rows = new ArrayList<>();
      room(rows, "Method, or none", 1);
      room(rows, "Facts that decide it, the weightiest first", LINES);
      room(rows, "To find out first", LINES);
      room(rows, "Conditions: what the method asks for besides", LINES);
      room(rows, "Dangers", LINES);
      parts.add(room("answer-" + (parts.size() + 1), "Zone: " + zone.name(), rows));
    }
    if (sheet.site().zones().size() > 1) {
      List<Block.Row> rows = new ArrayList<>();
      sheet.site().zones().forEach(zone -> room(rows, "Method of " + zone.name(), 1));
      room(rows, "Facts on which the methods meet", LINES);
      room(rows, "What must come before what", LINES);
      parts.add(room("answer-together", "All zones together", rows));
    }
    return new Section(
        "answer",
        "Your answer",
        List.of(
            Pieces.paragraph(
                "Use the words of the lists below. Of every list the first "
                    + Rubric.MOST_NAMED
                    + " words count. You are held against what is known now, not against what comes"
                    + " out later: saying that nothing can be chosen yet is an answer, if you say"
                    + " what it waits for.")),
        parts);
  }

  private static Section room(String id, String title, List<Block.Row> rows) {
    return Section.of(
        id,
        title,
        List.of(new Block.Table("Answer for: " + title, Pieces.columns("Part", "Answer"), rows)));
  }

  private static void room(List<Block.Row> rows, String part, int lines) {
    for (int line = 0; line < lines; line++) {
      rows.add(Block.Row.of(Prose.of(line == 0 ? part : ""), Prose.of(Pieces.ROOM)));
    }
  }

  private Section questions() {
    List<Section> parts = new ArrayList<>();
    for (Question question : sheet.questions()) {
      List<Block> blocks = new ArrayList<>();
      blocks.add(Pieces.paragraph(question.text()));
      List<String> beside = sheet.beside().getOrDefault(question.id(), List.of());
      if (!beside.isEmpty()) {
        blocks.add(Pieces.list(beside));
      }
      blocks.add(Pieces.paragraph("The answer is " + question.asks().form() + "."));
      blocks.add(Pieces.paragraph(Pieces.ROOM));
      parts.add(Section.of("question-" + (parts.size() + 1), question.id(), blocks));
    }
    return new Section("questions", "Questions of size and sequence", List.of(), parts);
  }

  private static Section methods() {
    return Section.of("methods", "The methods in plain words", List.of(Methods.table()));
  }

  private Section words() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Pieces.paragraph(
            "The lists are the same for every job: that a word stands in them says nothing of this"
                + " one."));
    blocks.add(Pieces.words("Conditions", ConditionWords.of(pack)));
    blocks.add(Pieces.words("Dangers, with one of the rules that warn", DangerWords.of(pack)));
    if (sheet.site().zones().size() > 1) {
      blocks.add(Pieces.words("Orders of work between two zones", OrderWords.all()));
    }
    return Section.of("words", "Words for your answer", blocks);
  }

  private Section marks() {
    List<Block> blocks = new ArrayList<>();
    blocks.addAll(RubricTables.of(sheet.site().zones().size() > 1));
    return Section.of("marks", "What is given points", blocks);
  }

  private Section facts() {
    Set<String> known = new HashSet<>(sheet.site().facts().keySet());
    if (sheet.site().zones().size() == 1) {
      known.addAll(sheet.site().zones().get(0).facts().keySet());
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Pieces.paragraph(
            "Every fact that any job can have and that is not known here. Not all of them matter, and"
                + " of some nobody can tell."));
    blocks.addAll(FactTables.byName(known::contains));
    return Section.of("facts", "Facts by their names", blocks);
  }
}
