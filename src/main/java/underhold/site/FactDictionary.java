package underhold.site;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The dictionary of site facts: the one place that says what may be asked, typed and reasoned with.
 */
public final class FactDictionary {
  private static final String RESOURCE = "facts.json";
  private static final String PAIR_RESOURCE = "pair-facts.json";

  private final List<FactDefinition> all;
  private final Map<String, FactDefinition> byName;
  private final Fact[] unknown;

  FactDictionary(List<FactDefinition> definitions) {
    this.all = List.copyOf(definitions);
    Map<String, FactDefinition> names = new LinkedHashMap<>();
    for (FactDefinition definition : all) {
      if (names.put(definition.name(), definition) != null) {
        throw new IllegalArgumentException("the dictionary names " + definition.name() + " twice");
      }
    }
    this.byName = names;
    this.unknown = all.stream().map(Fact::unknown).toArray(Fact[]::new);
  }

  /** Every fact as nobody knows it, in the order of the dictionary; the caller may change it. */
  Fact[] unknown() {
    return unknown.clone();
  }

  /** The dictionary of the program. */
  public static FactDictionary standard() {
    return Holder.STANDARD;
  }

  /** The dictionary of what may be known of two zones together. */
  public static FactDictionary pairs() {
    return PairHolder.PAIRS;
  }

  public List<FactDefinition> all() {
    return all;
  }

  public int size() {
    return all.size();
  }

  public Optional<FactDefinition> find(String name) {
    return Optional.ofNullable(byName.get(name));
  }

  /**
   * The definition of that name.
   *
   * @throws IllegalArgumentException if there is none
   */
  public FactDefinition require(String name) {
    FactDefinition definition = byName.get(name);
    if (definition == null) {
      throw new IllegalArgumentException("the dictionary has no fact " + name);
    }
    return definition;
  }

  private static final class Holder {
    private static final FactDictionary STANDARD = load(RESOURCE);
  }

  private static final class PairHolder {
    private static final FactDictionary PAIRS = load(PAIR_RESOURCE);
  }

  private static FactDictionary load(String resource) {
    try (InputStream in = FactDictionary.class.getResourceAsStream("/underhold/site/" + resource)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its fact dictionary " + resource);
      }
      return new FactDictionary(FactDictionaryReader.read(in));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
