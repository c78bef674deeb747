package underhold.consult;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import underhold.advice.Effect;
import underhold.advice.Finding;
import underhold.advice.Ranking;
import underhold.advice.Screening;
import underhold.advice.SupportOption;
import underhold.consult.firmness.Firmness;
import underhold.site.FactView;

/**
 * What is advised of one zone.
 *
 * @param name the zone's name
 * @param screening what the rules said
 * @param ranking the options in rank order
 * @param questions the open questions, those that could change most first
 * @param sizings the quick sizing of each option not ruled out by the screening
 * @param firmness how firm the first place is, where it was asked for
 */
public record ZoneAdvice(
    String name,
    Screening screening,
    Ranking ranking,
    OpenQuestions questions,
    List<QuickSizing> sizings,
    Optional<Firmness> firmness) {
  public ZoneAdvice {
    sizings = List.copyOf(sizings);
  }

  /** Advice of which it was not asked how firm it is. */
  public ZoneAdvice(
      String name,
      Screening screening,
      Ranking ranking,
      OpenQuestions questions,
      List<QuickSizing> sizings) {
    this(name, screening, ranking, questions, sizings, Optional.empty());
  }

  /** The same advice with its open questions. */
  ZoneAdvice asking(OpenQuestions found) {
    return new ZoneAdvice(name, screening, ranking, found, sizings, firmness);
  }

  /** The same advice with how firm it is. */
  ZoneAdvice firm(Firmness found) {
    return new ZoneAdvice(name, screening, ranking, questions, sizings, Optional.of(found));
  }

  /** The facts, with what follows from them. */
  public FactView view() {
    return screening.view();
  }

  /** The quick sizing of an option, if there is one. */
  public Optional<QuickSizing> sizing(SupportOption option) {
    return sizings.stream().filter(one -> one.option() == option).findFirst();
  }

  /** The requirements that hold for an option still in play, on known facts first. */
  public List<Finding> conditions() {
    return told(Effect.REQUIRE);
  }

  /** The cautions that hold for an option still in play, on known facts first. */
  public List<Finding> cautions() {
    return told(Effect.CAUTION);
  }

  private List<Finding> told(Effect effect) {
    return Stream.concat(screening.findings().stream(), screening.assumed().stream())
        .filter(finding -> finding.effect() == effect)
        .filter(finding -> optionsInPlay(finding).findAny().isPresent())
        .toList();
  }

  /** The options a finding concerns that are not ruled out. */
  public Stream<SupportOption> optionsInPlay(Finding finding) {
    return ranking.options().stream()
        .filter(advice -> advice.standing() != underhold.advice.Standing.RULED_OUT)
        .map(underhold.advice.OptionAdvice::option)
        .filter(finding.rule()::concerns);
  }
}
