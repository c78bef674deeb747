package underhold.review;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import underhold.advice.SupportOption;

/**
 * What a published job calls for in one zone.
 *
 * @param zone the zone's name in the site file
 * @param done what was done, in words
 * @param used the options that come nearest to what was done; empty where the source does not tell
 * @param target what a careful adviser would put first; more than one where the source allows it
 * @param alsoFair options that are fair to put first as well
 * @param out options that must not lead nor tie with the leader
 * @param says ids of rules that must speak, or hold an option, in this zone
 * @param scored whether the source calls for a choice at all
 * @param because why it is not scored, or how its targets were read; may be empty
 * @param departure the written account of a disagreement; null where we agree
 */
public record Expectation(
    String zone,
    String done,
    List<SupportOption> used,
    List<SupportOption> target,
    List<SupportOption> alsoFair,
    List<SupportOption> out,
    List<String> says,
    boolean scored,
    String because,
    @Nullable Departure departure) {

  public Expectation {
    used = List.copyOf(used);
    target = List.copyOf(target);
    alsoFair = List.copyOf(alsoFair);
    out = List.copyOf(out);
    says = List.copyOf(says);
  }

  /**
   * A disagreement that is known and has been looked into.
   *
   * @param outcome no choice, or a miss
   * @param because why, in engineering terms
   */
  public record Departure(Outcome outcome, String because) {}

  /** The outcome that is on record for a disagreement. */
  public Optional<Departure> known() {
    return Optional.ofNullable(departure);
  }
}
