package underhold.sizing.needles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static underhold.sizing.needles.NeedleColumnTest.step;

import java.util.Locale;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import underhold.quantity.Seeds;
import underhold.quantity.UnitSystem;
import underhold.sizing.Sheet;
import underhold.sizing.SheetText;
import underhold.sizing.StepProof;
import underhold.sizing.Verdict;

/** Invariants over many sites; own cases throughout. */
class NeedlePropertiesTest {
  private static final String[] SOILS = {
    "rock",
    "dense-gravel",
    "dense-sand",
    "loose-sand",
    "silt",
    "stiff-clay",
    "soft-clay",
    "fill",
    "peat",
    ""
  };
  private static final String[] TABLES = {"us-w", "us-hp", "eu-hea", "eu-heb", "eu-ipe"};
  private static final String[] CODES = {"aisc-asd", "aisc-lrfd", "eurocode"};
  private static final String[] STIFFENERS = {"fitted", "as-needed", "none"};
  private static final String[] MATERIALS = {
    "reinforced-concrete", "steel", "unreinforced-masonry", "rubble", "timber", "cast-iron"
  };
  private static final String[] SEATS = {"pad", "crib", "pile"};

  private static String text(double value, String unit) {
    return String.format(Locale.ROOT, "%.6f %s", value, unit);
  }

  private static Map<String, String> column(double load, double span) {
    return NeedleSites.with(
        NeedleSites.column(), "columnLoad", text(load, "kN"), "seatSpan", text(span, "m"));
  }

  @Property(tries = 60, seed = Seeds.BUILD)
  void any_site_gives_a_sheet_that_can_be_redone(
      @ForAll @DoubleRange(min = 10, max = 20_000) double load,
      @ForAll @DoubleRange(min = 0.5, max = 30) double span,
      @ForAll @IntRange(min = 0, max = 9) int soil,
      @ForAll @IntRange(min = 0, max = 4) int table,
      @ForAll @IntRange(min = 0, max = 2) int code,
      @ForAll @IntRange(min = 0, max = 2) int web,
      @ForAll @IntRange(min = 0, max = 5) int material,
      @ForAll @IntRange(min = 0, max = 2) int seat,
      @ForAll boolean wall,
      @ForAll boolean cantilever,
      @ForAll boolean held,
      @ForAll @DoubleRange(min = 0.1, max = 0.5) double place,
      @ForAll @DoubleRange(min = 200, max = 460) double yield) {
    Map<String, String> facts =
        wall
            ? NeedleSites.with(
                NeedleSites.wall(),
                "lineLoad",
                text(Math.max(5, load / 10), "kN/m"),
                "seatSpan",
                text(span, "m"))
            : column(load, span);
    Sheet sheet =
        NeedleSites.on(
            SOILS[soil],
            NeedleSites.with(facts, "structureMaterial", MATERIALS[material]),
            "table=" + TABLES[table],
            "code=" + CODES[code],
            "stiffeners=" + STIFFENERS[web],
            "seat=" + SEATS[seat],
            "load-restraint=" + (held ? "held" : "none"),
            "arrangement=" + (cantilever ? "cantilever" : "auto"),
            "load-position=" + text(place, ""),
            "yield-strength=" + text(yield, "MPa"));
    assertThat(sheet.complete()).isTrue();
    StepProof.redo(sheet);
    assertThat(sheet.check("needle-section")).isPresent();
    assertThat(sheet.check("needle-deflection")).isPresent();
    assertThat(sheet.check("seat-bearing")).isPresent();
    assertThat(sheet.check("jack-capacity")).isPresent();
    assertThat(sheet.check("pick-up-bearing")).isPresent();
    assertThat(sheet.check("differential-movement")).isPresent();
    assertThat(sheet.check("tail-uplift").isPresent()).isEqualTo(cantilever);
    assertThat(String.join("\n", SheetText.lines(sheet, UnitSystem.US)))
        .doesNotContain("NaN", "Infinity");
  }

  @Property(tries = 25, seed = Seeds.BUILD)
  void more_load_never_asks_less(
      @ForAll @DoubleRange(min = 20, max = 3_000) double load,
      @ForAll @DoubleRange(min = 1, max = 10) double span,
      @ForAll @DoubleRange(min = 1.01, max = 2) double factor) {
    Sheet less = NeedleSites.size(column(load, span));
    Sheet more = NeedleSites.size(column(load * factor, span));
    for (String demand :
        new String[] {"needle-load", "needle-moment", "jack-demand", "seat-load"}) {
      assertThat(step(more, demand)).as(demand).isGreaterThan(step(less, demand));
    }
    if (more.check("needle-section").orElseThrow().verdict() == Verdict.PASSES) {
      assertThat(weight(more)).isGreaterThanOrEqualTo(weight(less));
    }
  }

  @Property(tries = 25, seed = Seeds.BUILD)
  void a_longer_span_never_takes_a_lighter_needle(
      @ForAll @DoubleRange(min = 20, max = 2_000) double load,
      @ForAll @DoubleRange(min = 1, max = 8) double span,
      @ForAll @DoubleRange(min = 1.01, max = 1.5) double factor) {
    Sheet less = NeedleSites.size(column(load, span));
    Sheet more = NeedleSites.size(column(load, span * factor));
    if (more.check("needle-section").orElseThrow().verdict() == Verdict.PASSES) {
      assertThat(weight(more) / (span * factor + 0.3))
          .isGreaterThanOrEqualTo(weight(less) / (span + 0.3) * (1 - 1e-5));
    }
    assertThat(step(more, "needle-moment")).isGreaterThan(step(less, "needle-moment"));
  }

  @Property(tries = 15, seed = Seeds.BUILD)
  void us_and_si_facts_give_the_same_sheet(
      @ForAll @DoubleRange(min = 10, max = 900) double kips,
      @ForAll @DoubleRange(min = 3, max = 40) double feet) {
    Sheet us =
        NeedleSites.size(
            NeedleSites.with(
                NeedleSites.column(),
                "columnLoad",
                text(kips, "kip"),
                "seatSpan",
                text(feet, "ft")));
    Sheet si = NeedleSites.size(column(kips * 4.4482216152605, feet * 0.3048));
    assertThat(us.checks()).hasSameSizeAs(si.checks());
    for (int i = 0; i < us.checks().size(); i++) {
      double demand = si.checks().get(i).demand().si();
      assertThat(us.checks().get(i).demand().si())
          .isCloseTo(demand, within(1e-5 * Math.abs(demand) + 1e-9));
      assertThat(us.checks().get(i).title()).isEqualTo(si.checks().get(i).title());
    }
  }

  /** Weight of one needle, kN. */
  private static double weight(Sheet sheet) {
    return sheet.quantities().stream()
        .filter(one -> one.name().equals("weight of one needle"))
        .findFirst()
        .orElseThrow()
        .amount()
        .si();
  }
}
