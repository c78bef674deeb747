package underhold.review.audit;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What one analysis found.
 *
 * @param name its name in commands
 * @param question what it asks of the pack
 * @param results how many results came by each method
 * @param tried the sites or combinations that were tried
 * @param defects what it found, accepted or not
 * @param notes what else is worth telling, each in a sentence
 */
public record Section(
    String name,
    String question,
    Map<Method, Integer> results,
    long tried,
    List<Defect> defects,
    List<String> notes) {
  public Section {
    Map<Method, Integer> sorted = new EnumMap<>(Method.class);
    sorted.putAll(results);
    results = sorted;
    defects = List.copyOf(defects);
    notes = List.copyOf(notes);
  }

  /** Gathers the results of an analysis. */
  static final class Gathering {
    private final String name;
    private final String question;
    private final Map<Method, Integer> results = new EnumMap<>(Method.class);
    private final List<Defect> defects = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private long tried;

    Gathering(String name, String question) {
      this.name = name;
      this.question = question;
    }

    /** One more result came by that method. */
    void result(Method method) {
      results.merge(method, 1, Integer::sum);
    }

    void tried(long count) {
      tried += count;
    }

    void defect(Defect defect) {
      defects.add(defect);
    }

    void note(String note) {
      notes.add(note);
    }

    String name() {
      return name;
    }

    Section done() {
      return new Section(name, question, results, tried, defects, notes);
    }
  }
}
