package underhold.mechanics.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import org.junit.jupiter.api.Test;

class OutcomeTest {

  @Test
  void aComputedValuePassesThroughMapAndFlatMap() {
    Outcome<Integer> outcome = Outcome.of(2).map(value -> value + 1).flatMap(Outcome::of);
    assertThat(outcome.orThrow()).isEqualTo(3);
    assertThat(outcome.reason()).isEmpty();
  }

  @Test
  void aReasonSurvivesMapAndFlatMapAndIsThrownWhenTheValueIsDemanded() {
    Outcome<Integer> outcome = Outcome.<Integer>outOfRange("too deep").map(value -> value + 1);
    assertThat(outcome.value()).isEmpty();
    assertThat(outcome.flatMap(Outcome::of).reason()).contains("too deep");
    assertThatIllegalStateException().isThrownBy(outcome::orThrow).withMessage("too deep");
  }

  @Test
  void anEmptyReasonIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> Outcome.outOfRange(" "));
  }

  @Test
  void aSafetyFactorWithoutDemandHasNoValueAndIsEnough() {
    SafetyFactor idle = new SafetyFactor(5, 0);
    assertThat(idle.value()).isEmpty();
    assertThat(idle.isAtLeast(1.5)).isTrue();
    SafetyFactor loaded = new SafetyFactor(3, 2);
    assertThat(loaded.value()).hasValue(1.5);
    assertThat(loaded.isAtLeast(1.5)).isTrue();
    assertThat(loaded.isAtLeast(1.51)).isFalse();
    assertThatIllegalArgumentException().isThrownBy(() -> new SafetyFactor(1, -1));
    assertThatIllegalArgumentException().isThrownBy(() -> new SafetyFactor(Double.NaN, 1));
  }

  @Test
  void aMissingTableOrColumnIsAFaultOfTheProgram() {
    assertThatIllegalStateException()
        .isThrownBy(() -> SoilTable.load("no-such-table.csv"))
        .withMessageContaining("no-such-table");
    SoilTable.Row row = SoilTable.load("terzaghi-n-gamma.csv").rows().get(0);
    assertThatIllegalStateException().isThrownBy(() -> row.text("no-such-column"));
  }
}
