package underhold.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import underhold.site.FactDictionary;

/**
 * Reads a rule pack from the texts of its files. It collects all problems it can find, and gives
 * nothing while there is one.
 */
public final class RulePackReader {
  private static final int MOST_RULES = 2000;

  private final FactDictionary dictionary;
  private final @Nullable RulePack builtIn;
  private final List<PackProblem> problems = new ArrayList<>();
  private final Map<String, String> texts = new TreeMap<>();

  /** Reads whole packs. */
  public RulePackReader(FactDictionary dictionary) {
    this(dictionary, null);
  }

  /** Reads whole packs, and packs that are changes to the pack built in. */
  RulePackReader(FactDictionary dictionary, @Nullable RulePack builtIn) {
    this.dictionary = dictionary;
    this.builtIn = builtIn;
  }

  /** Gives the text of a file of the pack; empty where there is none. */
  @FunctionalInterface
  public interface Files {
    Optional<String> text(String name);

    /** Why there is no text of that name, to follow the name in a sentence. */
    default String whyNot(String name) {
      return "is not there";
    }

    /** Rule files that stand there although the pack does not name them. */
    default List<String> unnamed(List<String> named) {
      return List.of();
    }
  }

  /** What was wrong with the pack last read. */
  public List<PackProblem> problems() {
    return List.copyOf(problems);
  }

  /** The pack, or nothing where it has problems. */
  public Optional<RulePack> read(Files files) {
    return read(files, "");
  }

  /** The pack of a folder, or nothing where it has problems. */
  Optional<RulePack> read(Files files, String folder) {
    problems.clear();
    texts.clear();
    Optional<PackNode> root = table(files, PackManifest.FILE, false);
    if (root.isEmpty()) {
      return Optional.empty();
    }
    PackManifest manifest = PackManifest.read(root.get(), problems);
    if (manifest.extending() && builtIn == null) {
      problem(PackManifest.FILE, 0, "there is no pack here that it could extend");
      return Optional.empty();
    }
    return pack(files, folder, manifest, manifest.extending() ? builtIn : null);
  }

  private Optional<RulePack> pack(
      Files files, String folder, PackManifest manifest, @Nullable RulePack base) {
    boolean small = base != null;
    Optional<PackNode> limitNode = table(files, LimitTable.FILE, small);
    Optional<PackNode> sourceNode = table(files, PackTables.SOURCES, small);
    Optional<PackNode> strengthNode = table(files, PackTables.STRENGTHS, small);
    Optional<PackNode> criteriaNode = table(files, CriteriaTable.FILE, small);
    LimitTable limitTable = new LimitTable(problems, base);
    Limits limits = limitNode.map(limitTable::read).orElseGet(() -> new Limits(List.of()));
    PackTables tables = new PackTables(problems, base);
    Map<String, Source> sources = sourceNode.map(tables::sources).orElseGet(Map::of);
    Optional<RulePack.Weights> weights = strengthNode.map(tables::weights);
    CriteriaTable causes = new CriteriaTable(problems, base);
    Optional<Criteria> criteria = criteriaNode.map(causes::read);
    RuleChecks checks =
        new RuleChecks(
            dictionary,
            new RuleChecks.Tables(
                limits,
                name -> limitNode.isEmpty() || limitTable.isBroken(name),
                sources,
                sourceNode.isPresent()));
    List<Rule> own = rules(files, manifest, checks);
    criteria.ifPresent(known -> causes.check(own, known));
    List<Rule> all = new PackMerge(manifest, base, limits, problems).rules(own);
    new PackChecks(limits, limitTable::line, problems).check(all, dictionary);
    if (!problems.isEmpty() || weights.isEmpty() || criteria.isEmpty()) {
      return Optional.empty();
    }
    if (base != null) {
      texts.put("built-in", base.fingerprint());
    }
    return Optional.of(
        new RulePack(
            manifest.name(),
            manifest.version(),
            Fingerprint.of(texts),
            all.stream().filter(rule -> rule.phase() != Rule.Phase.SCHEME).toList(),
            all.stream().filter(rule -> rule.phase() == Rule.Phase.SCHEME).toList(),
            limits,
            sources,
            weights.get(),
            criteria.get(),
            folder.isEmpty() ? PackOrigin.BUILT_IN : PackOrigin.folder(folder, small)));
  }

  private List<Rule> rules(Files files, PackManifest manifest, RuleChecks checks) {
    List<Rule> rules = new ArrayList<>();
    for (String name : manifest.files()) {
      Optional<String> text = files.text(name);
      if (text.isEmpty()) {
        problem(PackManifest.FILE, 0, "names " + name + ", which " + files.whyNot(name));
        continue;
      }
      texts.put(name, text.get());
      rules.addAll(new RuleFileParser(name, checks, problems).parse(text.get()));
      if (rules.size() > MOST_RULES) {
        problem(name, 0, "the pack has more than " + MOST_RULES + " rules");
        return rules;
      }
    }
    for (String name : files.unnamed(manifest.files())) {
      problem(name, 0, PackManifest.FILE + " does not name this rule file: add or remove it");
    }
    return rules;
  }

  /** A table of the pack; a small pack may leave it out. */
  private Optional<PackNode> table(Files files, String name, boolean mayLack) {
    Optional<String> text = files.text(name);
    if (text.isPresent()) {
      texts.put(name, text.get());
      return PackJson.read(name, text.get(), problems);
    }
    String why = files.whyNot(name);
    boolean lacks = why.equals(PackFolder.NOT_THERE);
    if (mayLack && lacks) {
      return Optional.of(PackNode.none());
    }
    problem(name, 0, lacks ? "the pack lacks this file" : "the pack needs this file, which " + why);
    return Optional.empty();
  }

  private void problem(String file, int line, String message) {
    problems.add(new PackProblem(file, line, message));
  }
}
