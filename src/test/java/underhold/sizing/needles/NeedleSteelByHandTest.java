package underhold.sizing.needles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.mechanics.steel.RolledSection;
import underhold.mechanics.steel.SectionTable;
import underhold.quantity.UnitSystem;
import underhold.sizing.Sheet;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Step;
import underhold.sizing.StepProof;

/** The steel of single needles, by the code's own formulas in its own units. */
class NeedleSteelByHandTest {
  private static final double KIP = 4.4482216152605;
  private static final double INCH = 0.0254;
  private static final double KIP_INCH = KIP * INCH;
  private static final double KIP_FOOT = KIP * 0.3048;

  private static RolledSection section(String name) {
    return SectionTable.find(name).orElseThrow();
  }

  private static List<String> ids(List<Limb> limbs) {
    return limbs.stream().map(Limb::id).toList();
  }

  private static Limb limb(List<Limb> limbs, String id) {
    return limbs.stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
  }

  private static Sheet written(SteelCode code, String section, NeedleBeam beam) {
    SheetBuilder builder = SheetBuilder.titled("own case", "needles");
    code.write(builder, section(section), beam);
    Sheet sheet = builder.build();
    StepProof.redo(sheet);
    return sheet;
  }

  private static Step step(Sheet sheet, String id) {
    return sheet.step(id).orElseThrow();
  }

  @Test
  @DisplayName(
      "AISC 360 J10-7: W24X84 over 9 m, bf 9.02, h/tw 45.9: Cr 960,000 ksi below My, 480,000 above")
  void sidesway_of_the_web() {
    double length = 9 / INCH;
    double ratio = 45.9 / (length / 9.02);
    assertThat(ratio).isLessThan(1.7);
    double height = 45.9 * 0.47;
    double elastic =
        960_000 * Math.pow(0.47, 3) * 0.77 / (height * height) * 0.4 * Math.pow(ratio, 3);
    AiscWeb web = new AiscWeb(NeedleSites.settled("pair", "stiffeners=none"));
    // own weight 1.226 kN/m: 12.4 kN m; My = 50 ksi x 196 in3 = 1107 kN m
    List<Limb> light = web.limbs(section("W24X84"), new NeedleBeam.Seated(300, 4.5, 4.5));
    List<Limb> heavy = web.limbs(section("W24X84"), new NeedleBeam.Seated(330, 4.5, 4.5));

    assertThat(ids(light))
        .containsExactly(
            "load-web-yielding",
            "load-web-crippling",
            "load-web-squeezed",
            "load-web-sidesway",
            "jack-web-yielding",
            "jack-web-crippling",
            "jack-web-squeezed");
    assertThat(limb(light, "load-web-sidesway").capacity() / KIP)
        .isCloseTo(elastic / 1.76, withPercentage(0.5));
    assertThat(limb(heavy, "load-web-sidesway").capacity() / KIP)
        .isCloseTo(elastic / 2 / 1.76, withPercentage(0.5));
    // a span of 4 m: 45.9 / (157.5 / 9.02) = 2.63, beyond 1.7: cannot occur
    assertThat(ids(web.limbs(section("W24X84"), new NeedleBeam.Seated(330, 2, 2))))
        .doesNotContain("load-web-sidesway");
  }

  @Test
  @DisplayName(
      "AISC 360 J10.7: stiffeners where told, where the bare web fails, and always at a free end")
  void stiffeners_as_needed() {
    NeedleBeam light = new NeedleBeam.Seated(20, 2, 2);
    NeedleBeam heavy = new NeedleBeam.Seated(1500, 2, 2);
    AiscWeb web = new AiscWeb(NeedleSites.settled("pair", "stiffeners=as-needed"));
    assertThat(ids(web.limbs(section("W24X84"), light)))
        .contains("load-web-yielding", "jack-stiffener-column", "jack-stiffener-bearing")
        .doesNotContain("load-stiffener-column", "jack-web-yielding");
    assertThat(ids(web.limbs(section("W24X84"), heavy)))
        .containsExactly(
            "load-stiffener-column",
            "load-stiffener-bearing",
            "jack-stiffener-column",
            "jack-stiffener-bearing");
    NeedleCase fitted = NeedleSites.settled("pair");
    assertThat(ids(new AiscWeb(fitted).limbs(section("W24X84"), light)))
        .hasSize(4)
        .allMatch(id -> id.contains("stiffener"));
  }

  @Test
  @DisplayName(
      "AISC 360 F3: W21X48, bf/2tf 9.47 over 9.15: 5,350 - 2,095 x 0.0213 = 5,305 kip-in / 1.67")
  void flange_that_is_not_compact() {
    double root = Math.sqrt(29_000.0 / 50);
    double plastic = 50 * 107;
    double yielding = 0.7 * 50 * 93;
    double flange = plastic - (plastic - yielding) * (9.47 - 0.38 * root) / (root - 0.38 * root);
    NeedleCase site = NeedleSites.settled("pair");
    Sheet sheet = written(new AiscNeedle(site), "W21X48", new NeedleBeam.Seated(50, 0.5, 0.5));

    assertThat(step(sheet, "flange-buckling").result().si() / KIP_INCH)
        .isCloseTo(flange, withPercentage(0.1));
    assertThat(step(sheet, "bending-capacity").result().si() / KIP_INCH)
        .isCloseTo(flange / 1.67, withPercentage(0.1));
    assertThat(step(sheet, "lateral-torsional").result().si() / KIP_INCH)
        .isCloseTo(plastic, withPercentage(0.1));
  }

  @Test
  @DisplayName("AISC 360 G2.1: W24X55, h/tw 54.6 over 2.24 x 24.08 = 53.9: Omega 1.67, not 1.5")
  void slender_web_in_shear() {
    NeedleCase site = NeedleSites.settled("pair");
    NeedleBeam beam = new NeedleBeam.Seated(50, 1, 1);
    Sheet slender = written(new AiscNeedle(site), "W24X55", beam);
    assertThat(step(slender, "shear-capacity").result().si() / KIP)
        .isCloseTo(0.6 * 50 * 23.6 * 0.395 / 1.67, withPercentage(0.1));
    assertThat(step(slender, "shear-capacity").note().template()).contains("2.24");
    Sheet stocky = written(new AiscNeedle(site), "W24X84", beam);
    assertThat(step(stocky, "shear-capacity").note().template()).isEmpty();
  }

  @Test
  @DisplayName(
      "AISC 360 F1-1: a linear diagram to zero at the seat: Cb = 12.5 / (2.5 + 0.75 + 2 + 2.25) = 1.667")
  void gradient_of_a_held_load() {
    NeedleBeam beam = new NeedleBeam.Seated(50, 5, 5);
    Sheet held =
        written(new AiscNeedle(NeedleSites.settled("pair", "load-restraint=held")), "W24X84", beam);
    assertThat(symbol(held, "lateral-torsional", "Cb")).isCloseTo(12.5 / 7.5, within(1e-3));
    assertThat(symbol(held, "lateral-torsional", "Lb")).isEqualTo(5);
    Sheet free = written(new AiscNeedle(NeedleSites.settled("pair")), "W24X84", beam);
    assertThat(symbol(free, "lateral-torsional", "Cb")).isEqualTo(1);
    Sheet tail =
        written(
            new AiscNeedle(NeedleSites.settled("cantilever-pair", "load-restraint=held")),
            "W24X84",
            new NeedleBeam.Tailed(50, 4, 5));
    assertThat(symbol(tail, "lateral-torsional", "Cb")).isEqualTo(1);
  }

  private static double symbol(Sheet sheet, String step, String sign) {
    return step(sheet, step).formula().symbols().stream()
        .filter(one -> one.sign().equals(sign))
        .findFirst()
        .orElseThrow()
        .amount()
        .si();
  }

  @Test
  @DisplayName("own hand calculation: LRFD and Eurocode ask 1.6 and 1.5 times moment and shear")
  void factored_effects() {
    NeedleBeam beam = new NeedleBeam.Seated(100, 2, 3);
    double own = 84 * KIP / 1000 / 0.3048;
    double moment = 100 * 2 * 3 / 5.0 + own * 25 / 8;
    double shear = 60 + own * 2.5;
    List<Limb> lrfd =
        new AiscNeedle(NeedleSites.settled("pair", "code=aisc-lrfd"))
            .limbs(section("W24X84"), beam);
    assertThat(limb(lrfd, "bending").demand()).isCloseTo(1.6 * moment, withPercentage(0.1));
    assertThat(limb(lrfd, "shear").demand()).isCloseTo(1.6 * shear, withPercentage(0.1));
    List<Limb> euro =
        new EurocodeNeedle(NeedleSites.settled("pair", "code=eurocode"))
            .limbs(section("W24X84"), beam);
    assertThat(limb(euro, "bending").demand()).isCloseTo(1.5 * moment, withPercentage(0.1));
    assertThat(limb(euro, "shear").demand()).isCloseTo(1.5 * shear, withPercentage(0.1));
  }

  @Test
  @DisplayName(
      "EN 1993-1-1 6.2.6(6): W24X55, hw/tw 22.59/0.395 = 57.2: within 72 x 0.8136 at S355, not within 72 x 0.7148 at S460")
  void eurocode_leaves_webs_that_buckle() {
    RolledSection section = section("W24X55");
    assertThat(
            new EurocodeNeedle(
                    NeedleSites.settled("pair", "code=eurocode", "yield-strength=355 MPa"))
                .covers(section))
        .isTrue();
    assertThat(
            new EurocodeNeedle(
                    NeedleSites.settled("pair", "code=eurocode", "yield-strength=460 MPa"))
                .covers(section))
        .isFalse();
    assertThat(new AiscNeedle(NeedleSites.settled("pair")).covers(section("W24X55"))).isTrue();
  }

  @Test
  @DisplayName(
      "EN 1993-1-1 Table 5.2: HEA300, c/tf 118.75/14 = 8.48: class 3 at S460 (10 x 0.7148 = 7.15), elastic modulus")
  void eurocode_class_three() {
    NeedleBeam beam = new NeedleBeam.Seated(50, 1, 1);
    Sheet three =
        written(
            new EurocodeNeedle(
                NeedleSites.settled("pair", "code=eurocode", "yield-strength=460 MPa")),
            "HEA300",
            beam);
    assertThat(words(three, "plastic-moment", "W")).isEqualTo("elastic modulus, class 3");
    // Wel,y 1,260 cm3
    assertThat(step(three, "plastic-moment").result().si())
        .isCloseTo(460_000 * 1260e-6, withPercentage(0.5));
    Sheet one =
        written(
            new EurocodeNeedle(
                NeedleSites.settled("pair", "code=eurocode", "yield-strength=235 MPa")),
            "HEA300",
            beam);
    assertThat(words(one, "plastic-moment", "W")).startsWith("plastic modulus, class ");
    // Wpl,y 1,383 cm3
    assertThat(step(one, "plastic-moment").result().si())
        .isCloseTo(235_000 * 1383e-6, withPercentage(0.5));
    assertThat(step(one, "bending-capacity").note().in(UnitSystem.SI))
        .contains(
            "slenderness of "
                + String.format(
                    java.util.Locale.ROOT, "%.3f", step(one, "slenderness").result().si()));
  }

  private static String words(Sheet sheet, String step, String sign) {
    return step(sheet, step).formula().symbols().stream()
        .filter(one -> one.sign().equals(sign))
        .findFirst()
        .orElseThrow()
        .meaning();
  }

  @Test
  @DisplayName(
      "EN 1993-1-1 lateral-torsional buckling: C1 1.365, C2 0.553 for a free load at mid-span, 1 and 0 held or cantilevered")
  void eurocode_critical_moment() {
    NeedleBeam seated = new NeedleBeam.Seated(50, 2, 2);
    Sheet free =
        written(new EurocodeNeedle(NeedleSites.settled("pair", "code=eurocode")), "HEB300", seated);
    assertThat(symbol(free, "critical-moment", "C1")).isEqualTo(1.365);
    assertThat(symbol(free, "critical-moment", "C2")).isEqualTo(0.553);
    Sheet held =
        written(
            new EurocodeNeedle(NeedleSites.settled("pair", "code=eurocode", "load-restraint=held")),
            "HEB300",
            seated);
    assertThat(symbol(held, "critical-moment", "C1")).isEqualTo(1);
    assertThat(symbol(held, "critical-moment", "C2")).isZero();
    Sheet tail =
        written(
            new EurocodeNeedle(NeedleSites.settled("cantilever-pair", "code=eurocode")),
            "HEB300",
            new NeedleBeam.Tailed(50, 2, 3));
    assertThat(symbol(tail, "critical-moment", "C1")).isEqualTo(1);
    assertThat(symbol(tail, "critical-moment", "C2")).isZero();
  }

  @Test
  @DisplayName(
      "EN 1993-1-5 6: HEB300 at its end, ss 0.262 m (no more than hw), c 0.05 m: kF 6, m1 27.27, le 0.312 m: ly least of three")
  void patch_load_at_an_end() {
    NeedleCase site =
        NeedleSites.settled(
            "pair",
            "code=eurocode",
            "yield-strength=355 MPa",
            "stiffeners=none",
            "end-distance=0.15 m",
            "jack-bearing-length=0.2 m");
    List<Limb> limbs =
        new EurocodeNeedle(site).limbs(section("HEB300"), new NeedleBeam.Seated(50, 2, 2));
    assertThat(ids(limbs))
        .containsExactly("bending", "shear", "load-patch-load", "jack-patch-load");

    double tw = 11;
    double tf = 19;
    double hw = 262;
    double bearing = 200;
    double beyond = 150 - 100;
    double factor = Math.min(6, 2 + 6 * (bearing + beyond) / hw);
    double m1 = 300 / tw;
    double edge = Math.min(factor * 210_000 * tw * tw / (2 * 355 * hw), bearing + beyond);
    double spread = bearing + 2 * tf * (1 + Math.sqrt(m1));
    double one = edge + tf * Math.sqrt(m1 / 2 + Math.pow(edge / tf, 2));
    double other = edge + tf * Math.sqrt(m1);
    double length = Math.min(spread, Math.min(one, other));
    double critical = 0.9 * factor * 210_000 * Math.pow(tw, 3) / hw;
    double slenderness = Math.sqrt(length * tw * 355 / critical);
    assertThat(slenderness).as("so m2 is 0").isLessThan(0.5);
    assertThat(limb(limbs, "jack-patch-load").capacity())
        .isCloseTo(355 * length * tw / 1000, withPercentage(0.5));
    // under the load: kF 6, slenderness above 0.5, so m2 = 0.02 (hw/tf)^2 counts
    double m2 = 0.02 * Math.pow(hw / tf, 2);
    double inside = bearing + 2 * tf * (1 + Math.sqrt(m1 + m2));
    double slender = Math.sqrt(inside * tw * 355 / (0.9 * 6 * 210_000 * Math.pow(tw, 3) / hw));
    assertThat(slender).isGreaterThan(0.5);
    assertThat(limb(limbs, "load-patch-load").capacity())
        .isCloseTo(0.5 / slender * 355 * inside * tw / 1000, withPercentage(0.5));
  }

  @Test
  @DisplayName("EN 1993-1-5 9: stiffeners where told, where the web fails, and at a free end")
  void eurocode_stiffeners() {
    NeedleBeam light = new NeedleBeam.Seated(20, 2, 2);
    NeedleBeam heavy = new NeedleBeam.Seated(2000, 2, 2);
    SteelCode needed =
        new EurocodeNeedle(NeedleSites.settled("pair", "code=eurocode", "stiffeners=as-needed"));
    assertThat(ids(needed.limbs(section("HEB300"), light)))
        .containsExactly(
            "bending",
            "shear",
            "load-patch-load",
            "jack-stiffener-column",
            "jack-stiffener-bearing");
    assertThat(ids(needed.limbs(section("HEB300"), heavy)))
        .containsExactly(
            "bending",
            "shear",
            "load-stiffener-column",
            "load-stiffener-bearing",
            "jack-stiffener-column",
            "jack-stiffener-bearing");
    Sheet light300 = written(needed, "HEB300", light);
    assertThat(light300.step("load-stiffener-column")).isEmpty();
    assertThat(light300.step("jack-stiffener-column")).isPresent();
    assertThat(step(light300, "load-patch-load").note().template()).contains("do without");
    assertThat(step(written(needed, "HEB300", heavy), "load-patch-load").note().template())
        .contains("it fails");
  }

  @Test
  @DisplayName("own hand calculation: 60 kip-ft at 1.67 is the moment of the sheet's own formula")
  void notes_of_the_web() {
    NeedleBeam beam = new NeedleBeam.Seated(100, 2, 2);
    Sheet asd = written(new AiscNeedle(NeedleSites.settled("pair")), "W24X84", beam);
    assertThat(step(asd, "load-web-yielding").note().template()).isEqualTo("Omega is 1.5.");
    assertThat(step(asd, "load-web-crippling").note().template()).isEqualTo("Omega is 2.0.");
    Sheet lrfd =
        written(new AiscNeedle(NeedleSites.settled("pair", "code=aisc-lrfd")), "W24X84", beam);
    assertThat(step(lrfd, "load-web-yielding").note().template()).isEqualTo("phi is 1.0.");
    assertThat(step(lrfd, "load-web-crippling").note().template()).isEqualTo("phi is 0.75.");
    assertThat(step(asd, "load-bare-web").note().template()).contains("would do without");
    Sheet heavy =
        written(
            new AiscNeedle(NeedleSites.settled("pair")),
            "W24X84",
            new NeedleBeam.Seated(2000, 2, 2));
    assertThat(step(heavy, "load-bare-web").note().template()).contains("it fails");
    assertThat(step(asd, "plastic-moment").result().si() / KIP_FOOT)
        .isCloseTo(224 * 50 / 12.0, withPercentage(0.1));
  }
}
