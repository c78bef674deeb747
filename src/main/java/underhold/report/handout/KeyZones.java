package underhold.report.handout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import underhold.advice.Effect;
import underhold.advice.Finding;
import underhold.advice.Hold;
import underhold.advice.OptionAdvice;
import underhold.advice.Standing;
import underhold.classroom.CaseStudy;
import underhold.classroom.Cited;
import underhold.classroom.Expected;
import underhold.classroom.Key;
import underhold.classroom.KeyMaker;
import underhold.classroom.MarkLine;
import underhold.report.ClassMarksText;
import underhold.report.Words;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;
import underhold.site.FactDictionary;
import underhold.site.Zone;

/** What leads in each zone at each stage, and why; what an answer must name. */
final class KeyZones {
  private static final int FAIR = 2;

  private final CaseStudy study;
  private final KeyMaker keys;
  private final Sources sources;

  KeyZones(CaseStudy study, KeyMaker keys, Sources sources) {
    this.study = study;
    this.keys = keys;
    this.sources = sources;
  }

  /** A section a zone, a part a stage. */
  List<Section> sections() {
    List<Section> sections = new ArrayList<>();
    for (Zone zone : study.full().zones()) {
      sections.add(zone(zone, sections.size() + 1));
    }
    return sections;
  }

  private Section zone(Zone zone, int number) {
    List<Section> parts = new ArrayList<>();
    List<Block.Row> rows = new ArrayList<>();
    Set<String> before = new HashSet<>();
    for (int stage = 0; stage < study.stages().size(); stage++) {
      Key key = keys.of(study, stage, Set.of(), zone.name());
      String title = study.stages().get(stage).title();
      rows.add(
          Block.Row.of(
              Prose.of(title),
              Prose.empty().strong(first(key)),
              Prose.of(fair(key)),
              Prose.of(waiting(key)),
              Prose.of(standing(key, Standing.RULED_OUT))));
      parts.add(
          Section.of("zone-" + number + "-stage-" + (stage + 1), title, stage(key, stage, before)));
      before = ids(key);
    }
    return new Section(
        "zone-" + number,
        "Zone: " + zone.name(),
        List.of(
            new Block.Table(
                "Stage by stage",
                Pieces.columns("Stage", "First", "Fair", "Held, could lead", "Ruled out"),
                rows)),
        parts);
  }

  private static String first(Key key) {
    if (key.leader().isEmpty()) {
      return "none: no clear choice yet";
    }
    List<String> all = new ArrayList<>(List.of(key.leader().get().option().label()));
    key.advice().ranking().tiedWithLeader().forEach(tied -> all.add(tied.option().label()));
    return all.size() == 1 ? all.get(0) : "a tie: " + Words.list(all.stream().distinct().toList());
  }

  /** What is worth two points by itself. */
  private static String fair(Key key) {
    List<String> all = new ArrayList<>();
    for (OptionAdvice option : key.advice().ranking().options()) {
      if (key.worth(option.option().id()).points() == FAIR) {
        all.add(option.option().label());
      }
    }
    if (key.worth(Expected.NO_METHOD).points() == FAIR) {
      all.add("none");
    }
    return all.isEmpty() ? "none other" : String.join(", ", all);
  }

  private static String waiting(Key key) {
    return labels(key.waiting());
  }

  private static String standing(Key key, Standing standing) {
    return labels(
        key.advice().ranking().options().stream()
            .filter(option -> option.standing() == standing)
            .toList());
  }

  private static String labels(List<OptionAdvice> options) {
    return options.isEmpty()
        ? "none"
        : options.stream().map(one -> one.option().label()).collect(Collectors.joining(", "));
  }

  private static Set<String> ids(Key key) {
    return key.advice().screening().findings().stream()
        .map(finding -> finding.rule().id())
        .collect(Collectors.toSet());
  }

  private List<Block> stage(Key key, int stage, Set<String> before) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(methods(key));
    blocks.add(turning(key));
    blocks.add(speaking(key));
    blocks.add(
        Pieces.table(
            "To check first: facts not known that could turn it, or free what is held",
            Pieces.columns("Fact", "Its name", "Why"),
            facts(key.open()),
            "Nothing that is open could turn it: an answer need ask for nothing."));
    blocks.add(named("Conditions to be named", key.conditions(key.leaderId())));
    blocks.add(named("Dangers to be named", key.dangers(key.leaderId())));
    if (stage > 0) {
      List<String> fresh =
          key.advice().screening().findings().stream()
              .filter(finding -> !before.contains(finding.rule().id()))
              .map(finding -> finding.rule().id() + ": " + finding.rule().sentence())
              .distinct()
              .toList();
      blocks.add(Pieces.paragraph("Rules that speak from this stage on:"));
      blocks.add(Pieces.listOr(fresh, "No other rule speaks than before."));
    }
    return blocks;
  }

  private Block methods(Key key) {
    List<Block.Row> rows = new ArrayList<>();
    for (OptionAdvice option : key.advice().ranking().options()) {
      MarkLine worth = key.worth(option.option().id());
      boolean leads = key.leads(option.option().id());
      rows.add(
          new Block.Row(
              "",
              leads
                  ? Block.Tone.GOOD
                  : option.standing() == Standing.RULED_OUT ? Block.Tone.BAD : Block.Tone.PLAIN,
              List.of(
                  Prose.of(option.option().label()),
                  Prose.of(
                      leads
                          ? "first"
                          : option
                              .standing()
                              .name()
                              .toLowerCase(java.util.Locale.ROOT)
                              .replace('_', ' ')),
                  Prose.of(Words.score(option.score()) + " (count)"),
                  Prose.of(marks(key, option, worth)),
                  Prose.of(why(key, option)))));
    }
    MarkLine none = key.worth(Expected.NO_METHOD);
    rows.add(
        Block.Row.of(
            Prose.of("none"),
            Prose.of("no choice"),
            Prose.empty(),
            Prose.of(
                ClassMarksText.points(none.points()) + " of " + ClassMarksText.points(none.of())),
            Prose.of(none.why())));
    return new Block.Table(
        "The methods on what is known here",
        Pieces.columns("Method", "Standing", "Score", "Points", "Why, by rule and source"),
        rows);
  }

  private static String marks(Key key, OptionAdvice option, MarkLine worth) {
    String points =
        ClassMarksText.points(worth.points()) + " of " + ClassMarksText.points(worth.of());
    return key.waiting().contains(option) ? points + "; 2 with what it waits for" : points;
  }

  /** The rule-outs; else what holds it; else the strongest for and against. */
  private String why(Key key, OptionAdvice option) {
    List<String> words = new ArrayList<>();
    if (option.standing() == Standing.RULED_OUT) {
      option.findings(Effect.RULE_OUT).forEach(finding -> words.add(sources.cite(finding)));
      return String.join(" ", words);
    }
    for (Hold hold : option.holds()) {
      words.add("Held: " + hold.explanation() + " " + key.cited(hold.rule()));
    }
    add(words, "For: ", option, Effect.FOR);
    add(words, "For: ", option, Effect.REFER);
    add(words, "Against: ", option, Effect.AGAINST);
    return words.isEmpty() ? "Nothing speaks for it or against it." : String.join(" ", words);
  }

  private void add(List<String> words, String lead, OptionAdvice option, Effect effect) {
    Cited.strongest(option, effect).ifPresent(found -> words.add(lead + sources.cite(found)));
  }

  private static Block turning(Key key) {
    return Pieces.table(
        "Deciding facts: what a change of each would do",
        Pieces.columns("Fact", "Its name", "If it were otherwise"),
        facts(key.turning()),
        "No single change of a known fact turns the answer.");
  }

  private static List<Block.Row> facts(Map<String, String> facts) {
    List<Block.Row> rows = new ArrayList<>();
    facts.forEach(
        (name, text) ->
            rows.add(
                Block.Row.of(
                    Prose.of(FactDictionary.standard().require(name).label()),
                    Pieces.typed(name),
                    Prose.of(Words.sentence(text) + "."))));
    return rows;
  }

  private Block speaking(Key key) {
    List<Block.Row> rows = new ArrayList<>();
    key.speaking()
        .forEach(
            (name, finding) -> {
              if (!key.turning().containsKey(name)) {
                rows.add(
                    Block.Row.of(
                        Prose.of(FactDictionary.standard().require(name).label()),
                        Pieces.typed(name),
                        Prose.of(sources.cite(finding))));
              }
            });
    return Pieces.table(
        key.reasonsDecide()
            ? "Facts on which the reasons rest, counting like deciding ones here"
            : "Other facts on which the reasons rest, a half point each",
        Pieces.columns("Fact", "Its name", "In the reason"),
        rows,
        "The reasons rest on no other fact.");
  }

  private Block named(String caption, Map<String, Finding> words) {
    List<Block.Row> rows = new ArrayList<>();
    words.forEach(
        (word, finding) ->
            rows.add(Block.Row.of(Pieces.typed(word), Prose.of(sources.cite(finding)))));
    return Pieces.table(
        caption,
        Pieces.columns("Word", "The rule"),
        rows,
        caption + ": the rules tell of none, so that an answer has the points without.");
  }
}
