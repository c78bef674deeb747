package underhold.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import underhold.classroom.CaseRef;
import underhold.classroom.CaseStudy;
import underhold.classroom.ClassFile;
import underhold.classroom.Days;
import underhold.classroom.Mark;
import underhold.classroom.MarkLine;
import underhold.site.Zone;

/** Marks with their reasons, and the sums of them. */
public final class ClassMarksText {
  private static final int MARGIN = 2;
  private static final int POINTS = 12;
  private static final int LEAST_NAME = 8;

  private ClassMarksText() {}

  /** Every mark of those given, part by part, with why. */
  public static String marks(List<Mark> marks, Map<String, CaseStudy> studies, Look look) {
    TextPage page = new TextPage(look);
    if (marks.isEmpty()) {
      page.para(0, "Nothing is marked: no answer is given yet. class answer takes answers.");
    }
    for (Mark mark : marks) {
      String stage =
          Optional.ofNullable(studies.get(mark.of()))
              .map(study -> study.stages().get(mark.stage()).title())
              .orElse("");
      page.blank();
      page.ends(
          Tint.STRONG,
          SafeText.of(mark.student() + ", " + mark.of() + ", " + mark.about()),
          Tint.NONE,
          points(mark.points()) + " of " + points(mark.outOf()));
      page.tinted(Tint.QUIET, MARGIN, SafeText.of(stage));
      for (MarkLine line : mark.lines()) {
        page.item(
            MARGIN, score(line), POINTS, line.part() + ": " + SafeText.of(stopped(line.why())));
      }
      if (mark.lines().size() > 1) {
        page.para(MARGIN, SafeText.of(String.join(" ", mark.feedback())));
      }
    }
    page.blank();
    page.para(
        0,
        "Marked by the rules on what each student knew then. The rules are decision support, and a"
            + " teacher may see more.");
    return page.text();
  }

  private static String stopped(String text) {
    return text.endsWith(".") || text.endsWith("]") ? text : text + ".";
  }

  private static String score(MarkLine line) {
    if (line.part().equals(Mark.EARLIER)) {
      return "note";
    }
    return line.of() == 0
        ? "+" + points(line.points())
        : points(line.points()) + " of " + points(line.of());
  }

  /** The sums by student and case, and what is not answered or not marked yet. */
  public static String scores(ClassFile file, Map<String, CaseStudy> studies, Look look) {
    TextPage page = new TextPage(look);
    page.heading("Points of class " + SafeText.of(file.name()));
    int column =
        MARGIN + file.students().stream().mapToInt(String::length).max().orElse(LEAST_NAME);
    for (String student : file.students()) {
      List<Mark> own =
          file.marks().stream().filter(mark -> mark.student().equals(student)).toList();
      page.item(MARGIN, SafeText.of(student), column, sum(own) + detail(file, own));
    }
    long open =
        file.counting().size()
            + (long) file.countingSchemes().size()
            + file.countingGiven().size()
            - file.marks().size();
    if (open > 0) {
      page.blank();
      page.para(
          0, Words.count((int) open, "answer is", "answers are") + " not marked yet: class mark.");
    }
    List<String> waiting =
        file.students().stream().flatMap(one -> unanswered(file, studies, one).stream()).toList();
    if (!waiting.isEmpty()) {
      page.heading("Not answered at the stage that is open");
      waiting.forEach(one -> page.item(MARGIN, "-", 2, SafeText.of(one)));
    }
    return page.text();
  }

  /** Case by case the zones that a student has not answered at the stage that is open. */
  private static List<String> unanswered(
      ClassFile file, Map<String, CaseStudy> studies, String student) {
    List<String> lines = new ArrayList<>();
    for (CaseRef ref : file.cases()) {
      List<String> zones =
          Optional.ofNullable(studies.get(ref.name())).stream()
              .flatMap(study -> study.full().zones().stream())
              .map(Zone::name)
              .filter(
                  zone ->
                      file.answers().stream()
                          .noneMatch(
                              one ->
                                  one.student().equals(student)
                                      && one.of().equals(ref.name())
                                      && one.stage() == ref.open()
                                      && one.zone().equals(zone)))
              .toList();
      if (!zones.isEmpty()) {
        lines.add(student + ": " + ref.name() + ", " + String.join(" and ", zones));
      }
    }
    return lines;
  }

  private static String detail(ClassFile file, List<Mark> own) {
    StringBuilder text = new StringBuilder();
    for (CaseRef ref : file.cases()) {
      List<Mark> here = own.stream().filter(mark -> mark.of().equals(ref.name())).toList();
      if (!here.isEmpty()) {
        text.append("; ").append(ref.name()).append(' ').append(sum(here));
        double days = file.daysAsked(own.get(0).student(), ref.name());
        if (days > 0) {
          text.append(", ").append(Days.of(days)).append(" of own questions");
        }
      }
    }
    return text.toString();
  }

  private static String sum(List<Mark> marks) {
    return points(marks.stream().mapToDouble(Mark::points).sum())
        + " of "
        + points(marks.stream().mapToDouble(Mark::outOf).sum());
  }

  /** Points without an idle decimal. */
  public static String points(double points) {
    return points == Math.rint(points)
        ? String.valueOf(Math.round(points))
        : String.format(Locale.ROOT, "%.1f", points);
  }

  /** Words named, after what they are; nothing where there are none. */
  static String named(String what, List<String> words) {
    return words.isEmpty() ? "" : "; " + what + " " + String.join(", ", words);
  }
}
