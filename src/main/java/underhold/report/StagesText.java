package underhold.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import underhold.advice.Effect;
import underhold.advice.Finding;
import underhold.consult.scheme.OrderWanted;
import underhold.consult.scheme.PairFinding;
import underhold.consult.scheme.Scheme;
import underhold.consult.scheme.ZoneChoice;
import underhold.consult.stage.Link;
import underhold.consult.stage.PlanOutcome;
import underhold.consult.stage.PlanStage;
import underhold.consult.stage.StagePlan;
import underhold.quantity.UnitSystem;
import underhold.sizing.HoldPoint;
import underhold.sizing.Phrase;
import underhold.sizing.Stage;

/** The scheme of a site and its stages in order, with hold points and time. */
public final class StagesText {
  private static final int MARGIN = 4;
  private static final int MARK = 10;

  private final StagePlan plan;
  private final UnitSystem units;
  private final TextPage page;

  private StagesText(StagePlan plan, TextPage page) {
    this.plan = plan;
    this.units = plan.scheme().site().units();
    this.page = page;
  }

  /**
   * The whole page.
   *
   * @param zone the zone whose stages are told; those of every zone where it is empty
   */
  public static String of(Scheme scheme, PlanOutcome outcome, Optional<String> zone, Look look) {
    TextPage page = new TextPage(look);
    page.heading(scheme.site().name() + ": the scheme");
    SchemeText.on(page, scheme);
    if (outcome instanceof PlanOutcome.Refused refused) {
      page.heading("No stage plan");
      page.para(0, "What was drawn up does not hold, so it is not shown:");
      refused.problems().forEach(problem -> page.item(2, "-", 3, problem));
    }
    if (outcome instanceof PlanOutcome.Made made) {
      new StagesText(made.plan(), page).whole(zone);
    }
    Program.foot(page, scheme.pack());
    return page.text();
  }

  private void whole(Optional<String> zone) {
    page.heading(
        "The stages: "
            + plan.stages().size()
            + ", "
            + Stages.days(plan.schedule().days())
            + " working days along the critical path");
    page.para(
        0,
        "Day 0 is the first working day. Times are those of the sheets where they give them, else"
            + " defaults of judgement that --set changes. No stage begins before those it comes"
            + " after are released.");
    notes();
    Gantt.on(page, plan);
    page.para(
        0,
        "Critical path: "
            + plan.schedule().criticalPath().stream()
                .map(id -> String.valueOf(plan.number(id)))
                .collect(Collectors.joining(" > "))
            + ".");
    plan.scheme().best().zones().forEach(choice -> pits(choice, zone));
    for (PlanStage stage : plan.stages()) {
      if (zone.isEmpty() || stage.zone().isEmpty() || stage.zone().equals(zone.get())) {
        stage(stage);
      }
    }
    levels(zone);
  }

  private void pits(ZoneChoice choice, Optional<String> zone) {
    if (zone.isEmpty() || zone.get().equals(choice.name())) {
      choice
          .method()
          .flatMap(method -> choice.zone().sizing(method))
          .ifPresent(sized -> PitSketch.on(page, "Pits of " + choice.name(), sized.sheet(), units));
    }
  }

  private void notes() {
    for (OrderWanted order : plan.unkept()) {
      page.tinted(
          Tint.OPEN,
          0,
          "Not kept, because it contradicts the other orders and nobody has stated whether it is needed: "
              + order.sentence()
              + " ["
              + order.ruleId()
              + "].");
    }
    if (plan.scheme().best().held()) {
      page.tinted(
          Tint.OPEN,
          0,
          "The scheme is held: no stage that builds or digs is released before what could rule it out is answered.");
    }
    if (plan.scheme().best().undecided() > 0) {
      page.tinted(
          Tint.OPEN, 0, "The work of zones without a method is not in these stages and days.");
    }
    List<String> waiting =
        plan.stages().stream()
            .filter(stage -> !stage.waitsFor().isEmpty())
            .map(stage -> String.valueOf(plan.number(stage.id())))
            .toList();
    if (!waiting.isEmpty()) {
      page.tinted(
          Tint.OPEN,
          0,
          "Days and stages from "
              + Words.list(waiting)
              + " on stand under reserve: a zone is not decided, and its own work is not in the plan.");
    }
  }

  private void stage(PlanStage stage) {
    double start = plan.schedule().start(stage.id());
    page.blank();
    page.ends(
        Tint.STRONG,
        plan.number(stage.id()) + ". " + stage.title(),
        Tint.QUIET,
        "day " + Stages.days(start) + " to " + Stages.days(start + stage.time().days()));
    row("where", where(stage));
    if (!stage.after().isEmpty()) {
      row("after", stage.after().stream().map(this::link).collect(Collectors.joining(", ")));
    }
    if (!stage.waitsFor().isEmpty()) {
      page.item(
          Tint.OPEN,
          MARGIN,
          "waits",
          MARK,
          "for a method at "
              + Words.list(stage.waitsFor())
              + "; the scheme is made again before it begins");
    }
    boolean first = true;
    for (Phrase work : stage.work()) {
      row(first ? "work" : "", work.in(units));
      first = false;
    }
    if (!stage.zone().isEmpty()) {
      row("open", Stages.open(plan, stage));
      row("carries", String.join("; ", plan.carriers(stage)));
    }
    row("read", Stages.watch(plan, stage));
    for (HoldPoint hold : stage.holds()) {
      page.item(
          Tint.OPEN,
          MARGIN,
          "hold",
          MARK,
          Words.sentence(hold.condition().in(units)) + ". Releases: " + hold.releasedBy() + ".");
    }
    row("time", time(stage));
    stage.told().forEach(this::told);
    stage.toldOfPairs().forEach(this::told);
  }

  private static String where(PlanStage stage) {
    return Stages.zone(stage) + stage.method().map(method -> ", " + method.label()).orElse("");
  }

  private String link(Link link) {
    return plan.number(link.before()) + (link.why().isEmpty() ? "" : " (" + link.why() + ")");
  }

  private String time(PlanStage stage) {
    double days = stage.time().days();
    double spare = plan.schedule().floats().getOrDefault(stage.id(), 0.0);
    return Stages.days(days)
        + (days == 1 ? " day; " : " days; ")
        + (plan.schedule().isCritical(stage.id())
            ? "critical"
            : "may slip " + Stages.days(spare) + (spare == 1 ? " day" : " days"))
        + "; "
        + stage.time().source();
  }

  private void told(Finding finding) {
    boolean caution = finding.effect() == Effect.CAUTION;
    String assumptions = Words.assumptions(finding);
    page.item(
        MARGIN,
        caution ? "!" : "first",
        MARK,
        finding.rule().sentence()
            + (assumptions.isEmpty() ? "" : " " + Words.sentence(assumptions) + ".")
            + (caution ? " Decides: " + Decider.of(finding).words() + "." : "")
            + " "
            + Words.tag(finding, true));
  }

  private void told(PairFinding finding) {
    page.item(
        MARGIN,
        "!",
        MARK,
        finding.finding().rule().sentence()
            + " "
            + finding.reason()
            + " Decides: "
            + Decider.of(finding.finding()).words()
            + ". "
            + Words.tag(finding.finding(), true));
  }

  private void levels(Optional<String> zone) {
    plan.triggers()
        .forEach(
            (name, stages) -> {
              if (zone.isEmpty() || zone.get().equals(name)) {
                page.heading("When a reading reaches a level: " + name);
                stages.forEach(this::level);
              }
            });
  }

  private void level(Stage level) {
    page.para(MARGIN, level.title() + ".");
    level.work().forEach(work -> row("", work.in(units)));
    level
        .holdPoints()
        .forEach(
            hold ->
                row("hold", hold.condition().in(units) + ". Releases: " + hold.releasedBy() + "."));
  }

  private void row(String mark, String words) {
    page.item(MARGIN, mark, MARK, words);
  }
}
