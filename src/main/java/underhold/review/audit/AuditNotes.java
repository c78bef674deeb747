package underhold.review.audit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import underhold.advice.PackDifference;
import underhold.advice.RulePack;
import underhold.advice.RulePackReader;
import underhold.advice.SupportOption;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.FactReader;
import underhold.site.PlainText;

/**
 * What engineers have written down beside a pack: findings they accept ({@code audit.json}) and
 * what they expect of it ({@code expectations.json}). A pack without these files has none.
 *
 * @param accepted the findings accepted
 * @param tendencies the expectations
 * @param problems what could not be read, in words
 */
public record AuditNotes(
    List<Accepted> accepted, List<Tendency> tendencies, List<String> problems) {
  public static final String ACCEPTED = "audit.json";
  public static final String EXPECTATIONS = "expectations.json";
  private static final String FOLDER = "/underhold/rules/";

  public AuditNotes {
    accepted = List.copyOf(accepted);
    tendencies = List.copyOf(tendencies);
    problems = List.copyOf(problems);
  }

  /** Nothing written down. */
  public static AuditNotes none() {
    return new AuditNotes(List.of(), List.of(), List.of());
  }

  /** The notes beside the built-in pack. */
  public static AuditNotes builtIn() {
    return read(AuditNotes::inside);
  }

  private static Optional<String> inside(String name) {
    try (InputStream in = AuditNotes.class.getResourceAsStream(FOLDER + name)) {
      return in == null
          ? Optional.empty()
          : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The notes that hold for a pack. Beside a small pack those of the built-in rules hold on, except
   * acceptances that name a rule it changes or takes away: they were argued on another rule; an
   * expectation of its own takes the place of ours with its id. Limits set for a trial change
   * nothing here.
   *
   * @param files the files of a pack that is not built in
   */
  public static AuditNotes of(RulePack pack, RulePackReader.Files files) {
    if (!pack.origin().outside()) {
      return builtIn();
    }
    AuditNotes own = read(files);
    return pack.origin().extending() ? builtIn().under(own, changed(pack)) : own;
  }

  /** The built-in rules that a pack lacks or words in another way; other limits do not count. */
  private static Set<String> changed(RulePack pack) {
    PackDifference difference = PackDifference.of(pack);
    Set<String> changed = new HashSet<>();
    difference.removed().forEach(rule -> changed.add(rule.id()));
    difference.changed().stream()
        .filter(one -> !Set.of(PackDifference.Part.SENTENCE).equals(one.parts()))
        .forEach(one -> changed.add(one.was().id()));
    return changed;
  }

  private AuditNotes under(AuditNotes own, Set<String> changed) {
    List<Accepted> all = new ArrayList<>(own.accepted);
    for (Accepted one : accepted) {
      List<Set<String>> left =
          one.findings().stream()
              .filter(finding -> Collections.disjoint(finding, changed))
              .toList();
      if (!left.isEmpty()) {
        all.add(one.of(left));
      }
    }
    Set<String> replaced = own.tendencies.stream().map(Tendency::id).collect(Collectors.toSet());
    List<Tendency> expected = new ArrayList<>(own.tendencies);
    tendencies.stream().filter(one -> !replaced.contains(one.id())).forEach(expected::add);
    return new AuditNotes(all, expected, own.problems);
  }

  /** The notes among the files of a pack; all problems are collected. */
  public static AuditNotes read(RulePackReader.Files files) {
    return new Reader().read(files);
  }

  private static final class Reader {
    private final List<String> problems = new ArrayList<>();

    AuditNotes read(RulePackReader.Files files) {
      List<Accepted> accepted = new ArrayList<>();
      list(files, ACCEPTED, "accepted").forEach(node -> accepted.add(accepted(node)));
      List<Tendency> tendencies = new ArrayList<>();
      Set<String> ids = new HashSet<>();
      for (JsonNode node : list(files, EXPECTATIONS, "expectations")) {
        String id = node.path("id").asString("");
        if (!ids.add(id)) {
          problem(EXPECTATIONS, id, "stands twice");
        }
        int before = problems.size();
        Tendency tendency = tendency(id, node);
        if (problems.size() == before) {
          tendencies.add(tendency);
        }
      }
      return new AuditNotes(accepted, tendencies, problems);
    }

    private JsonNode list(RulePackReader.Files files, String name, String list) {
      Optional<String> text = files.text(name);
      if (text.isEmpty() && !files.whyNot(name).equals("is not there")) {
        problems.add(name + " " + files.whyNot(name));
      }
      try {
        JsonNode root = JsonMapper.shared().readTree(text.orElse("{}"));
        if (text.isPresent() && !root.path(list).isArray()) {
          problems.add(name + " has no list \"" + list + "\"");
        }
        for (String key : root.propertyNames()) {
          if (!key.equals(list) && !key.equals("note")) {
            problems.add(name + " has an entry \"" + PlainText.shown(key) + "\" it cannot have");
          }
        }
        return root.path(list);
      } catch (JacksonException e) {
        problems.add(
            name
                + " is not readable JSON, line "
                + (e.getLocation() == null ? 1 : e.getLocation().getLineNr()));
        return JsonMapper.shared().createArrayNode();
      }
    }

    private Accepted accepted(JsonNode node) {
      Accepted accepted =
          new Accepted(
              node.path("section").asString(""),
              findings(node.path("about")),
              node.path("because").asString(""),
              node.path("basis").asString(""));
      if (!RulesAudit.names().contains(accepted.section())) {
        problem(ACCEPTED, accepted.section(), "is no section of the audit");
      }
      if (accepted.findings().isEmpty()
          || accepted.findings().stream().anyMatch(Set::isEmpty)
          || accepted.because().isBlank()
          || accepted.basis().isBlank()) {
        problem(
            ACCEPTED,
            accepted.section(),
            "an entry names under about each finding it accepts as a list of its own, such as"
                + " [[\"PIT-01\", \"PIT-02\"]], and has because and basis");
      }
      return accepted;
    }

    private Tendency tendency(String id, JsonNode node) {
      String fact = node.path("fact").asString("");
      List<String> order = texts(node.path("order"));
      checkValues(id, fact, order);
      if (order.size() < 2) {
        problem(EXPECTATIONS, id, "needs at least two values in order, the better first");
      }
      Map<String, List<String>> given = new LinkedHashMap<>();
      node.path("given")
          .properties()
          .forEach(
              entry -> {
                given.put(entry.getKey(), texts(entry.getValue()));
                checkValues(id, entry.getKey(), texts(entry.getValue()));
              });
      List<SupportOption> options = new ArrayList<>();
      for (String option : texts(node.path("options"))) {
        SupportOption.find(option)
            .ifPresentOrElse(
                options::add, () -> problem(EXPECTATIONS, id, "there is no option " + option));
      }
      for (String needed : List.of("sentence", "because", "basis")) {
        if (node.path(needed).asString("").isBlank()) {
          problem(EXPECTATIONS, id, "lacks its " + needed);
        }
      }
      return new Tendency(
          id,
          node.path("sentence").asString(""),
          fact,
          order,
          given,
          options,
          watched(id, node.path("mustNotRise").asString("")),
          node.path("because").asString(""),
          node.path("basis").asString(""));
    }

    private Tendency.Watched watched(String id, String word) {
      for (Tendency.Watched watched : Tendency.Watched.values()) {
        if (watched.word().equals(word)) {
          return watched;
        }
      }
      problem(EXPECTATIONS, id, "mustNotRise is score, standing or both, not \"" + word + "\"");
      return Tendency.Watched.BOTH;
    }

    private void checkValues(String id, String fact, List<String> values) {
      Optional<FactDefinition> definition = FactDictionary.standard().find(fact);
      if (definition.isEmpty() || definition.get().derived()) {
        problem(EXPECTATIONS, id, "there is no fact \"" + fact + "\" that can be stated");
        return;
      }
      for (String value : values) {
        FactReader.read(definition.get(), value)
            .fold(
                read -> true,
                () -> false,
                rejected -> {
                  problem(EXPECTATIONS, id, fact + ": " + rejected.explanation());
                  return false;
                });
      }
    }

    private static List<Set<String>> findings(JsonNode list) {
      List<Set<String>> findings = new ArrayList<>();
      list.forEach(node -> findings.add(Set.copyOf(texts(node))));
      return findings;
    }

    private static List<String> texts(JsonNode list) {
      List<String> texts = new ArrayList<>();
      list.forEach(node -> texts.add(node.asString("")));
      return texts;
    }

    private void problem(String file, String where, String message) {
      problems.add(file + ": " + PlainText.shown(where) + ": " + PlainText.shown(message));
    }
  }
}
