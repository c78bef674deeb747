package underhold.sizing.needles;

import java.util.List;
import underhold.mechanics.timber.CribTimber;
import underhold.sizing.Amount;
import underhold.sizing.Choice;
import underhold.sizing.Setting;
import underhold.sizing.Source;

/** Settings of seats, jacks, pick-up, tail and time. */
final class SupportSettings {
  private static final double PSI = 6.894757293168361;

  static final Setting SEAT_PRESSURE =
      new Setting(
          "seat-pressure",
          "allowable pressure under the seats by a ground investigation; 0: by the soil's class",
          Amount.pressure(0),
          0,
          10_000,
          Source.judgement());
  static final Setting SEAT_MODULUS =
      new Setting(
          "seat-modulus",
          "elastic modulus of the soil under the seats by a ground investigation; 0: by its class",
          Amount.stress(0),
          0,
          20_000_000,
          Source.judgement());
  static final Setting BEARING_FACTOR =
      new Setting(
          "bearing-factor",
          "factor of safety on the ultimate pressure under a seat",
          Amount.ratio(3),
          2,
          5,
          Sources.BEARING_FACTOR);
  static final Setting WIDEST_PAD =
      new Setting(
          "widest-pad", "widest square pad", Amount.length(2.5), 0.6, 6, Source.judgement());
  static final Setting SEAT_ALLOWANCE =
      new Setting(
          "seat-allowance",
          "factor on a seat's load for the needle, jack, crib and pad on it",
          Amount.ratio(1.1),
          1,
          1.5,
          Source.judgement());
  static final Setting SETTLEMENT_LIMIT =
      new Setting(
          "seat-settlement-limit",
          "settlement of a seat allowed while the load is taken over",
          Amount.thickness(0.006),
          0.001,
          0.05,
          Sources.SEAT);
  static final Setting CRIB_HEIGHT =
      new Setting(
          "crib-height", "height of a timber crib", Amount.length(0.6), 0.1, 3, Source.judgement());
  static final Setting CRIB_TIMBER =
      new Setting(
          "crib-timber-width",
          "actual width of a square crib timber, 5.5 in for 6 x 6",
          Amount.thickness(0.1397),
          0.08,
          0.4,
          Source.judgement());
  static final Setting CRIB_CREEP =
      new Setting(
          "crib-creep",
          "squash and creep of a timber crib after lock-off",
          Amount.thickness(0.002),
          0,
          0.02,
          Source.judgement());
  static final Setting JACK_MARGIN =
      new Setting(
          "jack-margin",
          "rating of a jack over its load",
          Amount.ratio(1.5),
          1.25,
          3,
          Sources.JACK);
  static final Setting JACK_RATING =
      new Setting(
          "jack-rating",
          "rating of the jacks at hand; 0: the smallest usual one that serves",
          Amount.force(0),
          0,
          20_000,
          Sources.JACK_TABLE);
  static final Setting PRELOAD =
      new Setting(
          "preload-share",
          "share of the stated load that is jacked in before lock-off",
          Amount.ratio(1),
          0,
          1.2,
          Sources.PRELOAD);
  static final Setting COLUMN_WIDTH =
      new Setting(
          "column-width",
          "width of the column or pier where it is picked up: measure it",
          Amount.length(0.4),
          0.15,
          5,
          Source.judgement());
  static final Setting KEY_DEPTH =
      new Setting(
          "key-depth",
          "depth of a shear key cut in two faces of a concrete column",
          Amount.thickness(0.04),
          0.01,
          0.2,
          Source.judgement());
  static final Setting KEY_PITCH =
      new Setting(
          "key-pitch",
          "height of column for each row of keys",
          Amount.length(0.3),
          0.1,
          1,
          Source.judgement());
  static final Setting OLD_CONCRETE =
      new Setting(
          "old-concrete-strength",
          "compressive strength of the old concrete at the pick-up, 2,500 psi until cores are"
              + " tested",
          Amount.stress(2500 * PSI),
          5_000,
          60_000,
          Source.judgement());
  static final Setting CLAMP_FRICTION =
      new Setting(
          "clamp-friction",
          "friction of a clamped collar on concrete",
          Amount.ratio(0.3),
          0.1,
          0.7,
          Sources.CLAMP);
  static final Setting CLAMP_FACTOR =
      new Setting(
          "clamp-factor",
          "factor of safety of a clamped collar",
          Amount.ratio(2),
          1.5,
          4,
          Sources.CLAMP);
  static final Setting PACK =
      new Setting(
          "pack-length",
          "length along the wall of the plate or pack on a needle",
          Amount.length(0.3),
          0.1,
          1,
          Source.judgement());
  static final Setting MASONRY =
      new Setting(
          "masonry-stress",
          "allowable bearing stress of the masonry on a pack",
          Amount.stress(100 * PSI),
          100,
          10_000,
          Sources.MASONRY);
  static final Setting MOST_SPACING =
      new Setting(
          "widest-spacing",
          "widest spacing of needles through a wall by practice, 5 ft",
          Amount.length(1.5),
          0.6,
          2.1,
          Sources.SPACING);
  static final Setting LEAST_SPACING =
      new Setting(
          "least-spacing",
          "closest spacing at which needles can be threaded through a wall",
          Amount.length(0.6),
          0.3,
          1.5,
          Source.judgement());
  static final Setting ARCH_HEIGHT =
      new Setting(
          "arch-height",
          "height of sound wall from the needles to the first opening or floor bearing",
          Amount.length(1),
          0.3,
          10,
          Source.judgement());
  static final Setting HOLE =
      new Setting(
          "hole-clearance",
          "width of a needle's hole beyond its flange",
          Amount.length(0.1),
          0.02,
          0.5,
          Source.judgement());
  static final Setting TAIL_FACTOR =
      new Setting(
          "tail-factor",
          "factor of safety against uplift of a cantilevered needle's tail",
          Amount.ratio(1.5),
          1.5,
          3,
          Sources.TAIL);
  static final Setting TAIL_HOLD =
      new Setting(
          "tail-hold-down",
          "what holds each tail down: weight of kentledge or capacity of its anchor",
          Amount.force(0),
          0,
          50_000,
          Source.judgement());
  static final Setting NEEDLE_DAYS =
      new Setting(
          "days-per-needle",
          "working days to set one needle with its seats and pick-up",
          Amount.count(2),
          0.25,
          20,
          Source.judgement());
  static final Setting PRELOAD_DAYS =
      new Setting(
          "days-of-transfer",
          "working days for the staged preload, lock-off and the reading after 24 h",
          Amount.count(2),
          1,
          20,
          Source.judgement());
  static final Setting RETURN_DAYS =
      new Setting(
          "days-of-return",
          "working days to give the load back, draw the needles and patch",
          Amount.count(3),
          1,
          30,
          Source.judgement());

  static final Choice SEAT =
      new Choice(
          "seat", "what the needles sit on", List.of("pad", "crib", "pile"), Source.judgement());
  static final Choice SETBACK =
      new Choice(
          "setback-line",
          "line from the excavation's toe that seats stay outside of, horizontal to vertical",
          List.of("by-soil", "1-to-1", "2-to-1"),
          Sources.SETBACK);
  static final Choice CRIB_SPECIES =
      new Choice("crib-timber", "timber of the cribs", cribTimbers(), Sources.CRIB_STRESS);
  static final Choice CRIB_MOISTURE =
      new Choice(
          "crib-moisture",
          "moisture of the crib timber",
          List.of("wet", "dry"),
          Source.judgement());

  static final List<Setting> NUMBERS =
      List.of(
          SEAT_PRESSURE,
          SEAT_MODULUS,
          BEARING_FACTOR,
          WIDEST_PAD,
          SEAT_ALLOWANCE,
          SETTLEMENT_LIMIT,
          CRIB_HEIGHT,
          CRIB_TIMBER,
          CRIB_CREEP,
          JACK_MARGIN,
          JACK_RATING,
          PRELOAD,
          COLUMN_WIDTH,
          KEY_DEPTH,
          KEY_PITCH,
          OLD_CONCRETE,
          CLAMP_FRICTION,
          CLAMP_FACTOR,
          PACK,
          MASONRY,
          MOST_SPACING,
          LEAST_SPACING,
          ARCH_HEIGHT,
          HOLE,
          TAIL_FACTOR,
          TAIL_HOLD,
          NEEDLE_DAYS,
          PRELOAD_DAYS,
          RETURN_DAYS);

  static final List<Choice> CHOICES = List.of(SEAT, SETBACK, CRIB_SPECIES, CRIB_MOISTURE);

  private SupportSettings() {}

  /** The weakest usual one first. */
  private static List<String> cribTimbers() {
    return java.util.stream.Stream.concat(
            java.util.stream.Stream.of("hem-fir"),
            CribTimber.names().stream().filter(name -> !name.equals("hem-fir")))
        .toList();
  }
}
