package underhold.classroom;

import java.util.List;

/**
 * A stage of a case: something is done, takes its time, and facts become known.
 *
 * @param name its name in commands and files
 * @param title its name in words
 * @param days working days that it takes
 * @param surprise whether it only shows itself during the work, so that nobody can ask for it
 * @param tells what happens, in words for the student
 * @param ground whether the layers of the ground become known
 * @param reveals the facts that become known
 * @param believed facts taken for true from now on, until a later stage shows how they are
 */
public record CaseStage(
    String name,
    String title,
    double days,
    boolean surprise,
    String tells,
    boolean ground,
    List<Reveal> reveals,
    List<Believed> believed) {
  public CaseStage {
    reveals = List.copyOf(reveals);
    believed = List.copyOf(believed);
    if (!(days >= 0 && days <= 1000)) {
      throw new IllegalArgumentException("a stage takes 0 to 1000 working days, not " + days);
    }
    Names.mustBe("stage", name);
  }

  /** The facts that become known. */
  public List<FactPlace> places() {
    return reveals.stream().map(Reveal::places).flatMap(List::stream).toList();
  }
}
