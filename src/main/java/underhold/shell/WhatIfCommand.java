package underhold.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import underhold.consult.change.Contradiction;
import underhold.consult.change.SiteChange;
import underhold.consult.change.Trial;
import underhold.consult.change.WhatIf;
import underhold.report.WhatIfJson;
import underhold.report.WhatIfText;
import underhold.site.FactDictionary;
import underhold.site.Site;

/** {@code what-if}: what changed facts would do to the answer; the site itself stays as it is. */
final class WhatIfCommand {
  private final Session session;

  private WhatIfCommand(Session session) {
    this.session = session;
  }

  static ShellCommand of(Session session) {
    return new ShellCommand(
        "what-if",
        Commands.ADVICE,
        "what other facts would change in the answer, and why",
        List.of(Parameter.several("FACT=VALUE", WhatIfCommand::assignments)),
        List.of(Options.ZONE_OPTION, Options.SITE_OPTION),
        new WhatIfCommand(session)::run);
  }

  private static List<String> assignments() {
    return Names.statable().stream().map(name -> name + "=").toList();
  }

  private int run(Call call) {
    Assignments typed = Assignments.read(call.words());
    List<String> problems = new ArrayList<>(typed.problems());
    OpenSite open = site(call, problems);
    OptionalInt zone = zone(open.site(), call.option(Options.ZONE), problems);
    refuse(problems);
    Trial trial = Trial.of(open.site(), zone, typed.facts());
    List<Contradiction> contradictions =
        trial.contradictions(FactDictionary.standard(), open.fileName());
    if (!contradictions.isEmpty()) {
      throw impossible(trial, contradictions);
    }
    SiteChange change = new WhatIf(session.consultant()).of(trial, zone);
    session.output().answer(look -> WhatIfText.of(change, look), () -> WhatIfJson.of(change));
    return Exit.DONE;
  }

  private static Refusal impossible(Trial trial, List<Contradiction> contradictions) {
    List<String> messages =
        new ArrayList<>(contradictions.stream().map(Contradiction::text).toList());
    boolean together = contradictions.stream().anyMatch(one -> !one.together().isEmpty());
    messages.add(
        "Nothing was tried."
            + (together ? " Facts that belong together can be changed in one command." : "")
            + (trial.layered()
                ? " What follows from layers of the ground changes with the layers, in a copy of"
                    + " the file."
                : ""));
    return Refusal.site(messages);
  }

  /** The site; where none can be had, wrong words are told as well. */
  private OpenSite site(Call call, List<String> problems) {
    try {
      return session.site(call.option(Options.SITE));
    } catch (Refusal refusal) {
      if (problems.isEmpty()) {
        throw refusal;
      }
      problems.addAll(refusal.messages());
      throw Refusal.usage(problems.toArray(String[]::new));
    }
  }

  private static OptionalInt zone(Site site, Optional<String> name, List<String> problems) {
    if (name.isEmpty()) {
      return OptionalInt.empty();
    }
    try {
      return OptionalInt.of(SiteCommands.zone(site, name.get()));
    } catch (Refusal refusal) {
      problems.addAll(refusal.messages());
      return OptionalInt.empty();
    }
  }

  private static void refuse(List<String> problems) {
    if (!problems.isEmpty()) {
      throw Refusal.usage(problems.toArray(String[]::new));
    }
  }
}
