package underhold.sizing.edgepits;

import underhold.sizing.Source;

/** The sources that the edge pits sheet cites. */
final class Sources {
  static final Source NYC_1817 = Source.standard("New York City Building Code 2022, 1817.5.4.1.1");
  static final Source IBC_1610 =
      Source.published(
          "International Building Code (2021 family), 1610.1 (excerpt): at rest where restrained at the top, active where free to move");
  static final Source IBC_1804 =
      Source.published(
          "International Building Code, Table 1804.2 (2006), now 1806.2, as quoted in code change S148-07/08");
  static final Source IBC_CLAY =
      Source.memory("International Building Code, 1806.3.2, cohesion no more than half the load");
  static final Source AASHTO_FRICTION =
      Source.published(
          "Caltrans, Trenching and Shoring Manual, 2025 revision, Table 4-2 = AASHTO C3.11.5.3-1 (digest), lower ends");
  static final Source CALTRANS_SURCHARGE =
      Source.published("Caltrans, Trenching and Shoring Manual, 2025 revision, 5-1.01 (digest)");
  static final Source CALTRANS_STRIP =
      Source.published("Caltrans, Trenching and Shoring Manual, 2025 revision, 5-1-2 (digest)");
  static final Source CALTRANS_PROPS =
      Source.memory("Caltrans, Trenching and Shoring Manual, walls with several tiers of supports");
  static final Source CALTRANS_HEAVE =
      Source.published("Caltrans, Trenching and Shoring Manual, 2025 revision, 10-3 (digest)");
  static final Source BASE_HEAVE =
      Source.memory(
          "Bjerrum and Eide, Stability of Strutted Excavations in Clay, Geotechnique 6, 1956; Skempton 1951");
  static final Source PIPING =
      Source.memory("critical gradient, soil mechanics texts; factor 1.5 to 2");
  static final Source UFC =
      Source.published("UFC 3-220-20 (16 January 2025), chapters 4 and 5 (extracts)");
  static final Source DOWEL =
      Source.memory("steel in shear: AISC 360 chapter J; dowel action: Rasmussen 1963");
  static final Source HOEK_BRAY =
      Source.memory("Hoek and Bray, Rock Slope Engineering, plane failure");
  static final Source OSHA_651_I = Source.standard("29 CFR 1926.651(i) (secondary copy)");
  static final Source OSHA_652 = Source.standard("29 CFR 1926.652(a),(b) (secondary copy)");
  static final Source OSHA_651 = Source.standard("29 CFR 1926.651 (secondary copies)");
  static final Source HYBRID =
      Source.published(
          "Crockford, DFI 2008 (abstract): a live box on micropiles, its wall built beneath it in segments with tiebacks");

  static final Source FINE_SAND =
      Source.published("Popular Science Monthly vol. 88, 1916, p. 331, William Street subway");

  private Sources() {}
}
