package underhold.sizing.needles;

import underhold.sizing.Basis;
import underhold.sizing.Source;

/** The sources that the sheet of needles cites. */
final class Sources {
  static final Source AISC_FLEXURE =
      Source.memory("AISC 360-16 F2, F3; reproduces AISC Design Examples v15.1, F.1 to F.4 (read)");
  static final Source AISC_SHEAR =
      Source.published("AISC Design Examples v15.1, G.1A (AISC 360-16 G2.1)");
  static final Source AISC_WEB =
      Source.memory("AISC 360-16 J10.2 to J10.5; J10.2 and J10.3 reproduce II.B-1 (read)");
  static final Source AISC_STIFFENER = Source.memory("AISC 360-16 J10.8, J4.4, J7, E3");
  static final Source AISC_CONCRETE =
      Source.published("AISC Design Examples v15.1 (AISC 360-16 J8)");
  static final Source EUROCODE_BENDING = Source.memory("EN 1993-1-1 6.2.5 and 6.3.2.3");
  static final Source EUROCODE_SHEAR = Source.memory("EN 1993-1-1 6.2.6");
  static final Source EUROCODE_WEB = Source.memory("EN 1993-1-5 6 and 9.4");
  static final Source DEFLECTION =
      Source.memory("L/500 to L/600 for needles under brittle walls and finishes, practice");
  static final Source DEFLECTION_CAP =
      Source.published(
          "an engineer's page on New York City TPPN 10/88: 0.25 in movement at historic buildings");
  static final Source PAIR_SHARE =
      Source.memory("practice: each needle of a pair for at least 55 to 60 % of the load");
  static final Source LOAD_KNOWN =
      Source.memory("needles want a load known within 10 to 15 %, practice");
  static final Source SETBACK =
      Source.published(
          "rule attributed to Merritt's handbook: 1 on 1 in sand, 1 on 2 in soft clay or silt"
              + " (read second-hand; taken as the flatter, 2 horizontal to 1 vertical); a UK"
              + " house-building standard gives 1 on 1");
  static final Source SPACING =
      Source.published(
          "Thatcher, Scaffolding (about 1900): needles 5 to 7 ft apart; a trade-school treatise of"
              + " the time: about 5 ft");
  static final Source SPACING_MODERN =
      Source.memory("practice for solid brick: needles 3 to 6 ft apart, under piers");
  static final Source MASONRY =
      Source.memory(
          "TMS 402-13 Table A.4, 100 psi: weakest solid brick, or rubble, in mortar N; old lime"
              + " mortar often 60 to 100 psi: test it");
  static final Source ARCH =
      Source.memory("arching: rise at most 0.6 of the wall's height, 0.1 of it in compression");
  static final Source IBC_1806 =
      Source.published("International Building Code (2021 family), Table 1806.2 (digest)");
  static final Source VESIC =
      Source.memory("Vesic, Analysis of Ultimate Loads of Shallow Foundations, ASCE 1973");
  static final Source STEINBRENNER =
      Source.memory("Steinbrenner 1934, in the form of Bowles, Foundation Analysis and Design");
  static final Source SEAT =
      Source.memory("practice: temporary factor on soil at least 2, settlement below 1/4 in");
  static final Source BEARING_FACTOR =
      Source.memory("3 customary for bearing; at least 2 for temporary seats");
  static final Source JACK =
      Source.memory("practice: jack rating 1.25, better 1.5 to 2 times the load");
  static final Source JACK_TABLE =
      new Source("usual ratings of hydraulic jacks, 10 to 500 tons", Basis.COMMON_PRACTICE);
  static final Source PRELOAD =
      Source.memory("pretest practice: 25-50-75-100 %, hold 5 to 15 min, stop at 1/16 in of lift");
  static final Source TAIL = Source.memory("practice: tail uplift with a factor of 1.5 or more");
  static final Source CRIB_STRESS =
      Source.memory("NDS 2018 Supplement; 0.73 at 0.02 in of deformation (4.2.6), 0.67 wet");
  static final Source CRIB_HEIGHT =
      Source.published("published cribbing guidance: height at most three times the least width");
  static final Source CLAMP =
      Source.memory("practice: friction of clamped steel on concrete 0.3 to 0.4, factor 2");
  static final Source OSHA_JACKS = Source.standard("29 CFR 1926.305(a), (c), (d)");
  static final Source OSHA_FOOTING = Source.memory("29 CFR 1926.651(i)");
  static final Source CANTILEVER_LENGTH =
      Source.memory(
          "BS 5950-1:2000 Table 14: cantilever held at its fulcrum, tip free, load on the top"
              + " flange: 2.5 times its length");
  static final Source LOAD_FACTOR =
      Source.memory("ASCE 7: 1.2 D + 1.6 L; the share of live load is not known, so 1.6");
  static final Source EUROCODE_FACTOR =
      Source.memory("EN 1990: 1.35 G + 1.5 Q; the share of Q is not known, so 1.5");
  static final Source TRANSFER =
      Source.memory(
          "order of transfer and return: needle practice (Prentis and White, Underpinning, 1950)");
  static final Source SCREW =
      Source.published(
          "published shoring practice: screw jacks and shims for long holding, never oil alone");
  static final Source CONTRACTOR = new Source("contractor practice", Basis.COMMON_PRACTICE);

  private Sources() {}
}
