package underhold.shell;

import java.util.List;
import underhold.consult.Consultation;
import underhold.report.AdviceJson;
import underhold.report.AdviceText;

/** The commands that answer a site. */
final class AdviceCommands {
  private final Session session;

  private AdviceCommands(Session session) {
    this.session = session;
  }

  static List<ShellCommand> of(Session session) {
    AdviceCommands commands = new AdviceCommands(session);
    return List.of(
        new ShellCommand(
            "advise",
            Commands.ADVICE,
            "ranks the support options of every zone, with reasons",
            List.of(Parameter.file()),
            List.of(),
            commands::advise));
  }

  private int advise(Call call) {
    Consultation consultation = session.advise(session.site(call.word(0)).site());
    session
        .output()
        .answer(look -> AdviceText.of(consultation, look), () -> AdviceJson.of(consultation));
    return Exit.DONE;
  }
}
