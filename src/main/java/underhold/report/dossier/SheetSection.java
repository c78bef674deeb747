package underhold.report.dossier;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import underhold.quantity.UnitSystem;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;
import underhold.sizing.Basis;
import underhold.sizing.BillItem;
import underhold.sizing.Check;
import underhold.sizing.Origin;
import underhold.sizing.Sheet;
import underhold.sizing.SheetInput;
import underhold.sizing.Source;
import underhold.sizing.Stage;
import underhold.sizing.Step;
import underhold.sizing.Verdict;

/** One calculation sheet, so that a reviewer can redo every step of it. */
final class SheetSection {
  private static final List<Block.Column> CHECKS =
      List.of(
          Block.Column.words("Check"),
          Block.Column.amounts("Demand"),
          Block.Column.amounts("Capacity"),
          Block.Column.amounts("Used"),
          Block.Column.words("Verdict"),
          Block.Column.words("Source"));

  private static final List<Block.Column> INPUTS =
      List.of(
          Block.Column.words("Input"),
          Block.Column.amounts("Value"),
          Block.Column.words("Origin and source; taken by"));

  /** A note as long as this is said once, of the first check that has it. */
  private static final int LONG_NOTE = 60;

  private final Material material;
  private final Citations citations;
  private final Illustrations illustrations;
  private final UnitSystem units;

  SheetSection(Material material, Citations citations, Illustrations illustrations) {
    this.material = material;
    this.citations = citations;
    this.illustrations = illustrations;
    this.units = material.units();
  }

  /** The drawings of a sheet, which may be asked for by several threads. */
  List<Block> drawings(ZonePart zone, ZoneSheet sheet) {
    return Cells.drawn(
        illustrations.ofSheet(
            sheet.sheet(), material.site(), zone.advice(), Anchor.figures(sheet.anchor()), units));
  }

  /** The whole sheet with its drawings. */
  Section section(ZonePart zone, ZoneSheet sheet, List<Block> drawings) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(verdictNotice(zone, sheet, "For review, not for construction."));
    missing(sheet.sheet(), blocks);
    if (!sheet.sheet().cautions().isEmpty()
        && material.chosen(zone).filter(sheet::equals).isPresent()) {
      blocks.add(
          new Block.Paragraph(
              Prose.of("Its cautions stand under ")
                  .link("Cautions and who decides", CautionsSection.anchor(zone))
                  .then(".")));
    } else if (!sheet.sheet().cautions().isEmpty()) {
      blocks.add(CautionsSection.sheet(material, citations, sheet, "Cautions of this sheet"));
    }
    if (!sheet.sheet().notCovered().isEmpty()) {
      blocks.add(Cells.paragraph("What this sheet does not cover:"));
      blocks.add(Cells.list(sheet.sheet().notCovered()));
    }
    blocks.addAll(drawings);
    return new Section(
        sheet.anchor(), sheet.sheet().title() + ", zone " + zone.name(), blocks, parts(sheet));
  }

  /** The verdict, and whether it is that of the method of the zone. */
  Block verdictNotice(ZonePart zone, ZoneSheet sheet, String more) {
    boolean chosen = material.method(zone).filter(sheet.option()::equals).isPresent();
    return new Block.Notice(
        tone(sheet.sheet()),
        "Verdict",
        Prose.of(
            Cells.sentence(verdict(sheet.sheet()))
                + (chosen ? " The method of this zone. " : " Not the method of this zone. ")
                + more));
  }

  static void missing(Sheet sheet, List<Block> blocks) {
    if (!sheet.missing().isEmpty()) {
      blocks.add(
          new Block.Table(
              "Missing: without these there is no number",
              Cells.columns("Question", "Why"),
              sheet.missing().stream()
                  .map(
                      one ->
                          Block.Row.of(
                              Prose.of(one.question() + " (").typed(one.name()).then(")"),
                              Prose.of(one.why())))
                  .toList()));
    }
  }

  private List<Section> parts(ZoneSheet sheet) {
    Sheet of = sheet.sheet();
    List<Section> parts = new ArrayList<>();
    if (!of.checks().isEmpty()) {
      part(parts, sheet, "checks", "Checks", List.of(checks(sheet)));
    }
    if (!of.inputs().isEmpty()) {
      part(parts, sheet, "inputs", "Inputs", List.of(inputs(sheet)));
    }
    if (!of.steps().isEmpty()) {
      part(parts, sheet, "steps", "Steps", steps(sheet));
    }
    if (!of.quantities().isEmpty()) {
      part(parts, sheet, "quantities", "Quantities", List.of(bill("Quantities", of.quantities())));
    }
    if (!of.time().isEmpty()) {
      part(parts, sheet, "time", "Time", List.of(bill("Time", of.time())));
    }
    if (!of.stages().isEmpty()) {
      part(parts, sheet, "order", "Order of work on this sheet alone", order(sheet));
    }
    return parts;
  }

  private static void part(
      List<Section> parts, ZoneSheet sheet, String kind, String title, List<Block> blocks) {
    parts.add(Section.of(Anchor.of(sheet.anchor(), kind), title, blocks));
  }

  private Block checks(ZoneSheet sheet) {
    List<Block.Row> rows = new ArrayList<>();
    Map<String, Prose> said = new HashMap<>();
    for (Check check : sheet.sheet().checks()) {
      int number = rows.size() + 1;
      Block.Row row = check(sheet, number, check);
      Prose first = said.get(row.note().text());
      rows.add(first == null ? row : row.noting(Prose.of("As said of check ").then(first)));
      if (row.note().text().length() > LONG_NOTE) {
        said.putIfAbsent(
            row.note().text(),
            Prose.empty()
                .link(String.valueOf(number), sheet.anchor("check", check.id()))
                .then("."));
      }
    }
    return new Block.Table("Checks: demand against capacity", CHECKS, rows);
  }

  private Block.Row check(ZoneSheet sheet, int number, Check check) {
    return Cells.row(
            sheet.anchor("check", check.id()),
            tone(check.verdict()),
            Prose.of(number + ". " + check.title()),
            Prose.of(Cells.amount(check.demand(), units)),
            Prose.of(Cells.amount(check.capacity(), units)),
            Prose.of(used(check)),
            verdict(check),
            citations.of(check.source(), sheet))
        .noting(note(check, units));
  }

  /** What a check says beside its numbers. */
  static Prose note(Check check, UnitSystem units) {
    String note = check.note().in(units);
    return note.isEmpty() ? Prose.empty() : Prose.of(note);
  }

  /** The verdict; of a check that refers also whether more is asked than there is. */
  static Prose verdict(Check check) {
    boolean over = check.verdict() == Verdict.REFER && check.exceeds();
    return Prose.empty().strong(check.verdict().label() + (over ? ", exceeded" : ""));
  }

  /** The share of the capacity that is used. */
  static String used(Check check) {
    OptionalDouble use = check.utilisation();
    return use.isPresent()
        ? String.format(Locale.ROOT, "%.0f %%", 100 * use.getAsDouble())
        : "no capacity";
  }

  private Block inputs(ZoneSheet sheet) {
    Uses uses = new Uses(sheet, units);
    return new Block.Table(
        "Inputs and settings",
        INPUTS,
        sheet.sheet().inputs().stream().map(input -> input(sheet, input, uses)).toList());
  }

  private Block.Row input(ZoneSheet sheet, SheetInput input, Uses uses) {
    return Cells.row(
        sheet.anchor("input", input.name()),
        input.origin() == Origin.ASSUMED ? Block.Tone.DOUBT : Block.Tone.PLAIN,
        Prose.of(input.label() + " (").typed(input.name()).then(")"),
        value(input, units),
        uses.after(
            origin(input.origin(), input.source(), citations.of(input.source(), sheet)), input));
  }

  /**
   * Where a value is from. Who sets a value is its origin: the source of a setting stands behind
   * the default that was replaced, not behind the number that stands there now.
   */
  static Prose origin(Origin origin, Source source, Prose cited) {
    Prose label = Prose.of(origin.label());
    if (origin != Origin.SET_BY_USER) {
      return label.then(": ").then(cited);
    }
    if (source.basis() == Basis.SITE_FACT || source.basis() == Basis.STATICS) {
      return source.citation().isEmpty() ? label : label.then(": " + source.citation());
    }
    boolean plain = source.citation().isEmpty() && source.basis() != Basis.FROM_MEMORY;
    String by = plain ? " (default by " : " (default: ";
    return label.then(by).then(cited).then(")");
  }

  /** The value of an input; a plain number says that it is one, a word stands as it is typed. */
  static Prose value(SheetInput input, UnitSystem units) {
    return input
        .amount()
        .map(amount -> Prose.of(Cells.amount(amount, units)))
        .orElseGet(() -> Cells.typed(input.words()));
  }

  private List<Block> steps(ZoneSheet sheet) {
    List<Block> blocks = new ArrayList<>();
    int number = 0;
    for (Step step : sheet.sheet().steps()) {
      blocks.add(
          new Block.Working(
              sheet.anchor("step", step.id()),
              ++number + ". " + step.title(),
              step.formulaText(units),
              step.formula().symbols().stream()
                  .map(
                      symbol ->
                          new Block.Symbol(
                              symbol.sign(),
                              symbol.meaning(),
                              Cells.amount(symbol.amount(), units)))
                  .toList(),
              step.calculation(units),
              step.formula().leftHandSide() + " = " + Cells.amount(step.result(), units),
              citations.of(step.source(), sheet),
              note(step)));
    }
    return blocks;
  }

  private Prose note(Step step) {
    String note = step.note().in(units);
    return note.isEmpty() ? Prose.empty() : Prose.of(note);
  }

  private Block bill(String caption, List<BillItem> items) {
    return new Block.Table(
        caption,
        QuantitiesSection.COLUMNS,
        items.stream().map(item -> QuantitiesSection.row(item, units)).toList());
  }

  /** The stages in order; of one that the plan of the site says whole, where it stands there. */
  private List<Block> order(ZoneSheet sheet) {
    Optional<InThePlan> planned =
        material.madePlan().map(plan -> new InThePlan(plan, material, sheet));
    List<Block> blocks = new ArrayList<>();
    int number = 0;
    for (Stage stage : sheet.sheet().stages()) {
      List<Prose> places = planned.map(plan -> plan.of(stage)).orElse(List.of());
      Prose title = Prose.empty().strong(++number + ". " + stage.title());
      if (places.isEmpty()) {
        blocks.add(new Block.Paragraph(title));
        blocks.addAll(Cells.work(stage.work(), stage.holdPoints(), units));
      } else {
        String stages = places.size() == 1 ? ": stage " : ": stages ";
        blocks.add(
            new Block.Paragraph(
                title.then(stages).then(Cells.joined(places, ", ")).then(" of the stage plan.")));
      }
    }
    return blocks;
  }

  /** The verdict of a sheet with the count of its checks. */
  static String verdict(Sheet sheet) {
    if (!sheet.complete()) {
      return "not sized: facts are missing";
    }
    return sheet.verdict().label()
        + ": of "
        + sheet.checks().size()
        + " checks "
        + count(sheet, Verdict.FAILS)
        + " fail, "
        + count(sheet, Verdict.REFER)
        + " refer to the engineer ("
        + sheet.checks().stream()
            .filter(check -> check.verdict() == Verdict.REFER && check.exceeds())
            .count()
        + " of them exceeded), "
        + count(sheet, Verdict.PASSES)
        + " pass";
  }

  private static long count(Sheet sheet, Verdict verdict) {
    return sheet.checks().stream().filter(check -> check.verdict() == verdict).count();
  }

  private static Block.Tone tone(Sheet sheet) {
    return sheet.complete() ? tone(sheet.verdict()) : Block.Tone.DOUBT;
  }

  /** How a verdict is marked, besides its word. */
  static Block.Tone tone(Verdict verdict) {
    return switch (verdict) {
      case PASSES -> Block.Tone.GOOD;
      case FAILS -> Block.Tone.BAD;
      case REFER -> Block.Tone.DOUBT;
    };
  }
}
