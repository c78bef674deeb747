package underhold.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("own cases, factors by NIST SP 811 (2008), appendix B")
class AcceptedFormsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          4 ft          | 1.2192    | ft
          4ft           | 1.2192    | ft
          4'            | 1.2192    | ft
          4′            | 1.2192    | ft
          4’ 6”         | 1.3716    | ft
          4′ 6″         | 1.3716    | ft
          4' 6''        | 1.3716    | ft
          4' 6"         | 1.3716    | ft
          4'-6"         | 1.3716    | ft
          4' - 6"       | 1.3716    | ft
          4'6"          | 1.3716    | ft
          4 ft 6 in     | 1.3716    | ft
          4 ft. 6 in.   | 1.3716    | ft
          4ft6in        | 1.3716    | ft
          4 feet 6 inches | 1.3716  | ft
          4'-6 1/2"     | 1.3843    | ft
          -4' 6"        | -1.3716   | ft
          6 in          | 0.1524    | in
          6"            | 0.1524    | in
          1 1/2 in      | 0.0381    | in
          1-1/2 in      | 0.0381    | in
          3/8 in        | 0.009525  | in
          -2 m          | -2        | m
          −2 m          | -2        | m
          +2 m          | 2         | m
          .5 m          | 0.5       | m
          1.2 m         | 1.2       | m
          1,200 mm      | 1.2       | mm
          1,234,567.5 mm | 1234.5675 | mm
          4 FT          | 1.2192    | ft
          100 MM        | 0.1       | mm
          2 Metres      | 2         | m
          2 meters      | 2         | m
          3 yards       | 2.7432    | yd
          1 foot        | 0.3048    | ft
          2\u00a0m      | 2         | m
          """)
  void lengths_are_read(String text, double metres, String unit) {
    assertRead(text.replace("\\u00a0", "\u00a0"), Measure.LENGTH, metres, unit);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          FORCE            | 1,200 kN       | 1200          | kN
          FORCE            | 1200 KN        | 1200          | kN
          FORCE            | 1200 kn        | 1200          | kN
          FORCE            | 2 MN           | 2000          | MN
          FORCE            | 12 kip         | 53.378659383  | kip
          FORCE            | 12 kips        | 53.378659383  | kip
          FORCE            | 12 k           | 53.378659383  | kip
          FORCE            | 12 K           | 53.378659383  | kip
          FORCE            | 1000 lbs       | 4.44822161526 | lb
          FORCE            | 1000 lbf       | 4.44822161526 | lb
          FORCE            | 1 ton          | 8.89644323052 | ton
          FORCE            | 1 tons         | 8.89644323052 | ton
          FORCE_PER_LENGTH | 250 kN/m       | 250           | kN/m
          FORCE_PER_LENGTH | 250 kN per metre | 250         | kN/m
          FORCE_PER_LENGTH | 250 N/mm       | 250           | kN/m
          FORCE_PER_LENGTH | 12 kip/ft      | 175.126835246 | kip/ft
          FORCE_PER_LENGTH | 12 klf         | 175.126835246 | kip/ft
          FORCE_PER_LENGTH | 12 k/ft        | 175.126835246 | kip/ft
          FORCE_PER_LENGTH | 12000 plf      | 175.126835246 | lb/ft
          FORCE_PER_LENGTH | 12000 lb / ft  | 175.126835246 | lb/ft
          PRESSURE         | 100 kPa        | 100           | kPa
          PRESSURE         | 100 KPA        | 100           | kPa
          PRESSURE         | 100 kN/m2      | 100           | kPa
          PRESSURE         | 100 kN/m²      | 100           | kPa
          PRESSURE         | 30 MPa         | 30000         | MPa
          PRESSURE         | 30 MPA         | 30000         | MPa
          PRESSURE         | 30 N/mm2       | 30000         | MPa
          PRESSURE         | 30 MN/m2       | 30000         | MPa
          PRESSURE         | 200 GPa        | 2e8           | GPa
          PRESSURE         | 3000 psf       | 143.640776941 | psf
          PRESSURE         | 3000 lb/ft^2   | 143.640776941 | psf
          PRESSURE         | 3 ksf          | 143.640776941 | ksf
          PRESSURE         | 2 tsf          | 191.521035921 | tsf
          PRESSURE         | 2 tons/sq ft   | 191.521035921 | tsf
          PRESSURE         | 4000 psi       | 27579.0291727 | psi
          UNIT_WEIGHT      | 120 pcf        | 18.8504956615 | pcf
          UNIT_WEIGHT      | 120 lb/cu. ft. | 18.8504956615 | pcf
          UNIT_WEIGHT      | 20 kN/m3       | 20            | kN/m3
          UNIT_WEIGHT      | 20 kN/m³       | 20            | kN/m3
          UNIT_WEIGHT      | 20 kN/m^3      | 20            | kN/m3
          ANGLE            | 30 deg         | 30            | deg
          ANGLE            | 30°            | 30            | deg
          ANGLE            | 30 degrees     | 30            | deg
          SPEED            | 1.2e-5 m/s     | 1.2e-5        | m/s
          SPEED            | 1.2E−5 m/s     | 1.2e-5        | m/s
          SPEED            | 2e-3 cm/s      | 2e-5          | cm/s
          SPEED            | 1 ft/min       | 0.00508       | ft/min
          SPEED            | 1 ft/day       | 3.52777777778e-6 | ft/day
          SPEED            | 0.5 in/s       | 0.0127        | in/s
          DURATION         | 36 h           | 36            | h
          DURATION         | 36 hrs         | 36            | h
          DURATION         | 3 days         | 72            | days
          DURATION         | 1 day          | 24            | days
          DURATION         | 2 weeks        | 336           | weeks
          MOMENT           | 5 kN·m         | 5             | kN·m
          MOMENT           | 5 kN.m         | 5             | kN·m
          MOMENT           | 5 kN m         | 5             | kN·m
          MOMENT           | 5 kNm          | 5             | kN·m
          MOMENT           | 5 kN-m         | 5             | kN·m
          MOMENT           | 10 kip-ft      | 13.5581794833 | kip-ft
          MOMENT           | 10 ft-kips     | 13.5581794833 | kip-ft
          MOMENT           | 10 k-ft        | 13.5581794833 | kip-ft
          MOMENT_PER_LENGTH | 5 kNm/m       | 5             | kN·m/m
          MOMENT_PER_LENGTH | 10 kip-ft/ft  | 44.4822161526 | kip-ft/ft
          AREA             | 12 sq. ft.     | 1.11483648    | ft2
          AREA             | 12 square feet | 1.11483648    | ft2
          AREA             | 12 sf          | 1.11483648    | ft2
          AREA             | 3 m²           | 3             | m2
          VOLUME           | 1 cu yd        | 0.764554857984 | yd3
          VOLUME           | 1 cy           | 0.764554857984 | yd3
          VOLUME           | 500 l          | 0.5           | L
          COUNT            | 12             | 12            | ``
          RATIO            | 0.25           | 0.25          | ``
          RATIO            | 1/4            | 0.25          | ``
          RATIO            | 25%            | 0.25          | %
          RATIO            | 25 per cent    | 0.25          | %
          """)
  void all_other_measures_are_read(Measure measure, String text, double si, String unit) {
    assertRead(text, measure, si, unit);
  }

  private static void assertRead(String text, Measure measure, double si, String unit) {
    assertThat(Quantity.parse("  " + text + "\t", measure).toOptional())
        .hasValueSatisfying(
            quantity -> {
              // the expected values are written with 12 figures
              assertThat(quantity.si()).isCloseTo(si, within(1e-11 * Math.abs(si)));
              assertThat(quantity.unit()).isEqualTo(unit);
              assertThat(quantity.measure()).isEqualTo(measure);
              assertThat(quantity.text()).isEqualTo(text);
            });
  }

  @Test
  void the_text_kept_has_no_sign_that_would_end_a_line_or_move_the_cursor() {
    for (String between : List.of("\t", "\u2028", "\u2029")) {
      Quantity kept =
          Quantity.parse("200" + between + "kPa", Measure.PRESSURE).toOptional().orElseThrow();
      assertThat(kept.text()).isEqualTo("200 kPa");
    }
  }
}
