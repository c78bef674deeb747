package underhold.mechanics.steel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;
import static underhold.mechanics.steel.UsSteel.*;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Published examples of AISC 360. Tolerances cover three-figure tables and rounded intermediate
 * values.
 */
class AiscExamplesTest {
  @Test
  @DisplayName(
      "AISC Design Examples v15.1, F.1-1A/B: W18X50, braced throughout: Mp 421, 379 LRFD, 252 ASD"
          + " kip-ft")
  void braced_beam() {
    NominalStrength moment =
        new StrongAxisFlexure(shape("W18X50"), Steel.A992).nominal(0, MomentGradient.UNIFORM);
    assertThat(moment.nominal() / KIP_FOOT).isCloseTo(421, withPercentage(0.5));
    assertThat(moment.available(DesignMethod.LRFD) / KIP_FOOT).isCloseTo(379, withPercentage(0.5));
    assertThat(moment.available(DesignMethod.ASD) / KIP_FOOT).isCloseTo(252, withPercentage(0.5));
  }

  @Test
  @DisplayName(
      "AISC Design Examples v15.1, F.1-2: W18X50 braced at third points, Lb 11.67 ft, Cb 1.01: 305"
          + " and 203 kip-ft; Lp 5.83, Lr 16.9 ft")
  void beam_braced_at_third_points() {
    StrongAxisFlexure beam = new StrongAxisFlexure(shape("W18X50"), Steel.A992);
    assertThat(beam.plasticLengthMetres() / FOOT).isCloseTo(5.83, within(0.01));
    assertThat(beam.elasticLengthMetres() / FOOT).isCloseTo(16.9, within(0.06));
    NominalStrength moment = beam.nominal(35.0 / 3 * FOOT, 1.01);
    assertThat(moment.available(DesignMethod.LRFD) / KIP_FOOT).isCloseTo(305, withPercentage(0.5));
    assertThat(moment.available(DesignMethod.ASD) / KIP_FOOT).isCloseTo(203, withPercentage(0.5));
    NominalStrength exact = beam.nominal(35.0 / 3 * FOOT, 1.0135);
    assertThat(exact.available(DesignMethod.LRFD) / KIP_FOOT).isCloseTo(306.5, withPercentage(0.1));
  }

  @Test
  @DisplayName("AISC Design Examples v15.1, F.4: W24X55: 502.5 LRFD, 334.3 ASD kip-ft")
  void deeper_beam() {
    NominalStrength moment = new StrongAxisFlexure(shape("W24X55"), Steel.A992).nominal(0, 1);
    assertThat(moment.available(DesignMethod.LRFD) / KIP_FOOT)
        .isCloseTo(502.5, withPercentage(0.2));
    assertThat(moment.available(DesignMethod.ASD) / KIP_FOOT).isCloseTo(334.3, withPercentage(0.2));
  }

  @Test
  @DisplayName("AISC Design Examples v15.1, G.1A: W24X62: Vn 306; 306 LRFD, 204 ASD kip")
  void shear_along_the_web() {
    NominalStrength shear = new BeamShear(shape("W24X62"), Steel.A992).alongWeb();
    assertThat(shear.nominal() / KIP).isCloseTo(306, withPercentage(0.2));
    assertThat(shear.available(DesignMethod.LRFD) / KIP).isCloseTo(306, withPercentage(0.2));
    assertThat(shear.available(DesignMethod.ASD) / KIP).isCloseTo(204, withPercentage(0.2));
  }

  @Test
  @DisplayName("AISC Design Examples v15.1, G.6: W21X48 across the web: 210; 189 LRFD, 126 ASD kip")
  void shear_across_the_web() {
    NominalStrength shear = new BeamShear(shape("W21X48"), Steel.A992).acrossWeb();
    assertThat(shear.nominal() / KIP).isCloseTo(210, withPercentage(0.2));
    assertThat(shear.available(DesignMethod.LRFD) / KIP).isCloseTo(189, withPercentage(0.2));
    assertThat(shear.available(DesignMethod.ASD) / KIP).isCloseTo(125.8, withPercentage(0.2));
  }

  @Test
  @DisplayName(
      "AISC Design Examples v15.1, II.B-1, column side: tf 0.780, tw 0.485, k 1.38, d 14.2, lb 0.75"
          + " in: flange 171, web 186, crippling 233 kip (LRFD)")
  void concentrated_forces_on_a_column() {
    RolledSection column = w14x99();
    ConcentratedForce inside = new ConcentratedForce(0.75 * INCH, 60 * INCH);
    assertThat(lrfd(FlangeLocalBending.pull(column, Steel.A992, 60 * INCH)))
        .isCloseTo(171, withPercentage(0.5));
    assertThat(lrfd(WebLocalYielding.of(column, Steel.A992, inside)))
        .isCloseTo(186, withPercentage(0.5));
    assertThat(lrfd(WebLocalCrippling.of(column, Steel.A992, inside)))
        .isCloseTo(233, withPercentage(0.5));
  }

  @Test
  @DisplayName(
      "University column notes, example 1: W14X68, KL 20 ft: Fe 30.07, Fcr 24.93 ksi, phi Pn 448.7"
          + " kip")
  void column() {
    RolledSection w = shape("W14X68");
    FlexuralBuckling column =
        new FlexuralBuckling(w.areaSquareMetres(), w.weak().radiusMetres(), 20 * FOOT, Steel.A992);
    assertThat(column.elasticStressKilopascals() / KSI).isCloseTo(30.07, withPercentage(0.2));
    assertThat(column.criticalStressKilopascals() / KSI).isCloseTo(24.93, withPercentage(0.2));
    assertThat(lrfd(column.compression())).isCloseTo(448.7, withPercentage(0.2));
    assertThat(column.compression().available(DesignMethod.ASD) / KIP)
        .isCloseTo(298.6, withPercentage(0.2));
  }

  @Test
  @DisplayName(
      "AISC Design Examples v15.1, E.1A: W14X132, 30 ft pinned: 893 LRFD, 594 ASD kip (answers from"
          + " memory)")
  void long_column() {
    RolledSection w = shape("W14X132");
    FlexuralBuckling column =
        new FlexuralBuckling(w.areaSquareMetres(), w.weak().radiusMetres(), 30 * FOOT, Steel.A992);
    assertThat(column.slenderness()).isCloseTo(95.74, within(0.01));
    assertThat(lrfd(column.compression())).isCloseTo(893, withPercentage(0.3));
    assertThat(column.compression().available(DesignMethod.ASD) / KIP)
        .isCloseTo(594, withPercentage(0.3));
  }

  @Test
  @DisplayName(
      "A published steel handbook, p. 1.165: bearing plate, R 100 kip, n 3.13 in, A1 81 in2, Fy 36:"
          + " t 0.86 in")
  void bearing_plate() {
    double thickness =
        BearingOnConcrete.plateThickness(100 * KIP, 3.13 * INCH, 81 * INCH * INCH, Steel.A36);
    assertThat(thickness / INCH).isCloseTo(0.86, withPercentage(1));
  }

  private static double lrfd(NominalStrength strength) {
    return strength.available(DesignMethod.LRFD) / KIP;
  }

  /** The example's column; only the dimensions that the example prints count. */
  private static RolledSection w14x99() {
    RolledSection.Axis axis = new RolledSection.Axis(1, 1, 1, 1);
    return new RolledSection(
        "W14X99",
        147,
        29.1 * INCH * INCH,
        new RolledSection.Plates(
            14.2 * INCH, 14.6 * INCH, 0.485 * INCH, 0.780 * INCH, 1.38 * INCH, 9.34, 23.5),
        axis,
        axis,
        new RolledSection.Torsion(1, 1, 1, 1));
  }
}
