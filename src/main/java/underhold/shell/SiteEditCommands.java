package underhold.shell;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.site.FactDefinition;
import underhold.site.FactDefinition.Scope;
import underhold.site.FactDictionary;
import underhold.site.FactReader;
import underhold.site.Site;
import underhold.site.SiteChecks;
import underhold.site.SiteProblem;
import underhold.site.StatedFact;
import underhold.site.Zone;

/** The commands that change single facts and zones of a site. */
final class SiteEditCommands {
  private final Session session;

  private SiteEditCommands(Session session) {
    this.session = session;
  }

  static List<ShellCommand> of(Session session) {
    SiteEditCommands commands = new SiteEditCommands(session);
    return List.of(
        SiteCommands.command(
            "site set",
            "states facts; of the whole site, or of the zone named",
            List.of(Parameter.several("FACT=VALUE", SiteEditCommands::assignments)),
            List.of(Options.ZONE_OPTION, Options.SITE_OPTION),
            commands::set),
        SiteCommands.command(
            "site clear",
            "takes back what was stated of a fact",
            List.of(Parameter.needed("FACT", Names::statable)),
            List.of(Options.ZONE_OPTION, Options.SITE_OPTION),
            commands::clear),
        SiteCommands.command(
            "site zone",
            "adds a zone",
            List.of(Parameter.needed("NAME", List::of)),
            List.of(Options.SITE_OPTION),
            commands::addZone),
        SiteCommands.command(
            "site unzone",
            "takes a zone out, with all that was stated of it",
            List.of(Parameter.needed("NAME", List::of)),
            List.of(Options.SITE_OPTION),
            commands::dropZone));
  }

  private static List<String> assignments() {
    return Names.statable().stream().map(name -> name + "=").toList();
  }

  private int set(Call call) {
    OpenSite open = session.draft(call.option(Options.SITE));
    Site site = open.site();
    for (Map.Entry<String, String> entry : pairs(call.words()).entrySet()) {
      FactDefinition fact = Names.fact(entry.getKey());
      if (fact.derived()) {
        throw Refusal.usage(
            fact.label() + " is never stated, it follows from other facts: " + fact.why());
      }
      StatedFact stated = stated(fact, entry.getValue());
      Optional<Integer> zone = zone(site, fact, call.option(Options.ZONE));
      Site after =
          zone.isPresent()
              ? Edits.with(site, zone.get(), fact, stated)
              : Edits.with(site, fact, stated);
      site = AnswerReader.inUnitsOf(site, after, stated);
    }
    return keep(open, site);
  }

  /** Words without an equals sign belong to the value before them: {@code gap=0.6 m}. */
  private static Map<String, String> pairs(List<String> words) {
    Map<String, String> pairs = new LinkedHashMap<>();
    String name = "";
    for (String word : words) {
      int equals = word.indexOf('=');
      if (equals > 0) {
        name = word.substring(0, equals);
        pairs.put(name, word.substring(equals + 1));
      } else if (name.isEmpty()) {
        throw Refusal.usage("\"" + word + "\" is not FACT=VALUE.");
      } else {
        pairs.put(name, (pairs.get(name) + " " + word).strip());
      }
    }
    pairs.replaceAll((fact, value) -> unquoted(value));
    return pairs;
  }

  /** Quotes round a value are the shell's manners, not the value's. */
  private static String unquoted(String value) {
    boolean quoted = value.length() > 1 && value.startsWith("\"") && value.endsWith("\"");
    return quoted ? value.substring(1, value.length() - 1) : value;
  }

  private static StatedFact stated(FactDefinition fact, String typed) {
    return FactReader.read(fact, typed)
        .fold(
            value -> new StatedFact(value, ""),
            () -> StatedFact.unknown(""),
            rejected -> {
              throw Refusal.site(fact.name() + ": " + rejected.explanation());
            });
  }

  /** The zone a fact is stated for; empty where it is stated for the whole site. */
  private static Optional<Integer> zone(Site site, FactDefinition fact, Optional<String> name) {
    if (name.isPresent()) {
      return Optional.of(SiteCommands.zone(site, name.get()));
    }
    if (fact.scope() == Scope.SITE) {
      return Optional.empty();
    }
    if (site.zones().size() == 1) {
      return Optional.of(0);
    }
    throw Refusal.usage(
        fact.label() + " is stated zone by zone: --zone NAME",
        "There are: " + String.join(", ", site.zones().stream().map(Zone::name).toList()));
  }

  private int clear(Call call) {
    OpenSite open = session.draft(call.option(Options.SITE));
    FactDefinition fact = Names.fact(call.needed(0));
    Optional<Integer> zone =
        call.option(Options.ZONE).map(name -> SiteCommands.zone(open.site(), name));
    Site site = open.site();
    if (zone.isPresent()) {
      site = Edits.without(site, zone.get(), fact);
    } else {
      site = Edits.without(site, fact);
      if (site.zones().size() == 1) {
        site = Edits.without(site, 0, fact);
      }
    }
    if (site.equals(open.site())) {
      session.output().say("Nothing was stated of " + fact.label() + " there.");
      return Exit.DONE;
    }
    return keep(open, site);
  }

  private int addZone(Call call) {
    OpenSite open = session.draft(call.option(Options.SITE));
    String name = call.needed(0).strip();
    Names.check("a zone", name);
    if (Edits.find(open.site(), name).isPresent()) {
      throw Refusal.site("There is a zone \"" + name + "\" already.");
    }
    return keep(open, Edits.with(open.site(), open.site().zones().size(), Edits.zone(name)));
  }

  private int dropZone(Call call) {
    OpenSite open = session.draft(call.option(Options.SITE));
    int index = SiteCommands.zone(open.site(), call.needed(0));
    if (open.site().zones().size() == 1) {
      throw Refusal.site("A site has at least one zone; this one has no other.");
    }
    return keep(open, Edits.withoutZone(open.site(), index));
  }

  /** Keeps a change that contradicts nothing; saves it at once outside the interactive shell. */
  private int keep(OpenSite open, Site site) {
    List<String> before = contradictions(open.site(), open.fileName());
    List<String> problems = new ArrayList<>(contradictions(site, open.fileName()));
    problems.removeAll(before);
    if (!problems.isEmpty()) {
      problems.add("Nothing was changed. Facts that belong together can be set in one command.");
      throw Refusal.site(problems);
    }
    OpenSite changed = open.with(site);
    if (session.interactive() && session.current().filter(open::equals).isPresent()) {
      session.open(changed);
      session.output().say("Changed, not saved yet: site save");
    } else {
      SiteFiles.write(changed);
      session.output().say(changed.file() + " is saved.");
    }
    return Exit.DONE;
  }

  private static List<String> contradictions(Site site, String fileName) {
    return SiteChecks.contradictions(site, FactDictionary.standard(), fileName).stream()
        .map(SiteProblem::text)
        .toList();
  }
}
