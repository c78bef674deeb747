package underhold.sizing.needles;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.mechanics.steel.RolledSection;
import underhold.sizing.Amount;

/** Goes through a table from its lightest section up and takes the first that passes everything. */
final class SectionChooser {
  /** Heavier sections that are shown beside the chosen one. */
  private static final int HEAVIER_SHOWN = 2;

  private final NeedleCase site;
  private final SteelCode code;
  private final NeedleBeam beam;

  private SectionChooser(NeedleCase site, NeedleBeam beam) {
    this.site = site;
    this.code = SteelCode.of(site);
    this.beam = beam;
  }

  /**
   * A section with all its checks.
   *
   * @param section the section
   * @param limbs its strength and its deflection
   */
  record Tried(RolledSection section, List<Limb> limbs) {
    Tried {
      limbs = List.copyOf(limbs);
    }

    boolean passes() {
      return limbs.stream().allMatch(Limb::passes);
    }

    /** The limb that is used most. */
    Limb governing() {
      Limb worst = limbs.get(0);
      for (Limb limb : limbs) {
        worst = limb.utilisation() > worst.utilisation() ? limb : worst;
      }
      return worst;
    }

    /** The strength limb that is used most. */
    Limb governingStrength() {
      return new Tried(
              section, limbs.stream().filter(limb -> !limb.id().equals(Deflection.ID)).toList())
          .governing();
    }

    private double strength() {
      return governing().utilisation();
    }
  }

  /**
   * What was found.
   *
   * @param chosen the lightest section that passes; where none does, the one used least
   * @param found whether it passes
   * @param lighter the heaviest one lighter than it, which fails
   * @param heavier the next ones that pass
   */
  record Result(Tried chosen, boolean found, Optional<Tried> lighter, List<Tried> heavier) {
    Result {
      heavier = List.copyOf(heavier);
    }
  }

  /** The choice for that needle. */
  static Result choose(NeedleCase site, NeedleBeam beam) {
    return new SectionChooser(site, beam).choose();
  }

  /** Sections beyond those shown are not tried. */
  private Result choose() {
    List<Tried> failed = new ArrayList<>();
    List<Tried> passing = new ArrayList<>();
    Optional<Tried> lighter = Optional.empty();
    for (RolledSection section : site.table().sections()) {
      if (passing.size() > HEAVIER_SHOWN) {
        break;
      }
      if (code.covers(section)) {
        Tried one = tried(section);
        if (one.passes()) {
          passing.add(one);
        } else if (passing.isEmpty()) {
          failed.add(one);
          lighter = Optional.of(one);
        }
      }
    }
    return passing.isEmpty()
        ? new Result(strongest(failed), false, Optional.empty(), List.of())
        : new Result(passing.get(0), true, lighter, passing.subList(1, passing.size()));
  }

  private static Tried strongest(List<Tried> all) {
    Tried best = all.get(all.size() - 1);
    for (Tried one : all) {
      best = one.strength() < best.strength() ? one : best;
    }
    return best;
  }

  private Tried tried(RolledSection section) {
    List<Limb> limbs = new ArrayList<>(code.limbs(section, beam));
    limbs.add(
        new Limb(
            Deflection.ID,
            "deflection",
            beam.deflection(Deflection.stiffness(site, section)),
            Deflection.limit(site, beam),
            Amount.thickness(0)));
    return new Tried(section, limbs);
  }
}
