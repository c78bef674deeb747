package underhold.sizing.edgepits;

import static org.assertj.core.api.Assertions.assertThat;
import static underhold.sizing.edgepits.EdgeSites.layer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import underhold.quantity.Seeds;
import underhold.quantity.UnitSystem;
import underhold.site.GroundLayer;
import underhold.site.GroundProfile;
import underhold.site.Site;
import underhold.sizing.Sheet;
import underhold.sizing.SheetText;
import underhold.sizing.StepProof;

/** Invariants over many sites; own cases throughout. */
class EdgePropertiesTest {
  private static final Site BOX = EdgeSites.box();
  private static final List<String> SOILS =
      List.of(
          "dense-sand", "loose-sand", "silt", "stiff-clay", "soft-clay", "fill", "peat", "rock");

  private static String metres(double value) {
    return String.format(Locale.ROOT, "%.3f m", value);
  }

  private static Site site(double founding, double cut, double gap, double water, double load) {
    Site site = EdgeSites.with(BOX, "foundingDepth", metres(founding));
    site = EdgeSites.with(site, "excavationDepth", metres(founding + cut));
    site = EdgeSites.with(site, "wallGapLength", metres(gap));
    site = EdgeSites.with(site, "groundWaterDepth", metres(water));
    return EdgeSites.with(site, "areaLoad", String.format(Locale.ROOT, "%.2f kPa", load));
  }

  private static GroundProfile ground(int upper, int lower, double boundary, double angle) {
    List<GroundLayer> layers = new ArrayList<>();
    layers.add(layer(SOILS.get(upper), 0, 18, 20 + 3 * angle, angle));
    layers.add(layer(SOILS.get(lower), boundary, 20, 90, angle / 2 + 10));
    return new GroundProfile(layers);
  }

  @Property(tries = 60, seed = Seeds.BUILD)
  void any_site_gives_a_sheet_that_can_be_redone(
      @ForAll @DoubleRange(min = 0, max = 8) double founding,
      @ForAll @DoubleRange(min = 0.4, max = 12) double cut,
      @ForAll @DoubleRange(min = 1, max = 30) double gap,
      @ForAll @DoubleRange(min = 0, max = 25) double water,
      @ForAll @DoubleRange(min = 5, max = 400) double load,
      @ForAll @IntRange(min = 0, max = 7) int upper,
      @ForAll @IntRange(min = 0, max = 7) int lower,
      @ForAll @DoubleRange(min = 1, max = 15) double boundary,
      @ForAll @DoubleRange(min = 5, max = 45) double angle) {
    Site site =
        EdgeSites.with(
            site(founding, cut, gap, water, load), ground(upper, lower, boundary, angle));
    Sheet sheet = EdgeSites.quick(site);
    assertThat(sheet.complete()).isEqualTo(!sheet.steps().isEmpty());
    StepProof.redo(sheet);
    for (UnitSystem system : UnitSystem.values()) {
      assertThat(SheetText.lines(sheet, system))
          .noneMatch(line -> line.contains("NaN") || line.contains("Infinity"));
    }
    assertThat(sheet.quantities())
        .allSatisfy(item -> assertThat(item.amount().si()).isNotNegative());
    assertThat(sheet.time()).allSatisfy(item -> assertThat(item.amount().si()).isNotNegative());
    assertThat(sheet.checks())
        .allSatisfy(
            check -> {
              assertThat(check.demand().si()).as(check.id()).isNotNegative();
              assertThat(check.capacity().si()).as(check.id()).isNotNegative();
            });
  }

  @Property(tries = 40, seed = Seeds.BUILD)
  void deeper_cut_never_lowers_a_brace_force(
      @ForAll @DoubleRange(min = 1, max = 8) double cut,
      @ForAll @DoubleRange(min = 0, max = 3) double more,
      @ForAll @DoubleRange(min = 0, max = 15) double water) {
    Sheet shallow = EdgeSites.quick(site(2, cut, 9.6, water, 80));
    Sheet deep = EdgeSites.quick(site(2, cut + more, 9.6, water, 80));
    for (int level = 1; level <= 8; level++) {
      String id = "brace-line-" + level;
      if (shallow.step(id).isPresent()) {
        assertThat(deep.step(id).orElseThrow().result().si())
            .as(id)
            .isGreaterThanOrEqualTo(shallow.step(id).orElseThrow().result().si() * (1 - 1e-9));
      }
    }
  }

  @Property(tries = 40, seed = Seeds.BUILD)
  void more_load_left_on_the_soil_never_eases_brace_or_wall(
      @ForAll @DoubleRange(min = 0, max = 1) double one,
      @ForAll @DoubleRange(min = 0, max = 1) double other) {
    Sheet less = EdgeSites.quick(BOX, "share-partial=" + Math.min(one, other));
    Sheet more = EdgeSites.quick(BOX, "share-partial=" + Math.max(one, other));
    for (String id : List.of("brace-capacity", "wall-flexure", "wall-shear", "sliding-supported")) {
      assertThat(more.check(id).orElseThrow().demand().si())
          .as(id)
          .isGreaterThanOrEqualTo(less.check(id).orElseThrow().demand().si() * (1 - 1e-9));
    }
  }
}
