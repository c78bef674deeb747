package underhold.sizing.pits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.sizing.Amount;
import underhold.sizing.Check;
import underhold.sizing.Phrase;
import underhold.sizing.Sheet;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Step;
import underhold.sizing.StepProof;
import underhold.sizing.Verdict;

/** A plain wall cast against soil, ACI 318-19 14.5 in inches and pounds, worked apart. */
class PlainStepsTest {
  private static final double INCH = 0.0254;
  private static final double POUND = 0.0044482216152605;
  private static final double PSI = POUND / INCH / INCH;

  /** 1 kip-ft per foot and 1 kip per foot. */
  private static final double KIP = 1000 * POUND;

  private static final double KIP_PER_FOOT = KIP / (12 * INCH);

  private final SheetBuilder builder = SheetBuilder.titled("a wall of our own", "own");
  private PlainSteps.Strengths strengths = new PlainSteps.Strengths(0, 0);

  /** 14 in of 3,000 psi concrete; working 2.0 kip-ft and 4.0 kip a foot of wall. */
  @BeforeEach
  void wall() {
    strengths =
        PlainSteps.wall(
            builder,
            new PlainSteps.Wall(
                "dock",
                "dock wall",
                "Dock wall",
                Amount.length(14 * INCH),
                Amount.stress(3000 * PSI)),
            new PlainSteps.Effects(2 * KIP, 4 * KIP_PER_FOOT, 1.6, Phrase.of("As it stands.")));
  }

  @Test
  @DisplayName("ACI 318-19 14.5.2.1 and 14.5.5.1: 5 and 4/3 of the root of 3,000 psi")
  void nominal() {
    assertThat(strengths.flexure() / PSI).isCloseTo(273.861, within(0.001));
    assertThat(strengths.shear() / PSI).isCloseTo(73.030, within(0.001));
  }

  @Test
  @DisplayName("ACI 318-19 14.5.1.7: 2 in do not count; 0.6 x 273.86 x 288 in3 = 47.32 kip-in a ft")
  void design() {
    Sheet sheet = builder.build();

    assertThat(sheet.steps().stream().map(Step::id))
        .containsExactly(
            "dock-flexural-tension",
            "dock-shear-stress",
            "dock-depth",
            "dock-moment",
            "dock-shear");
    assertThat(si(sheet, "dock-depth") / INCH).isCloseTo(12, within(1e-9));
    assertThat(si(sheet, "dock-moment") / KIP).isCloseTo(47.3232 / 12, within(1e-4));
    // 0.6 x 73.03 psi x 12 in x 12 in
    assertThat(si(sheet, "dock-shear") / KIP_PER_FOOT).isCloseTo(6.3098, within(1e-4));
    StepProof.redo(sheet);
  }

  @Test
  @DisplayName("own hand calculation: 1.6 x 2.0 passes against 3.94, 1.6 x 4.0 refers against 6.31")
  void checks() {
    Check bending = builder.build().check("dock-flexure").orElseThrow();
    Check shear = builder.build().check("dock-shear").orElseThrow();

    assertThat(bending.title()).isEqualTo("Dock wall in bending");
    assertThat(bending.demand().si() / KIP).isCloseTo(3.2, within(1e-9));
    assertThat(bending.capacity().si() / KIP).isCloseTo(3.9436, within(1e-4));
    assertThat(bending.verdict()).isEqualTo(Verdict.PASSES);
    assertThat(shear.title()).isEqualTo("Dock wall in shear");
    assertThat(shear.demand().si() / KIP_PER_FOOT).isCloseTo(6.4, within(1e-9));
    assertThat(shear.capacity().si() / KIP_PER_FOOT).isCloseTo(6.3098, within(1e-4));
    assertThat(shear.verdict()).isEqualTo(Verdict.REFER);
  }

  private static double si(Sheet sheet, String step) {
    return sheet.step(step).orElseThrow().result().si();
  }
}
