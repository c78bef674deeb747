package underhold.site;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What follows from facts over one ground, kept for trials in which the facts that it follows from
 * are the same. Several threads may ask at once.
 */
public final class Deductions {
  private final GroundProfile ground;
  private final List<FactMemory<Found>> memories;

  private Deductions(GroundProfile ground, List<FactMemory<Found>> memories) {
    this.ground = ground;
    this.memories = memories;
  }

  /** What follows on one view, of which nothing need be kept. */
  static Deductions once(GroundProfile ground) {
    return new Deductions(ground, List.of());
  }

  /** What follows in the ground of a zone of a site. */
  public static Deductions in(Site site, Zone zone) {
    return new Deductions(
        ZoneViews.ground(site, zone),
        Stream.generate(FactMemory::<Found>ofWords).limit(Derivations.ALL.size()).toList());
  }

  /** Whether a zone of a site stands on this ground. */
  public boolean isOf(Site site, Zone zone) {
    GroundProfile other = ZoneViews.ground(site, zone);
    return ground == other || ground.equals(other);
  }

  GroundProfile ground() {
    return ground;
  }

  /**
   * What one derivation comes to.
   *
   * @param derived the value; null where the facts it needs are not all known
   * @param read the facts that were read and have a value
   * @param assumed whether one of them is only assumed
   */
  record Found(@Nullable Derived derived, Set<String> read, boolean assumed) {}

  /** What the derivation at a place of the list comes to on a view. */
  Found of(int place, FactView view) {
    return memories.isEmpty()
        ? found(place, view)
        : memories.get(place).of(view, noting -> found(place, noting));
  }

  private Found found(int place, FactView view) {
    Inputs inputs = new Inputs(view, ground);
    Derived derived = Derivations.ALL.get(place).rule().from(inputs);
    return new Found(derived, inputs.read(), inputs.restOnAssumption());
  }
}
