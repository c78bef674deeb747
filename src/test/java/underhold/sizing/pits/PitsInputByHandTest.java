package underhold.sizing.pits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import underhold.mechanics.timber.SheetingSoil;
import underhold.quantity.UnitSystem;
import underhold.sizing.Amount;
import underhold.sizing.Given;
import underhold.sizing.MissingInput;
import underhold.sizing.Origin;
import underhold.sizing.Sheet;
import underhold.sizing.SheetBuilder;
import underhold.sizing.SheetInput;
import underhold.sizing.Source;
import underhold.sizing.Verdict;
import underhold.sizing.zone.SoilClass;

/** What goes into the sizing of pits, and the trial of what was only assumed; own cases. */
class PitsInputByHandTest {
  private static final Source GUESS = Source.judgement();

  private static PitsInput full() {
    return HandSites.rubble()
        .facesRun(Given.stated(true))
        .standUp(Given.stated(StandUp.HOURS))
        .build();
  }

  @Test
  void copy_of_an_input_holds_all_of_it() {
    PitsInput input = full();
    assertThat(input.toBuilder().build()).isEqualTo(input);
    PitsInput empty = PitsInput.builder().build();
    assertThat(empty.toBuilder().build()).isEqualTo(empty);
    assertThat(input.amount(PitsFact.WALL_LENGTH)).contains(Given.stated(12.0));
    assertThat(empty.amount(PitsFact.WALL_LENGTH)).isEmpty();
  }

  @Test
  void numbers_are_accepted_at_the_ends_of_their_range() {
    assertThat(PitsFact.WALL_LENGTH.accepts(0.3)).isTrue();
    assertThat(PitsFact.WALL_LENGTH.accepts(500)).isTrue();
    assertThat(PitsFact.WALL_LENGTH.accepts(0.29)).isFalse();
    assertThat(PitsFact.WALL_LENGTH.accepts(500.1)).isFalse();
    assertThat(PitsFact.WALL_LENGTH.accepts(Double.NaN)).isFalse();
    assertThat(PitsFact.WALL_LENGTH.id()).isEqualTo("wall-length");
    assertThat(PitsFact.WALL_LENGTH.amount(2)).isEqualTo(Amount.length(2));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PitsInput.builder().amount(PitsFact.SURCHARGE, 501).build())
        .withMessageStartingWith("surcharge on the ground beside the pits is 501.0 ")
        .withMessageEndingWith("; it must be from 0.0 to 500.0");
  }

  @Test
  void labels_are_words_for_the_reader() {
    assertThat(WallMaterial.REINFORCED_CONCRETE.label()).isEqualTo("reinforced concrete");
    assertThat(WallMaterial.RUBBLE.label()).isEqualTo("rubble masonry");
    assertThat(WallMaterial.REINFORCED_CONCRETE.concrete()).isTrue();
    assertThat(WallMaterial.PLAIN_CONCRETE.concrete()).isTrue();
    assertThat(WallMaterial.SOLID_MASONRY.concrete()).isFalse();
    assertThat(WallCondition.POOR.label()).isEqualTo("poor or not inspected");
    assertThat(StandUp.NONE.label()).isEqualTo("none");
    assertThat(PitsSettings.defaults().timberValues().name()).isEqualTo("douglas-fir-larch");
    assertThat(PitsSettings.TIMBER.words()).startsWith("douglas-fir-larch").doesNotHaveDuplicates();
    assertThat(PitsSettings.defaults().amount(PitsSetting.CREWS)).isEqualTo(Amount.count(2));
  }

  @Test
  void incomplete_input_is_shown_as_far_as_it_goes() {
    Sheet sheet =
        PitsSizing.size(
            PitsInput.builder()
                .amount(PitsFact.WALL_LENGTH, 12)
                .amount(PitsFact.PIT_DEPTH, 2)
                .material(Given.stated(WallMaterial.SOLID_MASONRY))
                .condition(Given.stated(WallCondition.SOUND))
                .faceSoil(Given.stated(SoilClass.DENSE_SAND))
                .baseSoil(Given.stated(SoilClass.STIFF_CLAY))
                .standUp(Given.stated(StandUp.HOURS))
                .oshaType(Given.stated(SheetingSoil.C))
                .build(),
            PitsSettings.defaults());
    assertThat(sheet.inputs().stream().map(one -> one.name() + " " + one.value(UnitSystem.SI)))
        .containsExactly(
            "wall-length 12 m",
            "pit-depth 2 m",
            "material solid masonry",
            "condition sound",
            "face-soil dense sand",
            "base-soil stiff clay",
            "stand-up hours",
            "osha-type c");
    // the pit depth is known, so the excavation is not asked for
    assertThat(sheet.missing())
        .containsExactly(
            new MissingInput(
                "wall-line-load",
                PitsFact.WALL_LINE_LOAD.question(),
                "bearing, span and dry pack rest on it"),
            new MissingInput(
                "footing-width",
                PitsFact.FOOTING_WIDTH.question(),
                "it sets the pier, its bearing pressure and the pressure on the sheeting"),
            new MissingInput(
                "founding-depth",
                PitsFact.FOUNDING_DEPTH.question(),
                "it sets the soil pressure and the depth of the approach pits"),
            new MissingInput(
                "water-above-pit-base",
                PitsFact.WATER_ABOVE_PIT_BASE.question(),
                "pits under water in soil that runs are not safe"));
    assertThat(sheet.title()).isEqualTo("Underpinning pits");
  }

  @Test
  void one_question_for_each_thing_a_bar_before_a_gap() {
    MissingInput bar = new MissingInput("wall-length", "How long?", "it is barred");
    Sheet sheet =
        PitsSizing.size(PitsInput.builder().build(), PitsSettings.defaults(), List.of(bar));
    assertThat(sheet.missing().get(0)).isEqualTo(bar);
    assertThat(sheet.missing().stream().map(MissingInput::name)).doesNotHaveDuplicates().hasSize(8);
    Sheet barred = PitsSizing.size(full(), PitsSettings.defaults(), List.of(bar));
    assertThat(barred.missing()).containsExactly(bar);
    assertThat(barred.steps()).isEmpty();
  }

  @Test
  void case_without_a_value_says_which() {
    PitsCase site = PitsCase.of(full(), PitsSettings.defaults());
    assertThatIllegalStateException()
        .isThrownBy(() -> site.get(PitsFact.BASE_MODULUS))
        .withMessage("BASE_MODULUS is asked for but nobody gave or assumed it");
    assertThat(site.raisedFootingPressure()).isEqualTo(50 * (1 + 1.0 / 3));
    assertThat(site.approachBelowFooting()).isEqualTo(1.5); // never deeper than the pit
    assertThat(site.poorWall()).isTrue(); // rubble
    assertThat(site.openShare()).isEqualTo(PitsSetting.POOR_OPEN_SHARE);
    assertThat(site.faceStrength()).isEqualTo(PitsFact.FACE_FRICTION_ANGLE);
    assertThat(site.baseStrength()).isEqualTo(PitsFact.BASE_FRICTION_ANGLE);
    PitsCase clay =
        PitsCase.of(
            HandSites.rubble()
                .faceSoil(Given.stated(SoilClass.STIFF_CLAY))
                .baseSoil(Given.stated(SoilClass.SOFT_CLAY))
                .build(),
            PitsSettings.defaults());
    assertThat(clay.faceStrength()).isEqualTo(PitsFact.FACE_UNDRAINED_STRENGTH);
    assertThat(clay.baseStrength()).isEqualTo(PitsFact.BASE_UNDRAINED_STRENGTH);
  }

  @Test
  void gaps_are_filled_with_careful_values() {
    PitsCase site =
        PitsCase.of(
            HandSites.bare()
                .material(Given.stated(WallMaterial.REINFORCED_CONCRETE))
                .amount(PitsFact.WALL_HEIGHT, 0.6)
                .amount(PitsFact.WALL_STEEL_AREA, 0.001)
                .build(),
            PitsSettings.defaults());
    assertThat(site.condition.value()).isEqualTo(WallCondition.POOR);
    assertThat(site.baseSoil.value()).isEqualTo(SoilClass.DENSE_SAND);
    assertThat(site.standUp.value()).isEqualTo(StandUp.MINUTES);
    assertThat(site.bracePossible.value()).isFalse();
    assertThat(site.lateralStabilityVerified.value()).isFalse();
    assertThat(site.facesRun.value()).isTrue();
    assertThat(site.get(PitsFact.PIT_DEPTH)).isEqualTo(1.3);
    assertThat(site.get(PitsFact.RETAINED_HEIGHT)).isEqualTo(1.3);
    assertThat(site.get(PitsFact.CORNERS)).isEqualTo(2);
    assertThat(site.get(PitsFact.FACE_UNIT_WEIGHT)).isEqualTo(18.85);
    assertThat(site.get(PitsFact.BASE_UNIT_WEIGHT)).isEqualTo(16);
    assertThat(site.get(PitsFact.SURCHARGE)).isEqualTo(10.44);
    assertThat(site.get(PitsFact.FACE_FRICTION_ANGLE)).isEqualTo(37);
    assertThat(site.given(PitsFact.FACE_FRICTION_ANGLE).source().words()).contains("Caltrans");
    assertThat(site.get(PitsFact.LASTING_WATER_ABOVE_PIT_BASE)).isEqualTo(-3);
    assertThat(site.get(PitsFact.WALL_THICKNESS)).isEqualTo(1); // the footing itself
    assertThat(site.given(PitsFact.WALL_THICKNESS).origin()).isEqualTo(Origin.DERIVED);
    assertThat(site.get(PitsFact.WALL_CONCRETE_STRENGTH)).isEqualTo(2500 * 6.894757293168361);
    assertThat(site.get(PitsFact.WALL_STEEL_YIELD)).isEqualTo(275_800);
    PitsCase bare = PitsCase.of(HandSites.bare().build(), PitsSettings.defaults());
    assertThat(bare.has(PitsFact.WALL_THICKNESS)).isFalse();
    assertThat(bare.has(PitsFact.WALL_CONCRETE_STRENGTH)).isFalse();
    assertThat(bare.has(PitsFact.WALL_STEEL_YIELD)).isFalse();
    PitsCase deep =
        PitsCase.of(
            PitsInput.builder()
                .amount(PitsFact.WALL_LINE_LOAD, 100)
                .amount(PitsFact.WALL_LENGTH, 20)
                .amount(PitsFact.FOOTING_WIDTH, 1)
                .amount(PitsFact.FOUNDING_DEPTH, 1)
                .amount(PitsFact.PIT_DEPTH, 1.7)
                .amount(PitsFact.WATER_ABOVE_PIT_BASE, 1)
                .material(Given.stated(WallMaterial.PLAIN_CONCRETE))
                .faceSoil(Given.stated(SoilClass.SILT))
                .build(),
            PitsSettings.defaults());
    // an excavation that nobody stated goes as deep as the pits
    assertThat(deep.get(PitsFact.EXCAVATION_BELOW_FOOTING)).isEqualTo(1.7);
    assertThat(deep.given(PitsFact.EXCAVATION_BELOW_FOOTING).origin()).isEqualTo(Origin.ASSUMED);
    assertThat(deep.given(PitsFact.FACE_FRICTION_ANGLE).source().words()).isEqualTo("judgement");
    assertThat(deep.has(PitsFact.WALL_CONCRETE_STRENGTH)).isFalse();
    // 0.3 m is the least of a pit
    PitsCase shallow =
        PitsCase.of(
            HandSites.bare().amount(PitsFact.EXCAVATION_BELOW_FOOTING, 0).build(),
            PitsSettings.parse(List.of("toe-embedment=0 m")).settings());
    assertThat(shallow.get(PitsFact.PIT_DEPTH)).isEqualTo(0.3);
    assertThat(shallow.get(PitsFact.RETAINED_HEIGHT)).isZero();
  }

  /** A stand-in method: shows the inputs as assumed, and one check each that moves with them. */
  private static Function<PitsInput, Sheet> watched(List<String> tried, List<SheetInput> assumed) {
    return in -> {
      String seen =
          in.faceSoil().map(one -> one.value().name()).orElse("-")
              + in.baseSoil().map(one -> " base " + one.value()).orElse("")
              + in.facesRun().map(one -> " runs " + one.value()).orElse("")
              + in.standUp().map(one -> " stands " + one.value()).orElse("")
              + in.oshaType().map(one -> " type " + one.value()).orElse("")
              + in.material().map(one -> " of " + one.value()).orElse("")
              + in.amounts();
      tried.add(seen);
      SheetBuilder sheet = SheetBuilder.titled("t", "pits");
      for (SheetInput one : assumed) {
        if (one.amount().isPresent()) {
          sheet.input(one.name(), one.label(), one.amount().get(), one.origin(), one.source());
        } else {
          sheet.input(one.name(), one.label(), one.words(), one.origin(), one.source());
        }
      }
      double water = in.amount(PitsFact.WATER_ABOVE_PIT_BASE).map(Given::value).orElse(-2.0);
      sheet.check("water", "w", Amount.length(1), Amount.length(-water + 1), GUESS, "");
      sheet.check("still", "s", Amount.length(1), Amount.length(2), GUESS, "");
      return sheet.build();
    };
  }

  private static SheetInput word(String name) {
    return new SheetInput(name, "the " + name, Optional.empty(), "x", Origin.ASSUMED, GUESS);
  }

  private static SheetInput number(PitsFact fact, double value, Origin origin) {
    return new SheetInput(
        fact.id(), "the " + fact.id(), Optional.of(fact.amount(value)), "", origin, GUESS);
  }

  private static List<String> tried(SheetInput... assumed) {
    List<String> tried = new ArrayList<>();
    PitsAssumptions.referred(PitsInput.builder().build(), watched(tried, List.of(assumed)));
    return tried.subList(1, tried.size());
  }

  @Test
  void assumed_words_are_tried_as_every_other() {
    assertThat(tried(word("face-soil"))).hasSize(10).startsWith("ROCK{}").endsWith("PEAT{}");
    assertThat(tried(word("base-soil"))).hasSize(10).startsWith("- base ROCK{}");
    assertThat(tried(word("faces-run"))).containsExactly("- runs true{}", "- runs false{}");
    assertThat(tried(word("stand-up"))).hasSize(4).startsWith("- stands NONE{}");
    assertThat(tried(word("osha-type"))).hasSize(3).startsWith("- type A{}");
    assertThat(tried(word("material"))).hasSize(4).endsWith("- of RUBBLE{}");
    assertThat(tried(word("condition"), word("brace-possible"))).isEmpty();
    assertThat(tried(word("lateral-stability-verified"))).isEmpty();
  }

  @Test
  void assumed_numbers_are_halved_and_doubled_levels_moved_by_a_metre() {
    assertThat(numbers(PitsFact.FACE_FRICTION_ANGLE, 20, Origin.ASSUMED))
        .containsExactly(10.0, 40.0);
    // 60 degrees is beyond the range
    assertThat(numbers(PitsFact.FACE_FRICTION_ANGLE, 30, Origin.ASSUMED)).containsExactly(15.0);
    assertThat(numbers(PitsFact.WATER_ABOVE_PIT_BASE, -2, Origin.ASSUMED))
        .containsExactly(-3.0, -1.0);
    assertThat(numbers(PitsFact.LASTING_WATER_ABOVE_PIT_BASE, -2, Origin.ASSUMED))
        .containsExactly(-3.0, -1.0);
    assertThat(numbers(PitsFact.WATER_ABOVE_PIT_BASE, -2, Origin.STATED)).isEmpty();
    assertThat(numbers(PitsFact.WATER_ABOVE_PIT_BASE, -2, Origin.DERIVED)).isEmpty();
    assertThat(numbers(PitsFact.SURCHARGE, 10, Origin.ASSUMED)).isEmpty();
    assertThat(numbers(PitsFact.CORNERS, 2, Origin.ASSUMED)).isEmpty();
    assertThat(numbers(PitsFact.BASE_UNIT_WEIGHT, 16, Origin.ASSUMED)).isEmpty();
  }

  private static List<Double> numbers(PitsFact fact, double value, Origin origin) {
    List<Double> seen = new ArrayList<>();
    Function<PitsInput, Sheet> method =
        watched(new ArrayList<>(), List.of(number(fact, value, origin)));
    PitsAssumptions.referred(
        PitsInput.builder().build(),
        in -> {
          in.amount(fact)
              .ifPresent(
                  given -> {
                    assertThat(given.origin()).isEqualTo(Origin.ASSUMED);
                    seen.add(given.value());
                  });
          return method.apply(in);
        });
    return seen;
  }

  @Test
  void only_the_check_that_moves_is_referred_and_names_the_input() {
    Sheet sheet =
        PitsAssumptions.referred(
            PitsInput.builder().build(),
            watched(
                new ArrayList<>(),
                List.of(number(PitsFact.WATER_ABOVE_PIT_BASE, -2, Origin.ASSUMED))));
    assertThat(sheet.check("water").orElseThrow().verdict()).isEqualTo(Verdict.REFER);
    assertThat(sheet.check("water").orElseThrow().note().in(UnitSystem.SI))
        .endsWith("rests on: the water-above-pit-base.");
    assertThat(sheet.check("still").orElseThrow().verdict()).isEqualTo(Verdict.PASSES);
  }
}
