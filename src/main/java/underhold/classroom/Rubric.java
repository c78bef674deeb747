package underhold.classroom;

import java.util.List;

/** What an answer is marked by; students may see it. The weights are judgement. */
public final class Rubric {
  /** Points for the method. */
  public static final int CHOICE = 3;

  /** Points for the facts that decided it. */
  public static final int FACTS = 3;

  /** Points for what must be checked first. */
  public static final int CHECKS = 2;

  /** Points for what the method asks for besides. */
  public static final int CONDITIONS = 2;

  /** Points for the dangers. */
  public static final int DANGERS = 2;

  /** Points for a changed mind with a good reason, on top of the others. */
  public static final int CHANGED = 1;

  /** Points for a number, a verdict or a sequence. */
  public static final int QUESTION = 4;

  /** Points for the methods of all zones together. */
  public static final int SCHEME = 3;

  /** Points for the facts on which the methods meet. */
  public static final int INTERFACE = 3;

  /** Points for the order of work between zones. */
  public static final int ORDER = 2;

  /** How many words of each part of an answer count, the first ones. */
  public static final int MOST_NAMED = 5;

  private Rubric() {}

  /**
   * A part of the rubric.
   *
   * @param part what it is about
   * @param points points to be had
   * @param means what they are given for
   */
  public record Row(String part, int points, String means) {}

  /** What an answer for a zone can have, without the point for a changed mind. */
  public static int ofZone() {
    return CHOICE + FACTS + CHECKS + CONDITIONS + DANGERS;
  }

  /** What an answer for all zones together can have. */
  public static int ofScheme() {
    return SCHEME + INTERFACE + ORDER;
  }

  /** The parts of an answer for a zone. */
  public static List<Row> zoneRows() {
    return List.of(
        new Row(
            "method",
            CHOICE,
            "3 for what leads on the facts you had, or ties; 3 for none where nothing leads yet."
                + " 2 for a held method that could lead, named with a fact it waits for; for one"
                + " that works and has more for it than against it; and for none where a held one"
                + " could pass the leader. 1 for any other that is not ruled out, and for none where"
                + " a method leads. 0 for one that is ruled out."),
        new Row(
            "deciding facts",
            FACTS,
            "In full once three facts are named whose change would turn the answer, or all where"
                + " there are fewer; a share for fewer. A half for each other fact on which the"
                + " reasons rest; while nothing leads, or where no single fact turns it, those count"
                + " like the first. What you did not know yet gives nothing."),
        new Row(
            "to check first",
            CHECKS,
            "1 for each fact not known yet that could turn the answer or frees what is held. Where"
                + " nothing is open, 2 if nothing is asked and 1 if something is."),
        new Row(
            "conditions",
            CONDITIONS,
            "1 for each thing that the rules ask for with that method, or with any still in play"
                + " where you name none. In full where they ask for fewer and all are named."),
        new Row(
            "dangers",
            DANGERS,
            "1 for each danger of which the rules warn with that method, counted likewise."),
        new Row(
            "changed mind",
            CHANGED,
            "1 on top where the method differs from that of an earlier stage because of a fact that"
                + " was not known then and that matters, for a method worth at least 2."));
  }

  /** The parts of an answer for all zones together. */
  public static List<Row> schemeRows() {
    return List.of(
        new Row(
            "methods together",
            SCHEME,
            "3 for the methods that have most points together, or no fewer than a tie lets pass. 2"
                + " for others of which every one has more for it than against it in its zone. 1 for"
                + " any that may stand. 0 where one is ruled out in its zone or between zones."),
        new Row(
            "where they meet",
            INTERFACE,
            "1 for each fact on which the rules between zones rest that speak of your methods or of"
                + " the best. In full where there are fewer and all are named."),
        new Row(
            "order between zones",
            ORDER,
            "1 for each order of work named that the rules ask for with your methods. 0 where one is"
                + " named the wrong way round."));
  }

  /** The parts of a question of size or sequence. */
  public static List<Row> questionRows() {
    return List.of(
        new Row(
            "question",
            QUESTION,
            "4 for a number within its tolerance, the right verdict or a legal sequence; 2 for a"
                + " number within three times the tolerance; 3 for legal rounds that are more than"
                + " needed; 0 for a sequence that breaks a rule, which is told."));
  }

  /** What holds for every part. */
  public static String general() {
    return "Of every list the first "
        + MOST_NAMED
        + " words count. Of several answers for one zone at one stage the last counts; the others"
        + " stay in the record. Once it is marked an answer stays.";
  }

  /** All parts, with what they mean. */
  public static List<Row> rows() {
    return java.util.stream.Stream.of(zoneRows(), schemeRows(), questionRows())
        .flatMap(List::stream)
        .toList();
  }
}
