package underhold.classroom;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import underhold.consult.Consultant;
import underhold.consult.Sized;
import underhold.consult.SizingDesk;
import underhold.consult.ZoneAdvice;
import underhold.quantity.Quantity;
import underhold.site.Fact;
import underhold.site.FactDictionary;
import underhold.site.FactValue;
import underhold.site.Site;
import underhold.site.Zone;
import underhold.sizing.Check;
import underhold.sizing.Sheet;
import underhold.sizing.SheetInput;
import underhold.sizing.Source;
import underhold.sizing.Stage;
import underhold.sizing.StageDetail.PitRound;
import underhold.sizing.StageRole;
import underhold.sizing.Step;

/** Reckons the answers to questions. Equal questions are reckoned once. Not for several threads. */
public final class QuestionDesk {
  /** The input of the sheet of pits that says how far open pits keep apart. */
  private static final String CLEAR_WIDTHS = "clear-pit-widths";

  /** Stages that are no step of the work but hold all along. */
  private static final Set<StageRole> NO_STEP =
      Set.of(StageRole.PIT_RULES, StageRole.TRIGGER, StageRole.WATCH);

  private final Consultant consultant;
  private final SizingDesk sizing = new SizingDesk();
  private final Map<CaseStudy, Map<String, Reckoned>> made = new HashMap<>();

  /** Answers by the rules of a consultant. */
  public QuestionDesk(Consultant consultant) {
    this.consultant = consultant;
  }

  /** The answer, from what all know at the stage of the question. */
  public Reckoned of(CaseStudy study, Question question) {
    return made.computeIfAbsent(study, key -> new HashMap<>())
        .computeIfAbsent(question.id(), key -> reckon(study, question));
  }

  /** What must be said beside a question so that it can be answered, which is no answer. */
  public List<String> beside(CaseStudy study, Question question) {
    return Sequence.beside(of(study, question));
  }

  /** An order by its letters, as an answer gives it: {@code c a b}. */
  public String order(Reckoned.Order order) {
    List<Stage> lettered = order.lettered();
    return order.stages().stream()
        .map(stage -> String.valueOf(Sequence.letter(lettered.indexOf(stage))))
        .collect(Collectors.joining(" "));
  }

  /** The step of a sheet that answers a question, from what all know at its stage. */
  public Optional<Step> step(CaseStudy study, Question question) {
    if (question.asks() != QuestionKind.RESULT) {
      return Optional.empty();
    }
    Site site = study.known(study.stage(question.stage()).orElseThrow(), Set.of());
    return sizing.size(site, advice(site, question), question.option(), List.of())
            instanceof Sized.Done done
        ? done.sheet().step(question.about())
        : Optional.empty();
  }

  private ZoneAdvice advice(Site site, Question question) {
    Zone zone =
        site.zones().stream()
            .filter(one -> one.name().equals(question.zone()))
            .findFirst()
            .orElseThrow();
    return consultant.reasons(site, zone);
  }

  private Reckoned reckon(CaseStudy study, Question question) {
    int stage = study.stage(question.stage()).orElseThrow();
    Site site = study.known(stage, Set.of());
    ZoneAdvice advice = advice(site, question);
    if (question.asks() == QuestionKind.AMOUNT) {
      return amount(question, advice);
    }
    Sized sized = sizing.size(site, advice, question.option(), List.of());
    if (!(sized instanceof Sized.Done done)) {
      return new Reckoned.Nothing("there is no sheet of " + question.method());
    }
    Sheet sheet = done.sheet();
    if (!sheet.complete()) {
      return new Reckoned.Nothing(
          "the sheet of " + question.method() + " asks about " + sheet.missing().get(0).name());
    }
    return switch (question.asks()) {
      case RESULT -> result(question, sheet, site);
      case VERDICT -> verdict(question, sheet, site);
      case ROUNDS -> rounds(sheet);
      case ORDER, AMOUNT -> order(sheet);
    };
  }

  private static Reckoned amount(Question question, ZoneAdvice advice) {
    if (FactDictionary.standard().find(question.about()).isEmpty()) {
      return new Reckoned.Nothing("there is no fact " + question.about());
    }
    Fact fact = advice.view().fact(question.about());
    if (!(fact.value() instanceof FactValue.Amount amount)) {
      return new Reckoned.Nothing("nobody knows an amount of " + question.about());
    }
    Quantity quantity = amount.quantity();
    return new Reckoned.Amount(quantity.si(), quantity.measure(), quantity.text(), fact.how());
  }

  private static Reckoned result(Question question, Sheet sheet, Site site) {
    Optional<Step> step = sheet.step(question.about());
    return step.<Reckoned>map(
            found ->
                new Reckoned.Amount(
                    found.result().si(),
                    found.result().measure(),
                    found.result().in(site.units()),
                    found.calculation(site.units()) + " (" + cited(found.source()) + ")"))
        .orElseGet(() -> new Reckoned.Nothing("the sheet has no step " + question.about()));
  }

  private static Reckoned verdict(Question question, Sheet sheet, Site site) {
    Optional<Check> check = sheet.check(question.about());
    return check
        .<Reckoned>map(
            found ->
                new Reckoned.Verdict(
                    QuestionMarker.word(found.verdict()),
                    found.title()
                        + ": "
                        + found.demand().in(site.units())
                        + " against "
                        + found.capacity().in(site.units())
                        + " ("
                        + cited(found.source())
                        + ")"))
        .orElseGet(() -> new Reckoned.Nothing("the sheet has no check " + question.about()));
  }

  private static Reckoned rounds(Sheet sheet) {
    List<PitRound> rounds =
        sheet.stages().stream()
            .map(Stage::detail)
            .filter(PitRound.class::isInstance)
            .map(PitRound.class::cast)
            .toList();
    Optional<SheetInput> clear = sheet.input(CLEAR_WIDTHS);
    if (rounds.isEmpty() || clear.isEmpty() || clear.get().amount().isEmpty()) {
      return new Reckoned.Nothing("the sheet has no rounds of pits");
    }
    return new Reckoned.Rounds(
        rounds, clear.get().amount().get().si(), cited(clear.get().source()));
  }

  private static Reckoned order(Sheet sheet) {
    List<Stage> steps =
        sheet.stages().stream().filter(stage -> !NO_STEP.contains(stage.role())).toList();
    return steps.size() < 2
        ? new Reckoned.Nothing("the sheet has no stages to put in order")
        : new Reckoned.Order(steps);
  }

  private static String cited(Source source) {
    return source.words();
  }
}
