package underhold.site;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import underhold.site.SiteProblem.Code;

/** Collects the problems of one file and remembers where its entries stand. */
public final class Problems {
  /** More problems than anybody reads are counted only. */
  static final int MOST = 500;

  private final String file;
  private final List<SiteProblem> found = new ArrayList<>();
  private final Map<String, FileNode> nodes = new HashMap<>();
  private int more;

  /** No problem yet of the file of that name. */
  public Problems(String file) {
    this.file = PlainText.shown(file);
  }

  /** Remembers where an entry stands. */
  public void visit(String place, FileNode node) {
    nodes.put(place, node);
  }

  /** Adds a problem with the entry at a place; its line is known if it was visited. */
  public void add(Code code, String place, String message, String suggestion) {
    FileNode node = nodes.get(place);
    if (node == null) {
      add(code, place, 0, 0, "", message, suggestion);
    } else {
      add(code, place, node.line(), node.column(), node.typed(), message, suggestion);
    }
  }

  void add(
      Code code,
      String place,
      int line,
      int column,
      String value,
      String message,
      String suggestion) {
    if (isFull()) {
      more++;
      return;
    }
    found.add(new SiteProblem(code, file, place, line, column, value, message, suggestion));
  }

  /** Whether problems are only counted from now on. */
  public boolean isFull() {
    return found.size() >= MOST;
  }

  /** Whether there is none. */
  public boolean isEmpty() {
    return found.isEmpty();
  }

  /** How many there are. */
  public int count() {
    return found.size() + more;
  }

  boolean has(Code code) {
    return found.stream().anyMatch(problem -> problem.code() == code);
  }

  /** Whether there is a problem with that fact in that section. */
  boolean hasAt(String section, FactDefinition definition) {
    String place = section + "." + definition.name();
    return found.stream()
        .anyMatch(
            problem -> problem.place().equals(place) || problem.place().startsWith(place + "."));
  }

  /** All problems, in the order of the file; those without a line come last. */
  public List<SiteProblem> all() {
    List<SiteProblem> all = new ArrayList<>(found);
    all.sort(
        Comparator.comparingInt(
                (SiteProblem problem) -> problem.line() == 0 ? Integer.MAX_VALUE : problem.line())
            .thenComparingInt(SiteProblem::column));
    if (more > 0) {
      all.add(
          new SiteProblem(
              Code.TOO_MANY, file, "", 0, 0, "", more + " more problems are not listed", ""));
    }
    return all;
  }
}
