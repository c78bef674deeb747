package underhold.report.dossier;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.advice.BuiltInPack;
import underhold.advice.Limit;
import underhold.advice.PackDifference;
import underhold.advice.Rule;
import underhold.report.PackLines;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;

/** How the rules of a package differ from those built in; every audience must know. */
final class PackSection {
  private PackSection() {}

  /** The section; none where the rules are those built in. */
  static Optional<Section> of(Material material) {
    if (BuiltInPack.is(material.pack())) {
      return Optional.empty();
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.Notice(
            Block.Tone.BAD,
            "Not the rules built in",
            Prose.of(
                String.join(" ", PackLines.of(material.pack()))
                    + " Whoever changed them answers for what they now advise.")));
    differences(PackDifference.of(material.pack()), blocks);
    return Optional.of(Section.of("pack", "Rules that differ from those built in", blocks));
  }

  private static void differences(PackDifference difference, List<Block> blocks) {
    List<Block.Row> rows = new ArrayList<>();
    difference.limitsChanged().forEach(change -> rows.add(limit(change)));
    difference.limitsAdded().forEach(limit -> row(rows, limit, "not there", "added: " + of(limit)));
    difference.limitsRemoved().forEach(limit -> row(rows, limit, of(limit), "gone"));
    difference.added().forEach(rule -> row(rows, rule, "not there", "added"));
    difference.removed().forEach(rule -> row(rows, rule, "there", "gone"));
    difference
        .changed()
        .forEach(change -> row(rows, change.is(), change.was().sentence(), parts(change)));
    difference.weights().forEach(change -> row(rows, "Weight", change));
    difference.criteria().forEach(change -> row(rows, "Criterion", change));
    difference.sources().forEach(change -> row(rows, "Source", change));
    if (!rows.isEmpty()) {
      blocks.add(
          new Block.Table(
              "What differs", Cells.columns("What", "Built in", "In this package"), rows));
    }
    if (difference.orderChanged()) {
      blocks.add(Cells.paragraph("The rules stand in another order."));
    }
  }

  private static String parts(PackDifference.RuleChange change) {
    List<String> parts = change.parts().stream().map(PackDifference.Part::word).sorted().toList();
    return "differs in " + String.join(", ", parts);
  }

  private static Block.Row limit(PackDifference.LimitChange change) {
    return Cells.row(
        "",
        change.outsidePlausible() ? Block.Tone.BAD : Block.Tone.DOUBT,
        Prose.of("Limit: " + change.is().label() + " (").typed(change.is().name()).then(")"),
        Prose.of(of(change.was())),
        Prose.of(
            of(change.is())
                + (change.outsidePlausible()
                    ? "; outside its plausible range, "
                        + change.was().plausible().get(0).text()
                        + " to "
                        + change.was().plausible().get(1).text()
                    : "")));
  }

  private static String of(Limit limit) {
    return limit.value().text() + " (" + limit.basis().notice() + ")";
  }

  private static void row(List<Block.Row> rows, Limit limit, String was, String is) {
    rows.add(
        Cells.row(
            "",
            Block.Tone.DOUBT,
            Prose.of("Limit: " + limit.label() + " (").typed(limit.name()).then(")"),
            Prose.of(was),
            Prose.of(is)));
  }

  private static void row(List<Block.Row> rows, String kind, PackDifference.ValueChange change) {
    rows.add(
        Block.Row.of(
            Prose.of(kind + ": " + change.name()),
            Prose.of(change.was().isEmpty() ? "not there" : change.was()),
            Prose.of(change.is().isEmpty() ? "gone" : change.is())));
  }

  private static void row(List<Block.Row> rows, Rule rule, String was, String is) {
    rows.add(
        Cells.row(
            "",
            Block.Tone.DOUBT,
            Prose.empty().strong(rule.id()).then(" " + rule.sentence()),
            Prose.of(was),
            Prose.of(is)));
  }
}
