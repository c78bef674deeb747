package underhold.shell;

import java.util.List;
import java.util.Optional;
import underhold.report.FactsText;
import underhold.report.Json;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;

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
            commands::facts));
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
    FactDefinition fact = fact(name.get());
    session
        .output()
        .answer(
            look -> FactsText.one(fact, session.pack(), look),
            () -> FactsText.json(fact, Optional.of(session.pack())));
    return Exit.DONE;
  }

  private FactDefinition fact(String name) {
    return dictionary.all().stream()
        .filter(fact -> fact.name().equalsIgnoreCase(name))
        .findFirst()
        .orElseThrow(
            () ->
                Refusal.usage(
                    "There is no fact \"" + name + "\"." + Nearest.question(name, factNames()),
                    "facts lists them all."));
  }
}
