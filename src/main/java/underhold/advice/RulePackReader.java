package underhold.advice;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import underhold.site.FactDictionary;

/** Reads a rule pack from the texts of its files. */
public final class RulePackReader {
  static final String MANIFEST = "pack.json";
  static final List<String> TABLES =
      List.of(MANIFEST, "limits.json", "sources.json", "strengths.json", CriteriaTable.FILE);

  private final FactDictionary dictionary;
  private final List<PackProblem> problems = new ArrayList<>();

  public RulePackReader(FactDictionary dictionary) {
    this.dictionary = dictionary;
  }

  /** Gives the text of a file of the pack; empty where there is none. */
  @FunctionalInterface
  public interface Files {
    Optional<String> text(String name);
  }

  /** What was wrong with the pack last read. */
  public List<PackProblem> problems() {
    return List.copyOf(problems);
  }

  /** The pack, or nothing where it has problems. */
  public Optional<RulePack> read(Files files) {
    problems.clear();
    Map<String, String> texts = new TreeMap<>();
    Map<String, JsonNode> tables = new LinkedHashMap<>();
    for (String table : TABLES) {
      json(files, table, texts).ifPresent(node -> tables.put(table, node));
    }
    if (!problems.isEmpty()) {
      return Optional.empty();
    }
    PackTables read = new PackTables(problems);
    Limits limits = read.limits(node(tables, "limits.json"));
    Map<String, Source> sources = read.sources(node(tables, "sources.json"));
    RulePack.Weights weights = read.weights(node(tables, "strengths.json"));
    CriteriaTable causes = new CriteriaTable(problems);
    Criteria criteria = causes.read(node(tables, CriteriaTable.FILE));
    RuleChecks checks = new RuleChecks(dictionary, limits, sources);
    List<Rule> rules = new ArrayList<>();
    JsonNode manifest = node(tables, MANIFEST);
    for (JsonNode entry : manifest.path("files")) {
      String name = entry.asString();
      Optional<String> text = files.text(name);
      if (text.isEmpty()) {
        problems.add(new PackProblem(MANIFEST, 0, "names " + name + ", which is not there"));
      } else {
        texts.put(name, text.get());
        rules.addAll(new RuleFileParser(name, checks, problems).parse(text.get()));
      }
    }
    causes.check(rules, criteria);
    if (!problems.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new RulePack(
            manifest.path("name").asString("unnamed"),
            manifest.path("version").asString("?"),
            fingerprint(texts),
            rules.stream().filter(rule -> rule.phase() != Rule.Phase.SCHEME).toList(),
            rules.stream().filter(rule -> rule.phase() == Rule.Phase.SCHEME).toList(),
            limits,
            sources,
            weights,
            criteria));
  }

  private Optional<JsonNode> json(Files files, String name, Map<String, String> texts) {
    Optional<String> text = files.text(name);
    if (text.isEmpty()) {
      problems.add(new PackProblem(name, 0, "the pack lacks this file"));
      return Optional.empty();
    }
    texts.put(name, text.get());
    try {
      return Optional.of(JsonMapper.shared().readTree(text.get()));
    } catch (JacksonException e) {
      int line = e.getLocation() == null ? 0 : e.getLocation().getLineNr();
      problems.add(new PackProblem(name, Math.max(line, 0), "is not readable JSON"));
      return Optional.empty();
    }
  }

  private static JsonNode node(Map<String, JsonNode> tables, String name) {
    JsonNode node = tables.get(name);
    if (node == null) {
      throw new IllegalStateException(name + " was not read");
    }
    return node;
  }

  private static String fingerprint(Map<String, String> texts) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      texts.forEach(
          (name, text) -> {
            digest.update(name.getBytes(StandardCharsets.UTF_8));
            digest.update((byte) 0);
            digest.update(text.replace("\r\n", "\n").getBytes(StandardCharsets.UTF_8));
            digest.update((byte) 0);
          });
      return HexFormat.of().formatHex(digest.digest());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
