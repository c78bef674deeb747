package underhold.shell;

import java.util.List;
import java.util.Optional;
import underhold.advice.Rule;
import underhold.report.AdviceJson;
import underhold.report.FactsText;
import underhold.report.Json;
import underhold.report.RulesText;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.SiteSchema;

/** The commands that show the dictionary and the rules. */
final class KnowledgeCommands {
  private final Session session;
  private final FactDictionary dictionary = FactDictionary.standard();

  private KnowledgeCommands(Session session) {
    this.session = session;
  }

  static List<ShellCommand> of(Session session) {
    KnowledgeCommands commands = new KnowledgeCommands(session);
    return List.of(
        new ShellCommand(
            "facts",
            Commands.KNOWLEDGE,
            "lists the facts of a site, or explains one",
            List.of(Parameter.optional("NAME", commands::factNames)),
            List.of(),
            commands::facts),
        new ShellCommand(
            "site schema",
            Commands.SITE,
            "prints the JSON Schema of site files, for editors",
            List.of(),
            List.of(),
            call -> {
              session.output().print(SiteSchema.generate());
              return Exit.DONE;
            }),
        new ShellCommand(
            "rules list",
            Commands.KNOWLEDGE,
            "lists every rule, file by file",
            List.of(),
            List.of(),
            call -> commands.show(session.pack().all())),
        new ShellCommand(
            "rules show",
            Commands.KNOWLEDGE,
            "shows one rule with its conditions, limits and sources",
            List.of(Parameter.needed("ID", commands::ruleIds)),
            List.of(),
            commands::rule),
        new ShellCommand(
            "rules find",
            Commands.KNOWLEDGE,
            "finds rules by any text in them",
            List.of(Parameter.several("TEXT", List::of)),
            List.of(),
            commands::find),
        RulesAuditCommand.of(session));
  }

  private List<String> ruleIds() {
    return session.pack().all().stream().map(Rule::id).toList();
  }

  private int show(List<Rule> rules) {
    session
        .output()
        .answer(
            look -> RulesText.list(rules, session.pack(), look),
            () ->
                Json.object(
                    "rulePack", AdviceJson.rulePack(session.pack()),
                    "rules", rules.stream().map(r -> RulesText.json(r, session.pack())).toList()));
    return Exit.DONE;
  }

  private int find(Call call) {
    String text = String.join(" ", call.words());
    List<Rule> found = RulesText.find(session.pack(), text);
    if (found.isEmpty() && !session.output().json()) {
      session.output().say("No rule holds \"" + text + "\".");
      return Exit.DONE;
    }
    return show(found);
  }

  private int rule(Call call) {
    String id = call.needed(0);
    Rule rule =
        session
            .pack()
            .rule(id)
            .orElseThrow(
                () ->
                    Refusal.usage(
                        "There is no rule \"" + id + "\"." + Nearest.question(id, ruleIds()),
                        "rules list shows them all."));
    session
        .output()
        .answer(
            look -> RulesText.one(rule, session.pack(), look),
            () -> RulesText.json(rule, session.pack()));
    return Exit.DONE;
  }

  private List<String> factNames() {
    return dictionary.all().stream().map(FactDefinition::name).toList();
  }

  private int facts(Call call) {
    Optional<String> name = call.word(0);
    if (name.isEmpty()) {
      session
          .output()
          .answer(
              look -> FactsText.list(dictionary, look),
              () ->
                  Json.object(
                      "facts",
                      dictionary.all().stream()
                          .map(fact -> FactsText.json(fact, Optional.empty()))
                          .toList()));
      return Exit.DONE;
    }
    FactDefinition fact = Names.fact(name.get());
    session
        .output()
        .answer(
            look -> FactsText.one(fact, session.pack(), look),
            () -> FactsText.json(fact, Optional.of(session.pack())));
    return Exit.DONE;
  }
}
