package underhold.sizing.drilledpiles;

import java.util.List;
import underhold.sizing.Choice;
import underhold.sizing.Source;

/** Choices of method that the user may change; the first word is the default. */
final class PileChoices {
  static final Choice RIG =
      new Choice(
          "rig",
          "size of rig, and so of pile",
          List.of("by-access", "small", "large"),
          Source.judgement());
  static final Choice DRILL_FROM =
      new Choice(
          "drill-from",
          "where piles are drilled from",
          List.of("by-access", "inside", "outside", "both-sides"),
          Source.judgement());
  static final Choice SLAB_LAYOUT =
      new Choice(
          "slab-layout",
          "piles under a slab or box: in a grid under it, or in two rows beside it with beams across",
          List.of("by-access", "grid", "rows"),
          Source.judgement());
  static final Choice WORK_BY =
      new Choice(
          "work-by",
          "hours of work: by the facts, or day shifts, or night closures",
          List.of("by-facts", "day", "night"),
          Source.judgement());
  static final Choice TEMPORARY =
      new Choice(
          "temporary-casing",
          "casing driven on below the one that stays and pulled again: where soft ground, or sand and gravel below water, is drilled through, or none",
          List.of("by-ground", "none"),
          Source.judgement());
  static final Choice ALPHA =
      new Choice(
          "alpha-method",
          "side in clay: form of 1999 and 2010, of 2018, or one fixed alpha",
          List.of("1999", "2018", "fixed"),
          Sources.ALPHA_1999);
  static final Choice BETA =
      new Choice(
          "beta-method",
          "side in sand: by depth (1999) or by stress history (2010)",
          List.of("1999", "2010"),
          Sources.BETA_1999);
  static final Choice GRAVEL =
      new Choice(
          "gravel-beta",
          "side in gravel by depth: as sand, or the form for gravelly sand",
          List.of("as-sand", "gravelly"),
          Source.judgement());
  static final Choice WATER =
      new Choice(
          "water-after-digging",
          "water that presses in the ground below the dug level: by the site's facts, at the dug level where it is lowered, or as stated where it keeps its head",
          List.of("by-site", "dug-level", "stated"),
          Source.judgement());
  static final Choice ROCK =
      new Choice(
          "rock-method",
          "side in rock: jointed or cased socket (0.65 aE), normal socket (C), or the least of two lines (textbook)",
          List.of("jointed", "normal", "textbook"),
          Sources.ROCK_JOINTED);
  static final Choice JOINTS =
      new Choice(
          "rock-joints",
          "joints of the rock at the sockets",
          List.of("open", "closed"),
          Source.judgement());
  static final Choice BASE =
      new Choice(
          "base",
          "base resistance; none where holes are drilled blind and not inspected",
          List.of("none", "counted"),
          Source.judgement());
  static final Choice TESTED =
      new Choice(
          "test-regime",
          "what is tested on the site: nothing (factor 3.0), dynamic (2.5), static load test (2.0)",
          List.of("none", "dynamic", "static"),
          Sources.FACTORS);
  static final Choice GROUP =
      new Choice(
          "group-factor",
          "factor of closely spaced piles: by spacing, or none",
          List.of("by-spacing", "none"),
          Sources.GROUP);
  static final Choice BARED =
      new Choice(
          "bared",
          "the excavation bares the piles; no only where a wall built first keeps the ground round them",
          List.of("yes", "no"),
          Source.judgement());
  static final Choice HEAD_HELD =
      new Choice(
          "head-held",
          "the structure or a cap on three or more piles is proved to hold the heads sideways",
          List.of("no", "yes"),
          Sources.IBC_FREE);
  static final Choice FIXITY =
      new Choice(
          "fixity",
          "depth at which a bared pile is held: 5 ft stiff and 10 ft soft by rule, 1.8 T in sand, or 1.4 R in clay",
          List.of("rule", "sand", "clay"),
          Sources.IBC_FREE);
  static final Choice STEEL_DESIGN =
      new Choice(
          "steel-design",
          "bared casing by allowable strength (1.67), or by LRFD (0.90 and a load factor)",
          List.of("asd", "lrfd"),
          Sources.AISC);
  static final Choice STEEL_RULE =
      new Choice(
          "steel-rule",
          "allowable stress of casing: as micropile to 12 in and as other pipe above, or one of them",
          List.of("by-diameter", "micropile", "pipe"),
          Sources.IBC_STRESS);

  private PileChoices() {}

  static List<Choice> all() {
    return List.of(
        RIG,
        DRILL_FROM,
        SLAB_LAYOUT,
        WORK_BY,
        TEMPORARY,
        ALPHA,
        BETA,
        GRAVEL,
        WATER,
        ROCK,
        JOINTS,
        BASE,
        TESTED,
        GROUP,
        BARED,
        HEAD_HELD,
        FIXITY,
        STEEL_RULE,
        STEEL_DESIGN);
  }
}
