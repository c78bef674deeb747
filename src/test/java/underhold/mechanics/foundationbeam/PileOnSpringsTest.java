package underhold.mechanics.foundationbeam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underhold.mechanics.micropile.CasingSection;
import underhold.mechanics.micropile.CombinedStress;
import underhold.mechanics.micropile.ThreadedJoint;

class PileOnSpringsTest {
  private static final double INCH = 0.0254;
  private static final double KSI = 6894.757293;
  private static final double KIP = 4.448221615;
  private static final double KIP_INCH = KIP * INCH;
  private static final Percentage PRINTED = withPercentage(0.2);
  private static final CasingSection SEVEN = CasingSection.inches(7, 0.5);
  private static final double EI = 29_000 * KSI * SEVEN.secondMoment();
  private static final PileOnSprings PILE = new PileOnSprings(EI, 0.50 * KSI);

  @ParameterizedTest(
      name =
          "M. Hetenyi, Beams on Elastic Foundation (1946), from memory, verify: x {0}: A {1}, B {2}, C {3}, D {4}")
  @CsvSource({
    "0, 1, 0, 1, 1",
    ".5, .8231, .2908, .2415, .5323",
    "0.785398163, .6448, .3224, 0, .3224",
    "1, .5083, .3096, -.1108, .1988",
    "1.570796327, .2079, .2079, -.2079, 0",
    "2, .0667, .1231, -.1794, -.0563",
    "2.356194490, 0, .0670, -.1340, -.0670",
    "3, -.0423, .0070, -.0563, -.0493",
    "3.141592654, -.0432, 0, -.0432, -.0432"
  })
  void functions(double x, double a, double b, double c, double d) {
    assertThat(HetenyiCurve.functionA(x)).isCloseTo(a, within(0.00006)); // four decimals printed
    assertThat(HetenyiCurve.functionB(x)).isCloseTo(b, within(0.00006));
    assertThat(HetenyiCurve.functionC(x)).isCloseTo(c, within(0.00006));
    assertThat(HetenyiCurve.functionD(x)).isCloseTo(d, within(0.00006));
  }

  @Test
  @DisplayName(
      "Own case: 40 kip at 9 in on 7 x 0.5 in, k 0.50 ksi: 1/lambda 59.56 in, y 0.4059 in, theta 0.013631, M 315.7 at 24 in and 181.4 at 60 in, none at 140.3 in, joint good below 31.2 in")
  void moment_on_a_free_head() {
    DeflectedPile bent = PILE.momentOnFreeHead(360 * KIP_INCH);
    assertThat(PILE.characteristicLength() / INCH).isCloseTo(59.56, PRINTED);
    assertThat(PILE.lambda() * INCH).isCloseTo(0.016790, PRINTED);
    assertThat(bent.headDeflection() / INCH).isCloseTo(0.4059, PRINTED);
    assertThat(bent.headRotation()).isCloseTo(0.013631, PRINTED);
    assertThat(bent.headRotation() * 9).isCloseTo(0.1227, PRINTED);
    assertThat(bent.moment(0) / KIP_INCH).isCloseTo(360, withPercentage(1e-6));
    assertThat(bent.moment(24 * INCH) / KIP_INCH).isCloseTo(315.7, PRINTED);
    assertThat(bent.moment(60 * INCH) / KIP_INCH).isCloseTo(181.4, PRINTED);
    assertThat(bent.depthOfNoMoment() / INCH).isCloseTo(140.3, PRINTED);
    assertThat(bent.headForceKilonewtons()).isZero();
    assertThat(bent.shear(0)).isCloseTo(0, within(1e-9));
    // shear 2 lambda M B
    assertThat(Math.abs(bent.shear(24 * INCH)) / KIP)
        .isCloseTo(2 * 0.01679 * 360 * HetenyiCurve.functionB(24 / 59.56), PRINTED);
    double joint =
        new ThreadedJoint(SEVEN).allowableMoment(CombinedStress.braced(SEVEN, 80 * KSI), 40 * KIP);
    assertThat(bent.depthWhereMomentFallsTo(joint) / INCH).isCloseTo(31.2, PRINTED);
    assertThat(bent.depthWhereMomentFallsTo(361 * KIP_INCH)).isZero();
  }

  @Test
  @DisplayName(
      "Own case: the same with the head held sideways: H 6.044 kip, theta 0.006815, M 221.3 at 24 in, none at 93.6 in")
  void moment_on_a_held_head() {
    DeflectedPile bent = PILE.momentOnHeldHead(360 * KIP_INCH);
    assertThat(bent.headForceKilonewtons() / KIP).isCloseTo(6.044, PRINTED);
    assertThat(bent.headRotation()).isCloseTo(0.006815, PRINTED);
    assertThat(bent.headDeflection()).isZero();
    assertThat(bent.moment(0) / KIP_INCH).isCloseTo(360, withPercentage(1e-6));
    assertThat(bent.moment(24 * INCH) / KIP_INCH).isCloseTo(221.3, PRINTED);
    assertThat(bent.depthOfNoMoment() / INCH).isCloseTo(93.6, PRINTED);
    assertThat(Math.abs(bent.shear(0)))
        .isCloseTo(bent.headForceKilonewtons(), withPercentage(1e-6));
  }

  @Test
  @DisplayName(
      "Own case: 3 kip on that pile: y 0.2015 in, theta 0.003383, M 57.6 kip-in at 46.8 in; head fixed y 0.1007 in, M 89.3")
  void force_on_the_head() {
    DeflectedPile free = PILE.forceOnFreeHead(3 * KIP);
    assertThat(free.headDeflection() / INCH).isCloseTo(0.2015, PRINTED);
    assertThat(free.headRotation()).isCloseTo(0.003383, PRINTED);
    double depth = Math.PI / 4 / PILE.lambda();
    assertThat(depth / INCH).isCloseTo(46.8, PRINTED);
    assertThat(Math.abs(free.moment(depth)) / KIP_INCH).isCloseTo(57.6, PRINTED);
    assertThat(free.shear(depth)).isCloseTo(0, within(1e-9));
    assertThat(free.depthOfNoMoment()).isCloseTo(Math.PI / PILE.lambda(), withPercentage(1e-6));
    assertThat(free.headForceKilonewtons()).isEqualTo(3 * KIP);
    DeflectedPile fixed = PILE.forceOnFixedHead(3 * KIP);
    assertThat(fixed.headDeflection() / INCH).isCloseTo(0.1007, PRINTED);
    assertThat(fixed.headRotation()).isZero();
    assertThat(Math.abs(fixed.moment(0)) / KIP_INCH).isCloseTo(89.3, PRINTED);
    assertThat(fixed.depthOfNoMoment()).isCloseTo(depth, withPercentage(1e-6));
    assertThat(fixed.headForceKilonewtons()).isEqualTo(3 * KIP);
  }

  @Test
  @DisplayName(
      "Hetenyi, endless beam (from memory, verify): y P lambda / 2k, M P / 4 lambda, V P / 2")
  void force_inside() {
    DeflectedPile beam = PILE.forceInside(100);
    assertThat(beam.headDeflection())
        .isCloseTo(100 * PILE.lambda() / (2 * 0.50 * KSI), withPercentage(1e-9));
    assertThat(Math.abs(beam.moment(0))).isCloseTo(25 / PILE.lambda(), withPercentage(1e-9));
    assertThat(Math.abs(beam.shear(0))).isCloseTo(50, withPercentage(1e-9));
    assertThat(beam.headForceKilonewtons()).isEqualTo(100);
  }

  @ParameterizedTest(
      name =
          "Own case: 50 kip at 10 in on 7 x 0.5 in N80, su {0} psf, Es 67 su: 1/lambda {1} in, y {2} in, theta {3}")
  @CsvSource({"1000, 60.64, .5845, .01928", "500, 72.1, .827, .02292", "2000, 51.0, .413, .01621"})
  void soft_and_stiff_clay(double psf, double length, double y, double theta) {
    PileOnSprings pile = new PileOnSprings(EI, 67 * psf / 144 / 1000 * KSI);
    DeflectedPile bent = pile.momentOnFreeHead(500 * KIP_INCH);
    assertThat(pile.characteristicLength() / INCH).isCloseTo(length, PRINTED);
    assertThat(bent.headDeflection() / INCH).isCloseTo(y, PRINTED);
    assertThat(bent.headRotation()).isCloseTo(theta, PRINTED);
    if (psf == 1000) {
      assertThat(bent.headRotation() * 10).isCloseTo(0.193, PRINTED);
      assertThat(bent.moment(pile.characteristicLength()) / KIP_INCH).isCloseTo(254.1, PRINTED);
    }
  }

  @Test
  @DisplayName("By statics: 1 m free above ground adds theta0 Lf + M Lf^2 / 2EI and M Lf / EI")
  void free_length_above_ground() {
    double moment = 40;
    DeflectedPile ground = PILE.momentOnFreeHead(moment);
    assertThat(PILE.freeTopRotation(moment, 1))
        .isCloseTo(ground.headRotation() + moment / EI, withPercentage(1e-9));
    assertThat(PILE.freeTopDeflection(moment, 2))
        .isCloseTo(
            ground.headDeflection() + 2 * ground.headRotation() + moment * 4 / (2 * EI),
            withPercentage(1e-9));
    assertThat(PILE.freeTopRotation(moment, 0)).isEqualTo(ground.headRotation());
  }

  @Test
  @DisplayName(
      "By statics: beside a structure as stiff as the head the pile takes half of the moment")
  void elastic_split() {
    double stiffness = PILE.headRotationStiffness();
    assertThat(1 / PILE.momentOnFreeHead(1).headRotation())
        .isCloseTo(stiffness, withPercentage(1e-9));
    assertThat(PILE.shareOfMoment(stiffness)).isCloseTo(0.5, within(1e-12));
    assertThat(PILE.shareOfMoment(3 * stiffness)).isCloseTo(0.25, within(1e-12));
    assertThat(PILE.shareOfMoment(0)).isEqualTo(1);
  }

  @Test
  void nothing_acting_bends_nothing() {
    DeflectedPile still = PILE.momentOnFreeHead(0);
    assertThat(still.headDeflection()).isZero();
    assertThat(still.depthOfNoMoment()).isZero();
    assertThat(still.depthWhereMomentFallsTo(0)).isZero();
    assertThat(PILE.leastLength()).isCloseTo(3 * PILE.characteristicLength(), within(1e-12));
  }

  @Test
  void nonsense_is_refused() {
    assertThatThrownBy(() -> new PileOnSprings(0, 1)).hasMessageContaining("bending stiffness");
    assertThatThrownBy(() -> new PileOnSprings(1, Double.NaN))
        .hasMessageContaining("soil reaction");
    assertThatThrownBy(() -> PILE.momentOnFreeHead(1).moment(-1)).hasMessageContaining("depth");
    assertThatThrownBy(() -> PILE.momentOnFreeHead(Double.NaN)).hasMessageContaining("finite");
    assertThatThrownBy(() -> new HetenyiCurve(1, 0, 0, 0, 0)).hasMessageContaining("lambda");
    assertThatThrownBy(() -> PILE.freeTopRotation(1, -1)).hasMessageContaining("free length");
    assertThatThrownBy(() -> PILE.freeTopDeflection(1, -1)).hasMessageContaining("free length");
    assertThatThrownBy(() -> PILE.shareOfMoment(-1)).hasMessageContaining("structure");
  }
}
