package underhold.sizing.edgepits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.site.Site;
import underhold.sizing.Basis;
import underhold.sizing.Verdict;

/**
 * Braces, toe and wall of the box read line by line. Its pressure by hand: at rest 1 - sin 36
 * degrees (International Building Code 1610.1), 20 kN/m3, 3 m of soil, 10.44 kPa and half of 80 kPa
 * above the top of the wall, no water.
 */
class EdgeBracesByHandTest {
  private static final double AT_REST = 1 - Math.sin(Math.toRadians(36));
  private static final double TOP = AT_REST * (20 * 3 + 10.44 + 0.5 * 80);
  private static final double RISE = AT_REST * 20;

  /** Force of a trapezium of pressure above a depth, statics. */
  private static double force(double depth) {
    return TOP * depth + RISE * depth * depth / 2;
  }

  /** Its moment about that depth, statics. */
  private static double moment(double depth) {
    return TOP * Math.pow(depth, 2) / 2 + RISE * Math.pow(depth, 3) / 6;
  }

  /** Upper reaction of a length as a simple beam, statics. */
  private static double upper(double from, double to) {
    return (moment(to) - moment(from)) / (to - from) - force(from);
  }

  private static Reading box(String... settings) {
    return Reading.of(EdgeSites.size(EdgeSites.box(), settings));
  }

  @Test
  @DisplayName(
      "own hand calculation: levels 0.3, 1.8, 3.3 m; the ground 0.5 m below the next level, at last 5 m: force and moment above each")
  void levels_and_ground_of_each_stage() {
    double[] levels = {0.3, 1.8, 3.3};
    double[] grounds = {2.3, 3.8, 5};
    Reading box = box();
    for (int i = 0; i < 3; i++) {
      String n = String.valueOf(i + 1);
      String level = "level " + n;
      box.gives(
          "ground-" + n, "Ground in front when the braces down to " + level + " hold", grounds[i]);
      box.gives("force-level-" + n, "Force on the wall above " + level, force(levels[i]));
      box.gives(
          "moment-level-" + n,
          "Moment, about the same level, of the pressure above " + level,
          moment(levels[i]));
      box.gives(
          "force-ground-" + n,
          "Force on the wall above the ground in front then",
          force(grounds[i]));
      box.gives("moment-ground-" + n, moment(grounds[i]));
    }
    box.takes("ground-1", "l", "next level", 1.8).takes("ground-2", "l", "next level", 3.3);
    box.takes("ground-1", "o", 0.5);
    box.takes("ground-3", "e", "bottom of the cut in front", 5);
  }

  @Test
  @DisplayName(
      "own hand calculation by the method of hinges (Caltrans, several tiers, from memory): a simple beam between levels below the first")
  void forces_by_hinges() {
    Reading box = box();
    box.gives(
        "hinge-1", "Force at level 1 by hinges, per length of wall", moment(2.3) / (2.3 - 0.3));
    double first = moment(1.8) / 1.5; // what level 1 takes with a hinge at level 2
    double below2 = upper(1.8, 3.8);
    box.gives("hinge-below-2", "What the length below brings to level 2 as a simple beam", below2);
    box.gives("hinge-above-2", "What level 1 carries with a hinge at level 2", first);
    box.gives(
        "hinge-2", "Force at level 2 by hinges, per length of wall", force(1.8) - first + below2);
    box.takes("hinge-2", "Fu", "none: level 1 carries from the top", 0);
    double above3 = upper(1.8, 3.3);
    box.gives("hinge-above-3", "What level 2 takes of the length between", above3);
    box.takes("hinge-above-3", "u", "level 2", 1.8).takes("hinge-above-3", "l", "level 3", 3.3);
    box.gives("hinge-below-3", upper(3.3, 5));
    box.gives("hinge-3", force(3.3) - force(1.8) - above3 + upper(3.3, 5));
    box.takes("hinge-3", "Fu", "force above the level over it", force(1.8));
  }

  @Test
  @DisplayName(
      "own hand calculation by tributary lengths (Caltrans, several tiers, from memory): from middle to middle, the first from the top")
  void forces_by_tributary_lengths() {
    Reading box = box();
    box.gives(
        "force-middle-below-1",
        "Force on the wall above the middle of the length below level 1",
        force(1.3));
    box.takes("tributary-1", "F1", "none: from the top", 0);
    box.gives("tributary-1", force(1.3)); // the first stage: ground at 2.3 m
    box.gives("force-middle-below-2", force((1.8 + 3.8) / 2));
    box.gives(
        "force-middle-above-2",
        "Force on the wall above the middle of the length above level 2",
        force(1.05));
    box.takes("tributary-2", "F1", "force above the middle of the length above", force(1.05));
    box.gives("tributary-2", force(2.8) - force(1.05));
    box.gives("force-middle-above-3", force(2.55));
    box.gives("tributary-3", force((3.3 + 5) / 2) - force(2.55));
  }

  @Test
  @DisplayName(
      "own hand calculation: the foot at the end takes what the lowest level leaves, and the 0.6 m below the cut in full")
  void foot_at_the_end() {
    Reading box = box();
    double front = force(5);
    double byHinge = front - force(3.3) - upper(3.3, 5);
    double byTributary = front - force(4.15);
    box.gives("foot-hinge", byHinge).gives("foot-tributary", byTributary);
    box.takes("foot-hinge", "R", "what the lowest level takes of the length below", upper(3.3, 5));
    box.gives("foot", byTributary).takes("foot", "Bh", byHinge).takes("foot", "Bt", byTributary);
    box.gives("toe-force", byTributary + force(5.6) - front);
  }

  @Test
  @DisplayName(
      "own hand calculation: a cut to 1.9 m below the box takes one level: its foot by what hinges leave")
  void one_level() {
    Site low = EdgeSites.with(EdgeSites.box(), "excavationDepth", "4.9 m");
    Reading one = Reading.of(EdgeSites.size(low));
    double prop = moment(1.9) / 1.6;
    one.gives("hinge-1", prop).gives("foot-hinge", force(1.9) - prop);
    one.takes("foot-hinge", "R", "level 1 by hinges", prop);
    one.takes("ground-1", "e", "bottom of the cut in front", 1.9);
    assertThat(one.check("bracing-possible").demand().si()).isEqualTo(1);
  }

  @Test
  void a_brace_is_checked_only_where_its_strength_is_set() {
    Reading none = box();
    assertThat(none.check("brace-capacity").source().basis()).isEqualTo(Basis.STATICS);
    assertThat(none.note("brace-capacity")).startsWith("No brace or tie is designed here");
    Reading set = box("brace-allowable=300 kN");
    assertThat(set.check("brace-capacity").source().basis()).isEqualTo(Basis.JUDGEMENT);
    assertThat(set.note("brace-capacity")).isEqualTo("Against the allowable force set for it.");
    set.asks("brace-capacity", 117.24926 * 2.4, 300);
    none.takes("brace-3", "a", 0).takes("brace-3", "s", 2.4).gives("brace-1", 2.4 * 68.56584);
  }

  @Test
  void room_for_braces() {
    box().asks("bracing-possible", 3, 3);
    Reading none = Reading.of(EdgeSites.size(EdgeSites.with(EdgeSites.box(), "bracingRoom", "no")));
    none.asks("bracing-possible", 3, 0);
    assertThat(none.note("bracing-possible")).startsWith("Nobody has said");
    assertThat(box().note("bracing-possible")).isEqualTo("Levels of braces or ties.");
  }

  @Test
  void sloping_braces_say_which_way_they_push() {
    assertThat(box("brace-kind=tie").step("brace-vertical").title())
        .isEqualTo("Ties press the wall down");
    assertThat(box("brace-kind=raker").step("brace-vertical").title())
        .isEqualTo("Rakers lift the wall");
  }

  @Test
  @DisplayName(
      "own hand calculation: a toe 2 m deep, 1 m of it below water: 0.25 x (148.4 - 8.8) at the base and half of 150 psf/ft x 2^2 / 2 in front (International Building Code 1806.2)")
  void toe_with_part_of_the_lateral_bearing() {
    Reading box = box("passive-share=0.5", "toe-embedment=2 m");
    double lateral = 150 * 0.04788026 / 0.3048;
    double weight = 23.563 * 0.9 * 7; // 150 pcf
    double base = 0.25 * (weight - 9.81 * 1 * 0.9); // the base 10 m down, water 9 m
    double front = 0.5 * lateral * 2 * 2 / 2;
    assertThat(box.step("wall-weight").result().si()).isCloseTo(weight, offset(0.01));
    box.takes("toe-front", "S", lateral).gives("toe-front", front);
    assertThat(box.step("toe-resistance").result().si()).isCloseTo(base, offset(0.01));
    double water = (1 - AT_REST) * 9.81 * 1 * 1 / 2;
    double toe = force(5) - force(4.15) + force(7) + water - force(5);
    box.gives("toe-force", toe);
    assertThat(box.check("sliding-supported").demand().si()).isCloseTo(1.5 * toe, offset(0.01));
    assertThat(box.check("sliding-supported").capacity().si())
        .isCloseTo(base + front, offset(0.01));
    assertThat(box.check("sliding-supported").verdict()).isEqualTo(Verdict.REFER);
    assertThat(box.note("sliding-supported")).startsWith("A base slab holds the toe at the end");
  }

  @Test
  @DisplayName(
      "own hand calculation: active, no structure, no overburden: 1.5 x (22.50 + 31.27) = 80.65 kN/m against 77.76 at a base 2.2 m wide and 11.78 in front")
  void toe_that_holds_only_with_what_lies_in_front() {
    String[] light = {
      "earth-pressure=active",
      "share-partial=0",
      "overburden-share=0",
      "toe-embedment=1 m",
      "wall-thickness=2.2 m",
      "passive-share=1"
    };
    Reading counted = box(light);
    assertThat(counted.check("sliding-supported").demand().si()).isCloseTo(80.65, offset(0.02));
    assertThat(counted.check("sliding-supported").capacity().si())
        .isCloseTo(77.76 + 11.78, offset(0.02));
    assertThat(counted.check("sliding-supported").verdict()).isEqualTo(Verdict.PASSES);
    light[5] = "passive-share=0";
    assertThat(box(light).check("sliding-supported").verdict()).isEqualTo(Verdict.REFER);
  }

  private static Offset<Double> offset(double value) {
    return within(value);
  }

  @Test
  @DisplayName(
      "own hand calculation: (118.758 + 0.5 x 72) / 0.9 = 171.95 kPa, whole against a value set, less 20 x 0.6 against the table's 2,000 psf")
  void bearing_of_the_toe() {
    Reading set = box("allowable-bearing=150 kPa");
    assertThat(set.check("toe-bearing").demand().si()).isCloseTo(171.953, offset(0.01));
    assertThat(set.check("toe-bearing").capacity().si()).isEqualTo(150);
    assertThat(set.check("toe-bearing").verdict()).isEqualTo(Verdict.FAILS);
    assertThat(set.check("toe-bearing").source().basis()).isEqualTo(Basis.SITE_FACT);
    assertThat(set.note("toe-bearing")).startsWith("The whole pressure");
    Reading table = box();
    assertThat(table.check("toe-bearing").capacity().si())
        .isCloseTo(2000 * 0.04788026, offset(0.01));
    assertThat(table.check("toe-bearing").source().words()).contains("1806.2");
    assertThat(table.note("toe-bearing")).contains("against the presumptive one of the table");
    assertThat(box("allowable-bearing=180 kPa").check("toe-bearing").verdict())
        .isEqualTo(Verdict.PASSES);
  }

  @Test
  @DisplayName(
      "own hand calculation: levels 4 m apart: a length of 4.5 m from 0.3 m down governs the wall, not its free top")
  void a_long_length_governs_the_wall() {
    Reading wide = box("level-spacing=4 m");
    // ground at 4.3 + 0.5 m while level 1 alone holds
    double end = upper(0.3, 4.8);
    // shear nought where F(z) = F(0.3) + end: z = (sqrt(a^2 + 2 b F) - a) / b
    double total = force(0.3) + end;
    double depth = (Math.sqrt(TOP * TOP + 2 * RISE * total) - TOP) / RISE;
    double span = end * (depth - 0.3) - (moment(depth) - moment(0.3) - force(0.3) * (depth - 0.3));
    wide.gives("span-end", end).gives("span-no-shear", depth).gives("span-moment", span);
    wide.takes("span-no-shear", "c", "nothing further: above the water", 0);
    wide.takes("span-end", "l2", 4.8).takes("span-end", "l1", 0.3);
    assertThat(span).isGreaterThan(100); // against 62.7 of the wall free at its top
    assertThat(wide.check("wall-flexure").demand().si()).isCloseTo(1.6 * span, offset(0.01));
  }

  @Test
  @DisplayName(
      "own hand calculation: water 2 m below the top adds (1 - K) x 9.81 per metre below it")
  void a_length_below_water_says_so() {
    Site wet = EdgeSites.with(EdgeSites.box(), "groundWaterDepth", "5 m");
    Reading water = Reading.of(EdgeSites.size(wet));
    water.takes("span-no-shear", "c", "further rise below water", (1 - AT_REST) * 9.81);
    water.takes("span-no-shear", "zw", 2);
  }

  @Test
  @DisplayName(
      "own hand calculation: overturning of the wall alone 85.84 / 1,213.7 = 0.0707 before, 69.64 / 955.1 = 0.0729, after 53.44 / 696.6 = 0.0767")
  void factors_of_the_wall_alone() {
    assertThat(box().note("sliding-after-transfer"))
        .contains("0.1001", "0.1017", "0.1007") // 47.69/476.5, 29.69/291.9, 38.69/384.2
        .contains("overturning 0.07073, 0.07291 and 0.07672");
  }
}
