package underhold.consult.stage;

import java.util.List;

/**
 * What a stage does to the ground and to the supports.
 *
 * @param undermines places that lose the ground they stood on as the stage begins; something
 *     accepted must carry them already
 * @param spans places that lose it for the length of the stage only, bridged by what stands beside
 *     them, as a wall spans over a pit; a support accepted at its end takes them up
 * @param accepts supports that are released at its end
 * @param removes supports that are taken away as it begins
 */
public record Moves(
    List<Place> undermines, List<Place> spans, List<Support> accepts, List<Support> removes) {
  /** Nothing is opened, accepted or taken away. */
  static final Moves NONE = new Moves(List.of(), List.of(), List.of(), List.of());

  public Moves {
    undermines = List.copyOf(undermines);
    spans = List.copyOf(spans);
    accepts = List.copyOf(accepts);
    removes = List.copyOf(removes);
  }

  static Moves accepting(Support support) {
    return new Moves(List.of(), List.of(), List.of(support), List.of());
  }

  static Moves removing(List<Support> supports) {
    return new Moves(List.of(), List.of(), List.of(), supports);
  }

  /** Length of wall it opens, m. */
  public double openMetres() {
    return spans.stream().mapToDouble(Place::metres).sum();
  }
}
