package underhold.report.dossier;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.quantity.Quantity;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;
import underhold.site.Fact;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.FactValue;
import underhold.site.GroundLayer;
import underhold.site.GroundProfile;
import underhold.site.Origin;
import underhold.site.Relation;
import underhold.site.Site;
import underhold.site.StatedFact;
import underhold.site.Zone;

/** The facts: what was stated, as typed and with its notes, and what follows from it. */
final class BriefSection {
  private static final List<Block.Column> STATED = Cells.columns("Fact", "As stated", "Note");

  private final Material material;
  private final Illustrations illustrations;

  BriefSection(Material material, Illustrations illustrations) {
    this.material = material;
    this.illustrations = illustrations;
  }

  Section section() {
    Site site = material.site();
    List<Block> blocks = new ArrayList<>();
    note(site.note()).ifPresent(blocks::add);
    blocks.add(
        facts(
            "Stated for the whole site",
            stated(0, site.facts(), FactDictionary.standard()),
            "Nothing is stated for the whole site; every fact is stated zone by zone."));
    ground("Ground of the whole site", site.ground()).ifPresent(blocks::add);
    for (Relation relation : site.relations()) {
      blocks.add(
          facts(
              "How two zones lie: first " + relation.first() + ", second " + relation.second(),
              stated(-1, relation.facts(), FactDictionary.pairs()),
              "Of " + relation.first() + " and " + relation.second() + " nothing is stated."));
      note(relation.note()).ifPresent(blocks::add);
    }
    List<Section> parts = material.zones().stream().map(this::zone).toList();
    return new Section("brief", "Brief: the facts", blocks, parts);
  }

  private Section zone(ZonePart part) {
    Zone zone = material.site().zones().get(part.number() - 1);
    List<Block> blocks = new ArrayList<>();
    note(zone.note()).ifPresent(blocks::add);
    blocks.addAll(
        Cells.drawn(
            illustrations.ofZone(
                material.site(),
                part.advice(),
                Anchor.figures("zone", part.number()),
                material.units())));
    blocks.add(
        facts(
            "Stated for this zone",
            stated(part.number(), zone.facts(), FactDictionary.standard()),
            "Nothing is stated for this zone alone."));
    ground("Ground of this zone", zone.ground()).ifPresent(blocks::add);
    blocks.add(
        Cells.table(
            "What follows from the facts",
            Cells.columns("Fact", "Value", "How it follows"),
            derived(part),
            "Nothing follows from what is stated."));
    List<String> unknown = unknown(part);
    if (!unknown.isEmpty()) {
      blocks.add(
          new Block.Paragraph(
              Prose.empty()
                  .strong("Nobody knows: ")
                  .then(String.join(", ", unknown))
                  .then(". What is assumed meanwhile stands among the ")
                  .link("assumptions", "assumptions")
                  .then(".")));
    }
    return Section.of("brief-" + part.number(), "Zone: " + part.name(), blocks);
  }

  /** A table of facts; without a column for notes where none has one. */
  private static Block facts(String caption, List<Block.Row> rows, String none) {
    boolean noted = rows.stream().anyMatch(row -> !row.cells().get(2).text().isEmpty());
    return noted
        ? Cells.table(caption, STATED, rows, none)
        : Cells.table(
            caption,
            STATED.subList(0, 2),
            rows.stream()
                .map(row -> new Block.Row(row.anchor(), row.tone(), row.cells().subList(0, 2)))
                .toList(),
            none);
  }

  private static Optional<Block> note(String note) {
    return note.isEmpty()
        ? Optional.empty()
        : Optional.of(new Block.Notice(Block.Tone.PLAIN, "Note, as typed", Prose.of(note.strip())));
  }

  /** The rows of facts in the order of the dictionary; a relation has no anchors. */
  private static List<Block.Row> stated(
      int zone, Map<String, StatedFact> facts, FactDictionary dictionary) {
    List<Block.Row> rows = new ArrayList<>();
    for (FactDefinition definition : dictionary.all()) {
      StatedFact fact = facts.get(definition.name());
      if (fact != null) {
        FactValue value = fact.value();
        rows.add(
            Cells.row(
                zone < 0 ? "" : Anchor.fact(zone, definition.name()),
                value == null ? Block.Tone.DOUBT : Block.Tone.PLAIN,
                name(definition),
                value == null ? Prose.of("unknown") : Cells.typed(value.text()),
                Prose.of(fact.note())));
      }
    }
    return rows;
  }

  private static Prose name(FactDefinition definition) {
    return Prose.of(definition.label() + " (").typed(definition.name()).then(")");
  }

  private static List<Block.Row> derived(ZonePart part) {
    return part.advice().view().present().stream()
        .filter(fact -> fact.origin() == Origin.DERIVED)
        .map(
            fact ->
                Cells.row(
                    Anchor.fact(part.number(), fact.name()),
                    Block.Tone.PLAIN,
                    name(fact.definition()),
                    Prose.of(fact.text()),
                    Prose.of(fact.how())))
        .toList();
  }

  private static List<String> unknown(ZonePart part) {
    return part.advice().view().all().stream()
        .filter(fact -> fact.origin() == Origin.UNKNOWN && !fact.definition().derived())
        .map(Fact::definition)
        .map(FactDefinition::label)
        .toList();
  }

  private static Optional<Block> ground(String caption, GroundProfile ground) {
    if (ground.isEmpty()) {
      return Optional.empty();
    }
    List<Block.Row> rows = new ArrayList<>();
    for (GroundLayer layer : ground.layers()) {
      rows.add(
          Block.Row.of(
              Cells.typed(layer.top().text()),
              Cells.typed(layer.soil()),
              Prose.of(values(layer)),
              Prose.of(layer.note())));
    }
    return Optional.of(
        new Block.Table(caption, Cells.columns("From depth", "Soil", "As stated", "Note"), rows));
  }

  private static String values(GroundLayer layer) {
    List<String> values = new ArrayList<>();
    add(values, "unit weight", layer.unitWeight());
    add(values, "undrained strength", layer.undrainedStrength());
    add(values, "friction angle", layer.frictionAngle());
    add(values, "cohesion", layer.cohesion());
    add(values, "N60 (blows)", layer.n60());
    add(values, "unconfined strength", layer.unconfinedStrength());
    add(values, "RQD", layer.rqd());
    add(values, "permeability", layer.permeability());
    String standUp = layer.standUp();
    if (standUp != null) {
      values.add("stand-up time " + standUp);
    }
    return String.join("; ", values);
  }

  private static void add(
      List<String> values, String label, @org.jspecify.annotations.Nullable Quantity value) {
    if (value != null) {
      values.add(label + " " + value.text());
    }
  }
}
