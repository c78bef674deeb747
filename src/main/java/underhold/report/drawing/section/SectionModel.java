package underhold.report.drawing.section;

import java.util.Optional;
import underhold.advice.Limits;
import underhold.quantity.Measure;
import underhold.quantity.QuantityPrinter;
import underhold.quantity.UnitSystem;
import underhold.site.Fact;
import underhold.site.FactDictionary;
import underhold.site.FactValue;
import underhold.site.FactView;
import underhold.site.Site;
import underhold.site.Zone;
import underhold.site.ZoneViews;

/**
 * What a section of a zone shows, from stated facts and what follows from them. The face of the
 * excavation is x = 0, the excavation lies to the right of it, depths count from ground surface.
 * Where a fact is not known there is a place of the drawing's own for it, which is always drawn
 * dashed and named unknown, never printed as a number.
 *
 * @param facts the facts of the zone
 * @param site the site
 * @param zone the zone
 * @param units the reader's units
 * @param core the core zone's width over its depth
 * @param screening the screening zone's width over its depth
 */
record SectionModel(
    FactView facts, Site site, Zone zone, UnitSystem units, double core, double screening) {

  /** Room for a part of which no size is known [m]. */
  private static final double SCHEMATIC = 1;

  static SectionModel of(Site site, Zone zone, Limits limits, UnitSystem units) {
    return new SectionModel(
        ZoneViews.known(site, zone, FactDictionary.standard()),
        site,
        zone,
        units,
        limits.require("core-slope").si(),
        limits.require("screening-slope").si());
  }

  /** Why nothing can be drawn; empty where something can. */
  Optional<String> whyNot() {
    boolean depth = known("foundingDepth").isPresent() || known("excavationDepth").isPresent();
    return depth
        ? Optional.empty()
        : Optional.of(
            "No section is drawn of "
                + zone.name()
                + ": neither the founding depth nor the depth of the excavation is known.");
  }

  /** An amount that is known [inside unit]. */
  Optional<Double> known(String fact) {
    return facts.amount(fact).map(quantity -> quantity.si());
  }

  /** The value as typed, or in the reader's units where those are not the site's; "?" unknown. */
  String text(String name) {
    Fact fact = facts.fact(name);
    if (!(fact.value() instanceof FactValue.Amount amount)) {
      return fact.value() == null ? "?" : fact.text();
    }
    return units == site.units() && fact.origin() == underhold.site.Origin.STATED
        ? amount.text()
        : QuantityPrinter.print(amount.quantity().si(), amount.quantity().measure(), units);
  }

  String metres(double value) {
    return QuantityPrinter.print(value, Measure.LENGTH, units);
  }

  String word(String fact) {
    return facts.word(fact).orElse("");
  }

  /** Whether somebody says that nothing is dug. */
  boolean digs() {
    return !word("excavationPosition").equals("no-excavation");
  }

  boolean positionKnown() {
    return !word("excavationPosition").isEmpty();
  }

  /** Whether soil is dug from under the whole foundation. */
  boolean whollyUnder() {
    return word("excavationPosition").equals("wholly-under")
        || word("excavationPosition").equals("crosses-support");
  }

  boolean partlyUnder() {
    return word("excavationPosition").equals("partly-under");
  }

  double founding() {
    return known("foundingDepth").orElseGet(() -> 0.35 * known("excavationDepth").orElse(3.0));
  }

  double excavation() {
    return known("excavationDepth").orElseGet(() -> founding() + 2 * SCHEMATIC);
  }

  double footing() {
    double least = slab() ? excavation() : 1.2 * SCHEMATIC;
    double over = partlyUnder() ? 1.7 * known("underminedWidth").orElse(0.0) : 0;
    return known("footingWidth").orElse(Math.max(least, over));
  }

  /** Where the inside of a raft's cellar or of a box begins; a box has a roof of unknown depth. */
  double inside() {
    return word("foundationKind").equals("box-slab") ? 0.35 * founding() : 0;
  }

  /** A raft or a box, whose width is no fact. */
  boolean slab() {
    String kind = word("foundationKind");
    return kind.equals("raft") || kind.equals("box-slab");
  }

  double wall() {
    return Math.min(footing(), known("wallThickness").orElse(0.4 * SCHEMATIC));
  }

  /** How far the foundation reaches over the excavation; below 0 the gap between them. */
  double overhang() {
    if (partlyUnder()) {
      return known("underminedWidth").orElseGet(() -> footing() / 2);
    }
    return -known("gapToExcavation").orElse(SCHEMATIC);
  }

  /** World x of the right end of the foundation. */
  double footingRight() {
    return whollyUnder() ? dugWidth() / 2 + footing() / 2 : overhang();
  }

  double footingLeft() {
    return footingRight() - footing();
  }

  /** Width of the excavation where it lies under all of the foundation. */
  double dugWidth() {
    double known = known("underminedWidth").orElse(0.0);
    return known > 0 ? known : Math.max(footing() + SCHEMATIC, 1.2 * excavation());
  }

  /** World x to which the excavation is drawn; its far side is known only where it is under. */
  double dugRight() {
    double open = Math.max(1.5 * SCHEMATIC, 0.55 * excavation());
    return whollyUnder() ? dugWidth() : Math.max(open, overhang() + 0.6 * SCHEMATIC);
  }

  double left() {
    double line = digs() ? screening * Math.max(0, excavation() - founding()) : 0;
    double side = Math.max(0.8 * SCHEMATIC, 0.2 * excavation());
    double limit = 2.2 * Math.max(excavation(), founding());
    return Math.min(-Math.min(line, limit), footingLeft()) - side;
  }

  double right() {
    return whollyUnder() ? dugRight() + Math.max(SCHEMATIC, 0.2 * excavation()) : dugRight();
  }

  double bottom() {
    double deepest = Math.max(digs() ? excavation() : 0, founding());
    double toe = known("pileToeDepth").filter(depth -> piled()).orElse(0.0);
    return Math.max(deepest, Math.min(toe, 2.2 * deepest)) + Math.max(SCHEMATIC, 0.3 * deepest);
  }

  boolean piled() {
    String kind = word("foundationKind");
    return kind.endsWith("piles") || kind.equals("caissons");
  }

  double above() {
    return Math.max(SCHEMATIC, 0.25 * Math.max(founding(), excavation()));
  }

  /** Width of the influence zone of that slope at founding level, from the face. */
  double reach(double slope) {
    return slope * Math.max(0, excavation() - founding());
  }

  boolean hasInfluence() {
    return digs()
        && known("excavationDepth").isPresent()
        && known("foundingDepth").isPresent()
        && excavation() > founding();
  }
}
