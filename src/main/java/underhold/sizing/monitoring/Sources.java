package underhold.sizing.monitoring;

import underhold.mechanics.movement.Citation;
import underhold.sizing.Basis;
import underhold.sizing.Source;

/** The sources that the monitoring sheet cites. */
final class Sources {
  static final Source TRIGGER_PRACTICE =
      Source.memory("trigger levels as shares of the limit, monitoring practice");
  static final Source ACCURACY_EXAMPLE =
      new Source(
          "engineer's page on a monitored job: targets read to 0.01 ft (3 mm) cannot police an alert level of 1/8 in; specify 1 mm",
          Basis.JUDGEMENT);
  static final Source NYC_PLAN =
      Source.standard("New York City Building Code 2022, 1817.9 (Local Law 77 of 2023)");
  static final Source NYC_RING = Source.standard("New York City Building Code 2014, 3309.4.4");
  static final Source IBC_NOTICE =
      Source.standard("International Building Code, 3307.1 (secondary)");
  static final Source IBC_ASSESSMENT =
      Source.memory("International Building Code 2018 to 2024, 1803.5.7");
  static final Source OSHA_651_I = Source.standard("29 CFR 1926.651(i) (secondary copy)");
  static final Source RAIL_JOB =
      Source.published(
          "Deep Foundations magazine, January/February 2023, p. 75: a limit of 3 mm and a target of 2 mm, met under live rail");
  static final Source LIFT_PRACTICE =
      new Source(
          "London planning practice for one underpinning lift: about 5 mm down and 5 mm sideways",
          Basis.COMMON_PRACTICE);
  static final Source RESPONSE =
      Source.published(
          "Applied Sciences 11(2) 481 (2021), Deep excavation and adjacent buildings (abstract)");
  static final Source JET_GROUTING =
      Source.published(
          "ISSMGE library, Ground settlements observed during execution of jet grouting columns adjacent to a historic building (abstract)");

  private Sources() {}

  /** A citation of the calculators as a source of the sheet. */
  static Source of(Citation citation) {
    return new Source(
        citation.text(),
        switch (citation.provenance()) {
          case STANDARD -> Basis.STANDARD;
          case PUBLISHED -> Basis.PUBLISHED;
          case FROM_MEMORY -> Basis.FROM_MEMORY;
          case COMMON_PRACTICE -> Basis.COMMON_PRACTICE;
          case DERIVED -> Basis.STATICS;
        });
  }
}
