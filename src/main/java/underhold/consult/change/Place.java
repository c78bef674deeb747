package underhold.consult.change;

import java.util.List;
import java.util.OptionalInt;
import underhold.advice.OptionAdvice;
import underhold.advice.Ranking;
import underhold.advice.Standing;
import underhold.advice.SupportOption;

/**
 * How an option stands in one answer.
 *
 * @param rank its place in the order, from 1; empty where it is ruled out
 * @param standing how it stands
 * @param score its score
 * @param tied whether it is tied with the leader
 */
public record Place(OptionalInt rank, Standing standing, int score, boolean tied) {
  static Place of(Ranking ranking, SupportOption option) {
    OptionAdvice advice = ranking.of(option);
    List<OptionAdvice> all = ranking.options();
    return new Place(
        advice.standing() == Standing.RULED_OUT
            ? OptionalInt.empty()
            : OptionalInt.of(all.indexOf(advice) + 1),
        advice.standing(),
        advice.score(),
        advice.tied());
  }
}
