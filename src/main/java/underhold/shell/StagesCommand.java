package underhold.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.consult.Consultation;
import underhold.consult.scheme.Scheme;
import underhold.consult.scheme.SchemeDesk;
import underhold.consult.scheme.SchemeOutcome;
import underhold.consult.stage.PlanOutcome;
import underhold.consult.stage.PlanSettings;
import underhold.consult.stage.StagePlanner;
import underhold.quantity.UnitSystem;
import underhold.report.Json;
import underhold.report.SchemeJson;
import underhold.report.StagesJson;
import underhold.report.StagesText;
import underhold.site.Site;
import underhold.sizing.Setting;
import underhold.sizing.SettingTable;
import underhold.sizing.Settings;

/** {@code stages}: the scheme of a site and one ordered plan of its stages. */
final class StagesCommand {
  private final Session session;

  StagesCommand(Session session) {
    this.session = session;
  }

  int run(Call call) {
    Site site = session.site(call.word(0)).site();
    Optional<String> zone =
        call.option(Options.ZONE)
            .map(name -> site.zones().get(SiteCommands.zone(site, name)).name());
    Settings settings = settings(call.all(Options.SET), site.units());
    Consultation answer = AdviceCommands.consult(session, site, site.zones());
    SchemeOutcome outcome = new SchemeDesk(session.consultant().engine()).scheme(answer);
    if (outcome instanceof SchemeOutcome.Made made) {
      PlanOutcome plan = StagePlanner.plan(made.scheme(), settings);
      show(made.scheme(), plan, zone);
      return plan instanceof PlanOutcome.Refused ? Exit.SITE : Exit.DONE;
    }
    SchemeOutcome.NotMade none = (SchemeOutcome.NotMade) outcome;
    if (session.output().json()) {
      session.output().tree(Json.object("site", site.name(), "scheme", SchemeJson.of(none)));
      return Exit.SITE;
    }
    throw Refusal.site(none.reason());
  }

  private void show(Scheme scheme, PlanOutcome plan, Optional<String> zone) {
    session
        .output()
        .answer(look -> StagesText.of(scheme, plan, zone, look), () -> StagesJson.of(scheme, plan));
  }

  /** The settings in force; every word that cannot be used is refused, with what may be set. */
  private static Settings settings(List<String> words, UnitSystem units) {
    SettingTable.Read read = PlanSettings.TABLE.parse(words);
    if (read.problems().isEmpty()) {
      return read.settings();
    }
    List<String> messages = new ArrayList<>(List.of("Settings of stages:"));
    for (Setting setting : PlanSettings.TABLE.numbers()) {
      messages.add(
          "  "
              + setting.name()
              + ": "
              + setting.label()
              + "; "
              + setting.range()
              + ", if not set "
              + setting.fallback().in(units));
    }
    PlanSettings.TABLE
        .choices()
        .forEach(
            choice ->
                messages.add(
                    "  "
                        + choice.name()
                        + ": "
                        + choice.label()
                        + "; "
                        + String.join(", ", choice.words())));
    messages.addAll(read.problems());
    throw Refusal.usage(messages.toArray(String[]::new));
  }
}
