package underhold.classroom;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How a student would marry the methods of all zones.
 *
 * @param student the student
 * @param of the case
 * @param stage the number of the last stage that was open then, from 0
 * @param asked how many facts of the case the student had asked for by then
 * @param methods the method of each zone, by its name; {@value Expected#NO_METHOD} for none yet
 * @param because the facts of the zones, and of how they lie to each other, that decide it
 * @param order what must come before what between two zones
 */
public record SchemeAnswer(
    String student,
    String of,
    int stage,
    int asked,
    Map<String, String> methods,
    List<String> because,
    List<Wanted> order) {
  /** What the mark of such an answer is about, where another names its zone. */
  public static final String ABOUT = "all zones together";

  public SchemeAnswer {
    methods = Collections.unmodifiableMap(new LinkedHashMap<>(methods));
    because = List.copyOf(because);
    order = List.copyOf(order);
    methods.values().forEach(Expected::mustBeMethod);
  }

  /**
   * An order of work between two zones.
   *
   * @param first the zone that comes first
   * @param order the word of {@link OrderWords}
   * @param second the zone that waits
   */
  public record Wanted(String first, String order, String second) {
    public Wanted {
      if (OrderWords.find(order).isEmpty()) {
        throw new IllegalArgumentException(
            "there is no order of work "
                + underhold.site.PlainText.quoted(order)
                + "; there are "
                + String.join(", ", OrderWords.all().stream().map(Named::word).toList()));
      }
    }

    /** As it is typed. */
    @Override
    public String toString() {
      return first + " " + order + " " + second;
    }
  }

  /** Whether both are of one student, case and stage, so that only the later one counts. */
  boolean sameTurn(SchemeAnswer other) {
    return student.equals(other.student) && of.equals(other.of) && stage == other.stage;
  }
}
