package underhold.consult.trial;

import java.util.BitSet;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import underhold.advice.SupportOption;
import underhold.site.FactView;

/**
 * How the options of a zone stand in one trial.
 *
 * @param view the facts, with what follows from them and from the sheets that were made
 * @param fired the rules that fired, by their places in the pack
 * @param holding the open rules that hold options, by their places
 * @param placings each option once
 * @param leaders the option that leads and those tied with it, the leader first; empty where there
 *     is no clear choice
 * @param sized the options whose sheets were made; the scores of the others lack what a sheet could
 *     take from them, and none of them can lead
 */
public record Outcome(
    FactView view,
    BitSet fired,
    BitSet holding,
    Map<SupportOption, Placing> placings,
    List<SupportOption> leaders,
    Set<SupportOption> sized) {

  /** How an option can stand. */
  public enum State {
    IN_RANK,
    HELD,
    RULED_OUT
  }

  /**
   * How one option stands.
   *
   * @param state in rank, held or ruled out
   * @param spokenFor whether anything speaks for it
   * @param score points for less points against
   * @param screened the same without what the sheets take
   */
  public record Placing(State state, boolean spokenFor, double score, double screened) {
    /** Whether something speaks for it and more than speaks against it. */
    public boolean contends() {
      return spokenFor && score > 0;
    }

    /** Whether it is not ruled out. */
    public boolean usable() {
      return state != State.RULED_OUT;
    }
  }

  public Outcome {
    placings = new EnumMap<>(placings);
    leaders = List.copyOf(leaders);
    sized = sized.isEmpty() ? Set.of() : EnumSet.copyOf(sized);
  }

  /** The option that leads; none where there is no clear choice. */
  public Optional<SupportOption> leader() {
    return leaders.isEmpty() ? Optional.empty() : Optional.of(leaders.get(0));
  }

  /** The id of the leader; empty where there is no clear choice. */
  public String leaderId() {
    return leader().map(SupportOption::id).orElse("");
  }

  /** How an option stands. */
  public Placing of(SupportOption option) {
    return Objects.requireNonNull(placings.get(option));
  }
}
