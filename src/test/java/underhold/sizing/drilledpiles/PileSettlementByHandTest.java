package underhold.sizing.drilledpiles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;
import static underhold.sizing.drilledpiles.Piles.COLUMN;
import static underhold.sizing.drilledpiles.Piles.over;
import static underhold.sizing.drilledpiles.Piles.size;
import static underhold.sizing.drilledpiles.Piles.step;
import static underhold.sizing.drilledpiles.Piles.with;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.sizing.Check;
import underhold.sizing.Sheet;
import underhold.sizing.Verdict;

/**
 * Settlement of a pile at a quarter of its load, where every curve is still straight: then it is a
 * bar on springs, whose stiffness is known in closed form (statics of an elastic bar).
 */
class PileSettlementByHandTest {
  private static final double PILE = 0.244475;
  private static final double SOCKET = 0.196789;
  private static final double STEEL = 29_000 * 6894.757;

  private static double symbol(Sheet sheet, String id, String sign) {
    return sheet.step(id).orElseThrow().formula().symbols().stream()
        .filter(one -> one.sign().equals(sign))
        .findFirst()
        .orElseThrow(() -> new AssertionError(id + " has no " + sign))
        .amount()
        .si();
  }

  /** E A of concrete and bar: 4,700 sqrt(f'c) in MPa (ACI 318, 19.2.2.1), steel 29,000 ksi. */
  private static double axial(Sheet sheet, double diameter) {
    double concrete = 4_700_000 * Math.sqrt(symbol(sheet, "strength-uncased", "fc") / 1000);
    double bar = symbol(sheet, "strength-uncased", "Ab");
    return STEEL * bar + concrete * (Math.PI / 4 * diameter * diameter - bar);
  }

  /** Stiffness at the top of a bar held along its sides, over a spring below, kN/m. */
  private static double held(double below, double axial, double side, double length) {
    double root = Math.sqrt(axial * side);
    double tangent = Math.tanh(length * Math.sqrt(side / axial));
    return root * (below + root * tangent) / (root + below * tangent);
  }

  /** The same of a bar that nothing holds. */
  private static double free(double below, double axial, double length) {
    return below <= 0 ? 0 : 1 / (1 / below + length / axial);
  }

  /** The movement below the free length, which the sheet shows at a quarter of the load. */
  private static void moves(Sheet sheet, double stiffness) {
    double load = symbol(sheet, "settlement-25", "P");
    double movement = load / stiffness;
    assertThat(movement).isLessThan(0.005 * PILE); // every curve still straight
    assertThat(symbol(sheet, "settlement-25", "sb")).isCloseTo(movement, withPercentage(0.5));
  }

  @Test
  @DisplayName(
      "bar on springs: 16.26 m in clay, 50.69 kN/m called up at 1 % of the diameter, nothing at the base")
  void side_alone() {
    Sheet sheet = size(COLUMN);
    double spring = 66 * Math.PI * PILE / (0.01 * PILE);
    moves(sheet, held(0, axial(sheet, PILE), spring, 18.024 - 1.524 - PILE));
  }

  @Test
  @DisplayName(
      "bar on springs: the base in clay, 9 x 120 kPa at 5 % of the diameter, below a last diameter that nothing holds")
  void base_below_the_last_diameter() {
    Sheet sheet = size(COLUMN, "base=counted");
    double base = 9 * 120 * Math.PI / 4 * PILE * PILE / (0.05 * PILE);
    double spring = 66 * Math.PI * PILE / (0.01 * PILE);
    double counted = step(sheet, "embedment") - 1.524 - PILE;
    moves(sheet, held(free(base, axial(sheet, SOCKET), PILE), axial(sheet, PILE), spring, counted));
  }

  @Test
  @DisplayName(
      "bar on springs: clay to 9 m, half a metre of weathered rock that holds nothing, and a socket called up at 0.5 % of the diameter")
  void socket_below_weathered_rock() {
    Sheet sheet =
        size(
            over(
                "{ \"top\": \"9 m\", \"soil\": \"rock\", \"unitWeight\": \"25 kN/m3\", \"unconfinedStrength\": \"20 MPa\", \"rqd\": \"50 %\" }"));
    double toe = 5.5 + step(sheet, "embedment");
    double length = toe - 9.5;
    assertThat(length).isGreaterThan(0.2);
    double socket = step(sheet, "side-2") / length / (0.005 * PILE);
    double rock = held(0, axial(sheet, SOCKET), socket, length);
    double below = free(rock, axial(sheet, SOCKET), 0.5);
    double clay = 66 * Math.PI * PILE / (0.01 * PILE);
    moves(sheet, held(below, axial(sheet, PILE), clay, 9 - 7.024));
  }

  @Test
  @DisplayName(
      "own hand calculation: four piles of 2,475 kN and more in clay that holds at most 20 m x 50.7 kN/m each: the settlement is without end, at the least what calls all up")
  void more_than_the_ground_holds() {
    Sheet sheet = size(with(COLUMN, "1200 kN", "9000 kN"), "piles=4");
    Check head = sheet.check("head-settlement").orElseThrow();
    assertThat(head.verdict()).isEqualTo(Verdict.FAILS);
    assertThat(head.note().template()).contains("without end");
    // a base in sand calls its whole up at a tenth of the diameter, more than the limit of 10 mm
    assertThat(head.demand().si()).isGreaterThanOrEqualTo(0.1 * PILE);
    assertThat(head.capacity().si()).isEqualTo(0.010, within(1e-12));
    assertThat(sheet.step("settlement-felt")).isEmpty();
  }
}
