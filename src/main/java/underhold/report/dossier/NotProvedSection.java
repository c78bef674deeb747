package underhold.report.dossier;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.advice.OptionAdvice;
import underhold.consult.scheme.Scheme;
import underhold.consult.stage.PlanOutcome;
import underhold.quantity.UnitSystem;
import underhold.report.Words;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;
import underhold.sizing.Check;
import underhold.sizing.Origin;
import underhold.sizing.Verdict;

/** What the package does not prove, said plainly. */
final class NotProvedSection {
  private static final List<Block.Column> COLUMNS =
      List.of(
          Block.Column.words("Check"), Block.Column.words("Verdict"), Block.Column.amounts("Used"));

  private final Material material;

  NotProvedSection(Material material) {
    this.material = material;
  }

  Section section() {
    List<Block> blocks = new ArrayList<>();
    List<Prose> whole = whole();
    if (!whole.isEmpty()) {
      blocks.add(new Block.Listing(false, whole));
    }
    return new Section(
        "not-proved",
        "What is not proved",
        blocks,
        material.zones().stream().map(this::zone).toList());
  }

  private List<Prose> whole() {
    List<Prose> items = new ArrayList<>();
    items.add(
        Prose.of(
            "The ranking says which method speaks for itself on these facts, not that it is safe."));
    items.add(
        Prose.of(
            "Facts are taken as stated; nothing in here has looked at the site, the structure or the"
                + " ground."));
    Optional<Scheme> scheme = material.madeScheme();
    if (scheme.isEmpty()) {
      items.add(Prose.of("There is no scheme over the zones, and so no plan of stages."));
    }
    scheme
        .filter(made -> made.best().held())
        .ifPresent(
            made ->
                items.add(
                    Prose.of("The scheme is held: a rule between zones could still rule it out.")));
    scheme
        .filter(made -> made.best().undecided() > 0)
        .ifPresent(
            made ->
                items.add(Prose.of("At least one zone has no method; what depends on it waits.")));
    if (material.plan().filter(PlanOutcome.Refused.class::isInstance).isPresent()) {
      items.add(
          Prose.of(
              "No plan of stages holds: in each one drawn up something would stand on nothing."));
    }
    return items;
  }

  private Section zone(ZonePart zone) {
    List<Block> blocks = new ArrayList<>();
    List<Prose> items = new ArrayList<>();
    if (zone.advice().ranking().leader().isEmpty()) {
      items.add(Prose.of("No option leads: nothing in here chooses a method for this zone."));
    }
    for (OptionAdvice held : zone.advice().ranking().heldContenders()) {
      items.add(
          Prose.of(
              "Held, though its points would put it first: "
                  + held.option().label()
                  + ". Safety questions come before."));
    }
    if (zone.advice().view().amount("movementLimit").isEmpty()) {
      items.add(Prose.of("No movement limit is stated, so no movement is proved to be within it."));
    }
    Optional<ZoneSheet> sheet = material.chosen(zone);
    if (sheet.isEmpty() && material.method(zone).isPresent()) {
      items.add(Prose.of("The method of this zone has no sheet here: no number stands behind it."));
    }
    if (sheet.isEmpty() && material.method(zone).isEmpty()) {
      zone.advice()
          .ranking()
          .leader()
          .ifPresent(
              leads ->
                  items.add(
                      Prose.of(
                          Words.sentence(leads.option().label())
                              + " leads: no method is chosen for this zone, and no sheet stands"
                              + " behind one.")));
    }
    sheet.ifPresent(one -> about(one, items));
    if (!items.isEmpty()) {
      blocks.add(new Block.Listing(false, items));
    }
    sheet.filter(one -> one.sheet().complete()).ifPresent(one -> blocks.add(open(one)));
    sheet
        .filter(one -> !one.sheet().notCovered().isEmpty())
        .ifPresent(
            one -> {
              blocks.add(Cells.paragraph("Its sheet does not cover:"));
              blocks.add(Cells.list(one.sheet().notCovered()));
            });
    return Section.of("not-proved-" + zone.number(), "Zone: " + zone.name(), blocks);
  }

  private static void about(ZoneSheet sheet, List<Prose> items) {
    if (!sheet.sheet().complete()) {
      items.add(
          Prose.of(
                  "Not sized: the sheet of "
                      + sheet.option().label()
                      + " lacks facts and holds no"
                      + " number; its questions stand on ")
              .link("its sheet", sheet.anchor())
              .then("."));
    }
    long assumed =
        sheet.sheet().inputs().stream().filter(one -> one.origin() == Origin.ASSUMED).count();
    long defaults =
        sheet.sheet().inputs().stream().filter(one -> one.origin() == Origin.DEFAULT).count();
    if (assumed + defaults > 0) {
      items.add(
          Prose.of(
                  "The sheet of "
                      + sheet.option().label()
                      + " rests on "
                      + Words.count((int) assumed, "assumed input", "assumed inputs")
                      + " and "
                      + Words.count((int) defaults, "default", "defaults")
                      + "; each stands in the ")
              .link("register of assumptions", "assumptions")
              .then("."));
    }
  }

  private Block open(ZoneSheet sheet) {
    UnitSystem units = material.units();
    List<Block.Row> rows =
        java.util.stream.Stream.of(Verdict.FAILS, Verdict.REFER)
            .flatMap(
                verdict ->
                    sheet.sheet().checks().stream().filter(check -> check.verdict() == verdict))
            .map(check -> row(sheet, check, units))
            .toList();
    return Cells.table(
        "Checks of " + sheet.option().label() + " that do not pass",
        COLUMNS,
        rows,
        "Every check of " + sheet.option().label() + " passes on the facts stated.");
  }

  private static Block.Row row(ZoneSheet sheet, Check check, UnitSystem units) {
    return Cells.row(
            "",
            SheetSection.tone(check.verdict()),
            Prose.empty().link(check.title(), sheet.anchor("check", check.id())),
            Prose.empty()
                .strong(
                    check.verdict() == Verdict.REFER
                        ? "refers to the engineer"
                        : check.verdict().label()),
            Prose.of(SheetSection.used(check)))
        .noting(SheetSection.note(check, units));
  }
}
