package underhold.report.dossier;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import underhold.advice.Finding;
import underhold.consult.scheme.OrderWanted;
import underhold.consult.stage.PlanStage;
import underhold.consult.stage.StagePlan;
import underhold.quantity.UnitSystem;
import underhold.report.Words;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;
import underhold.site.Fact;
import underhold.site.FactView;
import underhold.site.Origin;
import underhold.site.ZoneViews;
import underhold.sizing.Setting;
import underhold.sizing.Settings;
import underhold.sizing.SheetInput;

/** The register of everything that nobody stated and something rests on. */
final class AssumptionsSection {
  private static final List<Block.Column> SETTINGS =
      List.of(
          Block.Column.words("Setting"),
          Block.Column.amounts("Value"),
          Block.Column.words("Origin and source; where it bites"));

  private final Material material;
  private final WhichSheets which;
  private final Citations citations;
  private final UnitSystem units;

  AssumptionsSection(Material material, WhichSheets which, Citations citations) {
    this.material = material;
    this.which = which;
    this.citations = citations;
    this.units = material.units();
  }

  Section section() {
    List<Section> parts = new ArrayList<>();
    List<ZoneSheet> whole = which.of(material);
    for (ZonePart zone : material.zones()) {
      parts.add(facts(zone));
      for (ZoneSheet sheet : material.sheets(zone)) {
        List<Block> inputs = whole.contains(sheet) ? inputs(sheet) : List.of();
        if (!inputs.isEmpty()) {
          parts.add(
              Section.of(
                  Anchor.of("assumptions", zone.number(), sheet.option().id()),
                  "Sheet of " + sheet.option().label() + ", zone " + zone.name(),
                  inputs));
        }
      }
    }
    material.madePlan().ifPresent(plan -> parts.add(plan(plan)));
    return new Section(
        "assumptions",
        "Register of assumptions",
        List.of(
            Cells.paragraph(
                "Everything that something rests on and nobody stated: facts assumed, inputs assumed,"
                    + " defaults of design and practice, and settings changed."
                    + " A fact assumed warns and asks; it never counts for or against an option."
                    + " A default holds until a setting changes it."
                    + " Each input leads to its row on the sheet: there stand its name as a setting,"
                    + " its source, and the steps and checks that take it."
                    + (which == WhichSheets.ALL
                        ? ""
                        : " Inputs are listed of the sheets set whole; with --sheets all, of every"
                            + " sheet."))),
        parts);
  }

  private Section facts(ZonePart zone) {
    FactView cautious = ZoneViews.cautious(zone.advice().view());
    List<Block.Row> rows =
        cautious.present().stream()
            .filter(fact -> fact.origin() == Origin.ASSUMED)
            .map(fact -> fact(zone, fact))
            .toList();
    return Section.of(
        "assumptions-" + zone.number(),
        "Facts assumed, zone " + zone.name(),
        List.of(
            Cells.table(
                "Facts assumed for want of a statement",
                Cells.columns("Fact", "Assumed", "Why", "Where it bites"),
                rows,
                "No fact is assumed in this zone.")));
  }

  private static Block.Row fact(ZonePart zone, Fact fact) {
    List<Prose> rules =
        zone.advice().screening().assumed().stream()
            .filter(finding -> restsOn(finding, fact))
            .map(finding -> finding.rule().id())
            .distinct()
            .map(id -> Prose.empty().link(id, Anchor.trace(zone.number(), id)))
            .toList();
    return Cells.row(
        Anchor.assumed(zone.number(), fact.name()),
        Block.Tone.DOUBT,
        Prose.of(fact.definition().label() + " (").typed(fact.name()).then(")"),
        Prose.of(fact.text()),
        Prose.of(fact.how() + " [judgement]"),
        rules.isEmpty()
            ? Prose.of("no rule that it alone would make fire")
            : Prose.of("warnings of ").then(Cells.joined(rules, ", ")));
  }

  private static boolean restsOn(Finding finding, Fact fact) {
    return finding.facts().stream()
        .anyMatch(
            matched -> matched.name().equals(fact.name()) && matched.origin() == Origin.ASSUMED);
  }

  /** What is assumed or set, then the defaults, each group by what stands behind it. */
  private List<Block> inputs(ZoneSheet sheet) {
    Map<String, List<Prose>> groups = new TreeMap<>();
    sheet.sheet().inputs().stream()
        .filter(AssumptionsSection::registered)
        .forEach(
            input ->
                groups
                    .computeIfAbsent(group(input), fresh -> new ArrayList<>())
                    .add(
                        Prose.empty()
                            .link(input.label(), sheet.anchor("input", input.name()))
                            .then(": ")
                            .then(SheetSection.value(input, units))));
    List<Block> blocks = new ArrayList<>();
    groups.forEach(
        (group, inputs) ->
            blocks.add(
                new Block.Paragraph(
                    Prose.empty()
                        .strong(group + " (" + inputs.size() + "). ")
                        .then(Cells.joined(inputs, "; "))
                        .then("."))));
    return blocks;
  }

  private static String group(SheetInput input) {
    return switch (input.origin()) {
      case ASSUMED -> "Assumed for want of a fact";
      case SET_BY_USER -> "Changed by a setting";
      default -> "Defaults, " + input.source().basis().label();
    };
  }

  /** Whether an input is one that nobody stated of the site: assumed, a default, or a setting. */
  static boolean registered(SheetInput input) {
    return input.origin() == underhold.sizing.Origin.ASSUMED
        || input.origin() == underhold.sizing.Origin.DEFAULT
        || input.origin() == underhold.sizing.Origin.SET_BY_USER;
  }

  private Section plan(StagePlan plan) {
    List<Block> blocks = new ArrayList<>();
    Settings settings = plan.settings();
    List<Block.Row> rows = new ArrayList<>();
    settings
        .table()
        .numbers()
        .forEach(
            one ->
                rows.add(
                    setting(
                        plan,
                        one.name(),
                        one.label(),
                        planned(one, settings),
                        settings.origin(one),
                        one.source())));
    settings
        .table()
        .choices()
        .forEach(
            one ->
                rows.add(
                    setting(
                        plan,
                        one.name(),
                        one.label(),
                        settings.get(one),
                        settings.origin(one),
                        one.source())));
    blocks.add(new Block.Table("Settings of the stage plan", SETTINGS, rows));
    List<Block.Row> orders =
        plan.scheme().best().orders().stream()
            .filter(OrderWanted::assumed)
            .map(AssumptionsSection::order)
            .toList();
    if (!orders.isEmpty()) {
      blocks.add(
          new Block.Table(
              "Orders between zones kept because nobody stated what would free them",
              Cells.columns("Order", "Rule"),
              orders));
    }
    return Section.of("assumptions-plan", "The stage plan", blocks);
  }

  private Block.Row setting(
      StagePlan plan,
      String name,
      String label,
      String value,
      underhold.sizing.Origin origin,
      underhold.sizing.Source source) {
    List<Prose> stages =
        plan.stages().stream()
            .filter(stage -> names(stage, name))
            .map(stage -> plan.number(stage.id()))
            .map(number -> Prose.empty().link(String.valueOf(number), Anchor.stage(number)))
            .toList();
    Prose from = SheetSection.origin(origin, source, citations.of(source));
    return Block.Row.of(
        Prose.of(label + " (").typed(name).then(")"),
        Prose.of(value),
        stages.isEmpty()
            ? from
            : from.then(stages.size() == 1 ? "; time of stage " : "; time of stages ")
                .then(Cells.joined(stages, ", ")));
  }

  /** Most settings of the plan are counts of working days, as their labels say. */
  private String planned(Setting one, Settings settings) {
    String text = settings.amount(one).in(units);
    return one.label().startsWith("working days")
        ? text + (text.equals("1") ? " working day" : " working days")
        : Cells.amount(settings.amount(one), units);
  }

  private static boolean names(PlanStage stage, String setting) {
    return Stream.of(stage.time().source().split("[^a-z-]+")).anyMatch(setting::equals);
  }

  private static Block.Row order(OrderWanted order) {
    return Cells.row(
        "",
        Block.Tone.DOUBT,
        Prose.of(Cells.sentence(Words.sentence(order.sentence()))),
        Prose.empty().link(order.ruleId(), Anchor.rule(order.ruleId())));
  }
}
