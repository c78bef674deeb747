package underhold.sizing.edgepits;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import underhold.site.GroundProfile;
import underhold.site.Site;
import underhold.sizing.MissingInput;
import underhold.sizing.Origin;
import underhold.sizing.Sheet;
import underhold.sizing.Verdict;

/**
 * Own cases: where the sheet does not fit a zone, or lacks facts, it says so and holds no number.
 */
class EdgeFitTest {
  private static final Site BOX = EdgeSites.box();

  private static List<String> missing(Sheet sheet) {
    return sheet.missing().stream().map(MissingInput::name).toList();
  }

  private static void refuses(Site site, String fact, String because) {
    Sheet sheet = EdgeSites.size(site);
    assertThat(missing(sheet)).contains(fact);
    assertThat(sheet.missing())
        .filteredOn(one -> one.name().equals(fact))
        .anySatisfy(one -> assertThat(one.why()).contains(because));
    assertThat(sheet.steps()).isEmpty();
    assertThat(sheet.checks()).isEmpty();
    assertThat(sheet.quantities()).isEmpty();
    assertThat(sheet.verdict()).isEqualTo(Verdict.REFER);
  }

  @Test
  void rock_that_stands_needs_no_edge_pits() {
    Site rock =
        EdgeSites.with(EdgeSites.with(BOX, "edgeGround", "rock"), "rockJoints", "favourable");
    refuses(rock, "edgeGround", "edge pits are not needed");
  }

  @Test
  void rock_with_adverse_joints_is_for_a_specialist() {
    Site rock = EdgeSites.with(EdgeSites.with(BOX, "edgeGround", "rock"), "rockJoints", "adverse");
    refuses(rock, "rockJoints", "rock support");
    refuses(EdgeSites.with(BOX, "edgeGround", "rock"), "rockJoints", "not known");
  }

  @Test
  void rock_near_the_structure_leaves_no_wall() {
    refuses(EdgeSites.with(BOX, "rockDepth", "0.9 m"), "rockDepth", "short or none");
    assertThat(EdgeSites.size(EdgeSites.with(BOX, "rockDepth", "1.0 m")).complete()).isTrue();
    assertThat(
            EdgeSites.size(EdgeSites.with(BOX, "rockDepth", "0.9 m"), "least-pit=0.8 m").complete())
        .isTrue();
  }

  @Test
  void excavation_beside_has_no_edge_below_the_structure() {
    refuses(EdgeSites.with(BOX, "excavationPosition", "beside"), "excavationPosition", "beside");
  }

  @Test
  void no_gap_leaves_no_edge() {
    refuses(EdgeSites.with(BOX, "wallGapLength", "0 m"), "wallGapLength", "no edge to close");
  }

  @Test
  void column_is_told_that_the_sheet_takes_lines_and_areas() {
    refuses(EdgeSites.with(BOX, "loadPattern", "concentrated"), "loadPattern", "concentrated");
  }

  @Test
  void load_is_never_invented() {
    assertThat(missing(EdgeSites.size(EdgeSites.with(BOX, "areaLoad", "")))).contains("areaLoad");
    Site line = EdgeSites.with(BOX, "loadPattern", "continuous");
    assertThat(missing(EdgeSites.size(line))).containsExactly("lineLoad");
    assertThat(missing(EdgeSites.size(EdgeSites.with(line, "footingWidth", ""))))
        .containsExactly("lineLoad", "footingWidth");
  }

  @Test
  void each_essential_fact_is_asked_for() {
    for (String fact : List.of("foundingDepth", "wallGapLength", "groundWaterDepth")) {
      Sheet sheet = EdgeSites.size(EdgeSites.with(BOX, fact, ""));
      assertThat(missing(sheet)).as(fact).contains(fact);
      assertThat(sheet.steps()).isEmpty();
    }
    assertThat(missing(EdgeSites.size(EdgeSites.with(BOX, "excavationDepth", ""))))
        .contains("excavationBelowFooting");
    assertThat(missing(EdgeSites.size(EdgeSites.with(BOX, GroundProfile.NONE))))
        .contains("worstSoil");
  }

  @Test
  void what_the_piles_lack_is_asked_for_as_theirs() {
    Sheet sheet = EdgeSites.size(BOX, EdgeSites.asking("insideHeadroom"));
    assertThat(missing(sheet)).containsExactly("insideHeadroom");
    assertThat(sheet.missing().get(0).why()).contains("before any edge pit is dug");
    assertThat(sheet.steps()).isEmpty();
  }

  @Test
  void water_over_the_base_of_the_cut_gives_its_depth() {
    Site head =
        EdgeSites.with(EdgeSites.with(BOX, "groundWaterDepth", ""), "headAboveExcavation", "2 m");
    Sheet sheet = EdgeSites.size(head);
    assertThat(sheet.input("water-depth").orElseThrow())
        .satisfies(
            depth -> {
              assertThat(depth.origin()).isEqualTo(Origin.DERIVED);
              assertThat(depth.amount().orElseThrow().si()).isEqualTo(6);
            });
  }

  @Test
  void soil_without_borings_is_assumed_and_nothing_passes_on_it() {
    Site site = EdgeSites.with(EdgeSites.with(BOX, GroundProfile.NONE), "worstSoil", "dense-sand");
    Sheet sheet = EdgeSites.size(site);
    assertThat(sheet.complete()).isTrue();
    assertThat(sheet.input("face-friction-angle").orElseThrow().origin()).isEqualTo(Origin.ASSUMED);
    for (String id :
        List.of("sliding-after-transfer", "wall-flexure", "toe-bearing", "first-cut")) {
      assertThat(sheet.check(id).orElseThrow().verdict()).as(id).isEqualTo(Verdict.REFER);
    }
  }

  @Test
  void missing_room_for_braces_is_no_pass() {
    assertThat(
            EdgeSites.size(EdgeSites.with(BOX, "bracingRoom", "no"))
                .check("bracing-possible")
                .orElseThrow()
                .verdict())
        .isEqualTo(Verdict.FAILS);
    assertThat(
            EdgeSites.size(EdgeSites.with(BOX, "bracingRoom", ""))
                .check("bracing-possible")
                .orElseThrow()
                .verdict())
        .isEqualTo(Verdict.REFER);
  }
}
