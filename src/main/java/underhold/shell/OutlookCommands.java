package underhold.shell;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.springframework.shell.core.command.CommandOption;
import underhold.advice.SupportOption;
import underhold.consult.Consultant;
import underhold.consult.Consultation;
import underhold.consult.firmness.Firmness;
import underhold.consult.firmness.FirmnessFinder;
import underhold.consult.turning.Goal;
import underhold.consult.turning.TurningFinder;
import underhold.consult.turning.TurningPoints;
import underhold.report.AskNextJson;
import underhold.report.AskNextText;
import underhold.report.FirmnessJson;
import underhold.report.FirmnessText;
import underhold.report.TurningJson;
import underhold.report.TurningText;
import underhold.site.Site;
import underhold.site.Zone;
import underhold.threads.AllProcessors;

/** The commands that look past the first answer: what to find out, what would turn it, how firm. */
final class OutlookCommands {
  private static final int MOST_CHANGES = 3;
  private static final int USUAL_CHANGES = 2;
  private static final int LEAST_DRAWS = 50;
  private static final int MOST_DRAWS = 10_000;
  private static final int DETAILED_DRAWS = 200;

  private final Session session;

  private OutlookCommands(Session session) {
    this.session = session;
  }

  static List<ShellCommand> of(Session session) {
    OutlookCommands commands = new OutlookCommands(session);
    return List.of(
        command(
            "ask-next",
            "which unknown fact to find out first, how, and what each answer would mean",
            List.of(),
            commands::askNext),
        command(
            "turning-points",
            "the smallest changes of fact that would put another option first",
            List.of(Options.FOR_OPTION, Options.CHANGES_OPTION),
            commands::turningPoints),
        command(
            "firmness",
            "how often each option comes first when weights, limits and open facts are drawn",
            List.of(Options.DRAWS_OPTION, Options.SEED_OPTION),
            commands::firmness));
  }

  private static ShellCommand command(
      String name, String summary, List<CommandOption> own, ShellCommand.Action action) {
    List<CommandOption> options = new ArrayList<>(List.of(Options.ZONE_OPTION));
    options.addAll(own);
    return new ShellCommand(
        name, Commands.ADVICE, summary, List.of(Parameter.file()), options, action);
  }

  private int askNext(Call call) {
    Consultation answer = AdviceCommands.consult(session, call, 0);
    session.output().answer(look -> AskNextText.of(answer, look), () -> AskNextJson.of(answer));
    return Exit.DONE;
  }

  private int turningPoints(Call call) {
    Optional<SupportOption> option = call.option(Options.FOR).map(AdviceCommands::method);
    int most =
        (int) number(call, Options.CHANGES, "a number from 1 to 3", USUAL_CHANGES, 1, MOST_CHANGES);
    Site site = session.site(call.word(0)).site();
    Consultant consultant = session.consultant();
    Map<String, TurningPoints> zones =
        each(
            site,
            call,
            zone -> {
              TurningFinder finder = consultant.turning(site, zone);
              return option
                  .map(wanted -> finder.towards(Goal.first(wanted), most))
                  .orElseGet(() -> finder.another(most));
            });
    session
        .output()
        .answer(
            look -> TurningText.of(site, zones, session.pack(), look),
            () -> TurningJson.of(site.name(), zones, session.pack()));
    return Exit.DONE;
  }

  private int firmness(Call call) {
    int draws =
        (int)
            number(
                call,
                Options.DRAWS,
                "a number from 50 to 10000",
                DETAILED_DRAWS,
                LEAST_DRAWS,
                MOST_DRAWS);
    long seed =
        number(
            call,
            Options.SEED,
            "a number from 0 to 2147483647",
            FirmnessFinder.USUAL_SEED,
            0,
            Integer.MAX_VALUE);
    Site site = session.site(call.word(0)).site();
    Consultant consultant = session.consultant();
    Map<String, Firmness> zones =
        each(
            site,
            call,
            zone -> new FirmnessFinder(consultant.trials(site, zone), zone).find(draws, seed));
    session
        .output()
        .answer(
            look -> FirmnessText.of(site.name(), zones, session.pack(), look),
            () -> FirmnessJson.of(site.name(), zones, session.pack()));
    return Exit.DONE;
  }

  /** Something of every zone asked for, by its name, several zones at once. */
  private static <T> Map<String, T> each(Site site, Call call, Function<Zone, T> finder) {
    List<Zone> zones = AdviceCommands.zones(site, call.option(Options.ZONE));
    List<T> found = AllProcessors.each(zones, finder);
    Map<String, T> byName = new LinkedHashMap<>();
    for (int i = 0; i < zones.size(); i++) {
      byName.put(zones.get(i).name(), found.get(i));
    }
    return byName;
  }

  private static long number(
      Call call, String option, String allowed, long usual, long least, long most) {
    Optional<String> typed = call.option(option);
    if (typed.isEmpty()) {
      return usual;
    }
    String text = typed.get().strip();
    if (text.matches("[0-9]{1,10}")) {
      long value = Long.parseLong(text);
      if (value >= least && value <= most) {
        return value;
      }
    }
    throw Refusal.usage(
        "--"
            + option
            + " is \""
            + text
            + "\"; it must be "
            + allowed
            + ", such as --"
            + option
            + " "
            + Math.max(least, Math.min(usual, most))
            + ".");
  }
}
