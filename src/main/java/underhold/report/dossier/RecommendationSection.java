package underhold.report.dossier;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.advice.SupportOption;
import underhold.consult.QuickSizing;
import underhold.consult.firmness.Firmness;
import underhold.report.FirmnessText;
import underhold.report.Headline;
import underhold.report.Words;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;
import underhold.sizing.Verdict;

/** What is recommended in each zone, and how firm that is. */
final class RecommendationSection {
  private static final int HUNDRED = 100;
  private static final int MOST_VALUES = 8;

  private RecommendationSection() {}

  static Section of(Material material, Commission commission) {
    boolean whole = commission.audience() == Audience.REVIEWER;
    return new Section(
        "recommendation",
        "Recommendation",
        List.of(),
        material.zones().stream().map(zone -> zone(material, zone, whole)).toList());
  }

  private static Section zone(Material material, ZonePart zone, boolean whole) {
    Headline headline = new Headline(zone.advice());
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Notice(tone(zone), "Verdict", Prose.of(headline.verdict())));
    otherwise(material, zone).ifPresent(blocks::add);
    List<String> beside = beside(headline, whole ? "; see its sheet" : "");
    if (!beside.isEmpty()) {
      blocks.add(Cells.list(beside));
    }
    if (whole) {
      zone.advice().firmness().ifPresent(firmness -> firm(zone, firmness, blocks));
    }
    return Section.of("recommendation-" + zone.number(), "Zone: " + zone.name(), blocks);
  }

  /** That the zones together call for another method than the zone by itself. */
  private static Optional<Block> otherwise(Material material, ZonePart zone) {
    Optional<SupportOption> leader = zone.advice().ranking().leader().map(one -> one.option());
    Optional<SupportOption> method = material.method(zone);
    if (method.equals(leader)) {
      return Optional.empty();
    }
    return Optional.of(
        new Block.Notice(
            Block.Tone.DOUBT,
            "In the scheme otherwise",
            Prose.of(
                method
                    .map(
                        option ->
                            "The methods of the zones are chosen together, and there "
                                + option.label()
                                + (option.label().endsWith("s") ? " stand" : " stands")
                                + " in this zone. Plan, quantities and hold points follow the scheme.")
                    .orElse(
                        "The scheme over the zones has no method for this zone yet, so nothing of it"
                            + " is planned."))));
  }

  /** What stands beside the verdict; on paper no command is to be typed. */
  static List<String> beside(Headline headline, String see) {
    return headline.beside().stream()
        .map(words -> words.replaceAll("; see size [a-z-]+", see))
        .toList();
  }

  /** Good only where a leader is proved as far as the sheet goes. */
  private static Block.Tone tone(ZonePart zone) {
    Optional<SupportOption> leader = zone.advice().ranking().leader().map(one -> one.option());
    if (leader.isEmpty()) {
      return Block.Tone.DOUBT;
    }
    Optional<QuickSizing> sizing = zone.advice().sizing(leader.get());
    if (sizing.filter(one -> one.count(Verdict.FAILS) > 0).isPresent()) {
      return Block.Tone.BAD;
    }
    boolean proved =
        sizing.filter(QuickSizing::complete).isPresent() && sizing.get().count(Verdict.REFER) == 0;
    return proved ? Block.Tone.GOOD : Block.Tone.DOUBT;
  }

  private static void firm(ZonePart zone, Firmness firmness, List<Block> blocks) {
    List<Block.Row> rows = new ArrayList<>();
    for (SupportOption option : firmness.byFirsts()) {
      rows.add(share(option.label(), firmness.first(option), firmness));
    }
    rows.add(share("no clear choice", firmness.none(), firmness));
    blocks.add(
        new Block.Table(
            "How often each comes first",
            List.of(Block.Column.words("Option"), Block.Column.amounts("First, of 100 draws")),
            rows));
    blocks.add(
        new Block.Table(
            "How often the answer stays",
            List.of(Block.Column.words("Drawn"), Block.Column.amounts("Stays, of 100 draws")),
            List.of(
                share("everything together", firmness.stayed(), firmness),
                share("open facts alone", firmness.facts(), firmness),
                share("weights alone", firmness.weights(), firmness),
                share("limits alone", firmness.limits(), firmness))));
    List<Block.Row> drivers =
        firmness.drivers().stream().map(driver -> driver(zone, driver)).toList();
    blocks.add(
        Cells.table(
            "What drives the doubt",
            List.of(
                Block.Column.words("Open fact"),
                Block.Column.amounts("Goes with, of 100 parts"),
                Block.Column.words("The answer stays, of the draws"),
                Block.Column.words("Find out")),
            drivers,
            firmness.stayed() == firmness.draws()
                ? "No draw changed the answer."
                : "No open fact drives the doubt by itself; several do together, or with the weights"
                    + " and limits."));
    blocks.add(new Block.Paragraph(Prose.of(FirmnessText.drawn(firmness))));
  }

  private static Block.Row share(String name, int count, Firmness firmness) {
    return Block.Row.of(Prose.of(name), Prose.of(firmness.perHundred(count) + " in 100"));
  }

  private static Block.Row driver(ZonePart zone, Firmness.Driver driver) {
    List<String> values =
        driver.values().stream()
            .limit(MOST_VALUES)
            .map(value -> value.value() + ": " + value.stayed() + " of " + value.draws())
            .toList();
    String label = Words.sentence(driver.fact().label());
    boolean asked =
        zone.advice().questions().list().stream()
            .anyMatch(question -> question.fact().name().equals(driver.fact().name()));
    return Block.Row.of(
        asked
            ? Prose.empty().link(label, Anchor.question(zone.number(), driver.fact().name()))
            : Prose.of(label),
        Prose.of(Math.round(HUNDRED * driver.explains()) + " in 100"),
        Prose.of(String.join("; ", values)),
        Prose.of(driver.fact().findOut()));
  }
}
