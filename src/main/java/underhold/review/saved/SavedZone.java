package underhold.review.saved;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import underhold.advice.Finding;
import underhold.advice.OptionAdvice;
import underhold.consult.ZoneAdvice;
import underhold.quantity.UnitSystem;
import underhold.site.Fact;
import underhold.site.FactView;
import underhold.site.Origin;
import underhold.site.ZoneViews;

/**
 * What was advised of a zone.
 *
 * @param name the zone
 * @param options the options in rank order
 * @param findings what the rules stated, derived facts first, what rests on assumptions last
 * @param facts the facts with a value, assumed ones included
 * @param questions the facts to find out, the weightiest first
 * @param firmness how firm the first place was; left out where nobody asked
 */
public record SavedZone(
    String name,
    List<SavedOption> options,
    List<SavedFinding> findings,
    List<SavedFact> facts,
    List<String> questions,
    Optional<SavedFirmness> firmness) {
  /** The word of an option that leads. */
  private static final String LEADS = "leads";

  public SavedZone {
    options = List.copyOf(options);
    findings = List.copyOf(findings);
    facts = List.copyOf(facts);
    questions = List.copyOf(questions);
  }

  static SavedZone of(ZoneAdvice zone, UnitSystem units) {
    Map<Finding, List<String>> uncounted = new LinkedHashMap<>();
    for (OptionAdvice option : zone.ranking().options()) {
      for (Finding finding : option.uncounted()) {
        uncounted.computeIfAbsent(finding, f -> new ArrayList<>()).add(option.option().id());
      }
    }
    return new SavedZone(
        zone.name(),
        zone.ranking().options().stream()
            .map(option -> SavedOption.of(option, zone.sizing(option.option()), units))
            .toList(),
        Stream.of(
                zone.screening().derivations(),
                zone.screening().findings(),
                zone.screening().assumed())
            .flatMap(List::stream)
            .map(f -> SavedFinding.of(f, uncounted.getOrDefault(f, List.of())))
            .toList(),
        facts(zone.view()),
        zone.questions().list().stream().map(question -> question.fact().name()).toList(),
        zone.firmness().map(SavedFirmness::of));
  }

  /** Every fact with a value: those known, then those assumed meanwhile. */
  private static List<SavedFact> facts(FactView known) {
    List<SavedFact> facts = new ArrayList<>();
    for (Fact careful : ZoneViews.cautious(known).present()) {
      Fact fact = known.fact(careful.name());
      facts.add(SavedFact.of(fact.origin() == Origin.UNKNOWN ? careful : fact));
    }
    return facts;
  }

  /** The option that led; empty where none did. */
  public Optional<SavedOption> leader() {
    return options.stream().filter(option -> option.standing().equals(LEADS)).findFirst();
  }

  /** The option of that id. */
  public Optional<SavedOption> option(String id) {
    return options.stream().filter(option -> option.id().equals(id)).findFirst();
  }

  /** The recommendation in a few words. */
  public String line() {
    List<String> tied =
        options.stream()
            .filter(option -> option.tied() && !option.standing().equals(LEADS))
            .map(SavedOption::label)
            .toList();
    return leader()
        .map(
            first ->
                first.label()
                    + " ("
                    + SavedOption.points(first.score())
                    + ")"
                    + (tied.isEmpty() ? "" : ", tied with " + String.join(", ", tied)))
        .orElse("no option leads");
  }
}
