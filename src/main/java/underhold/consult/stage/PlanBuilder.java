package underhold.consult.stage;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Collects stages and links; a link that would close a circle is not taken. */
final class PlanBuilder {
  private final Map<String, PlanStage> stages = new LinkedHashMap<>();
  private final Map<String, List<Link>> links = new HashMap<>();
  private final Map<String, List<String>> next = new HashMap<>();

  /** Adds a stage after those that its draft names. */
  String add(PlanStage stage) {
    if (stages.put(stage.id(), stage) != null) {
      throw new IllegalArgumentException("two stages are called " + stage.id());
    }
    links.put(stage.id(), new ArrayList<>());
    stage.after().forEach(link -> link(link.before(), stage.id(), link.why()));
    return stage.id();
  }

  /**
   * Lets one stage wait for another.
   *
   * @return whether it does; not where the other already waits for it
   */
  boolean link(String before, String later, String why) {
    if (before.equals(later) || Reach.leads(next, later, before)) {
      return false;
    }
    List<Link> known = links.computeIfAbsent(later, key -> new ArrayList<>());
    if (known.stream().noneMatch(link -> link.before().equals(before))) {
      known.add(new Link(before, why));
      next.computeIfAbsent(before, key -> new ArrayList<>()).add(later);
    }
    return true;
  }

  /** Whether one stage leads to another along the links so far. */
  boolean leads(String from, String to) {
    return Reach.leads(next, from, to);
  }

  PlanStage stage(String id) {
    PlanStage stage = stages.get(id);
    if (stage == null) {
      throw new IllegalArgumentException("there is no stage " + id);
    }
    return stage;
  }

  /** The same stage with zones that it waits for. */
  void waits(String id, List<String> zones) {
    PlanStage s = stage(id);
    List<String> all = new ArrayList<>(s.waitsFor());
    zones.stream().filter(zone -> !all.contains(zone)).forEach(all::add);
    stages.put(id, with(s, s.after(), all));
  }

  /** The stages so far, each with all its links. */
  List<PlanStage> stages() {
    return stages.values().stream()
        .map(stage -> with(stage, links.getOrDefault(stage.id(), List.of()), stage.waitsFor()))
        .toList();
  }

  private static PlanStage with(PlanStage s, List<Link> after, List<String> waitsFor) {
    return new PlanStage(
        s.id(),
        s.zone(),
        s.method(),
        s.kind(),
        s.title(),
        s.work(),
        s.holds(),
        s.moves(),
        after,
        s.time(),
        s.told(),
        s.toldOfPairs(),
        waitsFor);
  }
}
