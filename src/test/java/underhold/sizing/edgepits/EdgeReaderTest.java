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
import underhold.sizing.MissingInput;
import underhold.sizing.Origin;
import underhold.sizing.Sheet;
import underhold.sizing.SheetInput;

/**
 * What the sheet reads of facts and borings, from the facts alone. The box stands 3 m deep, the cut
 * goes 5 m below it, its wall 5.6 m: from 3 m to 8.6 m below ground.
 */
class EdgeReaderTest {
  private static Site box(String... pairs) {
    Site site = EdgeSites.box();
    for (int i = 0; i < pairs.length; i += 2) {
      site = EdgeSites.with(site, pairs[i], pairs[i + 1]);
    }
    return site;
  }

  private static Sheet layers(Site site, GroundLayer... layers) {
    return EdgeSites.quick(EdgeSites.with(site, new GroundProfile(List.of(layers))));
  }

  private static SheetInput input(Sheet sheet, String name) {
    return sheet.input(name).orElseThrow(() -> new AssertionError("no input " + name));
  }

  private static double number(Sheet sheet, String name) {
    return input(sheet, name).amount().orElseThrow().si();
  }

  private static List<String> missing(Sheet sheet) {
    return sheet.missing().stream().map(MissingInput::name).toList();
  }

  @Test
  void a_rock_edge_that_stands_is_read_without_word_of_its_joints() {
    Sheet stands = EdgeSites.quick(box("standingRockEdge", "yes"));
    assertThat(missing(stands)).contains("edgeGround");
    assertThat(missing(EdgeSites.quick(box("standingRockEdge", "no")))).isEmpty();
    Sheet good = EdgeSites.quick(box("edgeGround", "rock", "rockJoints", "favourable"));
    assertThat(missing(good)).contains("edgeGround").doesNotContain("rockJoints");
    Sheet bad = EdgeSites.quick(box("edgeGround", "rock", "rockJoints", "adverse"));
    assertThat(missing(bad)).contains("rockJoints").doesNotContain("edgeGround");
  }

  @Test
  @DisplayName("judgement of the method: the narrowest pit, 0.75 m, is the shortest edge to close")
  void the_shortest_gap() {
    Sheet least = EdgeSites.quick(box("wallGapLength", "0.75 m"));
    assertThat(least.complete()).isTrue();
    assertThat(number(least, "edge-length")).isEqualTo(0.75);
    Sheet shorter = EdgeSites.quick(box("wallGapLength", "0.74 m"));
    assertThat(missing(shorter)).containsExactly("wallGapLength");
    assertThat(shorter.input("edge-length")).isEmpty();
  }

  @Test
  @DisplayName(
      "own hand calculation: rock 6.5 m down in the boring lies 3.5 m below a box 3 m down; rock from 2 m lies at it")
  void rock_of_the_borings() {
    Sheet below = layers(box(), layer("dense-sand", 0, 20, 0, 36), layer("rock", 6.5, 25, 0, 40));
    assertThat(number(below, "rock-depth")).isCloseTo(3.5, within(1e-9));
    assertThat(input(below, "rock-depth").origin()).isEqualTo(Origin.DERIVED);
    assertThat(input(below, "rock-depth").source().words()).contains("rock from 6.5");
    Sheet at = layers(box(), layer("dense-sand", 0, 20, 0, 36), layer("rock", 2, 25, 0, 40));
    assertThat(missing(at)).containsExactly("rockDepth");
    assertThat(number(at, "rock-depth")).isZero();
  }

  @Test
  void rock_that_ends_above_the_underside_is_no_rock_below_it() {
    Sheet ledge =
        layers(
            box(),
            layer("dense-sand", 0, 20, 0, 36),
            layer("rock", 1, 25, 0, 40),
            layer("dense-sand", 3, 20, 0, 36));
    assertThat(ledge.input("rock-depth")).isEmpty();
    assertThat(ledge.complete()).isTrue();
  }

  @Test
  void stated_rock_goes_before_the_boring() {
    Sheet sheet =
        layers(
            box("rockDepth", "4 m"),
            layer("dense-sand", 0, 20, 0, 36),
            layer("rock", 6.5, 25, 0, 40));
    assertThat(number(sheet, "rock-depth")).isEqualTo(4);
    assertThat(input(sheet, "rock-depth").origin()).isEqualTo(Origin.STATED);
  }

  @Test
  @DisplayName("judgement of the method: rock below the cut leaves a wall in soil, however near")
  void rock_near_the_structure_matters_only_where_it_is_cut() {
    String rock = "rockDepth";
    assertThat(missing(EdgeSites.quick(box(rock, "0.5 m", "excavationDepth", "3.4 m")))).isEmpty();
    assertThat(missing(EdgeSites.quick(box(rock, "0.5 m", "excavationDepth", "3.5 m")))).isEmpty();
    assertThat(missing(EdgeSites.quick(box(rock, "0.5 m", "excavationDepth", "3.6 m"))))
        .containsExactly("rockDepth");
  }

  @Test
  @DisplayName(
      "own hand calculation: of sand 36 deg 19 kN/m3, clay 24 deg 18 kN/m3 40 kPa, clay 30 deg 21 kN/m3 70 kPa: 24 deg, 21 kN/m3, 40 kPa")
  void the_worst_of_all_layers_behind() {
    Sheet sheet =
        layers(
            box(),
            layer("dense-sand", 0, 19, 0, 36),
            layer("stiff-clay", 4, 18, 40, 24),
            layer("stiff-clay", 6, 21, 70, 30),
            layer("soft-clay", 8.6, 26, 10, 12));
    assertThat(input(sheet, "face-soil").words()).isEqualTo("stiff-clay");
    assertThat(input(sheet, "face-soil").source().words())
        .contains("dense-sand from 0", "stiff-clay from 4", "stiff-clay from 6")
        .doesNotContain("soft-clay");
    assertThat(number(sheet, "face-friction-angle")).isEqualTo(24);
    assertThat(number(sheet, "face-unit-weight")).isEqualTo(21);
    assertThat(number(sheet, "face-undrained-strength")).isEqualTo(40); // not the sand's nought
    assertThat(input(sheet, "faces-run").words()).isEqualTo("yes"); // the sand
    // the layer whose top is at the toe itself, 8.6 m down, is the one the wall stands on
    assertThat(input(sheet, "base-soil").words()).isEqualTo("soft-clay");
    assertThat(number(sheet, "base-unit-weight")).isEqualTo(26);
    assertThat(number(sheet, "base-undrained-strength")).isEqualTo(10);
  }

  @Test
  void clay_alone_does_not_run_and_sand_has_no_undrained_strength() {
    Sheet clay = layers(box(), layer("stiff-clay", 0, 19, 80, 24));
    assertThat(input(clay, "faces-run").words()).isEqualTo("no");
    Sheet sand = EdgeSites.quick(box());
    assertThat(input(sand, "faces-run").words()).isEqualTo("yes");
    assertThat(sand.input("face-undrained-strength")).isEmpty();
    assertThat(sand.input("base-undrained-strength")).isEmpty();
    assertThat(input(sand, "base-soil").words()).isEqualTo("dense-sand");
    assertThat(input(sand, "base-soil").origin()).isEqualTo(Origin.DERIVED);
  }

  @Test
  @DisplayName("judgement of the method: a seam of rock behind does not press as soil of 25 kN/m3")
  void rock_among_the_layers_behind_is_no_soil() {
    Sheet sheet =
        layers(
            box("rockDepth", "4 m"),
            layer("dense-sand", 0, 20, 0, 36),
            layer("rock", 5, 25, 0, 30),
            layer("dense-sand", 5.5, 20, 0, 36));
    assertThat(number(sheet, "face-unit-weight")).isEqualTo(20);
    assertThat(number(sheet, "face-friction-angle")).isEqualTo(36);
    assertThat(input(sheet, "base-soil").words()).isEqualTo("rock");
  }

  @Test
  void without_borings_the_worst_soil_stands_for_face_and_base() {
    Site none = EdgeSites.with(box("worstSoil", "stiff-clay"), GroundProfile.NONE);
    Sheet clay = EdgeSites.quick(EdgeSites.with(none, "undrainedStrength", "60 kPa"));
    assertThat(input(clay, "face-soil").words()).isEqualTo("stiff-clay");
    assertThat(input(clay, "faces-run").words()).isEqualTo("no");
    assertThat(number(clay, "face-undrained-strength")).isEqualTo(60);
    assertThat(input(clay, "face-undrained-strength").origin()).isEqualTo(Origin.STATED);
    assertThat(input(clay, "base-soil").words()).isEqualTo("stiff-clay");
    assertThat(input(clay, "base-soil").origin()).isEqualTo(Origin.ASSUMED);
    assertThat(number(clay, "base-undrained-strength")).isEqualTo(60);
    // the careful strength of stiff clay where nobody measured it
    assertThat(number(EdgeSites.quick(none), "face-undrained-strength")).isEqualTo(50);
    assertThat(input(EdgeSites.quick(none), "face-undrained-strength").origin())
        .isEqualTo(Origin.ASSUMED);
    Site sand = EdgeSites.with(none, "worstSoil", "loose-sand");
    Sheet loose = EdgeSites.quick(EdgeSites.with(sand, "undrainedStrength", "60 kPa"));
    assertThat(input(loose, "faces-run").words()).isEqualTo("yes");
    assertThat(number(loose, "face-friction-angle")).isEqualTo(28);
    assertThat(loose.input("face-undrained-strength")).isEmpty();
    assertThat(loose.input("base-undrained-strength")).isEmpty();
    assertThat(input(loose, "base-soil").words()).isEqualTo("loose-sand");
    // light soil lowers the critical gradient, so a light one is taken
    assertThat(number(loose, "base-unit-weight")).isEqualTo(16);
  }

  @Test
  void the_soil_is_read_even_where_the_depths_are_not_known() {
    Site site = box("foundingDepth", "", "worstSoil", "dense-sand");
    Sheet sheet = EdgeSites.quick(site);
    assertThat(missing(sheet)).contains("foundingDepth").doesNotContain("worstSoil");
    assertThat(input(sheet, "face-soil").words()).isEqualTo("dense-sand");
    assertThat(sheet.input("base-soil")).isEmpty();
    Sheet unknown = EdgeSites.quick(EdgeSites.with(site, "worstSoil", ""));
    assertThat(missing(unknown)).contains("foundingDepth", "worstSoil");
  }

  @Test
  void what_is_known_is_shown_while_something_is_asked() {
    Sheet sheet = EdgeSites.size(box("wallGapLength", ""));
    assertThat(sheet.complete()).isFalse();
    assertThat(number(sheet, "founding-depth")).isEqualTo(3);
    assertThat(number(sheet, "area-load")).isEqualTo(80);
    Sheet piles = EdgeSites.size(EdgeSites.box(), EdgeSites.asking("insideHeadroom"));
    assertThat(piles.complete()).isFalse();
    assertThat(number(piles, "founding-depth")).isEqualTo(3);
  }

  @Test
  void settings_are_shown_with_the_inputs() {
    Sheet sheet = EdgeSites.quick(EdgeSites.box(), "wall-thickness=1.1 m");
    assertThat(number(sheet, "wall-thickness")).isEqualTo(1.1);
    assertThat(number(sheet, "stability-factor")).isEqualTo(1.5);
    assertThat(input(sheet, "brace-method").words()).isEqualTo("larger");
  }
}
