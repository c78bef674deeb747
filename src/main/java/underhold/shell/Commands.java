package underhold.shell;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import org.springframework.shell.core.command.CommandRegistry;
import underhold.report.AdviceJson;
import underhold.report.Json;
import underhold.report.Program;

/** All commands of the program. */
final class Commands {
  static final String ADVICE = "Advice";
  static final String SITE = "The site";
  static final String REVIEW = "Review";
  static final String CLASSROOM = "Classroom";
  static final String KNOWLEDGE = "What it knows";
  static final String GENERAL = "General";

  /** In the order of the help text. */
  static final List<String> GROUPS = List.of(SITE, ADVICE, REVIEW, CLASSROOM, KNOWLEDGE, GENERAL);

  private Commands() {}

  /** A registry with all commands. */
  static CommandRegistry registry(Session session) {
    CommandRegistry registry = new CommandRegistry(new LinkedHashSet<>());
    List<ShellCommand> all = new ArrayList<>();
    all.add(version(session));
    all.add(HelpCommand.of(session, registry));
    all.add(InterviewCommand.of(session));
    all.addAll(SiteCommands.of(session));
    all.addAll(AdviceCommands.of(session));
    all.addAll(OutlookCommands.of(session));
    all.add(RecheckCommand.of(session));
    all.addAll(ReviewCommands.of(session));
    all.addAll(ClassCommands.of(session));
    all.add(ClassMakeCommand.of(session));
    all.add(ScreenCommand.of(session));
    all.add(ReportCommand.of(session));
    all.addAll(KnowledgeCommands.of(session));
    all.addAll(PackCommands.of(session));
    all.forEach(registry::registerCommand);
    return registry;
  }

  private static ShellCommand version(Session session) {
    return new ShellCommand(
        "version",
        GENERAL,
        "says which program and which rules answer",
        List.of(),
        Options.PACK,
        call -> {
          session
              .output()
              .answer(
                  look ->
                      "Underhold "
                          + Program.version()
                          + "\nrule pack "
                          + Program.rules(session.pack())
                          + "\n",
                  () ->
                      Json.object(
                          "program", Program.NAME,
                          "version", Program.version(),
                          "rulePack", AdviceJson.rulePack(session.pack())));
          return Exit.DONE;
        });
  }
}
