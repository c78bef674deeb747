package underhold.report.dossier;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import underhold.advice.Rule;
import underhold.advice.SupportOption;
import underhold.consult.turning.Change;
import underhold.consult.turning.TurningPoint;
import underhold.consult.turning.TurningPoints;
import underhold.report.TurningWords;
import underhold.report.Words;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;

/** What would change the answer: the turning points of each zone. */
final class ChangesSection {
  private ChangesSection() {}

  static Section of(Material material) {
    return new Section(
        "turning",
        "What would change it",
        List.of(
            Cells.paragraph(
                "Every change was tried on the whole advice, sizing included, with all other facts as"
                    + " they are; what cannot be together is left out, and ground layers are not"
                    + " changed.")),
        material.zones().stream().map(zone -> zone(material, zone)).toList());
  }

  private static Section zone(Material material, ZonePart zone) {
    List<Block> blocks = new ArrayList<>();
    TurningPoints points = material.turning().get(zone.name());
    if (points == null) {
      blocks.add(Cells.paragraph("Turning points were not asked for."));
    } else {
      blocks.add(
          Cells.paragraph(
              Words.count(points.tried(), "single change", "single changes")
                  + " of fact were tried."
                  + (points.singles().isEmpty() ? " None takes the first place away." : "")
                  + (points.complete()
                      ? ""
                      : " Not every combination was tried: there are too many.")));
      add(blocks, "One fact changed", points.singles());
      add(blocks, "Two facts changed together", points.pairs());
      add(blocks, "Three facts changed together", points.triples());
    }
    return Section.of("turning-" + zone.number(), "Zone: " + zone.name(), blocks);
  }

  private static void add(List<Block> blocks, String caption, List<TurningPoint> points) {
    Map<Optional<SupportOption>, List<TurningPoint>> groups = new LinkedHashMap<>();
    for (TurningPoint point : TurningWords.merged(near(points))) {
      groups.computeIfAbsent(point.after().leader(), key -> new ArrayList<>()).add(point);
    }
    groups.forEach(
        (leader, group) ->
            blocks.add(
                new Block.Table(
                    caption
                        + ": "
                        + leader
                            .map(option -> option.label() + " would come first")
                            .orElse("nothing would lead"),
                    Cells.columns("If", "What follows", "Because"),
                    group.stream().map(ChangesSection::row).toList())));
    String far =
        points.stream()
            .filter(TurningPoint::farFetched)
            .flatMap(point -> point.changes().stream())
            .map(change -> change.fact().label())
            .distinct()
            .collect(Collectors.joining(", "));
    if (!far.isEmpty()) {
      blocks.add(
          Cells.paragraph(caption + ", only with amounts quite other than stated: " + far + "."));
    }
  }

  private static List<TurningPoint> near(List<TurningPoint> points) {
    return points.stream().filter(point -> !point.farFetched()).toList();
  }

  private static Block.Row row(TurningPoint point) {
    List<String> follows = new ArrayList<>();
    TurningWords.follows(point).ifPresent(words -> follows.add(Cells.sentence(words)));
    List<SupportOption> leaders = point.after().leaders();
    if (leaders.size() > 1) {
      follows.add(
          "Only in a tie, with "
              + Words.list(leaders.stream().skip(1).map(SupportOption::label).toList())
              + ".");
    }
    if (point.changes().stream().anyMatch(Change::decided)) {
      follows.add("This is a decision, or another job; no survey finds it.");
    }
    TurningWords.fails(point).ifPresent(follows::add);
    return Block.Row.of(
        Prose.of(Cells.sentence(TurningWords.of(point))),
        Prose.of(String.join(" ", follows)),
        Cells.joined(reasons(point), " "));
  }

  private static List<Prose> reasons(TurningPoint point) {
    return Stream.concat(
            point.gained().stream().map(rule -> reason("Now ", rule)),
            point.lost().stream().map(rule -> reason("No longer ", rule)))
        .toList();
  }

  private static Prose reason(String change, Rule rule) {
    return Prose.of(
            change + Words.verb(rule.effect()) + Words.about(rule) + ": " + rule.sentence() + " ")
        .link(rule.id(), Anchor.rule(rule.id()));
  }
}
