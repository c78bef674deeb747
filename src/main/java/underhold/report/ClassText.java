package underhold.report;

import java.util.List;
import java.util.Map;
import underhold.advice.RulePack;
import underhold.classroom.CaseRef;
import underhold.classroom.CaseStage;
import underhold.classroom.CaseStudy;
import underhold.classroom.ClassFile;
import underhold.classroom.ConditionWords;
import underhold.classroom.DangerWords;
import underhold.classroom.Days;
import underhold.classroom.Level;
import underhold.classroom.Named;
import underhold.classroom.OrderWords;
import underhold.classroom.Rubric;

/** A class as its trainer sees it: the cases there are, where it stands, what is given points. */
public final class ClassText {
  private static final int MARGIN = 2;
  private static final int NAME = 18;
  private static final int PART = 24;

  private ClassText() {}

  /**
   * The cases there are, level by level.
   *
   * @param key whether to show what they teach
   */
  public static String list(List<CaseStudy> studies, boolean key, Look look) {
    TextPage page = new TextPage(look);
    for (Level level : Level.values()) {
      List<CaseStudy> own =
          studies.stream().filter(one -> one.file().level().equals(level.word())).toList();
      if (own.isEmpty()) {
        continue;
      }
      page.heading("Level " + level.word() + (key ? ": " + level.means() : ""));
      for (CaseStudy one : own) {
        page.item(MARGIN, one.name(), NAME, safe(one.file().title()));
        page.tinted(
            Tint.QUIET,
            MARGIN + NAME,
            Words.count(shown(one, key), "stage", "stages")
                + ", "
                + Words.count(one.file().questions().size(), "question", "questions"));
        if (key) {
          page.para(MARGIN + NAME, "Teaches: " + safe(one.file().teaches()) + ".");
        }
      }
    }
    return page.blank().para(0, "All places are invented.").text();
  }

  /** How many stages are told of: surprises are none of them, for students may look on. */
  private static int shown(CaseStudy study, boolean key) {
    return (int) study.stages().stream().filter(stage -> key || !stage.surprise()).count();
  }

  /**
   * Where a class stands.
   *
   * @param key whether to show what the cases teach
   */
  public static String show(
      ClassFile file, Map<String, CaseStudy> studies, boolean key, Look look) {
    TextPage page = new TextPage(look);
    page.heading("Class " + safe(file.name()));
    page.para(MARGIN, "Students: " + safe(String.join(", ", file.students())) + ".");
    for (CaseRef ref : file.cases()) {
      CaseStudy study = studies.get(ref.name());
      if (study != null) {
        shown(page, file, ref, study, key);
      }
    }
    return page.text();
  }

  private static void shown(
      TextPage page, ClassFile file, CaseRef ref, CaseStudy study, boolean key) {
    page.heading(ref.name() + ": " + safe(study.file().title()));
    for (int i = 0; i < study.stages().size(); i++) {
      CaseStage stage = study.stages().get(i);
      boolean open = i <= ref.open();
      if (!open && stage.surprise() && !key) {
        continue; // whoever looks on the screen must not see it coming
      }
      page.item(
          open ? Tint.GOOD : Tint.QUIET,
          MARGIN,
          open ? "open" : stage.surprise() ? "surprise" : "closed",
          NAME,
          safe(stage.title()) + ", " + Days.of(stage.days()));
    }
    long answers = file.answers().stream().filter(one -> one.of().equals(ref.name())).count();
    long asked = file.asked().stream().filter(one -> one.of().equals(ref.name())).count();
    page.para(
        MARGIN,
        Words.count((int) answers, "answer", "answers")
            + ", "
            + Words.count((int) asked, "fact asked for", "facts asked for")
            + ".");
    if (key) {
      page.para(MARGIN, "Teaches: " + safe(study.file().teaches()) + ".");
      page.para(
          MARGIN,
          "For the close: " + safe(study.file().lesson()) + " [" + study.file().basis() + "]");
    }
  }

  /** What is given points, and the words for conditions, dangers and orders of work. */
  public static String rubric(RulePack pack, Look look) {
    TextPage page = new TextPage(look);
    rows(page, "An answer for a zone, " + Rubric.ofZone() + " points", Rubric.zoneRows());
    rows(
        page,
        "An answer for all zones together, " + Rubric.ofScheme() + " points",
        Rubric.schemeRows());
    rows(page, "A question of size or sequence", Rubric.questionRows());
    page.blank();
    page.para(0, Rubric.general());
    page.para(
        0,
        "An answer is held against what the rules say of the facts that the student had then, not"
            + " against what came out later. The weights are judgement.");
    words(page, "Words for conditions", ConditionWords.of(pack));
    words(page, "Words for dangers, with one of the rules that warn", DangerWords.of(pack));
    words(page, "Words for the order between two zones", OrderWords.all());
    return page.text();
  }

  private static void rows(TextPage page, String heading, List<Rubric.Row> rows) {
    page.heading(heading);
    for (Rubric.Row row : rows) {
      page.item(MARGIN, row.part() + ", " + row.points(), PART, row.means());
    }
  }

  private static void words(TextPage page, String heading, List<Named> words) {
    page.heading(heading);
    words.forEach(one -> page.item(MARGIN, one.word(), PART, one.means()));
  }

  /** What was done, sentence by sentence. */
  public static String says(List<String> sentences, Look look) {
    TextPage page = new TextPage(look);
    sentences.forEach(sentence -> page.para(0, safe(sentence)));
    return page.text();
  }

  private static String safe(String text) {
    return SafeText.of(text);
  }
}
