package underhold.sizing.monitoring;

import static underhold.sizing.monitoring.MonitoringInputs.*;

import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;

/** Hazards, who decides, and what the sheet leaves out. */
final class CautionSection {
  private static final String ENGINEER = "the engineer of record";

  private CautionSection() {}

  static void write(MonitoringCase site, SheetBuilder sheet, Triggers triggers) {
    if (site.undermined()) {
      undermined(sheet);
    }
    if (site.digs() && site.get(BELOW) > 0) {
      sheet.caution(
          "digging below the footing",
          Phrase.of(
              "The excavation goes {d} below the footing. No digging below the base of a footing unless it is underpinned, on stable rock, or a registered engineer rules it far enough or harmless.",
              "d",
              site.amount(BELOW)),
          "a registered professional engineer",
          Sources.OSHA_651_I);
    }
    if (!site.predicted()) {
      sheet.caution(
          "no prediction",
          Phrase.of(
              "Watching does not hold anything up. Without a predicted movement within the limits this plan is no ground for leaving the structure without support."),
          ENGINEER,
          Sources.RESPONSE);
    }
    if (site.predicted() && site.get(PREDICTED) > triggers.alert().si()) {
      sheet.caution(
          "prediction above the alert level",
          Phrase.of(
              "{s} is predicted and the alert level is {a}: the alert will ring even if all goes as foreseen. The engineer agrees levels by stage before work.",
              "s",
              site.amount(PREDICTED),
              "a",
              triggers.alert()),
          ENGINEER,
          Source.judgement());
    }
    sheet.caution(
        "readings come late",
        Phrase.of(
            "A collapse can come between two readings: stop levels protect against slow movement only. The wall of the excavation, its props and its water must be safe by themselves."),
        ENGINEER,
        Source.judgement());
    sheet.caution(
        "plan and survey as duties",
        Phrase.of(
            "New York City asks for a monitoring plan by an engineer: instruments, frequency, duration, reports, movement and vibration allowed, actions. Neighbours within the depth of the excavation are monitored, historic ones within {h}.",
            "h",
            Amount.length(27.432)),
        ENGINEER,
        Sources.NYC_PLAN);
    sheet.caution(
        "notice",
        Phrase.of(
            "Owners of adjoining buildings are told in writing, 10 days or more before digging, by the US model code."),
        "the owner of the excavation",
        Sources.IBC_NOTICE);
    if (site.historic()) {
      sheet.caution(
          "protected fabric",
          Phrase.of(
              "Points and gauges are fixed without harm to the fabric, with the consent of the authority."),
          "the heritage authority",
          Source.practice());
    }
    if (site.get(RAIL).equals("rail") || site.get(KIND).equals("elevated-rail-bent")) {
      sheet.caution(
          "live rail",
          Phrase.of(
              "Track owners set limits of their own, of line and level as well; {a} was set and met on one job.",
              "a",
              Amount.thickness(0.003)),
          "the railway",
          Sources.RAIL_JOB);
    }
    sheet.caution(
        "ground treatment nearby",
        Phrase.of(
            "Jet grouting beside a historic building moved it by {a} and more and cracked others far off: trials and far points first.",
            "a",
            Amount.thickness(0.015)),
        ENGINEER,
        Sources.JET_GROUTING);
    notCovered(sheet);
  }

  private static void undermined(SheetBuilder sheet) {
    sheet.verdict(
        "soil-stays",
        "Places where soil is taken from under the element, which watching cannot replace",
        Amount.count(1),
        Amount.count(0),
        Verdict.FAILS,
        Sources.OSHA_651_I,
        Phrase.of("This sheet then serves only beside a support."));
    sheet.caution(
        "soil is taken from under the element",
        Phrase.of(
            "Support that is taken away must be replaced before it goes: this plan goes with a support, never in place of one."),
        ENGINEER,
        Sources.OSHA_651_I);
  }

  private static void notCovered(SheetBuilder sheet) {
    sheet
        .notCovered(
            "Prediction of the movement: it depends on the wall, the ground, water and care.")
        .notCovered(
            "Zone rules whose datum or lines were not at hand: 30 degrees from the toe, zone charts of older manuals.")
        .notCovered(
            "Movement of ground water, services and paving, which need points of their own.")
        .notCovered("Long-term, continuous vibration, and vibration that disturbs people or plant.")
        .notCovered(
            "The state of the structure itself: one that is cracked or leaning has used up part of its limit.");
  }
}
