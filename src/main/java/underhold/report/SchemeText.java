package underhold.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.advice.Effect;
import underhold.advice.Finding;
import underhold.advice.OptionAdvice;
import underhold.advice.Rule;
import underhold.advice.Standing;
import underhold.advice.SupportOption;
import underhold.consult.Consultation;
import underhold.consult.QuickSizing;
import underhold.consult.scheme.Combination;
import underhold.consult.scheme.OrderWanted;
import underhold.consult.scheme.PairFinding;
import underhold.consult.scheme.PairQuestion;
import underhold.consult.scheme.Scheme;
import underhold.consult.scheme.SchemeDesk;
import underhold.consult.scheme.SchemeOutcome;
import underhold.consult.scheme.ZoneChoice;
import underhold.sizing.Verdict;

/** The scheme of a site: which method carries, closes, props or watches where, and why together. */
public final class SchemeText {
  private static final int MARGIN = 2;
  private static final int MARK = 11;

  private final Scheme scheme;
  private final TextPage page;

  private SchemeText(Scheme scheme, TextPage page) {
    this.scheme = scheme;
    this.page = page;
  }

  /**
   * The scheme in a few lines, for the end of the advice; nothing for a site of one zone.
   *
   * @param desk makes the scheme
   */
  public static void summary(Consultation consultation, SchemeDesk desk, TextPage page) {
    if (consultation.zones().size() < 2) {
      return;
    }
    page.heading("The scheme");
    SchemeOutcome outcome = desk.scheme(consultation);
    if (outcome instanceof SchemeOutcome.NotMade none) {
      page.para(MARGIN, none.reason());
    }
    if (outcome instanceof SchemeOutcome.Made made) {
      SchemeText text = new SchemeText(made.scheme(), page);
      text.choices();
      text.open();
      page.para(MARGIN, "What holds between the zones, and the order of work: stages.");
    }
  }

  /** All of it. */
  static void on(TextPage page, Scheme scheme) {
    SchemeText text = new SchemeText(scheme, page);
    text.choices();
    text.open();
    text.points();
    text.between();
    text.edges();
    text.others();
    text.questions();
  }

  private void choices() {
    for (ZoneChoice zone : scheme.best().zones()) {
      page.item(
          zone.method().isEmpty() ? Tint.OPEN : Tint.GOOD,
          MARGIN,
          Stages.letter(scheme, zone.name()),
          3,
          zone.name() + ": " + choice(zone) + proof(zone));
    }
  }

  /** What the sheet of the method chosen leaves open: a choice is not yet a design that works. */
  private static String proof(ZoneChoice zone) {
    if (zone.method().filter(method -> method != SupportOption.REFER).isEmpty()) {
      return "";
    }
    String see = "; see size " + zone.methodId() + ".";
    Optional<QuickSizing> sizing =
        zone.method().flatMap(zone.zone()::sizing).filter(QuickSizing::complete);
    if (sizing.isEmpty()) {
      return " Not sized yet, so its usual stages stand in the plan" + see;
    }
    long fails = sizing.get().count(Verdict.FAILS);
    long refers = sizing.get().count(Verdict.REFER);
    if (fails + refers == 0) {
      return "";
    }
    return " Not proved: "
        + (fails > 0 ? Words.count((int) fails, "check fails", "checks fail") + ", " : "")
        + (fails > 0
            ? Words.count((int) refers, "refers", "refer")
            : Words.count((int) refers, "check refers", "checks refer"))
        + " to the engineer"
        + see;
  }

  private String choice(ZoneChoice zone) {
    if (zone.method().isEmpty()) {
      return "no method yet; " + zone.undecided() + ".";
    }
    boolean first = scheme.best().zones().size() > 1 && scheme.isPrimary(zone.name());
    return zone.method().map(SupportOption::label).orElse("")
        + ", "
        + scheme.part(zone.name()).words()
        + (first ? ", primary." : ".");
  }

  private void open() {
    if (scheme.best().undecided() > 0) {
      page.para(
          MARGIN,
          "What depends on a zone without a method waits: the scheme is made again once it has one.");
    }
    if (scheme.best().held()) {
      page.tinted(
          Tint.OPEN,
          MARGIN,
          "Held: a rule between zones could still rule this scheme out; see what is not known.");
    }
    scheme
        .heldAbove()
        .ifPresent(
            held ->
                page.tinted(
                    Tint.OPEN,
                    MARGIN,
                    "Held, though it would come first: "
                        + changes(scheme.trade(held))
                        + ". It waits for what is not known between the zones."));
  }

  private void points() {
    Combination best = scheme.best();
    if (best.zones().size() < 2) {
      return;
    }
    page.para(
        MARGIN,
        "Together "
            + Words.score(best.points())
            + ": "
            + Words.score(best.points() - best.pairPoints())
            + " by the zones themselves, "
            + Words.score(best.pairPoints())
            + " by what their methods do to each other.");
  }

  private void between() {
    Combination best = scheme.best();
    if (best.zones().size() < 2) {
      return;
    }
    page.heading("Between the zones");
    if (best.findings().isEmpty()) {
      page.para(MARGIN, "No rule between zones holds on what is stated.");
    }
    best.findings().stream()
        .filter(finding -> finding.order().isEmpty())
        .forEach(finding -> row(Words.verb(finding.effect()), finding));
    best.findings().stream().filter(finding -> finding.order().isPresent()).forEach(this::order);
    for (OrderWanted order : best.dropped()) {
      page.item(
          Tint.OPEN,
          MARGIN,
          "not kept",
          MARK,
          Words.sentence(order.sentence())
              + ": it contradicts other orders, and nobody has stated whether it is needed ["
              + order.ruleId()
              + "].");
    }
  }

  private void order(PairFinding finding) {
    finding
        .order()
        .ifPresent(
            order ->
                page.item(
                    MARGIN,
                    "order",
                    MARK,
                    Words.sentence(order.sentence(finding.first(), finding.second()))
                        + ". "
                        + finding.finding().rule().sentence()
                        + " "
                        + Words.tag(finding.finding(), true)));
  }

  private void row(String mark, PairFinding finding) {
    page.item(
        Words.tint(finding.effect()),
        MARGIN,
        mark,
        MARK,
        finding.finding().rule().sentence()
            + " "
            + finding.reason()
            + (finding.effect() == Effect.CAUTION
                ? " Decides: " + Decider.of(finding.finding()).words() + "."
                : "")
            + " "
            + Words.tag(finding.finding(), true));
  }

  /** Why a zone that is dug under has no edge pits: the marriage a reader looks for first. */
  private void edges() {
    List<ZoneChoice> without =
        scheme.best().zones().stream()
            .filter(zone -> zone.method().filter(SupportOption.EDGE_PITS::equals).isEmpty())
            .filter(SchemeText::dugUnder)
            .toList();
    if (without.isEmpty()) {
      return;
    }
    page.heading("Why no edge pits");
    without.forEach(zone -> page.para(MARGIN, zone.name() + ": " + whyNot(zone)));
  }

  private static boolean dugUnder(ZoneChoice zone) {
    Optional<String> position = zone.zone().view().word("excavationPosition");
    Optional<String> load = zone.zone().view().word("loadPattern");
    return position.filter(List.of("partly-under", "wholly-under")::contains).isPresent()
        && load.filter("area"::equals).isPresent();
  }

  private static String whyNot(ZoneChoice zone) {
    OptionAdvice edge = zone.zone().ranking().of(SupportOption.EDGE_PITS);
    if (edge.standing() == Standing.RULED_OUT) {
      Finding first = edge.findings(Effect.RULE_OUT).get(0);
      return "ruled out. "
          + first.rule().sentence()
          + " "
          + first.reason()
          + " "
          + Words.tag(first, true);
    }
    List<Finding> against = edge.findings(Effect.AGAINST);
    return edge.standing().word()
        + ", score "
        + Words.score(edge.score())
        + (against.isEmpty()
            ? "; another method comes first."
            : ". "
                + against.get(0).rule().sentence()
                + " "
                + against.get(0).reason()
                + " "
                + Words.tag(against.get(0), true));
  }

  private void others() {
    if (scheme.others().isEmpty()) {
      return;
    }
    page.heading("Other combinations, and what they trade");
    for (Combination other : scheme.others()) {
      Scheme.Trade trade = scheme.trade(other);
      List<String> words = new ArrayList<>();
      words.add(Words.sentence(changes(trade)) + ".");
      if (!trade.lost().isEmpty()) {
        words.add("Gone: " + ids(trade.lost()) + ".");
      }
      if (!trade.gained().isEmpty()) {
        words.add("New: " + ids(trade.gained()) + ".");
      }
      if (other.held()) {
        words.add("Held by an open rule between zones.");
      }
      page.item(MARGIN, Words.score(other.points()), MARK, String.join(" ", words));
    }
  }

  private static String changes(Scheme.Trade trade) {
    return Words.list(
        trade.changes().stream()
            .map(
                change ->
                    change.to().method().map(SupportOption::label).orElse("nothing yet")
                        + " ("
                        + Words.score(change.to().points())
                        + ") in place of "
                        + change.from().method().map(SupportOption::label).orElse("nothing")
                        + " ("
                        + Words.score(change.from().points())
                        + ") at "
                        + change.from().name())
            .toList());
  }

  private static String ids(List<PairFinding> findings) {
    return String.join(
        ", ",
        findings.stream()
            .map(finding -> Words.verb(finding.effect()) + " " + finding.id())
            .distinct()
            .toList());
  }

  private void questions() {
    if (scheme.questions().isEmpty()) {
      return;
    }
    page.heading("Not known between the zones");
    page.para(
        MARGIN,
        "Rules wait for these. Until they are answered they do not score, and the plan keeps the orders they would ask for. State them in the site file, under relations.");
    String pair = "";
    for (PairQuestion question : scheme.questions()) {
      String names = question.one() + " (first) and " + question.other() + " (second)";
      if (!names.equals(pair)) {
        pair = names;
        page.para(MARGIN, names + ":");
      }
      page.item(
          question.holds() ? Tint.OPEN : Tint.NONE,
          MARGIN,
          "?",
          3,
          question.fact().question()
              + " Waiting: "
              + String.join(" ", question.rules().stream().map(SchemeText::waiting).toList())
              + (question.holds() ? " It could rule the scheme out." : ""));
    }
  }

  private static String waiting(Rule rule) {
    return rule.sentence() + " [" + rule.id() + "]";
  }
}
