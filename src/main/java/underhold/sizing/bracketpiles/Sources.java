package underhold.sizing.bracketpiles;

import underhold.sizing.Basis;
import underhold.sizing.Source;

/** The sources that the sheet of bracket piles cites. */
final class Sources {
  static final Source FHWA_CASED =
      Source.published(
          "FHWA NHI-05-039, Micropile Design and Construction, 2005, p. 5-13 and 5-14");
  static final Source FHWA =
      Source.memory("FHWA NHI-05-039, Micropile Design and Construction, 2005, chapter 5");
  static final Source FHWA_BOND = Source.memory("FHWA NHI-05-039, 2005, Table 5-3");
  static final Source FHWA_STIFFNESS =
      Source.memory("FHWA NHI-05-039, 2005, Table 5-12, low ends; clay 67 su (Davisson)");
  static final Source IBC =
      Source.memory("International Building Code 2018, Table 1810.3.2.6 and 1810.3.10");
  static final Source IBC_MISLOCATION =
      Source.memory("International Building Code 2018, 1810.3.1.3, 3 in of mislocation");
  static final Source IBC_FIXITY =
      Source.memory(
          "International Building Code 2018, 1810.2.1, 5 ft into stiff, 10 ft into soft soil");
  static final Source IBC_CONCRETE =
      Source.standard("International Building Code 2018, 1810.3.10.1, 1810.3.10.2 and 1810.4.10");
  static final Source HETENYI = Source.memory("Hetenyi, Beams on Elastic Foundation, 1946");
  static final Source BROMS = Source.memory("Broms, Lateral resistance of piles, 1964");
  static final Source MASCARDI =
      Source.memory("Mascardi 1970 and Bjerrum 1957, as used in FHWA NHI-05-039");
  static final Source AISC_PLATE = Source.memory("AISC 360-16, F11 and J4.2");
  static final Source AISC_WELD = Source.memory("AISC 360-16, J2.4, Tables J2.4 and J2.5");
  static final Source WELD_METHOD =
      Source.published(
          "published chapter on eccentrically loaded welded connections, elastic method");
  static final Source AISC_PRYING = Source.memory("AISC Manual, part 9, prying");
  static final Source AISC_BASE = Source.memory("AISC Manual, base plates");
  static final Source ACI_ANCHOR =
      Source.published("design guide on concrete breakout to ACI 318-19 chapter 17, October 2025");
  static final Source ACI_ANCHOR_MEMORY = Source.memory("ACI 318-19, 17.6.1, 17.6.2 and 17.7.1");
  static final Source ACI_BEARING = Source.memory("ACI 318-19, 14.5.6 and 21.2");
  static final Source ACI_MODULUS = Source.memory("ACI 318-19, 19.2.2");
  static final Source AASHTO_SPACING =
      Source.memory("FHWA NHI-05-039 chapter 5; AASHTO LRFD 10.9.1.2");
  static final Source GEO_INSTITUTE =
      Source.published("Geo-Institute technology summaries on proof and verification tests");
  static final Source CITY_TEST =
      Source.published("City of Everett, contract page on micropile proof tests");
  static final Source TOMLINSON =
      Source.published(
          "Tomlinson, Pile Design and Construction Practice, p. 438 and 439, bracket piles");
  static final Source RIG =
      new Source(
          "trade journal on drilling in limited access, rigs down to 87 in", Basis.COMMON_PRACTICE);
  static final Source CONTRACTOR = new Source("contractor practice", Basis.COMMON_PRACTICE);
  static final Source UFC = Source.memory("UFC 3-220-20, sideways movement of pile heads");
  static final Source EDGE_SPAN =
      new Source("bays of a continuous edge by statics; caps by practice", Basis.COMMON_PRACTICE);

  private Sources() {}
}
