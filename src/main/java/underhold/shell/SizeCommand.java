package underhold.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.advice.SupportOption;
import underhold.consult.Consultation;
import underhold.consult.ZoneAdvice;
import underhold.report.Json;
import underhold.report.Program;

/** {@code size}: the calculation sheet of a method for each zone. */
final class SizeCommand {
  private final Session session;

  SizeCommand(Session session) {
    this.session = session;
  }

  int run(Call call) {
    SupportOption option = AdviceCommands.method(call.needed(0));
    Consultation answer = AdviceCommands.consult(session, call, 1);
    List<Object> trees = new ArrayList<>();
    for (ZoneAdvice zone : answer.zones()) {
      Optional<Sheets.SheetView> sheet = session.sheets().of(option, answer.site(), zone);
      if (sheet.isEmpty()) {
        session.output().say(missing(option, zone));
      } else if (session.output().json()) {
        trees.add(Json.object("zone", zone.name(), "sheet", sheet.get().tree()));
      } else {
        session.output().print(sheet.get().text(session.output().look()));
      }
    }
    if (session.output().json()) {
      session.output().print(Json.text(Json.object("method", option.id(), "sheets", trees)));
    } else if (!trees.isEmpty()) {
      session.output().print(Program.CAUTION + "\n");
    }
    return Exit.DONE;
  }

  private static String missing(SupportOption option, ZoneAdvice zone) {
    return "There is no calculation sheet for "
        + option.label()
        + " yet; nothing was sized for zone "
        + zone.name()
        + ".";
  }
}
