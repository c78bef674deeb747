package underhold.sizing.monitoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static underhold.sizing.monitoring.MonitoringSites.mill;
import static underhold.sizing.monitoring.MonitoringSites.view;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import underhold.quantity.Seeds;
import underhold.quantity.UnitSystem;
import underhold.site.GroundProfile;
import underhold.sizing.Amount;
import underhold.sizing.Check;
import underhold.sizing.Setting;
import underhold.sizing.Settings;
import underhold.sizing.Sheet;
import underhold.sizing.SheetText;
import underhold.sizing.StepProof;
import underhold.sizing.Verdict;

class MonitoringPropertiesTest {
  private static final MonitoringMethod METHOD = new MonitoringMethod();

  private static Sheet sheet(Map<String, String> facts, Settings settings) {
    return METHOD.size(view(facts, "SI"), GroundProfile.NONE, settings);
  }

  @Provide
  Arbitrary<Map<String, String>> zones() {
    Arbitrary<String> kind =
        Arbitraries.of("building-wall", "building-frame", "tunnel-box", "bridge-pier", "rail-yard");
    Arbitrary<String> material =
        Arbitraries.of(
            "reinforced-concrete", "steel", "unreinforced-masonry", "rubble", "timber", "");
    Arbitrary<String> heritage = Arbitraries.of("none", "listed", "landmark", "");
    Arbitrary<String> position =
        Arbitraries.of("beside", "inside-walls", "partly-under", "wholly-under");
    Arbitrary<double[]> numbers =
        Arbitraries.doubles().between(0, 1).array(double[].class).ofSize(8);
    return Combinators.combine(kind, material, heritage, position, numbers)
        .as(
            (k, m, h, p, n) ->
                mill(
                    "structureKind",
                    k,
                    "structureMaterial",
                    m,
                    "heritage",
                    h,
                    "excavationPosition",
                    p,
                    "gapToExcavation",
                    p.endsWith("under") ? "" : metres(60 * n[0]),
                    "excavationBelowFooting",
                    metres(0.5 + 20 * n[2] - n[1] * (1.5 + 20 * n[2])),
                    "excavationDepth",
                    metres(0.5 + 20 * n[2]),
                    "wallLength",
                    n[3] < 0.1 ? "" : metres(0.6 + 100 * n[3]),
                    "storeys",
                    n[4] < 0.1 ? "" : String.valueOf(1 + (int) (59 * n[4])),
                    "predictedMovement",
                    n[5] < 0.2 ? "" : metres(0.1 * (n[5] - 0.2)),
                    "movementLimit",
                    n[6] < 0.2 ? "" : metres(0.001 + 0.07 * n[6]),
                    "tiltLimit",
                    n[7] < 0.5 ? "" : "1 in " + (int) (200 + 2800 * n[7])));
  }

  private static String metres(double value) {
    return "%.4f m".formatted(value);
  }

  @Provide
  Arbitrary<Settings> settings() {
    Arbitrary<double[]> shares =
        Arbitraries.doubles()
            .between(0, 1)
            .array(double[].class)
            .ofSize(MonitoringSettings.TABLE.numbers().size());
    return shares.map(
        share -> {
          Settings settings = MonitoringSettings.TABLE.defaults();
          int i = 0;
          for (Setting one : MonitoringSettings.TABLE.numbers()) {
            settings = settings.with(one, one.least() + share[i++] * (one.most() - one.least()));
          }
          return settings;
        });
  }

  @Property(tries = 120, seed = Seeds.BUILD)
  void every_step_can_be_redone_and_nothing_is_negative_or_endless(
      @ForAll("zones") Map<String, String> facts, @ForAll("settings") Settings settings) {
    Sheet sheet = sheet(facts, settings);
    assertThat(sheet.complete()).isTrue();
    StepProof.redo(sheet);
    Stream<Amount> amounts =
        Stream.of(
                sheet.steps().stream().filter(s -> !s.id().equals("in-zone")).map(s -> s.result()),
                sheet.checks().stream().map(Check::demand),
                sheet.checks().stream().map(Check::capacity),
                sheet.quantities().stream().map(item -> item.amount()),
                sheet.time().stream().map(item -> item.amount()))
            .flatMap(one -> one);
    assertThat(amounts.map(Amount::si)).allMatch(value -> Double.isFinite(value) && value >= 0);
    assertThat(SheetText.lines(sheet, UnitSystem.US)).allMatch(line -> !line.contains("NaN"));
  }

  @Property(tries = 60, seed = Seeds.BUILD)
  void a_zone_typed_in_us_units_gives_the_same_sheet(@ForAll("zones") Map<String, String> facts) {
    Sheet si = METHOD.size(view(facts, "SI"), GroundProfile.NONE, METHOD.settings().defaults());
    Sheet us =
        METHOD.size(view(inFeet(facts), "US"), GroundProfile.NONE, METHOD.settings().defaults());
    assertThat(us.steps()).hasSameSizeAs(si.steps());
    si.steps()
        .forEach(step -> same(us.step(step.id()).orElseThrow().result().si(), step.result().si()));
    assertThat(us.checks()).hasSameSizeAs(si.checks());
    for (Check one : si.checks()) {
      Check other = us.check(one.id()).orElseThrow();
      same(other.demand().si(), one.demand().si());
      same(other.capacity().si(), one.capacity().si());
      assertThat(other.verdict()).isEqualTo(one.verdict());
    }
  }

  private static Map<String, String> inFeet(Map<String, String> facts) {
    Map<String, String> feet = new LinkedHashMap<>();
    facts.forEach(
        (name, text) ->
            feet.put(
                name,
                text.endsWith(" m")
                    ? Double.parseDouble(text.replace(" m", "")) / 0.3048 + " ft"
                    : text));
    return feet;
  }

  /** Feet are rounded to the last figure of a double. */
  private static void same(double one, double other) {
    assertThat(one).isCloseTo(other, within(1e-9 * Math.abs(other) + 1e-9));
  }

  @Property(tries = 60, seed = Seeds.BUILD)
  void more_movement_never_betters_a_check(@ForAll("zones") Map<String, String> facts) {
    Sheet less = sheet(withMovement(facts, "4 mm"), METHOD.settings().defaults());
    Sheet more = sheet(withMovement(facts, "9 mm"), METHOD.settings().defaults());
    for (String id : new String[] {"forecast-movement", "damage-category", "angular-distortion"}) {
      if (less.check(id).isPresent()) {
        Check before = less.check(id).orElseThrow();
        Check after = more.check(id).orElseThrow();
        assertThat(after.demand().si()).isGreaterThan(before.demand().si());
        assertThat(worse(after.verdict())).isGreaterThanOrEqualTo(worse(before.verdict()));
      }
    }
    Sheet none = sheet(withMovement(facts, "0 mm"), METHOD.settings().defaults());
    assertThat(none.check("forecast-movement").orElseThrow().demand().si()).isZero();
    none.check("damage-category").ifPresent(one -> assertThat(one.demand().si()).isZero());
  }

  @Property(tries = 40, seed = Seeds.BUILD)
  void a_shorter_fade_never_lessens_the_distortion(@ForAll("zones") Map<String, String> facts) {
    Settings usual = METHOD.settings().defaults();
    Sheet steep = sheet(facts, usual.with(MonitoringSettings.FADE, 0.5));
    assertThat(steep.step("angular-distortion").orElseThrow().result().si())
        .isGreaterThanOrEqualTo(
            sheet(facts, usual).step("angular-distortion").orElseThrow().result().si());
  }

  private static Map<String, String> withMovement(Map<String, String> facts, String movement) {
    Map<String, String> other = new LinkedHashMap<>(facts);
    other.put("predictedMovement", movement);
    return other;
  }

  private static int worse(Verdict verdict) {
    return switch (verdict) {
      case PASSES -> 0;
      case REFER -> 1;
      case FAILS -> 2;
    };
  }
}
