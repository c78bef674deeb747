package underhold.mechanics.steel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Every column of a row, read anew from the file, against printed values. */
class SectionReaderTest {
  private static final double INCH = 0.0254;

  private static RolledSection named(List<RolledSection> all, String name) {
    return all.stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
  }

  private static void close(double value, double unit, double printed) {
    assertThat(value / unit).isCloseTo(printed, relative(printed));
  }

  private static Offset<Double> relative(double printed) {
    return within(1e-9 * Math.abs(printed));
  }

  @Test
  @DisplayName("AISC Shapes Database v15.0: W24X84, every property in its unit")
  void american_row() {
    List<RolledSection> all = SectionReader.american("W");
    assertThat(all).allMatch(one -> one.name().matches("W\\d.*")).hasSizeGreaterThan(40);
    RolledSection w = named(all, "W24X84");
    close(w.massKilogramsPerMetre(), 0.45359237 / 0.3048, 84);
    close(w.areaSquareMetres(), INCH * INCH, 24.7);
    close(w.plates().depthMetres(), INCH, 24.1);
    close(w.plates().flangeWidthMetres(), INCH, 9.02);
    close(w.plates().webThicknessMetres(), INCH, 0.47);
    close(w.plates().flangeThicknessMetres(), INCH, 0.77);
    close(w.plates().toeDistanceMetres(), INCH, 1.27);
    close(w.plates().flangeSlenderness(), 1, 5.86);
    close(w.plates().webSlenderness(), 1, 45.9);
    close(w.strong().secondMoment(), Math.pow(INCH, 4), 2370);
    close(w.strong().elasticModulus(), Math.pow(INCH, 3), 196);
    close(w.strong().plasticModulus(), Math.pow(INCH, 3), 224);
    close(w.strong().radiusMetres(), INCH, 9.79);
    close(w.weak().secondMoment(), Math.pow(INCH, 4), 94.4);
    close(w.weak().elasticModulus(), Math.pow(INCH, 3), 20.9);
    close(w.weak().plasticModulus(), Math.pow(INCH, 3), 32.6);
    close(w.weak().radiusMetres(), INCH, 1.95);
    close(w.torsion().constant(), Math.pow(INCH, 4), 3.7);
    close(w.torsion().warping(), Math.pow(INCH, 6), 12_800);
    close(w.torsion().effectiveRadiusMetres(), INCH, 2.37);
    close(w.torsion().flangeDistanceMetres(), INCH, 23.3);
    assertThat(SectionReader.american("HP"))
        .isNotEmpty()
        .allMatch(one -> one.name().matches("HP\\d.*"));
  }

  @Test
  @DisplayName(
      "Euronorm 53-62, HEB300: 300 x 300 x 11 x 19, r 27; properties recomputed from its dimensions, within a hundredth")
  void european_row() {
    List<RolledSection> all = SectionReader.european("HEB");
    assertThat(all).allMatch(one -> one.name().matches("HEB\\d.*")).hasSizeGreaterThan(10);
    RolledSection h = named(all, "HEB300");
    close(h.plates().depthMetres(), 1e-3, 300);
    close(h.plates().flangeWidthMetres(), 1e-3, 300);
    close(h.plates().webThicknessMetres(), 1e-3, 11);
    close(h.plates().flangeThicknessMetres(), 1e-3, 19);
    close(h.plates().toeDistanceMetres(), 1e-3, 46);
    close(h.plates().flangeSlenderness(), 1, 150 / 19.0);
    close(h.plates().webSlenderness(), 1, 208 / 11.0);
    close(h.torsion().flangeDistanceMetres(), 1e-3, 281);
    // two flanges, web and four fillets of r2 (1 - pi/4), cm
    double fillets = 4 * (1 - Math.PI / 4) * 2.7 * 2.7;
    double area = 2 * 30 * 1.9 + 26.2 * 1.1 + fillets;
    near(h.areaSquareMetres() * 1e4, area);
    near(h.massKilogramsPerMetre(), area * 0.785);
    // centroid of a fillet from its corner: 0.2234 r
    double away = 26.2 / 2 - 0.2234 * 2.7;
    double strong =
        30 * Math.pow(30, 3) / 12 - (30 - 1.1) * Math.pow(26.2, 3) / 12 + fillets * away * away;
    near(h.strong().secondMoment() * 1e8, strong);
    near(h.strong().elasticModulus() * 1e6, strong / 15);
    near(
        h.strong().plasticModulus() * 1e6,
        30 * 1.9 * 28.1 + 1.1 * 26.2 * 26.2 / 4 + fillets * away);
    near(h.strong().radiusMetres() * 1e2, Math.sqrt(strong / area));
    double aside = 0.55 + 0.2234 * 2.7;
    double weak =
        2 * 1.9 * Math.pow(30, 3) / 12 + 26.2 * Math.pow(1.1, 3) / 12 + fillets * aside * aside;
    near(h.weak().secondMoment() * 1e8, weak);
    near(h.weak().elasticModulus() * 1e6, weak / 15);
    near(
        h.weak().plasticModulus() * 1e6,
        2 * 1.9 * 30 * 30 / 4 + 26.2 * 1.1 * 1.1 / 4 + fillets * aside);
    near(h.weak().radiusMetres() * 1e2, Math.sqrt(weak / area));
    double warping = weak * 28.1 * 28.1 / 4;
    near(h.torsion().warping() * 1e12, warping);
    near(
        h.torsion().effectiveRadiusMetres() * 1e2,
        Math.sqrt(Math.sqrt(weak * warping) / (strong / 15)));
    // thin plates alone give 149 cm4; fillets thicken the joints
    assertThat(h.torsion().constant() * 1e8).isBetween(149.0, 200.0);
    assertThat(SectionReader.european("IPE"))
        .isNotEmpty()
        .allMatch(one -> one.name().startsWith("IPE"));
  }

  private static void near(double value, double reckoned) {
    assertThat(value).isCloseTo(reckoned, within(0.01 * reckoned));
  }

  @Test
  @DisplayName(
      "EN 1993-1-5 6.3 to 6.5 written out anew: short and long bearings at the end of HEB300 and IPE600")
  void patch_loads_at_an_end() {
    RolledSection heb = named(SectionReader.european("HEB"), "HEB300");
    RolledSection ipe = named(SectionReader.european("IPE"), "IPE600");
    Steel steel = Steel.S355;
    for (double[] place : new double[][] {{50, 0}, {120, 30}, {200, 400}, {260, 0}, {500, 400}}) {
      near(
          PatchLoad.end(heb, steel, place[0] / 1e3, place[1] / 1e3).kilonewtons(),
          byHand(300, 300, 11, 19, place[0], place[1]));
      near(
          PatchLoad.end(ipe, steel, place[0] / 1e3, place[1] / 1e3).kilonewtons(),
          byHand(600, 220, 12, 19, place[0], place[1]));
    }
  }

  /** Millimetres and newtons; kN. */
  private static double byHand(
      double h, double b, double tw, double tf, double bearing, double beyond) {
    double hw = h - 2 * tf;
    double ss = Math.min(bearing, hw);
    double factor = Math.min(6, 2 + 6 * (ss + beyond) / hw);
    double critical = 0.9 * factor * 210_000 * Math.pow(tw, 3) / hw;
    double m2 = 0.02 * Math.pow(hw / tf, 2);
    double length = length(b / tw, m2, tw, tf, hw, ss, beyond, factor);
    if (Math.sqrt(length * tw * 355 / critical) <= 0.5) {
      length = length(b / tw, 0, tw, tf, hw, ss, beyond, factor);
    }
    double slenderness = Math.sqrt(length * tw * 355 / critical);
    return Math.min(1, 0.5 / slenderness) * 355 * length * tw / 1000;
  }

  private static double length(
      double m1,
      double m2,
      double tw,
      double tf,
      double hw,
      double ss,
      double beyond,
      double factor) {
    double edge = Math.min(factor * 210_000 * tw * tw / (2 * 355 * hw), ss + beyond);
    double spread = ss + 2 * tf * (1 + Math.sqrt(m1 + m2));
    double one = edge + tf * Math.sqrt(m1 / 2 + Math.pow(edge / tf, 2) + m2);
    double other = edge + tf * Math.sqrt(m1 + m2);
    return Math.min(spread, Math.min(one, other));
  }
}
