package underhold.report.drawing.chart;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import underhold.consult.stage.PlanStage;
import underhold.consult.stage.Schedule;
import underhold.consult.stage.StagePlan;
import underhold.report.drawing.Figure;
import underhold.report.drawing.kit.Canvas;
import underhold.report.drawing.kit.Colours;
import underhold.report.drawing.kit.Letters;
import underhold.report.drawing.kit.Pen;
import underhold.sizing.HoldPoint;

/** The stages of a plan as bars over working days, so many to a figure. */
public final class StageChart {
  /** Most bars on one figure. */
  static final int MOST = 40;

  private static final double ROW = 5.4;
  private static final double LINE = 3.4;
  private static final double BAR = 3;
  private static final double LEFT = 84;
  private static final double RIGHT = 150;
  private static final double LETTER = 8;
  private static final double NAMES = 12.5;
  private static final int PARTS = 8;
  private static final int LETTERS = 26;
  private static final double HOLD = 1.5;

  private final StagePlan plan;
  private final Schedule schedule;
  private final List<PlanStage> stages;
  private final int first;
  private final ChartPage page;
  private final Canvas canvas;

  private StageChart(StagePlan plan, int first, int last, String id, String part) {
    this.plan = plan;
    this.schedule = plan.schedule();
    this.stages = plan.stages().subList(first, last);
    this.first = first;
    this.page = new ChartPage(id, "Stages over working days" + part, plan.scheme().site().name());
    this.canvas = page.canvas();
  }

  /**
   * The figures, in the order of the plan and all on the same scale of days.
   *
   * @param plan the plan
   * @param id the first figure's id; further ones end in a number
   */
  public static List<Figure> of(StagePlan plan, String id) {
    int all = plan.stages().size();
    int count = Math.max(1, (all + MOST - 1) / MOST);
    int each = (all + count - 1) / count;
    return IntStream.range(0, count)
        .mapToObj(
            i ->
                new StageChart(
                        plan,
                        i * each,
                        Math.min(all, (i + 1) * each),
                        i == 0 ? id : id + "-" + (i + 1),
                        count == 1 ? "" : ", part " + (i + 1) + " of " + count)
                    .draw())
        .toList();
  }

  private Figure draw() {
    Axis axis = Axis.upTo(Math.max(schedule.days(), 1), PARTS, LEFT, RIGHT);
    double top = page.top() + 1;
    List<List<String>> titles = stages.stream().map(this::title).toList();
    double bottom =
        top + titles.stream().mapToDouble(title -> ROW + (title.size() - 1) * LINE).sum();
    page.levelAxis(axis, top, bottom, "working days from day 0");
    List<String> words = new ArrayList<>();
    words.add(
        "Stages %d to %d of %d; %s working days in all."
            .formatted(
                first + 1, first + stages.size(), plan.stages().size(), days(schedule.days())));
    double at = top;
    for (int i = 0; i < stages.size(); i++) {
      row(stages.get(i), titles.get(i), first + i + 1, axis, at);
      at += ROW + (titles.get(i).size() - 1) * LINE;
      words.add(words(stages.get(i), first + i + 1));
    }
    double y =
        page.key(
            bottom + 12,
            List.of(
                new ChartPage.Key(
                    Fill.SOLID, Colours.INK, "critical: a day lost is lost at the end"),
                new ChartPage.Key(Fill.OPEN, Colours.INK, "may slip, to the end of its dashes")));
    hold(ChartPage.EDGE + 3, y + 1.6);
    canvas.text(
        "hold point at the end of the stage: work stops until it is released",
        ChartPage.EDGE + 7.5,
        y + 2.6,
        Letters.NOTE);
    words.addAll(zones());
    return page.finish(
        List.of(
            String.join("; ", zones())
                + ". Figures after the bars are working days; d stands for days."),
        "Bars of the stages over working days; critical ones are full, hold points are diamonds.",
        words);
  }

  /** The title on as many lines as it takes, two at most; what is cut is told in the words. */
  private List<String> title(PlanStage stage) {
    return page.lines(stage.title(), LEFT - NAMES - 2.5, letters(stage));
  }

  private Letters letters(PlanStage stage) {
    return schedule.isCritical(stage.id()) ? Letters.NOTE.heavy() : Letters.NOTE;
  }

  private void row(PlanStage stage, List<String> title, int number, Axis axis, double y) {
    boolean critical = schedule.isCritical(stage.id());
    double low = y + ROW + (title.size() - 1) * LINE;
    double feet = y + ROW / 2 + 0.9;
    double start = schedule.start(stage.id());
    double end = start + stage.time().days();
    double floats = slack(stage);
    canvas.line(Pen.HATCH, ChartPage.EDGE, low, ChartPage.WIDTH - ChartPage.EDGE, low);
    canvas.text(String.valueOf(number), LETTER - 0.5, feet, Letters.NOTE.end());
    canvas.text(letter(stage.zone()), LETTER + 0.8, feet, Letters.NOTE);
    for (int i = 0; i < title.size(); i++) {
      canvas.text(title.get(i), NAMES, feet + i * LINE, letters(stage));
    }
    double bar = y + (ROW - BAR) / 2;
    canvas.group(
        "stage-" + number,
        Map.of(
            "start", String.valueOf(start),
            "days", String.valueOf(stage.time().days()),
            "float", String.valueOf(floats),
            "critical", String.valueOf(critical),
            "holds", String.valueOf(stage.holds().size())),
        () -> {
          double from = axis.at(start);
          double to = axis.at(end);
          Rectangle2D box = new Rectangle2D.Double(from, bar, Math.max(to - from, 0.3), BAR);
          (critical ? Fill.SOLID : Fill.OPEN).draw(canvas, Colours.INK, box);
          double slips = axis.at(Math.min(end + floats, axis.high()));
          if (!critical && slips > to) {
            canvas.line(Pen.UNKNOWN, to, y + ROW / 2, slips, y + ROW / 2);
          }
          if (!stage.holds().isEmpty()) {
            hold(to + HOLD, y + ROW / 2);
          }
        });
    double right = axis.at(Math.min(end + floats, axis.high()));
    double clear = Math.max(right + 1, axis.at(end) + (stage.holds().isEmpty() ? 1 : 2 * HOLD + 1));
    canvas.label(days(stage.time().days()) + " d", clear, feet, Letters.NOTE);
  }

  /** A diamond about a middle. */
  private void hold(double x, double y) {
    Path2D diamond = new Path2D.Double();
    diamond.moveTo(x - HOLD, y);
    diamond.lineTo(x, y - HOLD);
    diamond.lineTo(x + HOLD, y);
    diamond.lineTo(x, y + HOLD);
    diamond.closePath();
    canvas.fill(Colours.PAPER, diamond);
    canvas.outline(Pen.FORCE, Colours.ALERT, diamond);
  }

  /** Days by which a stage may slip; below the rounding of sums it is none. */
  private double slack(PlanStage stage) {
    return schedule.isCritical(stage.id()) ? 0 : schedule.floats().getOrDefault(stage.id(), 0.0);
  }

  private String letter(String zone) {
    List<String> names = plan.scheme().best().zones().stream().map(one -> one.name()).toList();
    int place = names.indexOf(zone);
    return place < 0 ? "-" : String.valueOf((char) ('A' + place % LETTERS));
  }

  private List<String> zones() {
    List<String> zones =
        plan.scheme().best().zones().stream()
            .map(one -> one.name())
            .map(name -> letter(name) + " " + name)
            .collect(Collectors.toCollection(ArrayList::new));
    zones.add("- whole site");
    return zones;
  }

  private String words(PlanStage stage, int number) {
    String holds =
        stage.holds().stream()
            .map(HoldPoint::condition)
            .map(condition -> condition.in(plan.scheme().site().units()))
            .collect(Collectors.joining("; "));
    return "%d. %s (%s): begins on day %s, takes %s, %s%s"
        .formatted(
            number,
            stage.title(),
            stage.zone().isEmpty() ? "whole site" : stage.zone(),
            days(schedule.start(stage.id())),
            lasting(stage.time().days()),
            schedule.isCritical(stage.id())
                ? "critical."
                : "may slip " + days(slack(stage)) + " days.",
            holds.isEmpty() ? "" : " Hold: " + holds + ".");
  }

  private static String lasting(double days) {
    return days(days) + (days == 1 ? " day" : " days");
  }

  /** Days to a tenth, without a needless nought. */
  private static String days(double days) {
    String text = String.format(Locale.ROOT, "%.1f", days);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }
}
