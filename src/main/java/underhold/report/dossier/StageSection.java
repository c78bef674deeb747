package underhold.report.dossier;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.advice.Effect;
import underhold.advice.Finding;
import underhold.advice.SupportOption;
import underhold.consult.scheme.OrderWanted;
import underhold.consult.stage.Link;
import underhold.consult.stage.PlanOutcome;
import underhold.consult.stage.PlanStage;
import underhold.consult.stage.StagePlan;
import underhold.quantity.UnitSystem;
import underhold.report.Decider;
import underhold.report.Stages;
import underhold.report.Words;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;

/** The stage plan: every stage in order, with what comes before it and what holds it. */
final class StageSection {
  private static final List<Block.Column> OVERVIEW =
      List.of(
          Block.Column.amounts("Number"),
          Block.Column.words("Stage"),
          Block.Column.words("Where"),
          Block.Column.amounts("Begins"),
          Block.Column.amounts("Ends"),
          Block.Column.words("May slip"),
          Block.Column.words("Hold points"));

  private final Material material;
  private final Illustrations illustrations;
  private final UnitSystem units;

  StageSection(Material material, Illustrations illustrations) {
    this.material = material;
    this.illustrations = illustrations;
    this.units = material.units();
  }

  Section section() {
    Optional<StagePlan> made = material.madePlan();
    return made.isPresent()
        ? section(made.get())
        : Section.of("stages", "Stage plan", List.of(none(material)));
  }

  /** Why there is no plan. */
  static Block none(Material material) {
    String why =
        material
            .plan()
            .filter(PlanOutcome.Refused.class::isInstance)
            .map(PlanOutcome.Refused.class::cast)
            .map(
                refused ->
                    "What was drawn up does not hold, so it is not shown: "
                        + String.join(" ", refused.problems()))
            .orElse("There is no scheme, so there is no order of work.");
    return new Block.Notice(Block.Tone.BAD, "No stage plan", Prose.of(why));
  }

  private Section section(StagePlan plan) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Cells.paragraph(
            Words.count(plan.stages().size(), "stage", "stages")
                + ", "
                + days(plan.schedule().days())
                + " along the critical path."
                + " Day 0 is the first working day."
                + " Times are those of the sheets where they give them, else defaults of judgement."
                + " No stage begins before those it comes after are released."));
    notes(plan, blocks);
    blocks.add(
        new Block.Table(
            "The stages in order",
            OVERVIEW,
            plan.stages().stream().map(stage -> overview(plan, stage)).toList()));
    blocks.add(
        new Block.Paragraph(
            Prose.empty()
                .strong("Critical path: ")
                .then(
                    Cells.joined(
                        plan.schedule().criticalPath().stream()
                            .map(id -> number(plan, id))
                            .toList(),
                        ", "))
                .then(".")));
    blocks.addAll(Cells.drawn(illustrations.ofPlan(plan, Anchor.figures("plan"))));
    return new Section(
        "stages",
        "Stage plan",
        blocks,
        plan.stages().stream().map(stage -> stage(plan, stage)).toList());
  }

  /** A length of time in working days. */
  static String days(double days) {
    return Stages.days(days) + (days == 1 ? " working day" : " working days");
  }

  private static Prose number(StagePlan plan, String id) {
    int number = plan.number(id);
    return Prose.empty().link(String.valueOf(number), Anchor.stage(number));
  }

  private static void notes(StagePlan plan, List<Block> blocks) {
    for (OrderWanted order : plan.unkept()) {
      doubt(
          blocks,
          "Not kept",
          "It contradicts the other orders and nobody has stated whether it is needed: "
              + Cells.sentence(order.sentence()));
    }
    if (plan.scheme().best().held()) {
      doubt(
          blocks,
          "Held",
          "No stage that builds or digs is released before what could rule the scheme out is"
              + " answered.");
    }
    if (plan.scheme().best().undecided() > 0) {
      doubt(
          blocks,
          "Under reserve",
          "The work of zones without a method is not in these stages and days.");
    }
    List<String> waiting =
        plan.stages().stream()
            .filter(stage -> !stage.waitsFor().isEmpty())
            .map(stage -> String.valueOf(plan.number(stage.id())))
            .toList();
    if (!waiting.isEmpty()) {
      doubt(
          blocks,
          "Under reserve",
          "Days and stages from "
              + Words.list(waiting)
              + " on wait for a zone that is not decided; its own work is not in the plan.");
    }
  }

  private static void doubt(List<Block> blocks, String head, String words) {
    blocks.add(new Block.Notice(Block.Tone.DOUBT, head, Prose.of(words)));
  }

  private static Block.Row overview(StagePlan plan, PlanStage stage) {
    double start = plan.schedule().start(stage.id());
    int number = plan.number(stage.id());
    return Block.Row.of(
        Prose.of(String.valueOf(number)),
        Prose.empty().link(stage.title(), Anchor.stage(number)),
        Prose.of(Stages.zone(stage)),
        Prose.of("day " + Stages.days(start)),
        Prose.of("day " + Stages.days(start + stage.time().days())),
        Prose.of(slip(plan, stage)),
        Prose.of(stage.holds().isEmpty() ? "none" : String.valueOf(stage.holds().size())));
  }

  private static String where(PlanStage stage) {
    return Stages.zone(stage)
        + stage.method().map(SupportOption::label).map(label -> ", " + label).orElse("");
  }

  private static String slip(StagePlan plan, PlanStage stage) {
    double spare = plan.schedule().floats().getOrDefault(stage.id(), 0.0);
    return plan.schedule().isCritical(stage.id()) ? "none (critical)" : days(spare);
  }

  private Section stage(StagePlan plan, PlanStage stage) {
    int number = plan.number(stage.id());
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Paragraph(when(plan, stage)));
    blocks.addAll(Cells.work(stage.work(), stage.holds(), units));
    List<Prose> told = told(plan, stage);
    if (!told.isEmpty()) {
      blocks.add(Cells.paragraph("What the rules say here:"));
      blocks.add(new Block.Listing(false, told));
    }
    return Section.of(Anchor.stage(number), stage.title(), blocks);
  }

  private Prose when(StagePlan plan, PlanStage stage) {
    List<Prose> rows = new ArrayList<>();
    double start = plan.schedule().start(stage.id());
    row(rows, "Where", Prose.of(where(stage)));
    row(
        rows,
        "When",
        Prose.of(
            "day "
                + Stages.days(start)
                + " to day "
                + Stages.days(start + stage.time().days())
                + "; takes "
                + days(stage.time().days())
                + " ("
                + stage.time().source()
                + "); may slip: "
                + slip(plan, stage)));
    if (!stage.after().isEmpty()) {
      row(
          rows,
          "After",
          Cells.joined(stage.after().stream().map(link -> after(plan, link)).toList(), ", "));
    }
    if (!stage.waitsFor().isEmpty()) {
      row(
          rows,
          "Waits",
          Prose.of(
              "for a method at "
                  + Words.list(stage.waitsFor())
                  + "; the scheme is made again before it begins"));
    }
    if (!stage.zone().isEmpty()) {
      row(rows, "Open", Prose.of(Stages.open(plan, stage)));
      row(rows, "Carried by", Prose.of(String.join("; ", plan.carriers(stage))));
    }
    row(rows, "Readings", Prose.of(Stages.watch(plan, stage)));
    return Cells.joined(rows, ". ").then(".");
  }

  private static void row(List<Prose> rows, String label, Prose words) {
    rows.add(Prose.empty().strong(label + ": ").then(words));
  }

  private static Prose after(StagePlan plan, Link link) {
    Prose number = Prose.of("stage ").then(number(plan, link.before()));
    return link.why().isEmpty() ? number : number.then(" (" + link.why() + ")");
  }

  private List<Prose> told(StagePlan plan, PlanStage stage) {
    List<Prose> told = new ArrayList<>();
    int zone = zone(stage.zone());
    for (Finding finding : stage.told()) {
      String assumptions = Words.assumptions(finding);
      told.add(
          Prose.of(
                  finding.rule().sentence()
                      + (assumptions.isEmpty() ? "" : " " + Words.sentence(assumptions) + ".")
                      + decides(finding)
                      + " [")
              .then(zone > 0 ? Cells.tag(zone, finding, true) : SchemeSection.tag(finding))
              .then("]"));
    }
    stage
        .toldOfPairs()
        .forEach(
            pair ->
                told.add(
                    Prose.of(
                            pair.finding().rule().sentence()
                                + " "
                                + pair.reason()
                                + decides(pair.finding())
                                + " [")
                        .then(SchemeSection.tag(pair.finding()))
                        .then("]")));
    return told;
  }

  private static String decides(Finding finding) {
    return finding.effect() == Effect.CAUTION
        ? " Decides: " + Decider.of(finding).words() + "."
        : "";
  }

  /** The place of a zone in the site; 0 where a stage is for the whole site. */
  private int zone(String name) {
    return material.zones().stream()
        .filter(zone -> zone.name().equals(name))
        .mapToInt(ZonePart::number)
        .findFirst()
        .orElse(0);
  }
}
