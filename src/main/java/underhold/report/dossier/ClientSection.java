package underhold.report.dossier;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import underhold.advice.Effect;
import underhold.advice.Finding;
import underhold.advice.OptionAdvice;
import underhold.advice.Strength;
import underhold.advice.SupportOption;
import underhold.consult.OpenQuestion;
import underhold.consult.firmness.Firmness;
import underhold.report.Decider;
import underhold.report.Headline;
import underhold.report.Stages;
import underhold.report.Words;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;
import underhold.sizing.HoldPoint;
import underhold.sizing.Origin;
import underhold.sizing.Sheet;
import underhold.sizing.SheetInput;
import underhold.sizing.Verdict;

/** The few plain pages for a client. */
final class ClientSection {
  private static final int MOST_REASONS = 4;
  private static final int MOST_QUESTIONS = 5;

  private final Material material;

  ClientSection(Material material) {
    this.material = material;
  }

  List<Section> sections() {
    return List.of(
        what(),
        ClientEffects.of(material),
        why(),
        sure(),
        findOut(),
        risks(),
        MonitoringSection.of(material),
        signatures());
  }

  private Section what() {
    List<Block> blocks = new ArrayList<>();
    List<Block.Row> rows = new ArrayList<>();
    for (ZonePart zone : material.zones()) {
      rows.add(
          Block.Row.of(
              Prose.of(zone.name()),
              Prose.empty()
                  .strong(
                      ClientEffects.proposed(material, zone)
                          .map(SupportOption::label)
                          .map(Words::sentence)
                          .orElse("No method yet")),
              Prose.of(state(zone))));
    }
    blocks.add(
        new Block.Table(
            "What is recommended",
            Cells.columns("Part of the structure", "Method", "State of its calculation"),
            rows));
    material
        .madePlan()
        .ifPresent(
            plan ->
                blocks.add(
                    Cells.paragraph(
                        (material.zones().stream().allMatch(zone -> material.method(zone).isEmpty())
                                ? "As planned survey, investigation and readings alone take about "
                                : "As planned the work takes about ")
                            + Stages.days(Math.ceil(plan.schedule().days()))
                            + " working days"
                            + (material.zones().stream()
                                    .allMatch(zone -> material.method(zone).isEmpty())
                                ? "."
                                : ", survey and readings included.")
                            + " Most of these times are judgement and not a contractor's programme."
                            + oneBracket())));
    return Section.of("what", "What is recommended", blocks);
  }

  /** Where the length of an edge is not known, time and quantities are those of one bracket. */
  private String oneBracket() {
    List<String> zones =
        material.zones().stream()
            .filter(
                zone ->
                    material.method(zone).filter(SupportOption.BRACKET_PILES::equals).isPresent()
                        && zone.advice().view().fact("wallLength").maybe().isEmpty()
                        && zone.advice()
                            .view()
                            .word("loadPattern")
                            .filter("concentrated"::equals)
                            .isEmpty())
            .map(ZonePart::name)
            .toList();
    return zones.isEmpty()
        ? ""
        : " At "
            + Words.list(zones)
            + " they count one bracket only, since the length of the edge is not known: all of them"
            + " take longer.";
  }

  /** How far the calculation proves the method, in plain words. */
  private String state(ZonePart zone) {
    if (material.method(zone).isEmpty()) {
      return "Not calculated: no method is proposed yet.";
    }
    Optional<Sheet> sheet = material.chosen(zone).map(ZoneSheet::sheet);
    if (sheet.isEmpty() || !sheet.get().complete()) {
      return "Not calculated yet: facts are missing.";
    }
    long fails = count(sheet.get(), Verdict.FAILS);
    long refers = count(sheet.get(), Verdict.REFER);
    if (fails > 0) {
      return Words.count((int) fails, "check fails", "checks fail")
          + ": as it stands it is no design that works; it must be changed or proved otherwise.";
    }
    return refers == 0
        ? "Every check passes on the facts stated; an engineer must still check it."
        : Words.count((int) refers, "check waits", "checks wait") + " for an engineer to decide.";
  }

  private static long count(Sheet sheet, Verdict verdict) {
    return sheet.checks().stream().filter(check -> check.verdict() == verdict).count();
  }

  private Section why() {
    List<Block> blocks = new ArrayList<>();
    for (ZonePart zone : material.zones()) {
      Optional<OptionAdvice> chosen =
          ClientEffects.proposed(material, zone).map(option -> zone.advice().ranking().of(option));
      blocks.add(new Block.Paragraph(Prose.empty().strong(zone.name())));
      if (chosen.isEmpty()) {
        blocks.add(
            Cells.paragraph(
                "Nothing is recommended yet: too little is known, or nothing speaks for any method."));
      } else {
        blocks.add(reasons(chosen.get()));
      }
    }
    return Section.of("why", "Why", blocks);
  }

  private static Block reasons(OptionAdvice advice) {
    List<Prose> items = new ArrayList<>();
    counted(advice, Effect.FOR, Effect.REFER).stream()
        .limit(MOST_REASONS)
        .forEach(finding -> items.add(Prose.of("For it: " + finding.reason())));
    counted(advice, Effect.AGAINST, Effect.AGAINST).stream()
        .limit(MOST_REASONS)
        .forEach(finding -> items.add(Prose.of("Against it: " + finding.reason())));
    return items.isEmpty()
        ? Cells.paragraph(
            "Nothing speaks against it, and the other methods have more against them.")
        : new Block.Listing(false, items);
  }

  private static List<Finding> counted(OptionAdvice advice, Effect one, Effect other) {
    return advice.findings().stream()
        .filter(finding -> finding.effect() == one || finding.effect() == other)
        .filter(finding -> Words.counted(advice, finding))
        .toList();
  }

  private Section sure() {
    List<Block> blocks = new ArrayList<>();
    for (ZonePart zone : material.zones()) {
      Headline headline = new Headline(zone.advice());
      List<Prose> items = new ArrayList<>(List.of(Prose.of(plain(headline.verdict()))));
      zone.advice().firmness().map(ClientSection::drawn).ifPresent(items::add);
      items.add(Prose.of(Cells.sentence("calculation: " + state(zone))));
      blocks.add(new Block.Paragraph(Prose.empty().strong(zone.name())));
      blocks.add(new Block.Listing(false, items));
    }
    return Section.of("how-sure", "How sure it is", blocks);
  }

  private Section findOut() {
    List<Block> blocks = new ArrayList<>();
    for (ZonePart zone : material.zones()) {
      List<Block.Row> rows =
          zone.advice().questions().list().stream()
              .filter(OpenQuestion::decides)
              .limit(MOST_QUESTIONS)
              .map(
                  question ->
                      Block.Row.of(
                          Prose.of(question.fact().question()),
                          Prose.of(question.fact().findOut()),
                          Prose.of("Its answer could change which method comes first.")))
              .toList();
      blocks.add(
          Cells.table(
              zone.name(),
              Cells.columns("What must be found out", "How", "Why it matters"),
              rows,
              zone.name() + ": no single open question would change the recommendation."));
      taken(zone).ifPresent(blocks::add);
    }
    return Section.of("find-out", "What must be found out first", blocks);
  }

  /** What the calculation takes a careful value for, because nobody stated it. */
  private Optional<Block> taken(ZonePart zone) {
    List<String> labels =
        material.chosen(zone).stream()
            .flatMap(sheet -> sheet.sheet().inputs().stream())
            .filter(input -> input.origin() == Origin.ASSUMED)
            .map(SheetInput::label)
            .toList();
    return labels.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Cells.paragraph(
                zone.name()
                    + ": nobody has stated these yet, and the calculation takes careful values for"
                    + " them: "
                    + String.join("; ", labels)
                    + "."));
  }

  private Section risks() {
    Map<String, String> risks = new LinkedHashMap<>();
    for (Strength strength : Strength.values()) {
      for (ZonePart zone : material.zones()) {
        zone.advice().cautions().stream()
            .filter(finding -> finding.strength().filter(strength::equals).isPresent())
            .filter(finding -> concerns(zone, finding))
            .forEach(
                finding ->
                    risks.putIfAbsent(finding.rule().sentence(), Decider.of(finding).words()));
      }
    }
    List<Block.Row> rows =
        risks.entrySet().stream()
            .map(risk -> Block.Row.of(Prose.of(risk.getKey()), Prose.of(risk.getValue())))
            .toList();
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Cells.paragraph(
            "People have died in pits and under badly supported walls."
                + " Each risk in full, and those of the calculation, stand in the reviewer's"
                + " package."));
    blocks.add(
        Cells.table(
            "The main risks", Cells.columns("Risk", "Who decides"), rows, "No rule names a risk."));
    return Section.of("risks", "Risks", blocks);
  }

  private boolean concerns(ZonePart zone, Finding finding) {
    return material.method(zone).map(finding.rule()::concerns).orElse(true);
  }

  private Section signatures() {
    Set<String> who = new LinkedHashSet<>();
    who.add("engineer of record");
    for (ZonePart zone : material.zones()) {
      zone.advice()
          .cautions()
          .forEach(finding -> who.add(SiteBriefSection.role(Decider.of(finding).words())));
    }
    material
        .madePlan()
        .ifPresent(
            plan ->
                plan.stages().stream()
                    .flatMap(stage -> stage.holds().stream())
                    .map(HoldPoint::releasedBy)
                    .map(SiteBriefSection::role)
                    .forEach(who::add));
    List<Block.Row> rows =
        who.stream()
            .map(
                one ->
                    Block.Row.of(Prose.of(Words.sentence(one)), Prose.of(duty(one)), Prose.empty()))
            .toList();
    return Section.of(
        "signatures",
        "Who must sign",
        List.of(
            Cells.paragraph(
                "Nothing is built before these have checked what is theirs and signed for it."),
            new Block.Table(
                "Signatures", Cells.columns("Who", "What for", "Name, date, signature"), rows)));
  }

  /** What such a one answers for: judgement, for readers who meet the word for the first time. */
  private static String duty(String role) {
    return switch (role) {
      case "engineer of record" ->
          "the licensed engineer who checks and owns the design and may stop the work";
      case "competent person on site" ->
          "whom the contractor names to see dangers on site each shift and to stop the work";
      case "geotechnical engineer" -> "judges ground and ground water as they are found";
      case "special inspector", "special inspector, welding" ->
          "inspects chosen work, such as concrete and packing, apart from the contractor";
      case "owner of the neighbouring property, with the engineer of record" ->
          "whose land or building is touched, and agrees to it in writing";
      default -> "";
    };
  }

  /** The verdict without its draws, which the next sentence tells in plain words. */
  private static String plain(String verdict) {
    return verdict
        .replaceAll(",( first)? in \\d+ of 100 draws( \\([^)]*\\))?", "")
        .replaceAll(" In 100 draws .* would come first\\.", "");
  }

  /** How firm, for readers who draw no lots. */
  private static Prose drawn(Firmness firmness) {
    boolean leads = firmness.leader() != null;
    int share = firmness.perHundred(leads ? firmness.stayed() : firmness.none());
    return Prose.of(
        "What is not known yet was filled in by chance many times, good and bad alike: in "
            + share
            + " of 100 tries "
            + (leads
                ? "this answer stayed."
                : "no method came first, in the others one or another did.")
            + " That measures how much is not known; it is no chance of success.");
  }
}
