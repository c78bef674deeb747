package underhold.consult.stage;

import java.util.List;
import java.util.Optional;
import underhold.advice.Finding;
import underhold.advice.SupportOption;
import underhold.consult.scheme.PairFinding;
import underhold.sizing.HoldPoint;
import underhold.sizing.Phrase;

/**
 * A stage of the plan.
 *
 * @param id unique in the plan
 * @param zone the zone; empty where it is for the whole site
 * @param method the method it belongs to, if it belongs to one
 * @param kind what kind of work it is
 * @param title what it is
 * @param work what is done, in order
 * @param holds what must be seen or measured before going on, and who releases it
 * @param moves what it does to ground and supports
 * @param after the stages that come before it
 * @param time how long it takes
 * @param told requirements and cautions of the zone that bite here
 * @param toldOfPairs cautions between zones that bite here
 * @param waitsFor zones that must be decided, and the scheme made again, before it may begin
 */
public record PlanStage(
    String id,
    String zone,
    Optional<SupportOption> method,
    StageKind kind,
    String title,
    List<Phrase> work,
    List<HoldPoint> holds,
    Moves moves,
    List<Link> after,
    StageTime time,
    List<Finding> told,
    List<PairFinding> toldOfPairs,
    List<String> waitsFor) {
  public PlanStage {
    work = List.copyOf(work);
    holds = List.copyOf(holds);
    after = List.copyOf(after);
    told = List.copyOf(told);
    toldOfPairs = List.copyOf(toldOfPairs);
    waitsFor = List.copyOf(waitsFor);
  }
}
