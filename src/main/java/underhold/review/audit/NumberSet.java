package underhold.review.audit;

import java.util.ArrayList;
import java.util.List;

/**
 * A set of numbers: a union of intervals whose ends are open or closed. The parts are sorted and do
 * not touch, so equal sets are equal records. All operations are exact.
 *
 * @param parts the intervals
 */
record NumberSet(List<Part> parts) {
  static final NumberSet NONE = new NumberSet(List.of());
  static final NumberSet ALL =
      new NumberSet(
          List.of(
              new Part(
                  new Edge(Double.NEGATIVE_INFINITY, true),
                  new Edge(Double.POSITIVE_INFINITY, false))));

  NumberSet {
    parts = List.copyOf(parts);
  }

  /**
   * A cut of the line right below or right above a number.
   *
   * @param at the number
   * @param above whether the cut lies right above it
   */
  record Edge(double at, boolean above) implements Comparable<Edge> {
    @Override
    public int compareTo(Edge other) {
      int byNumber = Double.compare(at + 0.0, other.at + 0.0); // + 0.0: -0.0 is 0.0
      return byNumber != 0 ? byNumber : Boolean.compare(above, other.above);
    }
  }

  /** All numbers between two cuts; the first lies below the second. */
  record Part(Edge from, Edge to) {
    /** Whether it is one number. */
    boolean isPoint() {
      return from.at == to.at;
    }

    boolean has(double number) {
      return (number > from.at || (number == from.at && !from.above))
          && (number < to.at || (number == to.at && to.above));
    }
  }

  static NumberSet below(double limit) {
    return between(new Edge(Double.NEGATIVE_INFINITY, true), new Edge(limit, false));
  }

  static NumberSet atMost(double limit) {
    return between(new Edge(Double.NEGATIVE_INFINITY, true), new Edge(limit, true));
  }

  static NumberSet above(double limit) {
    return between(new Edge(limit, true), new Edge(Double.POSITIVE_INFINITY, false));
  }

  static NumberSet atLeast(double limit) {
    return between(new Edge(limit, false), new Edge(Double.POSITIVE_INFINITY, false));
  }

  /** Both ends belong to it. */
  static NumberSet closed(double least, double most) {
    return between(new Edge(least, false), new Edge(most, true));
  }

  static NumberSet between(Edge from, Edge to) {
    return from.compareTo(to) < 0 ? new NumberSet(List.of(new Part(from, to))) : NONE;
  }

  boolean isEmpty() {
    return parts.isEmpty();
  }

  boolean has(double number) {
    return parts.stream().anyMatch(part -> part.has(number));
  }

  NumberSet and(NumberSet other) {
    List<Part> both = new ArrayList<>();
    for (Part mine : parts) {
      for (Part theirs : other.parts) {
        Edge from = later(mine.from, theirs.from);
        Edge to = mine.to.compareTo(theirs.to) <= 0 ? mine.to : theirs.to;
        if (from.compareTo(to) < 0) {
          both.add(new Part(from, to));
        }
      }
    }
    return new NumberSet(both); // parts of both are sorted and apart, so these are too
  }

  NumberSet or(NumberSet other) {
    return not().and(other.not()).not();
  }

  NumberSet minus(NumberSet other) {
    return and(other.not());
  }

  /** All numbers that are not in it. */
  NumberSet not() {
    List<Part> rest = new ArrayList<>();
    Edge start = new Edge(Double.NEGATIVE_INFINITY, true);
    for (Part part : parts) {
      if (start.compareTo(part.from) < 0) {
        rest.add(new Part(start, part.from));
      }
      start = part.to;
    }
    Edge end = new Edge(Double.POSITIVE_INFINITY, false);
    if (start.compareTo(end) < 0) {
      rest.add(new Part(start, end));
    }
    return new NumberSet(rest);
  }

  boolean within(NumberSet other) {
    return minus(other).isEmpty();
  }

  private static Edge later(Edge one, Edge other) {
    return one.compareTo(other) >= 0 ? one : other;
  }
}
