package underhold.report.dossier;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.advice.Effect;
import underhold.advice.Finding;
import underhold.advice.SupportOption;
import underhold.consult.scheme.Combination;
import underhold.consult.scheme.OrderWanted;
import underhold.consult.scheme.PairFinding;
import underhold.consult.scheme.Scheme;
import underhold.consult.scheme.SchemeOutcome;
import underhold.consult.scheme.ZoneChoice;
import underhold.report.Words;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;

/** The methods of all zones together: which carries, closes, props or watches where, and why. */
final class SchemeSection {
  private final Material material;
  private final Illustrations illustrations;

  SchemeSection(Material material, Illustrations illustrations) {
    this.material = material;
    this.illustrations = illustrations;
  }

  Section section() {
    List<Block> blocks = new ArrayList<>();
    Optional<Scheme> made = material.madeScheme();
    if (made.isPresent()) {
      made(made.get(), blocks);
    } else {
      String reason = ((SchemeOutcome.NotMade) material.scheme()).reason();
      blocks.add(new Block.Notice(Block.Tone.BAD, "No scheme", Prose.of(reason)));
    }
    return Section.of("scheme", "Scheme across the zones", blocks);
  }

  private void made(Scheme scheme, List<Block> blocks) {
    illustrations.ofScheme(scheme, Anchor.figures("scheme"), material.units()).stream()
        .map(Block.Drawn::new)
        .forEach(blocks::add);
    blocks.add(
        new Block.Table(
            "What holds where",
            List.of(
                Block.Column.words("Zone"),
                Block.Column.words("Method"),
                Block.Column.words("Its part"),
                Block.Column.amounts("Points")),
            material.zones().stream().map(zone -> choice(scheme, zone)).toList()));
    open(scheme, blocks);
    if (scheme.best().zones().size() > 1) {
      points(scheme.best(), blocks);
      blocks.add(
          Cells.table(
              "What holds between the zones",
              Cells.columns("It does", "Rule and reason", "Weight, basis and rule"),
              findings(scheme.best()),
              "No rule between zones holds on what is stated."));
      unkept(scheme.best(), blocks);
      others(scheme, blocks);
    }
  }

  private Block.Row choice(Scheme scheme, ZonePart zone) {
    ZoneChoice choice = scheme.best().of(zone.name());
    boolean several = scheme.best().zones().size() > 1;
    String part =
        scheme.part(zone.name()).words()
            + (several && scheme.isPrimary(zone.name()) ? ", primary" : "");
    return Cells.row(
        Anchor.of("choice", zone.number()),
        choice.method().isEmpty() ? Block.Tone.DOUBT : Block.Tone.PLAIN,
        Prose.of(zone.name()),
        Prose.empty()
            .strong(
                choice
                    .method()
                    .map(SupportOption::label)
                    .orElse("no method yet; " + choice.undecided())),
        Prose.of(part),
        Prose.of(choice.method().isEmpty() ? "none" : Words.score(choice.points())));
  }

  private static void open(Scheme scheme, List<Block> blocks) {
    if (scheme.best().undecided() > 0) {
      blocks.add(
          new Block.Notice(
              Block.Tone.DOUBT,
              "Not decided",
              Prose.of(
                  "What depends on a zone without a method waits: the scheme is made again once it"
                      + " has one.")));
    }
    if (scheme.best().held()) {
      blocks.add(
          new Block.Notice(
              Block.Tone.DOUBT,
              "Held",
              Prose.of(
                      "A rule between zones could still rule this scheme out; see what is not known among"
                          + " the ")
                  .link("open questions", "questions")
                  .then(".")));
    }
    scheme
        .heldAbove()
        .ifPresent(
            held ->
                blocks.add(
                    new Block.Notice(
                        Block.Tone.DOUBT,
                        "Held, though it would come first",
                        Prose.of(
                            Words.sentence(changes(scheme.trade(held)))
                                + ". It waits for what is not known between the zones."))));
  }

  private static void points(Combination best, List<Block> blocks) {
    blocks.add(
        Cells.paragraph(
            "Together "
                + Words.score(best.points())
                + " points: "
                + Words.score(best.points() - best.pairPoints())
                + " by the zones themselves, "
                + Words.score(best.pairPoints())
                + " by what their methods do to each other."));
  }

  private static List<Block.Row> findings(Combination best) {
    List<Block.Row> rows = new ArrayList<>();
    int place = 0;
    for (PairFinding finding : best.findings()) {
      rows.add(
          Cells.row(
              Anchor.between(++place, finding.id()),
              finding.effect() == Effect.AGAINST ? Block.Tone.BAD : Block.Tone.PLAIN,
              Prose.of(
                  finding.order().isPresent() ? "asks for an order" : Words.verb(finding.effect())),
              Prose.of(said(finding)),
              tag(finding.finding())));
    }
    return rows;
  }

  private static String said(PairFinding finding) {
    return finding
        .order()
        .map(
            order ->
                Cells.sentence(order.sentence(finding.first(), finding.second()))
                    + " "
                    + finding.finding().rule().sentence())
        .orElseGet(() -> finding.finding().rule().sentence() + " " + finding.reason());
  }

  /** Strength, basis and rule of a finding between zones, leading to the rule. */
  static Prose tag(Finding finding) {
    String tag = Words.tag(finding, true);
    String id = finding.rule().id();
    int at = tag.indexOf(id);
    return Prose.of(tag.substring(1, at)).link(id, Anchor.rule(id));
  }

  private static void unkept(Combination best, List<Block> blocks) {
    for (OrderWanted order : best.dropped()) {
      blocks.add(
          new Block.Notice(
              Block.Tone.DOUBT,
              "Not kept",
              Prose.of(
                      Words.sentence(order.sentence())
                          + ": it contradicts other orders, and nobody has stated whether it is needed, ")
                  .link(order.ruleId(), Anchor.rule(order.ruleId()))
                  .then(".")));
    }
  }

  private static void others(Scheme scheme, List<Block> blocks) {
    if (scheme.others().isEmpty()) {
      return;
    }
    List<Block.Row> rows = new ArrayList<>();
    for (Combination other : scheme.others()) {
      Scheme.Trade trade = scheme.trade(other);
      rows.add(
          Block.Row.of(
              Prose.of(Words.score(other.points())),
              Prose.of(
                  Words.sentence(changes(trade))
                      + "."
                      + (other.held() ? " Held by an open rule between zones." : "")),
              rules(trade.lost()),
              rules(trade.gained())));
    }
    blocks.add(
        new Block.Table(
            "Other combinations, and what they trade",
            List.of(
                Block.Column.amounts("Points"),
                Block.Column.words("What changes"),
                Block.Column.words("Gone"),
                Block.Column.words("New")),
            rows));
  }

  private static String changes(Scheme.Trade trade) {
    return Words.list(
        trade.changes().stream()
            .map(
                change ->
                    change.to().method().map(SupportOption::label).orElse("nothing yet")
                        + " in place of "
                        + change.from().method().map(SupportOption::label).orElse("nothing")
                        + " at "
                        + change.from().name())
            .toList());
  }

  private static Prose rules(List<PairFinding> findings) {
    List<Prose> rules =
        findings.stream()
            .map(PairFinding::id)
            .distinct()
            .map(id -> Prose.empty().link(id, Anchor.rule(id)))
            .toList();
    return rules.isEmpty() ? Prose.of("nothing") : Cells.joined(rules, ", ");
  }
}
