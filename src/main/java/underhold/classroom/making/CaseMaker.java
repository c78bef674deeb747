package underhold.classroom.making;

import java.util.List;
import underhold.consult.Consultant;

/**
 * Makes cases for the classroom to order. It draws sites of the kinds that the trade knows, tries
 * them by the rules, and sizes only those on which the wanted method comes first and facts of the
 * theme turn it. Whatever it makes is read again by the reader of cases at every stage.
 */
public final class CaseMaker {
  /** How many sites are tried unless another number is given: some seconds at most. */
  public static final int USUAL_TRIES = 4000;

  private static final List<SiteKind> ONE_ZONE =
      List.of(
          new WallBeside(),
          new WallBeside(),
          new ColumnsBeside(),
          new ColumnCrossed(),
          new BoxOverCut(),
          new PlatformEdge(),
          new RaftOverDig(),
          new TowerBeside());
  private static final List<SiteKind> TWO_ZONES = List.of(new MarriedZones());

  private final Judge judge;

  /** A maker by the rules of a consultant. */
  public CaseMaker(Consultant consultant) {
    this.judge = new Judge(consultant);
  }

  /**
   * Makes a case. The same wish and rules give the same case, to the byte.
   *
   * @param tries how many sites to try at most
   */
  public Making make(Wish wish, int tries) {
    List<SiteKind> kinds =
        (wish.theme() == Theme.MARRIED ? TWO_ZONES : ONE_ZONE)
            .stream().filter(kind -> kind.leaders().contains(wish.leader())).toList();
    return new Search(wish, judge, kinds).run(tries);
  }
}
