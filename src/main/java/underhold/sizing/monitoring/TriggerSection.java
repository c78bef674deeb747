package underhold.sizing.monitoring;

import static underhold.sizing.monitoring.MonitoringSettings.*;

import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.Setting;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Verdict;

/** Trigger levels, and whether the instruments can see them. */
final class TriggerSection {
  private final MonitoringCase site;
  private final SheetBuilder sheet;
  private final Limits limits;

  private TriggerSection(MonitoringCase site, SheetBuilder sheet, Limits limits) {
    this.site = site;
    this.sheet = sheet;
    this.limits = limits;
  }

  static Triggers write(MonitoringCase site, SheetBuilder sheet, Limits limits) {
    TriggerSection section = new TriggerSection(site, sheet, limits);
    Triggers triggers =
        new Triggers(
            section.level("alert", ALERT),
            section.level("action", ACTION),
            section.level("stop", STOP));
    if (limits.distortion().isPresent()) {
      double differential = section.differential(limits.distortion().getAsDouble());
      section.differentialLevel("alert", ALERT, differential);
      section.differentialLevel("action", ACTION, differential);
      section.differentialLevel("stop", STOP, differential);
    }
    section.accuracy(triggers.alert());
    return triggers;
  }

  private Amount level(String name, Setting share) {
    double level =
        sheet
            .step(
                name + "-level",
                "Level " + name + " of movement, down, up or sideways",
                "A = {k} × {S}")
            .with("k", "share of the limit", site.amount(share))
            .with("S", "movement limit", Amount.thickness(limits.movementMetres()))
            .from(share.source())
            .gives(Amount.thickness(site.get(share) * limits.movementMetres()));
    return Amount.thickness(level);
  }

  private double differential(double distortion) {
    return sheet
        .step(
            "differential-limit", "Difference allowed between neighbouring points", "d = {b} × {p}")
        .with("b", "limit of angular distortion", Amount.ratio(distortion))
        .with("p", "distance between points", site.amount(SPACING))
        .gives(Amount.thickness(distortion * site.get(SPACING)));
  }

  private void differentialLevel(String name, Setting share, double limit) {
    sheet
        .step(
            name + "-difference",
            "Level " + name + " of the difference between neighbouring points",
            "A = {k} × {d}")
        .with("k", "share of the limit", site.amount(share))
        .with("d", "difference allowed", Amount.thickness(limit))
        .from(share.source())
        .gives(Amount.thickness(site.get(share) * limit));
  }

  private void accuracy(Amount alert) {
    double need =
        sheet
            .step("accuracy-needed", "Accuracy needed of a reading", "a = {c} × {A}")
            .with("c", "share of the alert level", site.amount(ACCURACY_SHARE))
            .with("A", "alert level", alert)
            .from(ACCURACY_SHARE.source())
            .gives(Amount.thickness(site.get(ACCURACY_SHARE) * alert.si()));
    sheet.check(
        "instrument-accuracy",
        "Accuracy of the instrument against a share of the alert level",
        site.amount(INSTRUMENT),
        Amount.thickness(need),
        site.failsOn(MonitoringInputs.LIMIT),
        ACCURACY_SHARE.source(),
        Phrase.of(
            "An instrument that cannot see a part of the alert level cannot police it: choose a more accurate one. The accuracy is that reached on site, proved by the baseline sets."));
    differentialAccuracy();
  }

  private void differentialAccuracy() {
    if (limits.distortion().isEmpty()) {
      return;
    }
    double alert = site.get(ALERT) * limits.distortion().getAsDouble() * site.get(SPACING);
    double pair =
        sheet
            .step(
                "difference-accuracy",
                "Accuracy of a difference of two readings",
                "ad = sqrt(2) × {a}")
            .with("a", "accuracy of one", site.amount(INSTRUMENT))
            .gives(Amount.thickness(Math.sqrt(2) * site.get(INSTRUMENT)));
    sheet.check(
        "difference-accuracy",
        "Accuracy of a difference against the alert level between neighbouring points",
        Amount.thickness(pair),
        Amount.thickness(alert),
        Verdict.REFER,
        ACCURACY_SHARE.source(),
        Phrase.of(
            "Where it falls short, read slope over a longer distance, by tilt meters or by precise levelling."));
  }
}
