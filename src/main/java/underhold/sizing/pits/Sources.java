package underhold.sizing.pits;

import underhold.sizing.Basis;
import underhold.sizing.Source;

/** The sources that the pits sheet cites. */
final class Sources {
  static final Source DIN_4123 =
      Source.standard(
          "DIN 4123:2013-04, Excavations, foundations and underpinning in the area of existing buildings, 7.3 (extract)");
  static final Source DIN_4123_SCOPE =
      Source.published("Commentary on DIN 4123 (2000), scope of sectional underpinning");
  static final Source UK_BAY =
      Source.published("LABC, Localised underpinning (UK building control guidance)");
  static final Source TOMLINSON =
      Source.memory("Tomlinson, Foundation Design and Construction, underpinning; BS 8004:1986");
  static final Source PIT_MANUAL =
      Source.memory("Prentis and White, Underpinning, 2nd ed. 1950; FHWA-RD-75-130 (1976)");
  static final Source ACI_PLAIN = Source.memory("ACI 318-19 chapter 14, plain concrete");
  static final Source ACI_REINFORCED = Source.memory("ACI 318-19, 21.2, 22.2 and 22.5");
  static final Source TMS_BEARING = Source.memory("TMS 402-13 Table A.4");
  static final Source NDS = Source.memory("NDS 2018 and its Supplement, No. 2 grade");
  static final Source OSHA_652 = Source.standard("29 CFR 1926.652(a),(b) (secondary copy)");
  static final Source OSHA_651 = Source.standard("29 CFR 1926.651 (secondary copies)");
  static final Source OSHA_651_I = Source.standard("29 CFR 1926.651(i) (secondary copy)");
  static final Source OSHA_APP_C =
      Source.standard("29 CFR 1926 Subpart P Appendix C (copy of the CFR 2024)");
  static final Source CALTRANS =
      Source.published(
          "Caltrans, Trenching and Shoring Manual, June 2011, revision 2 of July 2025 (digest)");
  static final Source CALTRANS_SURCHARGE =
      Source.published("Caltrans, Trenching and Shoring Manual, 2025 revision, 5-1.01 (digest)");
  static final Source CALTRANS_LAGGING =
      Source.published("Caltrans, Trenching and Shoring Manual, 2025 revision, 6-5 (digest)");
  static final Source CALTRANS_SOIL =
      Source.published(
          "Caltrans, Trenching and Shoring Manual, 2025 revision, Tables 3-1, 3-2 and 4-2 (digest)");
  static final Source CALTRANS_HEAVE =
      Source.published("Caltrans, Trenching and Shoring Manual, 2025 revision, 10-3 (digest)");
  static final Source LAGGING_TABLE =
      Source.memory("FHWA-RD-75-130 (1976), recommended lagging thickness");
  static final Source UFC =
      Source.published("UFC 3-220-20 (16 January 2025), chapters 4 and 5 (extracts)");
  static final Source VESIC =
      Source.memory("Vesic, Analysis of Ultimate Loads of Shallow Foundations, ASCE 1973");
  static final Source IBC_1806 =
      Source.published(
          "International Building Code (2021 family), Table 1806.2, by its IRC twin table");
  static final Source IBC_1610 =
      Source.published(
          "International Building Code (2021 family), 1610.1 (excerpt): walls restrained at the top, at-rest pressure");
  static final Source NYC_1817 = Source.standard("New York City Building Code 2022, 1817.5.4.1.1");
  static final Source NYC_1817_MASONRY =
      Source.standard("New York City Building Code 2022, 1817.5.4.1.1 and 1817.3.3");
  static final Source BJERRUM_EIDE =
      Source.memory(
          "Bjerrum and Eide, Stability of Strutted Excavations in Clay, Geotechnique 6, 1956; Skempton 1951");
  static final Source FHWA_MOVEMENT =
      Source.memory("FHWA-RD-75-128 and -130 (1976), movement of well-executed pit underpinning");
  static final Source PRACTITIONER = new Source("practitioner opinion", Basis.COMMON_PRACTICE);
  static final Source CONTRACTOR = new Source("contractor practice", Basis.COMMON_PRACTICE);
  static final Source COST_BOOK = Source.memory("cost-book rates of hand excavation");
  static final Source WATER_RULE =
      Source.memory("DIN 4123; trade rule on ground water below hand pits");
  static final Source TERZAGHI_CUT = Source.memory("Terzaghi, Theoretical Soil Mechanics, 1943");
  static final Source PIPING =
      Source.memory("critical gradient, soil mechanics texts; factor 1.5 to 2");

  private Sources() {}
}
