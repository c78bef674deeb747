package underhold.report.dossier;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import underhold.advice.SupportOption;
import underhold.consult.Sized;
import underhold.consult.SizingDesk;
import underhold.quantity.UnitSystem;
import underhold.report.Figures;
import underhold.report.MovementLevels;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.sizing.Amount;
import underhold.sizing.BillItem;
import underhold.sizing.Check;
import underhold.sizing.HoldPoint;
import underhold.sizing.MissingInput;
import underhold.sizing.Origin;
import underhold.sizing.Phrase;
import underhold.sizing.Sheet;
import underhold.sizing.SheetInput;
import underhold.sizing.Source;
import underhold.sizing.Stage;
import underhold.sizing.StageRole;
import underhold.sizing.monitoring.MovementLimit;

/**
 * With what a zone is watched, where, how often and to which levels, by the sheet of watching. That
 * sheet is asked whichever method is built: nothing is held up that nobody watches. Levels in
 * millimetres or inches are only given where a limit is stated or governs that they are shares of.
 */
final class Watching {
  private static final SizingDesk DESK = new SizingDesk();
  private static final String LIMIT = "movement-limit";

  private final Sheet sheet;
  private final ExpectedMovement expected;
  private final Optional<Amount> lift;
  private final Optional<MovementLimit> governing;
  private final UnitSystem units;

  private Watching(Material material, ZonePart zone, Sheet sheet) {
    this.sheet = sheet;
    this.expected = ExpectedMovement.of(material, zone);
    this.governing = MovementLimit.governing(zone.advice().view());
    this.lift = material.method(zone).flatMap(method -> MovementLevels.lift(zone.advice(), method));
    this.units = material.units();
  }

  /** The watching of a zone; empty where the settings in its file cannot be used. */
  static Optional<Watching> of(Material material, ZonePart zone) {
    return material
        .sheet(zone, SupportOption.MONITOR)
        .map(ZoneSheet::sheet)
        .or(() -> asked(material, zone))
        .map(sheet -> new Watching(material, zone, sheet));
  }

  private static Optional<Sheet> asked(Material material, ZonePart zone) {
    return DESK.size(material.site(), zone.advice(), SupportOption.MONITOR, List.of())
            instanceof Sized.Done done
        ? Optional.of(done.sheet())
        : Optional.empty();
  }

  /** Instruments and readings; what the sheet still asks where it holds no number. */
  List<Block> instruments() {
    if (!sheet.complete()) {
      return List.of(
          Cells.paragraph(
              "How many instruments, where and how often waits for facts: "
                  + String.join(" ", sheet.missing().stream().map(MissingInput::question).toList())
                  + " Until then the engineer of record says so in writing (judgement)."));
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.Table(
            "Instruments",
            Cells.columns("Instrument", "Watches", "At least", "Where", "Basis"),
            Stream.of(Instrument.values()).flatMap(this::row).toList()));
    blocks.add(
        Cells.paragraph(
            assumed("wall-length")
                ? "Counted for a length of "
                    + value("wall-length")
                    + ", which nobody stated: set the points out by their distance."
                : "Counted for a length of " + value("wall-length") + "."));
    blocks.add(
        Cells.paragraph(
            "A reading is good to "
                + sheet
                    .input("instrument-accuracy")
                    .flatMap(SheetInput::amount)
                    .map(amount -> Figures.asTyped(amount, units))
                    .orElse("?")
                + ", proved by the baseline sets ("
                + basis("instrument-accuracy")
                + ")."
                + tooCoarse(
                    "instrument-accuracy",
                    "A reading",
                    "the share of the alert level that is asked, ")
                + tooCoarse(
                    "difference-accuracy",
                    "A difference of two readings",
                    "the alert level between neighbours, ")
                + " Ground water, ground movement with depth, tilt, and the loads in jacks, props and"
                + " anchors are watched where the engineer of record says: no number is given here"
                + " (judgement)."));
    blocks.add(new Block.Table("How often", Cells.columns("When", "Readings", "Basis"), times()));
    return blocks;
  }

  /** That the instrument cannot see what it is to police, with what the sheet says to that. */
  private String tooCoarse(String id, String what, String against) {
    return sheet
        .check(id)
        .filter(check -> !Check.covers(check.demand().si(), check.capacity().si()))
        .map(
            check ->
                " "
                    + what
                    + " is good to "
                    + Figures.asTyped(check.demand(), units)
                    + " only, coarser than "
                    + against
                    + check.capacity().in(units)
                    + ": that level cannot be policed with it. "
                    + check.note().in(units))
        .orElse("");
  }

  private Stream<Block.Row> row(Instrument instrument) {
    return sheet.quantities().stream()
        .filter(item -> item.name().equals(instrument.item()))
        .map(item -> row(instrument, item));
  }

  private Block.Row row(Instrument instrument, BillItem item) {
    String where = item.note().in(units).replace("zone of influence above", "zone of influence");
    if (instrument == Instrument.POINTS) {
      where = where + ": " + value("point-spacing") + " apart";
    }
    return Block.Row.of(
        Prose.of(Cells.sentence(item.name()).replaceFirst("\\.$", "")),
        Prose.of(instrument.watches()),
        Prose.of(Cells.amount(item.amount(), units)),
        Prose.of(Cells.sentence(where)),
        Prose.of(
            instrument.setting().isEmpty()
                ? Source.judgement().words()
                : basis(instrument.setting())));
  }

  private List<Block.Row> times() {
    return List.of(
        time(
            "Before any work",
            value("baseline-sets") + " sets over " + value("baseline-time") + ", until steady",
            basis("baseline-sets")),
        time(
            "While work goes on",
            "every "
                + value("work-interval")
                + ", and before and after each lift of digging, each prop taken out, each change of"
                + " water level; oftener where a stage of the plan asks for it",
            basis("work-interval")),
        time(
            "Cracks",
            "every two weeks at least, and whenever a level is reached",
            Source.judgement().words()),
        time(
            "Vibration",
            "all the time that plant works, with a warning by message",
            Source.judgement().words()),
        time(
            "After the work",
            "every "
                + value("after-interval")
                + " for "
                + value("after-time")
                + " at least, longer while clay drains; until three sets in turn agree, also past the"
                + " last stage of the plan",
            basis("after-interval") + "; length of time " + basis("after-time")));
  }

  private static Block.Row time(String when, String readings, String basis) {
    return Block.Row.of(Prose.of(when), Prose.of(Cells.sentence(readings)), Prose.of(basis));
  }

  /**
   * The levels and what is done at them.
   *
   * @param stages those of the method that is built, where it has its own
   */
  List<Block> levels(List<Stage> stages) {
    List<Block> blocks = new ArrayList<>();
    if (!sheet.complete()) {
      return blocks;
    }
    List<Block.Row> rows = new ArrayList<>();
    level(rows, "alert");
    level(rows, "action");
    level(rows, "stop");
    blocks.add(
        new Block.Table(
            "Levels of movement from the readings before any work",
            Cells.columns("Level", "Movement down, up or sideways", "Between neighbours", "Basis"),
            rows));
    lift.ifPresent(
        amount ->
            blocks.add(
                Cells.paragraph(
                    "While jacks lift, work also stops at "
                        + Figures.asTyped(amount, units)
                        + " of upward movement, the limit of lift of the method's sheet: of two levels"
                        + " for upward movement the smaller counts.")));
    if (assumed(LIMIT)) {
      blocks.add(
          Cells.paragraph(
              governing.isPresent()
                  ? "Nobody stated the limit: until one is agreed the levels are shares of the one that"
                      + " governs."
                  : "Nobody stated the limit, so the levels are shares of the one that is to be"
                      + " agreed."));
    } else {
      passed()
          .ifPresent(
              words ->
                  blocks.add(
                      new Block.Notice(Block.Tone.CAUTION, "Expected movement", Prose.of(words))));
    }
    List<Stage> triggers =
        stages.isEmpty()
            ? sheet.stages().stream().filter(stage -> stage.role() == StageRole.TRIGGER).toList()
            : stages;
    blocks.add(
        new Block.Table(
            "When a reading reaches a level",
            Cells.columns("Level", "What is done", "Work goes on when", "Released by"),
            triggers.stream().map(this::action).toList()));
    return blocks;
  }

  /** The levels and how often is read, in a few sentences; what is asked where nothing is known. */
  List<Prose> brief() {
    if (!sheet.complete()) {
      return List.of(
          Prose.of(
              "How it is watched waits for facts; until then the engineer of record says so in"
                  + " writing."));
    }
    return List.of(
        Prose.of(
            "It is watched by survey points and gauges fixed to it. At "
                + brief("alert")
                + " of movement the cause is looked for; at "
                + brief("action")
                + " digging stops there and the work is changed; at "
                + brief("stop")
                + " all work within reach stops and is made safe."
                + lift.map(
                        amount ->
                            " While jacks lift, it also stops at "
                                + Figures.asTyped(amount, units)
                                + " of upward movement.")
                    .orElse("")
                + (open()
                    ? " These are shares of the limit that is to be agreed."
                    : assumed(LIMIT) ? "" : passed().map(words -> " " + words).orElse(""))),
        Prose.of(
                "Read before any work until steady, then every "
                    + value("work-interval")
                    + " at least and at each step of the work, and for "
                    + value("after-time")
                    + " at least after it. ")
            .link("Instruments and levels", "monitoring")
            .then("."));
  }

  private Optional<String> passed() {
    return expected.passed(sheet, units);
  }

  private String brief(String name) {
    return open() ? value(name + "-share") : reached(name);
  }

  /** Whether no limit is stated and none governs: then there are shares and no amounts. */
  private boolean open() {
    return assumed(LIMIT) && governing.isEmpty();
  }

  /** The amount of a level: where the limit is only assumed, by the one that governs. */
  private String reached(String name) {
    Optional<Double> share =
        sheet.input(name + "-share").flatMap(input -> input.amount()).map(Amount::si);
    return assumed(LIMIT) && governing.isPresent() && share.isPresent()
        ? Amount.thickness(share.get() * governing.get().metres()).in(units)
        : result(name + "-level");
  }

  private void level(List<Block.Row> rows, String name) {
    String share = value(name + "-share") + " of the limit";
    rows.add(
        Cells.row(
            "",
            Block.Tone.CAUTION,
            Prose.of(name),
            Prose.of(open() ? share : reached(name) + " (" + share + ")"),
            Prose.of(
                sheet.step(name + "-difference").isEmpty()
                    ? "to be agreed"
                    : result(name + "-difference")),
            Prose.of(basis(name + "-share") + slope())));
  }

  /** Whose slope the difference between neighbours follows from. */
  private String slope() {
    return sheet
        .step("distortion-limit")
        .map(step -> "; slope between neighbours: " + step.source().words())
        .orElse("");
  }

  private Block.Row action(Stage level) {
    return Cells.row(
        "",
        Block.Tone.CAUTION,
        Prose.of(level.title()),
        Prose.of(
            String.join(
                " ",
                level.work().stream().map(work -> Cells.sentence(told(work, level))).toList())),
        Prose.of(
            String.join(
                " ",
                level.holdPoints().stream()
                    .map(hold -> Cells.sentence(hold.condition().in(units)))
                    .toList())),
        Prose.of(
            String.join(
                "; ", level.holdPoints().stream().map(HoldPoint::releasedBy).distinct().toList())));
  }

  /** What is done, with a share in place of an amount that follows from an assumed limit. */
  private String told(Phrase work, Stage level) {
    if (!assumed(LIMIT)) {
      return work.in(units);
    }
    return Stream.of("alert", "action", "stop")
        .filter(level.title()::contains)
        .findFirst()
        .map(
            name ->
                work.template()
                    .replace(
                        "{a}",
                        open() ? value(name + "-share") + " of the limit agreed" : reached(name)))
        .filter(words -> !words.contains("{"))
        .orElse(work.in(units));
  }

  private String result(String step) {
    return sheet.step(step).map(one -> one.result().in(units)).orElse("to be agreed");
  }

  private String value(String input) {
    return sheet.input(input).map(one -> one.value(units)).orElse("?");
  }

  private String basis(String input) {
    return sheet
        .input(input)
        .map(
            one ->
                one.origin() == Origin.SET_BY_USER
                    ? Origin.SET_BY_USER.label()
                    : one.source().words())
        .orElse(Source.judgement().words());
  }

  private boolean assumed(String input) {
    return sheet.input(input).map(SheetInput::origin).filter(Origin.ASSUMED::equals).isPresent();
  }
}
