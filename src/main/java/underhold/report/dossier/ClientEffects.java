package underhold.report.dossier;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.advice.OptionAdvice;
import underhold.advice.SupportOption;
import underhold.report.MovementLevels;
import underhold.report.Words;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;
import underhold.site.Fact;
import underhold.sizing.Check;
import underhold.sizing.Verdict;

/** What the work means for the owner: the method in plain words, use, movement and watching. */
final class ClientEffects {
  /** What was stated of the use of the structure and of the land. */
  private static final List<String> USE =
      List.of("liveUse", "nightClosure", "noiseLimit", "heritage", "landRights", "life");

  private final Material material;

  private ClientEffects(Material material) {
    this.material = material;
  }

  static Section of(Material material) {
    ClientEffects effects = new ClientEffects(material);
    return new Section(
        "effects",
        "What it means for you",
        List.of(),
        material.zones().stream().map(effects::zone).toList());
  }

  /** The method of a zone, or a specialist where that leads. */
  static Optional<SupportOption> proposed(Material material, ZonePart zone) {
    return material
        .method(zone)
        .or(
            () ->
                zone.advice()
                    .ranking()
                    .leader()
                    .map(OptionAdvice::option)
                    .filter(SupportOption.REFER::equals));
  }

  private Section zone(ZonePart zone) {
    List<Block> blocks = new ArrayList<>();
    Optional<SupportOption> proposed = proposed(material, zone);
    blocks.add(
        new Block.Paragraph(
            proposed
                .map(
                    option ->
                        Prose.empty()
                            .strong(Words.sentence(option.label()) + ".")
                            .then(" " + MethodWords.of(option).what())
                            .then(" " + MethodWords.of(option).seen()))
                .orElse(
                    Prose.of(
                        "No method is proposed yet. Until one is, only surveys and investigations are"
                            + " planned, and nothing is dug that could move the structure."))));
    blocks.add(use(zone));
    List<Prose> movement = movement(zone);
    Watching.of(material, zone).ifPresent(watching -> movement.addAll(watching.brief()));
    blocks.add(new Block.Listing(false, movement));
    return Section.of("effects-" + zone.number(), "Zone: " + zone.name(), blocks);
  }

  private Block use(ZonePart zone) {
    List<Block.Row> rows = new ArrayList<>();
    for (String name : USE) {
      Fact fact = zone.advice().view().fact(name);
      boolean known = fact.maybe().isPresent();
      if (known || name.equals("liveUse") || name.equals("landRights")) {
        rows.add(
            Block.Row.of(
                Prose.of(Words.sentence(fact.definition().label())),
                known ? Prose.of(meaning(fact)) : Prose.of("not stated: to be agreed with you")));
      }
    }
    return new Block.Table("Of its use, as stated", Cells.columns("What", "Stated"), rows);
  }

  private static String meaning(Fact fact) {
    return fact.definition().values().stream()
        .filter(value -> value.value().equals(fact.text()))
        .map(value -> value.means())
        .findFirst()
        .orElse(fact.text());
  }

  /** What movement is reckoned, and what may be. */
  private List<Prose> movement(ZonePart zone) {
    List<Prose> items = new ArrayList<>();
    items.add(allowed(MovementLevels.of(material.site(), zone.advice())));
    List<Check> reckoned = ExpectedMovement.of(material, zone).reckoned();
    reckoned.stream().map(this::reckoned).forEach(items::add);
    items.add(
        Prose.of(
            reckoned.isEmpty()
                ? "How far it will move is not reckoned here: ask the engineer of record before work"
                    + " begins."
                : "Ground that moves because of the excavation itself may come on top: ask the engineer"
                    + " of record."));
    return items;
  }

  /** How far it may move: the limit that governs, and beside it the one stated. */
  private static Prose allowed(MovementLevels levels) {
    if (levels.stated().isEmpty()) {
      return Prose.of(
          "How far it may move is not agreed yet: the owner and the engineer of record agree it"
              + " before any work"
              + levels
                  .limit()
                  .map(limit -> ", " + limit + " at the most (" + levels.whose() + ")")
                  .orElse("")
              + ".");
    }
    String stated = levels.stated().get().text();
    return levels.stricter()
        ? Prose.of(
                "It may move by no more than "
                    + levels.limit().orElse("")
                    + ", the limit that governs ("
                    + levels.whose()
                    + "). The limit stated, ")
            .typed(stated)
            .then(", is wider and does not count.")
        : Prose.of("It may move by no more than ").typed(stated).then(".");
  }

  private Prose reckoned(Check check) {
    return Prose.of(
        "Reckoned: "
            + check.title().substring(0, 1).toLowerCase(java.util.Locale.ROOT)
            + check.title().substring(1)
            + ": "
            + check.demand().in(material.units())
            + " of "
            + check.capacity().in(material.units())
            + (check.verdict() == Verdict.PASSES
                ? "."
                : check.verdict() == Verdict.FAILS
                    ? ": too much as it stands."
                    : "; an engineer has still to decide on it."));
  }
}
