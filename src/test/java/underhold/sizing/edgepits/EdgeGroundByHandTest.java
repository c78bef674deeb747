package underhold.sizing.edgepits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static underhold.sizing.edgepits.EdgeSites.layer;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.site.GroundLayer;
import underhold.site.GroundProfile;
import underhold.site.Site;
import underhold.sizing.Settings;
import underhold.sizing.StepProof;
import underhold.sizing.Verdict;
import underhold.sizing.zone.Inputs;

/** Base, water, rock and load of edge pits read line by line against hand calculations. */
class EdgeGroundByHandTest {
  private static final double AT_REST = 1 - Math.sin(Math.toRadians(36));

  private static Site site(String... pairs) {
    Site site = EdgeSites.box();
    for (int i = 0; i < pairs.length; i += 2) {
      site = EdgeSites.with(site, pairs[i], pairs[i + 1]);
    }
    return site;
  }

  private static Reading read(Site site, String... settings) {
    return Reading.of(EdgeSites.size(site, settings));
  }

  private static Site layers(Site site, GroundLayer... layers) {
    return EdgeSites.with(site, new GroundProfile(List.of(layers)));
  }

  @Test
  @DisplayName(
      "own hand calculation: base heave of 100 kPa clay below sand, and of sand below 40 kPa clay, 8 m deep, 10 m by 20 m: Nc 5 x 1.1 x 1.16 = 6.38")
  void heave_by_clay_below_or_behind() {
    Reading below =
        read(
            layers(
                site(), layer("dense-sand", 0, 20, 0, 36), layer("stiff-clay", 8.6, 19, 100, 24)));
    below.gives("heave-resistance", 638).takes("heave-resistance", "su", 100);
    assertThat(below.check("base-heave").capacity().si()).isCloseTo(638, within(1e-6));
    Reading behind =
        read(
            layers(
                site(), layer("stiff-clay", 0, 19, 40, 24), layer("dense-sand", 8.2, 20, 0, 36)));
    behind.gives("heave-resistance", 40 * 6.38);
    // the greatest weight of the layers behind, 20 kN/m3, and half of the box
    behind.gives("heave-demand", 20 * 8 + 10.44 + 40);
    assertThat(behind.check("base-heave").demand().si()).isCloseTo(1.5 * 210.44, within(1e-6));
    // nothing heaves through rock above the bottom
    assertThat(
            EdgeSites.size(layers(site("rockDepth", "3 m"), layer("stiff-clay", 0, 19, 40, 24)))
                .check("base-heave"))
        .isEmpty();
  }

  @Test
  @DisplayName(
      "own hand calculation: water 7 m over the cut: 1.5 x 7 / 8.2 against 10.19 / 9.81 (critical gradient, soil mechanics texts)")
  void piping_with_its_factor() {
    Reading wet = read(site("groundWaterDepth", "1 m"), "piping-factor=1.75");
    wet.asks("piping", 1.75 * 7 / 8.2, (20 - 9.81) / 9.81);
    assertThat(EdgeSites.size(site("groundWaterDepth", "8 m")).check("piping")).isEmpty();
    // no sand at the toe: nothing is carried away
    Site clay =
        layers(
            site("groundWaterDepth", "1 m"),
            layer("dense-sand", 0, 20, 0, 36),
            layer("stiff-clay", 7, 19, 100, 24));
    assertThat(EdgeSites.size(clay).check("piping")).isEmpty();
  }

  @Test
  @DisplayName(
      "own hand calculation: the base of the wall 8.6 m down; water at 8.6 m stands just below it")
  void water_in_the_pits() {
    Reading at = read(site("groundWaterDepth", "8.6 m"));
    assertThat(at.note("water")).isEqualTo("Water stands below the base of the wall.");
    assertThat(
            EdgeSites.size(site("groundWaterDepth", "8.6 m"), "water=drained")
                .check("drained-ground"))
        .isEmpty();
    Reading sand = read(site("groundWaterDepth", "6 m"));
    assertThat(sand.check("water").verdict()).isEqualTo(Verdict.FAILS);
    // clay behind and below does not run: a sump may do
    Site clay = layers(site("groundWaterDepth", "6 m"), layer("stiff-clay", 0, 19, 100, 24));
    assertThat(read(clay).note("water")).startsWith("A sump may do");
    assertThat(read(clay).check("water").verdict()).isEqualTo(Verdict.REFER);
    // clay behind over sand at the toe runs in at the base
    Site over =
        layers(
            site("groundWaterDepth", "6 m"),
            layer("stiff-clay", 0, 19, 100, 24),
            layer("dense-sand", 8.3, 20, 0, 36));
    assertThat(read(over).note("water")).startsWith("In soil that runs");
    // sand behind over clay at the toe runs in at the faces
    Site under =
        layers(
            site("groundWaterDepth", "6 m"),
            layer("dense-sand", 0, 20, 0, 36),
            layer("stiff-clay", 8.3, 19, 100, 24));
    assertThat(read(under).note("water")).startsWith("In soil that runs");
    assertThat(read(under).check("water").verdict()).isEqualTo(Verdict.FAILS);
  }

  @Test
  void a_strip_that_leaves_nothing_on_the_soil_is_not_compared() {
    Site strip = site("loadPattern", "continuous", "lineLoad", "180 kN/m", "footingWidth", "2 m");
    assertThat(EdgeSites.size(strip, "share-partial=0").check("strip-surcharge")).isEmpty();
    assertThat(EdgeSites.size(strip, "share-partial=0.1").check("strip-surcharge")).isPresent();
  }

  @Test
  void friction_says_where_it_comes_from() {
    Reading table = read(site());
    assertThat(table.step("toe-resistance").source().words()).contains("Table 1804.2");
    assertThat(table.step("toe-resistance").note().template())
        .isEqualTo("Nothing is counted in front of the toe.");
    Reading angle = read(site(), "base-friction=friction-angle");
    assertThat(angle.step("toe-resistance").source().words()).contains("C3.11.5.3-1");
    // lower end for mass concrete on dense sand, 24 degrees
    angle.takes("toe-resistance", "d", 24);
    angle.gives("toe-resistance", Math.tan(Math.toRadians(24)) * 118.75752);
    Reading soft = read(layers(site(), layer("soft-clay", 0, 17, 15, 20)));
    assertThat(soft.step("toe-resistance").note().template())
        .startsWith("The table gives nothing for this ground");
    assertThat(soft.note("toe-bearing")).startsWith("The table gives nothing");
  }

  @Test
  @DisplayName(
      "own hand calculation: 250 kN/m on 0.8 m lies wholly over a wall 0.9 m thick: 312.5 kPa x 0.8 m on it, none behind")
  void a_strip_along_the_wall() {
    Site strip = site("loadPattern", "continuous", "lineLoad", "250 kN/m", "footingWidth", "0.8 m");
    Reading along = read(strip, "edge-runs=along");
    along.gives("structure-on-wall", 250).takes("structure-on-wall", "B", 0.8);
    assertThat(along.step("structure-on-wall").note().template()).startsWith("The whole footing");
    assertThat(along.step("structure-on-wall").formula().siText()).contains("min({t}, {B})");
    Reading across = read(strip);
    across.gives("structure-on-wall", 250 / 0.8 * 0.9);
    assertThat(across.step("structure-on-wall").note().template())
        .startsWith("The structure also stands on the soil behind");
    assertThat(across.step("structure-on-wall").formula().siText()).endsWith("{p} × {t}");
    assertThat(across.step("structure-on-wall").formula().symbols())
        .as("the wall's thickness is no width of a footing")
        .noneMatch(symbol -> symbol.sign().equals("B"));
  }

  @Test
  @DisplayName(
      "own hand calculation: at rest 1 - sin 36 (International Building Code 1610.1), active tan^2(45 - 18) (UFC 3-220-20)")
  void coefficients_name_their_kind_and_source() {
    Reading rest = read(site());
    rest.gives("earth-coefficient", "Earth pressure coefficient, at rest", AT_REST);
    assertThat(rest.step("earth-coefficient").source().words()).contains("1610.1");
    assertThat(rest.step("earth-coefficient").note().template()).contains("may not move");
    Reading active = read(site(), "earth-pressure=active");
    double tangent = Math.tan(Math.toRadians(45 - 18));
    active.gives("earth-coefficient", "Earth pressure coefficient, active", tangent * tangent);
    assertThat(active.step("earth-coefficient").source().words()).contains("UFC 3-220-20");
    assertThat(active.step("earth-coefficient").note().template())
        .startsWith("Only where the wall may move");
    assertThat(rest.step("pressure-water").note().template()).startsWith("Water presses in full");
    assertThat(read(site(), "water=drained").step("pressure-water").note().template())
        .startsWith("The ground behind is taken as drained");
  }

  @Test
  @DisplayName(
      "own hand calculation: half the soil over the box counted: 20 x 3 x 0.5 + 10.44 = 40.44 kPa")
  void part_of_the_overburden() {
    Reading half = read(site(), "overburden-share=0.5");
    half.gives("vertical-at-top", 40.44);
    half.gives("pressure-top-before", AT_REST * (40.44 + 80));
  }

  @Test
  void what_the_piles_leave_is_shown() {
    Reading left = Reading.of(EdgeSites.size(site(), EdgeSites.piles(0.8, 0.1)));
    left.takes("share-after", "left", 0.1).takes("share-after", "set", 0);
    left.takes("share-design", "after", 0.1);
  }

  @Test
  @DisplayName(
      "own hand calculation: dowels of 32 mm 0.256 m apart: 4 x 3 in a pit 1.2 m by 0.9 m, though weak rock and a factor of 3 ask for 17")
  void no_more_dowels_than_the_pit_has_room_for() {
    Reading weak = read(site("rockDepth", "3.5 m"), "rock-strength=1000 kPa", "stability-factor=3");
    // 1.3 x 0.032^2 x sqrt(1,000 x 414,000) / 2
    double each = 1.3 * 0.032 * 0.032 * Math.sqrt(1000.0 * 414_000) / 2;
    weak.gives("dowel-action", each).takes("dowel-capacity", "n", 12);
    weak.gives("dowel-capacity", 12 * each);
    assertThat(weak.check("toe-dowels").demand().si()).isCloseTo(3 * 60.24477 * 1.2, within(0.01));
    assertThat(weak.check("sliding-supported").demand().si()).isCloseTo(3 * 60.24477, within(0.01));
    assertThat(weak.check("rock-wedge").demand().si()).isCloseTo(3 * 141.0473, within(0.01));
    assertThat(weak.work("Each edge pit")).contains("drill and grout 12 dowels");
    assertThat(read(site()).work("Each edge pit"))
        .contains("Clean the base by hand")
        .doesNotContain("dowels.");
  }

  @Test
  void hazards_that_go_with_the_ground() {
    assertThat(read(site()).hazards())
        .contains("wall on the piles", "cave-in", "rescue", "rock not known")
        .doesNotContain("rock that slopes", "rock below the toe");
    assertThat(read(site("rockDepth", "5.3 m")).hazards())
        .contains("rock that slopes")
        .doesNotContain("rock not known", "rock below the toe");
  }

  @Test
  @DisplayName(
      "own hand calculation: boards of 4 in, 101.6 mm, over 8 x (2 x 0.9 x 5.6 + 5.4 x 4.8) + 9.6 x 5.6 m2")
  void timber() {
    Reading box = read(site());
    double area = 8 * (2 * 0.9 * 5.6 + 5.4 * 4.8) + 9.6 * 5.6;
    assertThat(box.work("Each edge pit")).contains("boards of 101.6 mm"); // 4 in
    assertThat(box.quantity("boards, timber")).isCloseTo(area * 0.1016, within(1e-9));
    StepProof.redo(EdgeSites.size(site("rockDepth", "3.5 m")));
  }

  @Test
  void what_nobody_stated_never_rules_edge_pits_out() {
    Settings settings = EdgeSetting.TABLE.defaults();
    Site none = EdgeSites.with(site("worstSoil", "dense-sand"), GroundProfile.NONE);
    EdgeCase assumed = new EdgeCase(inputs(none, settings), settings, 0);
    assertThat(assumed.otherwise(EdgeInputs.FACE_FRICTION)).isEqualTo(Verdict.REFER);
    assertThat(assumed.otherwise()).isEqualTo(Verdict.REFER); // the base is a guess
    EdgeCase bored = new EdgeCase(inputs(site(), settings), settings, 0);
    assertThat(bored.otherwise(EdgeInputs.FACE_FRICTION)).isEqualTo(Verdict.FAILS);
    Site rock = EdgeSites.with(none, "rockDepth", "3.5 m");
    EdgeCase onRock = new EdgeCase(inputs(rock, settings), settings, 0);
    assertThat(onRock.otherwise()).isEqualTo(Verdict.FAILS);
    assertThat(onRock.otherwise(EdgeInputs.FACE_FRICTION)).isEqualTo(Verdict.REFER);
  }

  private static Inputs inputs(Site site, Settings settings) {
    return EdgeReader.read(EdgeSites.view(site), site.ground(), settings);
  }
}
