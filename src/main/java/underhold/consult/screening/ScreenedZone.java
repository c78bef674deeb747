package underhold.consult.screening;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import underhold.advice.Hold;
import underhold.advice.OptionAdvice;
import underhold.advice.Standing;
import underhold.consult.QuickSizing;
import underhold.consult.ZoneAdvice;
import underhold.sizing.MissingInput;

/**
 * A zone screened: the advice on it without what takes long.
 *
 * @param place where it comes from
 * @param id by which its row is known again
 * @param advice ranking, reasons and sheets, as in the whole advice; no open questions
 * @param stayed in how many draws the answer stayed what it is; empty where none were made
 * @param open the unknown facts that a rule, not yet decided, could still read
 */
public record ScreenedZone(
    Place place, String id, ZoneAdvice advice, OptionalInt stayed, List<String> open) {
  public ScreenedZone {
    open = List.copyOf(open);
  }

  /** The option that leads, if one does. */
  public Optional<OptionAdvice> leader() {
    return advice.ranking().leader();
  }

  /** The option next in rank: after the leader, or the first one where none leads. */
  public OptionAdvice next() {
    List<OptionAdvice> options = advice.ranking().options();
    return options.get(leader().isPresent() ? 1 : 0);
  }

  /** The sheet of the leader, if there is one. */
  public Optional<QuickSizing> sizing() {
    return leader().flatMap(option -> advice.sizing(option.option()));
  }

  /** The options that wait for the answer to a safety question. */
  public List<OptionAdvice> held() {
    return with(Standing.HELD);
  }

  /** The options that are ruled out. */
  public List<OptionAdvice> ruledOut() {
    return with(Standing.RULED_OUT);
  }

  private List<OptionAdvice> with(Standing standing) {
    return advice.ranking().options().stream()
        .filter(option -> option.standing() == standing)
        .toList();
  }

  /** The facts that options held wait for. */
  public List<String> heldFor() {
    return held().stream()
        .flatMap(option -> option.holds().stream())
        .map(Hold::ask)
        .flatMap(List::stream)
        .distinct()
        .toList();
  }

  /** What the sheet of the leader asks for before it holds a number. */
  public List<String> sheetAsks() {
    return sizing().stream()
        .flatMap(sizing -> sizing.sheet().missing().stream())
        .map(MissingInput::name)
        .distinct()
        .toList();
  }
}
