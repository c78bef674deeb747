package underhold.shell;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import underhold.advice.SupportOption;
import underhold.consult.Consultation;
import underhold.consult.SettingHelp;
import underhold.consult.Sized;
import underhold.consult.SizingDesk;
import underhold.consult.ZoneAdvice;
import underhold.quantity.UnitSystem;
import underhold.report.Json;
import underhold.report.Program;
import underhold.report.SheetJson;
import underhold.report.SheetPage;
import underhold.sizing.Sheet;

/** {@code size}: the calculation sheet of a method for each zone. */
final class SizeCommand {
  private final Session session;
  private final SizingDesk desk = new SizingDesk();

  SizeCommand(Session session) {
    this.session = session;
  }

  int run(Call call) {
    SupportOption option = AdviceCommands.method(call.needed(0));
    Consultation answer = AdviceCommands.reasons(session, call, 1);
    UnitSystem units = units(call, answer);
    List<Object> trees = new ArrayList<>();
    for (ZoneAdvice zone : answer.zones()) {
      Sized sized = desk.size(answer.site(), zone, option, call.all(Options.SET));
      if (sized instanceof Sized.BadSettings bad) {
        throw refused(option, bad, units);
      }
      if (sized instanceof Sized.NotThere none) {
        say(zone, none);
        trees.add(Json.object("zone", zone.name(), "sheet", null, "message", none.message()));
      }
      if (sized instanceof Sized.Done done) {
        show(zone, done.sheet(), units);
        trees.add(Json.object("zone", zone.name(), "sheet", SheetJson.of(done.sheet(), units)));
      }
    }
    if (session.output().json()) {
      session
          .output()
          .tree(Json.object("site", answer.site().name(), "method", option.id(), "sheets", trees));
    } else {
      session.output().print(Program.CAUTION + "\n");
    }
    return Exit.DONE;
  }

  /** The units asked for, else those of the site. */
  private static UnitSystem units(Call call, Consultation answer) {
    Optional<String> asked = call.option(Options.UNITS);
    if (asked.isEmpty()) {
      return answer.site().units();
    }
    return Arrays.stream(UnitSystem.values())
        .filter(system -> system.name().equalsIgnoreCase(asked.get()))
        .findFirst()
        .orElseThrow(
            () ->
                Refusal.usage(
                    "--units is \""
                        + asked.get()
                        + "\"; it must be SI or US, such as --units SI."));
  }

  private void show(ZoneAdvice zone, Sheet sheet, UnitSystem units) {
    if (!session.output().json()) {
      session.output().print(SheetPage.of(sheet, zone.name(), units, session.output().look()));
    }
  }

  private void say(ZoneAdvice zone, Sized.NotThere none) {
    if (!session.output().json()) {
      session.output().print("Zone " + zone.name() + ". " + none.message() + "\n");
    }
  }

  /** What may be set, and last, where the eye is, every bad setting. */
  private Refusal refused(SupportOption option, Sized.BadSettings bad, UnitSystem units) {
    List<String> messages = new ArrayList<>(List.of("Settings of " + option.label() + ":"));
    for (SettingHelp help : desk.settings(option)) {
      messages.add(
          "  "
              + help.name()
              + ": "
              + help.label()
              + "; "
              + help.allowed(units)
              + ", if not set "
              + help.fallback(units));
    }
    messages.addAll(bad.problems());
    boolean inFile = bad.problems().stream().anyMatch(problem -> problem.startsWith("in the site"));
    return inFile ? Refusal.site(messages) : Refusal.usage(messages.toArray(String[]::new));
  }
}
