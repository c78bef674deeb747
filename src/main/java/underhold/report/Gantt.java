package underhold.report;

import underhold.consult.stage.PlanStage;
import underhold.consult.stage.StagePlan;

/** The stages of a plan as bars over working days; critical ones are drawn full. */
final class Gantt {
  private static final int GAP = 2;
  private static final int LEAST_BAR = 12;
  private static final char CRITICAL = '#';
  private static final char FLOATS = '=';
  private static final char EMPTY = '.';

  private final StagePlan plan;
  private final TextPage page;
  private final int label;
  private final int columns;

  private Gantt(StagePlan plan, TextPage page) {
    this.plan = plan;
    this.page = page;
    this.label = page.look().width() * 9 / 20;
    this.columns = Math.max(LEAST_BAR, page.look().width() - label - GAP);
  }

  static void on(TextPage page, StagePlan plan) {
    new Gantt(plan, page).draw();
  }

  private void draw() {
    String end = Stages.days(plan.schedule().days());
    page.ends(
        Tint.QUIET,
        "working days",
        Tint.QUIET,
        "0" + " ".repeat(Math.max(1, columns - 1 - end.length())) + end);
    for (PlanStage stage : plan.stages()) {
      boolean critical = plan.schedule().isCritical(stage.id());
      page.ends(Tint.NONE, label(stage), critical ? Tint.STRONG : Tint.NONE, bar(stage, critical));
    }
    page.para(
        0,
        CRITICAL
            + " critical: a day lost here is a day lost at the end. "
            + FLOATS
            + " may slip; the days are in the list.");
  }

  private String label(PlanStage stage) {
    String number = String.valueOf(plan.number(stage.id()));
    String text =
        " ".repeat(Math.max(0, 3 - number.length()))
            + number
            + " "
            + Stages.letter(plan.scheme(), stage.zone())
            + " "
            + stage.title();
    return text.length() <= label ? text : text.substring(0, label - 1).stripTrailing() + "…";
  }

  private String bar(PlanStage stage, boolean critical) {
    double whole = Math.max(plan.schedule().days(), 1e-9);
    double start = plan.schedule().start(stage.id());
    int from = (int) Math.floor(start / whole * columns);
    int to = (int) Math.ceil((start + stage.time().days()) / whole * columns - 1e-9);
    from = Math.min(from, columns - 1);
    to = Math.max(from + 1, Math.min(to, columns));
    char sign = critical ? CRITICAL : FLOATS;
    return String.valueOf(EMPTY).repeat(from)
        + String.valueOf(sign).repeat(to - from)
        + String.valueOf(EMPTY).repeat(columns - to);
  }
}
