package underhold.report.dossier;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.advice.OptionAdvice;
import underhold.advice.Standing;
import underhold.advice.SupportOption;
import underhold.consult.Consultant;
import underhold.consult.Consultation;
import underhold.consult.QuickSizing;
import underhold.consult.Sized;
import underhold.consult.SizingDesk;
import underhold.consult.ZoneAdvice;
import underhold.consult.scheme.SchemeDesk;
import underhold.consult.scheme.SchemeOutcome;
import underhold.consult.stage.StagePlanner;
import underhold.consult.trial.Trials;
import underhold.consult.turning.TurningFinder;
import underhold.consult.turning.TurningPoints;
import underhold.site.Site;
import underhold.site.Zone;
import underhold.sizing.Settings;
import underhold.sizing.Sheet;
import underhold.threads.AllProcessors;

/** Asks for all that a package is made from. */
public final class Gathering {
  private static final int CHANGED_TOGETHER = 2;

  private final Consultant consultant;
  private final SizingDesk desk = new SizingDesk();

  /** Asks this consultant. */
  public Gathering(Consultant consultant) {
    this.consultant = consultant;
  }

  /**
   * The material of a site, which takes some seconds a zone.
   *
   * @param site the site, with the settings that hold for its sheets
   * @param plan the settings of the stage plan
   * @param audience who reads it: turning points, which take the longest, are for reviewers
   */
  public Material of(Site site, Settings plan, Audience audience) {
    List<Found> found = AllProcessors.each(site.zones(), zone -> find(site, zone, audience));
    Map<String, TurningPoints> turning = new LinkedHashMap<>();
    List<ZoneAdvice> zones = new ArrayList<>();
    for (Found one : found) {
      zones.add(one.advice());
      one.turning().ifPresent(points -> turning.put(one.advice().name(), points));
    }
    Consultation answer = new Consultation(site, consultant.pack(), zones);
    SchemeOutcome scheme = new SchemeDesk(consultant.engine()).scheme(answer);
    return new Material(
        answer,
        turning,
        scheme,
        scheme instanceof SchemeOutcome.Made made
            ? Optional.of(StagePlanner.plan(made.scheme(), plan))
            : Optional.empty(),
        sheets(answer));
  }

  private record Found(ZoneAdvice advice, Optional<TurningPoints> turning) {}

  private Found find(Site site, Zone zone, Audience audience) {
    Trials trials = consultant.trials(site, zone);
    if (audience != Audience.REVIEWER) {
      return new Found(consultant.firm(site, zone, trials), Optional.empty());
    }
    AllProcessors.Begun<ZoneAdvice> advice =
        AllProcessors.begin(() -> consultant.firm(site, zone, trials));
    TurningPoints turning = new TurningFinder(trials, zone).another(CHANGED_TOGETHER);
    return new Found(advice.result(), Optional.of(turning));
  }

  /** The whole sheet; where the file's settings cannot be used, the one that asks about them. */
  private Optional<Sheet> sheet(Site site, ZoneAdvice zone, SupportOption option) {
    return desk.size(site, zone, option, List.of()) instanceof Sized.Done done
        ? Optional.of(done.sheet())
        : zone.sizing(option).map(QuickSizing::sheet);
  }

  /** A sheet that is wanted: zones count from 1. */
  private record Wanted(int number, ZoneAdvice zone, SupportOption option) {}

  private List<ZoneSheet> sheets(Consultation answer) {
    List<Wanted> wanted = new ArrayList<>();
    int number = 0;
    for (ZoneAdvice zone : answer.zones()) {
      number++;
      for (OptionAdvice option : zone.ranking().options()) {
        if (option.standing() != Standing.RULED_OUT) {
          wanted.add(new Wanted(number, zone, option.option()));
        }
      }
    }
    return AllProcessors.each(
            wanted,
            one ->
                sheet(answer.site(), one.zone, one.option)
                    .map(sheet -> new ZoneSheet(one.number, one.option, sheet)))
        .stream()
        .flatMap(Optional::stream)
        .toList();
  }
}
