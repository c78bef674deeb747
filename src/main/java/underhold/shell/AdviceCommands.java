package underhold.shell;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.shell.core.command.CommandOption;
import underhold.advice.Standing;
import underhold.advice.SupportOption;
import underhold.consult.Consultant;
import underhold.consult.Consultation;
import underhold.consult.ZoneAdvice;
import underhold.consult.contrast.Contrast;
import underhold.consult.turning.Goal;
import underhold.consult.turning.TurningPoints;
import underhold.report.AdviceJson;
import underhold.report.AdviceText;
import underhold.report.CompareJson;
import underhold.report.CompareText;
import underhold.report.ExplainJson;
import underhold.report.ReasonsText;
import underhold.report.TraceText;
import underhold.site.Site;
import underhold.site.Zone;
import underhold.threads.AllProcessors;

/** The commands that answer a site. */
final class AdviceCommands {
  private static final List<CommandOption> ZONE = List.of(Options.ZONE_OPTION);

  private final Session session;

  private AdviceCommands(Session session) {
    this.session = session;
  }

  static List<ShellCommand> of(Session session) {
    AdviceCommands commands = new AdviceCommands(session);
    Parameter method = Parameter.needed("METHOD", SupportOption::ids);
    Parameter file = Parameter.file();
    return List.of(
        new ShellCommand(
            "advise",
            Commands.ADVICE,
            "ranks the support options of every zone, with reasons",
            List.of(file),
            List.of(Options.ZONE_OPTION, Options.SAVE_OPTION),
            commands::advise),
        command(
            "why",
            "all that speaks for and against a method, with facts, limits and sources",
            List.of(method, file),
            commands::why),
        command(
            "why-not",
            "what rules a method out or stands above it, and the way back",
            List.of(method, file),
            commands::whyNot),
        command(
            "compare",
            "two methods, criterion by criterion",
            List.of(
                Parameter.needed("A", SupportOption::ids),
                Parameter.needed("B", SupportOption::ids),
                file),
            commands::compare),
        command(
            "trace",
            "every rule that fired, in order, and those that nearly did",
            List.of(file),
            commands::trace),
        WhatIfCommand.of(session),
        new ShellCommand(
            "size",
            Commands.ADVICE,
            "the calculation sheet of a method",
            List.of(method, file),
            List.of(Options.ZONE_OPTION, Options.SET_OPTION, Options.UNITS_OPTION),
            new SizeCommand(session)::run),
        new ShellCommand(
            "stages",
            Commands.ADVICE,
            "the scheme over all zones, and its stages in order with hold points and time",
            List.of(file),
            List.of(Options.ZONE_OPTION, Options.SET_OPTION),
            new StagesCommand(session)::run));
  }

  private static ShellCommand command(
      String name, String summary, List<Parameter> parameters, ShellCommand.Action action) {
    return new ShellCommand(name, Commands.ADVICE, summary, parameters, ZONE, action);
  }

  private int advise(Call call) {
    Optional<Path> saveTo = AdviceFiles.saveTo(call);
    Site site = session.site(call.word(0)).site();
    Consultant consultant = session.consultant();
    List<ZoneAdvice> zones =
        AllProcessors.each(
            zones(site, call.option(Options.ZONE)), zone -> consultant.firm(site, zone));
    Consultation answer = new Consultation(site, session.consultant().pack(), zones);
    session.output().answer(look -> AdviceText.of(answer, look), () -> AdviceJson.of(answer));
    saveTo.ifPresent(file -> AdviceFiles.save(session, answer, file));
    return Exit.DONE;
  }

  private int why(Call call) {
    SupportOption option = method(call.needed(0));
    Consultation answer = reasons(session, call, 1);
    session
        .output()
        .answer(
            look -> ReasonsText.why(answer, answer.zones(), option, look),
            () -> ExplainJson.reasons(answer, answer.zones(), option));
    return Exit.DONE;
  }

  private int whyNot(Call call) {
    SupportOption option = method(call.needed(0));
    Consultation answer = reasons(session, call, 1);
    Map<String, TurningPoints> ways = ways(answer, option);
    session
        .output()
        .answer(
            look -> ReasonsText.whyNot(answer, answer.zones(), option, ways, look),
            () -> ExplainJson.whyNot(answer, answer.zones(), option, ways));
    return Exit.DONE;
  }

  /** What would bring the option back where it is ruled out, or put it first where it is not. */
  private Map<String, TurningPoints> ways(Consultation answer, SupportOption option) {
    List<ZoneAdvice> behind =
        answer.zones().stream()
            .filter(advice -> advice.ranking().of(option).standing() != Standing.LEADS)
            .toList();
    Consultant consultant = session.consultant();
    List<TurningPoints> found =
        AllProcessors.each(behind, advice -> way(consultant, answer, advice, option));
    Map<String, TurningPoints> ways = new LinkedHashMap<>();
    for (int i = 0; i < behind.size(); i++) {
      ways.put(behind.get(i).name(), found.get(i));
    }
    return ways;
  }

  private static TurningPoints way(
      Consultant consultant, Consultation answer, ZoneAdvice advice, SupportOption option) {
    boolean out = advice.ranking().of(option).standing() == Standing.RULED_OUT;
    Zone zone = zones(answer.site(), Optional.of(advice.name())).get(0);
    return consultant
        .turning(answer.site(), zone)
        .cheapest(out ? Goal.back(option) : Goal.first(option));
  }

  private int compare(Call call) {
    SupportOption one = method(call.needed(0));
    SupportOption other = method(call.needed(1));
    if (one == other) {
      throw Refusal.usage("Two different methods are needed to compare.");
    }
    Consultation answer = reasons(session, call, 2);
    List<Contrast> contrasts =
        answer.zones().stream().map(zone -> Contrast.of(zone, answer.pack(), one, other)).toList();
    session
        .output()
        .answer(
            look -> CompareText.of(answer, contrasts, look),
            () -> CompareJson.of(answer, contrasts));
    return Exit.DONE;
  }

  private int trace(Call call) {
    Consultation answer = reasons(session, call, 0);
    session
        .output()
        .answer(
            look -> TraceText.of(answer, answer.zones(), look),
            () -> ExplainJson.trace(answer, answer.zones()));
    return Exit.DONE;
  }

  /** The answer to the zones that the command line asks for. */
  static Consultation consult(Session session, Call call, int fileAt) {
    Site site = session.site(call.word(fileAt)).site();
    return consult(session, site, zones(site, call.option(Options.ZONE)));
  }

  /** The answer to some zones of a site, without how firm it is. */
  static Consultation consult(Session session, Site site, List<Zone> zones) {
    Consultant consultant = session.consultant();
    List<ZoneAdvice> advice = AllProcessors.each(zones, zone -> consultant.advise(site, zone));
    return new Consultation(site, consultant.pack(), advice);
  }

  /** The same without the open questions, for what shows reasons alone. */
  static Consultation reasons(Session session, Call call, int fileAt) {
    Site site = session.site(call.word(fileAt)).site();
    Consultant consultant = session.consultant();
    List<ZoneAdvice> advice =
        AllProcessors.each(
            zones(site, call.option(Options.ZONE)), zone -> consultant.reasons(site, zone));
    return new Consultation(site, consultant.pack(), advice);
  }

  /** The zones that the command line asks for. */
  static List<Zone> zones(Site site, Optional<String> name) {
    return name.map(wanted -> List.of(site.zones().get(SiteCommands.zone(site, wanted))))
        .orElse(site.zones());
  }

  /** The support option of that id. */
  static SupportOption method(String typed) {
    return SupportOption.find(typed.toLowerCase(java.util.Locale.ROOT))
        .orElseThrow(
            () ->
                Refusal.usage(
                    "There is no method \""
                        + typed
                        + "\"."
                        + Nearest.question(typed, SupportOption.ids()),
                    "There are: " + String.join(", ", SupportOption.ids())));
  }
}
