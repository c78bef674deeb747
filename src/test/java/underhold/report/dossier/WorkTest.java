package underhold.report.dossier;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class WorkTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "AASHTO LRFD 10.8.3.6 | AASHTO LRFD | 10.8.3.6",
        "AASHTO LRFD, Table 10.5.5.2.4-1 | AASHTO LRFD | Table 10.5.5.2.4-1",
        "ACI 318-19 chapter 14, plain concrete | ACI 318-19 | chapter 14, plain concrete",
        "ACI 318-19, 14.5.6 and 21.2 | ACI 318-19 | 14.5.6 and 21.2",
        "AISC 360-16 F2, F3 | AISC 360-16 | F2, F3",
        "BS 5950-1:2000 Table 14: cantilever | BS 5950-1:2000 | Table 14: cantilever",
        "29 CFR 1926.651(i) (secondary copy) | 29 CFR 1926.651 | (i) (secondary copy)",
        "29 CFR 1926.651 (secondary copies) | 29 CFR 1926.651 | (secondary copies)",
        "USACE EM 1110-2-2906, 1991, chapter 4 | USACE EM 1110-2-2906, 1991 | chapter 4",
        "Manual, 2025 revision, 5-1.02B (digest) | Manual, 2025 revision | 5-1.02B (digest)",
        "City Building Code 2022, 1817.5.4.1.1 | City Building Code 2022 | 1817.5.4.1.1",
        "Pile Book, 5th ed., pp. 442-443 (jacked) | Pile Book, 5th ed. | pp. 442-443 (jacked)",
        "Building Code, Table 1810.3.2.6; check it | Building Code | Table 1810.3.2.6; check it"
      })
  @DisplayName("Clause, table or page is the place, whatever stands before it the work")
  void parts(String citation, String title, String place) {
    assertThat(Work.of(citation)).isEqualTo(new Work("", title, place));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Broms, Lateral resistance of piles, 1964",
        "Bjerrum and Eide, Stability of Strutted Excavations, Geotechnique 6, 1956; Skempton 1951",
        "FHWA GEC 10, 2010, 13.3.5.3; Kulhawy, Prakoso and Akbas, 2005",
        "DIN 4150-3, Vibration in buildings, effects on structures, short-term values",
        "EN 1990: 1.35 G + 1.5 Q; the share of Q is not known, so 1.5",
        "L/500 to L/600 for needles under brittle walls and finishes, practice",
        "an engineer's page on a notice 10/88: 0.25 in movement at historic buildings",
        "practice: tail uplift with a factor of 1.5 or more",
        "usual allowance, 1/16 in"
      })
  @DisplayName("In doubt, and where a second work follows, nothing is taken off")
  void whole(String citation) {
    assertThat(Work.of(citation)).isEqualTo(new Work("", citation, ""));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "practice lengths, 0.7 to 1.0 m",
        "lumber sizes",
        "contractor practice",
        "critical gradient, soil mechanics texts; factor 1.5 to 2",
        "common US bars before about 1970, 40 ksi",
        "L/500 to L/600 for needles under brittle walls and finishes, practice",
        "London planning practice for one underpinning lift: about 5 mm down",
        "3 customary for bearing; at least 2 for temporary seats"
      })
  @DisplayName("Words of practice name no work that could be looked up")
  void practice(String citation) {
    assertThat(Work.of(citation).named()).isFalse();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Broms, Lateral resistance of piles, 1964",
        "29 CFR 1926.651(i) (secondary copy)",
        "O'Neill and Reese, 1999; AASHTO 10.8.3.5.4b and its table of joint factors",
        "Davisson; AASHTO 10.7.3.13.4",
        "O'Neill and Reese, FHWA drilled shafts manual, 1999",
        "custom of residential piers, 2 ft 6 in; Foundation Engineering Handbook, 0.9 m",
        "steel in shear: AISC 360 chapter J; dowel action: Rasmussen 1963",
        "order of transfer: needle practice (Prentis and White, Underpinning, 1950)"
      })
  @DisplayName("Author, number or title of a work name it, also after words of practice")
  void named(String citation) {
    assertThat(Work.of(citation).named()).isTrue();
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = "stiff-clay from 1 m; FHWA NHI-05-039, 2005, Table 5-12")
  @DisplayName("The layer that a value was chosen for is no part of the source")
  void layer(String citation) {
    assertThat(Work.of(citation))
        .isEqualTo(new Work("stiff-clay from 1 m", "FHWA NHI-05-039, 2005", "Table 5-12"));
  }

  static Stream<String> demos() {
    return Demos.names();
  }

  @ParameterizedTest
  @MethodSource("demos")
  @DisplayName("No letter of a citation of any demo's sheets is lost")
  void nothingLost(String demo) {
    Demos.material(demo).sheets().stream()
        .flatMap(CitationsTest::sources)
        .filter(Citations::isSource)
        .map(source -> source.citation())
        .distinct()
        .forEach(
            citation -> {
              Work work = Work.of(citation);
              assertThat(letters(work.before() + work.title() + work.place()))
                  .isEqualTo(letters(citation));
            });
  }

  /** All but what parts the parts. */
  private static String letters(String text) {
    return text.replaceAll("[ ,;]", "");
  }
}
