package underhold.sizing.monitoring;

import static underhold.sizing.monitoring.MonitoringInputs.*;

import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;

/** Movement against its limit, and the slope at which it fades along the wall. */
final class FadeSection {
  /** Note of every check without a prediction. */
  static final String UNPREDICTED =
      "No movement is predicted. What is shown is what the whole limit, used up, would bring; whoever designs the excavation must predict the movement.";

  /**
   * How the movement fades along the wall.
   *
   * @param metres x, length over which it fades in a straight line
   */
  record Fade(double metres) {}

  private FadeSection() {}

  static Fade write(MonitoringCase site, SheetBuilder sheet, Limits limits) {
    forecast(site, sheet, limits);
    double fade = fade(site, sheet);
    distortion(site, sheet, limits, fade);
    return new Fade(fade);
  }

  private static void forecast(MonitoringCase site, SheetBuilder sheet, Limits limits) {
    Amount limit = Amount.thickness(limits.movementMetres());
    String title = "Movement predicted without underpinning against the limit that governs";
    if (site.predicted()) {
      sheet.check(
          "forecast-movement",
          title,
          site.amount(PREDICTED),
          limit,
          limits.aboveMovement(site.get(PREDICTED)),
          limits.movementSource(),
          Phrase.of("The prediction is taken as stated; this sheet predicts nothing."));
    } else {
      sheet.verdict(
          "forecast-movement",
          title,
          limit,
          limit,
          Verdict.REFER,
          limits.movementSource(),
          Phrase.of(UNPREDICTED));
    }
  }

  private static double fade(MonitoringCase site, SheetBuilder sheet) {
    double half = site.get(LENGTH) / 2;
    String title = "Length over which the movement fades along the wall";
    if (!site.digs()) {
      return sheet
          .step("fade-length", title, "x = {L} / 2")
          .with("L", "length of the wall", site.amount(LENGTH))
          .from(Source.judgement())
          .gives(Amount.length(half));
    }
    double depths = site.get(MonitoringSettings.FADE) * site.get(DEPTH);
    return sheet
        .step("fade-length", title, "x = min({k} × {Dx}, {L} / 2)")
        .with("k", "depths over which it fades", site.amount(MonitoringSettings.FADE))
        .with("Dx", "depth of the excavation", site.amount(DEPTH))
        .with("L", "length of the wall", site.amount(LENGTH))
        .from(Source.judgement())
        .note(
            "In a straight line from its full value to nothing; the wall beyond stays where it is. A shorter length bends the wall more.")
        .gives(Amount.length(Math.min(depths, half)));
  }

  private static void distortion(
      MonitoringCase site, SheetBuilder sheet, Limits limits, double fade) {
    double movement = site.predicted() ? site.get(PREDICTED) : limits.movementMetres();
    double distortion =
        sheet
            .step("angular-distortion", "Angular distortion, no tilt credited", "b = {s} / {x}")
            .with(
                "s",
                site.predicted() ? "predicted movement" : "movement limit",
                Amount.thickness(movement))
            .with("x", "length over which it fades", Amount.length(fade))
            .gives(Amount.ratio(movement / fade));
    if (limits.distortion().isEmpty()) {
      return;
    }
    Amount limit = Amount.ratio(limits.distortion().getAsDouble());
    String title = "Angular distortion against the limit that governs";
    if (site.predicted()) {
      sheet.check(
          "angular-distortion",
          title,
          Amount.ratio(distortion),
          limit,
          limits.aboveDistortion(distortion) == Verdict.FAILS
              ? site.failsOn(LENGTH)
              : Verdict.REFER,
          limits.distortionSource(),
          Phrase.of(
              "Published limits come from surveys of standing buildings: above one of them an engineer decides."));
    } else {
      sheet.verdict(
          "angular-distortion",
          title,
          Amount.ratio(distortion),
          limit,
          Verdict.REFER,
          limits.distortionSource(),
          Phrase.of(UNPREDICTED));
    }
  }
}
