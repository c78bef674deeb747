package underhold.sizing.drilledpiles;

import underhold.sizing.Basis;
import underhold.sizing.Source;

/** The sources that the sheet cites. */
final class Sources {
  static final Source ALPHA_1999 =
      Source.memory(
          "O'Neill and Reese, FHWA drilled shafts manual, 1999; FHWA GEC 10, 2010, 13.3.5.2; AASHTO 10.8.3.5.1b");
  static final Source ALPHA_2018 = Source.memory("FHWA GEC 10, FHWA-NHI-18-024, 2018");
  static final Source ALPHA_FIXED =
      Source.published(
          "Tomlinson and Woodward, Pile Design and Construction Practice, 5th ed., p. 229 (0.45 in an example); Martin and others, ICE Geotechnical Engineering 169(2), 2016, abstract (0.5 in London Clay, 0.6 where load tests allow)");
  static final Source BETA_1999 =
      Source.memory("O'Neill and Reese, FHWA drilled shafts manual, 1999");
  static final Source BETA_GRAVEL =
      Source.published(
          "Das, Principles of Foundation Engineering, ex. 12.3 (form read in a companion to the book; limits from memory)");
  static final Source BETA_2010 =
      Source.memory("FHWA GEC 10, 2010, 13.3.5.1 (as quoted by a third party)");
  static final Source ROCK_SIDE =
      Source.memory("FHWA GEC 10, 2010, 13.3.5.3; Kulhawy, Prakoso and Akbas, 2005");
  static final Source ROCK_JOINTED =
      Source.memory("O'Neill and Reese, 1999; AASHTO 10.8.3.5.4b and its table of joint factors");
  static final Source ROCK_DAS =
      Source.published(
          "Das, Principles of Foundation Engineering, ex. 12.8 (read in a companion to the book)");
  static final Source WEAKER =
      Source.published(
          "Tomlinson and Woodward, Pile Design and Construction Practice, 5th ed., p. 207");
  static final Source CLAY_BASE =
      Source.published(
          "Das, Principles of Foundation Engineering, 2016, Table 10.4 (limit of 80 ksf from memory)");
  static final Source SAND_BASE =
      Source.published(
          "Das, Principles of Foundation Engineering, ex. 12.3 (read in a companion to the book; limits from memory)");
  static final Source ROCK_BASE =
      Source.memory("FHWA GEC 10, 2010, 13.3.5.3.2; AASHTO 10.8.3.5.4c");
  static final Source FACTORS = Source.memory("USACE EM 1110-2-2906, 1991, chapter 4");
  static final Source LRFD = Source.memory("AASHTO LRFD, Table 10.5.5.2.4-1");
  static final Source EC7 =
      Source.published(
          "UK national annex to Eurocode 7, set R4, bored piles, as tabled in a Heriot-Watt University class example (2.0 and 1.6, model factor 1.2)");
  static final Source IBC_STRESS =
      Source.memory("International Building Code, Table 1810.3.2.6; check the edition in force");
  static final Source IBC_FREE =
      Source.published("International Building Code 2009, 1810.2.1 to 1810.2.2 (secondary copy)");
  static final Source AISC = Source.memory("ANSI/AISC 360, chapter E3");
  static final Source FIXITY = Source.memory("Davisson; AASHTO 10.7.3.13.4");
  static final Source GROUP = Source.memory("AASHTO LRFD 10.8.3.6");
  static final Source BLOCK =
      Source.published("Civil Engineering Formulas, ch. 4, eq. 4.11, p. 108");
  static final Source SPACING = Source.published("Civil Engineering Formulas, ch. 4, p. 108");
  static final Source CURVES =
      Source.memory("Reese and O'Neill, normalized load transfer curves; Coyle and Reese, 1966");
  static final Source CONCRETE_MODULUS = Source.memory("ACI 318, 19.2.2");
  static final Source CAP =
      Source.standard("New York City Administrative Code, 27-694 (secondary copy)");
  static final Source LOT_LINE =
      Source.standard("New York City Administrative Code, 27-689(c) (secondary copy)");
  static final Source NYC_3309 =
      Source.standard(
          "New York City Building Code, 3309.5 and 1704.9.1, older numbering (as quoted by a law office)");
  static final Source OSHA_651_I = Source.standard("29 CFR 1926.651(i) (secondary copy)");
  static final Source JACKING =
      Source.published(
          "Tomlinson and Woodward, Pile Design and Construction Practice, 5th ed., pp. 442-443 (jacked piles; principle used for drilled ones)");
  static final Source SMALL_RIG = new Source("contractor practice", Basis.COMMON_PRACTICE);
  static final Source TEST_LOAD =
      Source.memory("International Building Code, 1810.3.3.1.2; ASTM D1143");
  static final Source TOLERANCE = Source.memory("usual pile tolerance, 3 in (75 mm) in plan");
  static final Source DOWNDRAG = Source.memory("AASHTO LRFD 3.11.8");

  static final Source GROUP_SETTLEMENT =
      Source.memory("Vesic, settlement of pile groups in sand, 1969: square root of B over D");

  private Sources() {}
}
