package underhold.consult.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The stages of one zone, in the order in which they were made. */
final class ZoneStages {
  private static final Set<StageKind> WORKS =
      Set.of(StageKind.DRILL, StageKind.BUILD, StageKind.PITS, StageKind.LOAD);

  private record Made(String id, StageKind kind, boolean accepts) {}

  private final String zone;
  private final List<Made> made = new ArrayList<>();

  ZoneStages(String zone) {
    this.zone = zone;
  }

  String zone() {
    return zone;
  }

  void add(String id, StageKind kind, boolean accepts) {
    made.add(new Made(id, kind, accepts));
  }

  /** The stage made last. */
  String last() {
    return made.get(made.size() - 1).id();
  }

  /** The stages of that kind. */
  List<String> of(StageKind kind) {
    return made.stream().filter(one -> one.kind() == kind).map(Made::id).toList();
  }

  /** The first stage of that kind. */
  Optional<String> first(StageKind kind) {
    return of(kind).stream().findFirst();
  }

  /** The stage at whose end everything that carries the structure is accepted. */
  Optional<String> carries() {
    List<String> accepting =
        made.stream()
            .filter(one -> one.kind() == StageKind.ACCEPT || one.kind() == StageKind.PITS)
            .filter(Made::accepts)
            .filter(one -> of(StageKind.ACCEPT).isEmpty() || one.kind() == StageKind.ACCEPT)
            .map(Made::id)
            .toList();
    return accepting.isEmpty()
        ? Optional.empty()
        : Optional.of(accepting.get(accepting.size() - 1));
  }

  /** The stage at whose end its pits are one wall. */
  Optional<String> closed() {
    List<String> closing = of(StageKind.CLOSE).isEmpty() ? of(StageKind.PITS) : of(StageKind.CLOSE);
    return closing.isEmpty() ? Optional.empty() : Optional.of(closing.get(closing.size() - 1));
  }

  /** The lifts at whose end a brace or tie is set. */
  List<String> braces() {
    return made.stream()
        .filter(one -> one.kind() == StageKind.DIG && one.accepts())
        .map(Made::id)
        .toList();
  }

  /** The first stage that takes ground away. */
  Optional<String> opens() {
    return made.stream().filter(one -> one.kind().opensGround()).map(Made::id).findFirst();
  }

  /** The first stage in which the dig goes down. */
  Optional<String> digs() {
    return first(StageKind.DIG);
  }

  /** The first stage that builds anything. */
  Optional<String> starts() {
    return made.stream().filter(one -> WORKS.contains(one.kind())).map(Made::id).findFirst();
  }

  /** The last stage that drills. */
  Optional<String> drilled() {
    List<String> drills = of(StageKind.DRILL);
    return drills.isEmpty() ? Optional.empty() : Optional.of(drills.get(drills.size() - 1));
  }
}
