package underhold.mechanics.pile.settlement;

import java.util.List;
import underhold.mechanics.soil.Outcome;
import underhold.mechanics.soil.Require;

/**
 * Load and settlement of a pile head by summing side and base curves up an elastic shaft.
 *
 * <p>For a movement assumed at the base its load follows from the base curve; going up piece by
 * piece, each piece sheds its side resistance times the share at its middle, and shortens by the
 * mean force over its stiffness. The head's load and settlement are one point of the curve; the
 * settlement under a given load is found by halving on the base movement. Pieces are cut to {@value
 * #PIECE_METRES} m. Symbols: m, kN. Assumptions: each piece answers to its own movement only; no
 * loss after the peak; short-term loading, creep excluded. Accuracy: that of the curves; cutting
 * adds less than 1 % (compared with an independent integration in the tests). Source: H. Coyle and
 * L. Reese, 1966 (load transfer method); basis: from memory, verify.
 */
public final class LoadSettlement {
  private static final double PIECE_METRES = 0.25;
  private static final int LARGEST_PIECES = 400;
  private static final int HALVINGS = 80;
  private static final int REPEATS = 60;

  private final double diameterMetres;
  private final List<Stretch> stretches;
  private final double baseKilonewtons;
  private final MobilisationCurve baseCurve;

  /**
   * A stretch of shaft.
   *
   * @param lengthMetres length
   * @param sideKilonewtons ultimate side resistance over it, 0 where the ground does not count
   * @param curve its side curve
   * @param axialStiffnessKilonewtons E A
   */
  public record Stretch(
      double lengthMetres,
      double sideKilonewtons,
      MobilisationCurve curve,
      double axialStiffnessKilonewtons) {
    public Stretch {
      Require.positive(lengthMetres, "length", "m");
      Require.notNegative(sideKilonewtons, "side resistance", "kN");
      Require.positive(axialStiffnessKilonewtons, "axial stiffness", "kN");
    }
  }

  /**
   * A point of the curve.
   *
   * @param headLoadKilonewtons load on the head
   * @param headSettlementMetres settlement of the head
   * @param baseLoadKilonewtons load that reaches the base
   * @param baseSettlementMetres movement of the base
   */
  public record State(
      double headLoadKilonewtons,
      double headSettlementMetres,
      double baseLoadKilonewtons,
      double baseSettlementMetres) {}

  /**
   * A pile.
   *
   * @param diameterMetres diameter by which the curves are scaled
   * @param fromTopDown stretches from the head down, at least one
   * @param baseKilonewtons ultimate base resistance, 0 if none counts
   * @param baseCurve curve of the base
   */
  public LoadSettlement(
      double diameterMetres,
      List<Stretch> fromTopDown,
      double baseKilonewtons,
      MobilisationCurve baseCurve) {
    this.diameterMetres = Require.positive(diameterMetres, "diameter", "m");
    this.stretches = List.copyOf(fromTopDown);
    this.baseKilonewtons = Require.notNegative(baseKilonewtons, "base resistance", "kN");
    this.baseCurve = baseCurve;
    if (stretches.isEmpty()) {
      throw new IllegalArgumentException("a pile has at least one stretch");
    }
  }

  /** Ultimate resistance, kN. */
  public double ultimateKilonewtons() {
    return baseKilonewtons + stretches.stream().mapToDouble(Stretch::sideKilonewtons).sum();
  }

  /** The state of the head when the base has moved that far. */
  public State atBaseMovement(double baseMetres) {
    Require.notNegative(baseMetres, "movement of the base", "m");
    double baseLoad = baseKilonewtons * baseCurve.shareAt(baseMetres / diameterMetres);
    double force = baseLoad;
    double movement = baseMetres;
    for (int i = stretches.size() - 1; i >= 0; i--) {
      Stretch stretch = stretches.get(i);
      int pieces = (int) Math.min(Math.ceil(stretch.lengthMetres() / PIECE_METRES), LARGEST_PIECES);
      double flexibility = stretch.lengthMetres() / pieces / stretch.axialStiffnessKilonewtons();
      double side = stretch.sideKilonewtons() / pieces;
      for (int piece = 0; piece < pieces; piece++) {
        double shed = side * middleShare(stretch.curve(), movement, force, side, flexibility);
        movement += (force + shed / 2) * flexibility;
        force += shed;
      }
    }
    return new State(force, movement, baseLoad, baseMetres);
  }

  private double middleShare(
      MobilisationCurve curve, double below, double force, double side, double flexibility) {
    double share = curve.shareAt(below / diameterMetres);
    for (int i = 0; i < REPEATS; i++) {
      double middle = below + (force + side * share / 4) * flexibility / 2;
      double next = curve.shareAt(middle / diameterMetres);
      if (next == share) {
        break;
      }
      share = next;
    }
    return share;
  }

  /** The state under a load on the head; out of range where it exceeds the resistance. */
  public Outcome<State> under(double loadKilonewtons) {
    Require.notNegative(loadKilonewtons, "load", "kN");
    double high = diameterMetres * Math.max(baseCurve.fullAtRatio(), largestSideRatio());
    if (loadKilonewtons >= atBaseMovement(high).headLoadKilonewtons()) {
      return loadKilonewtons == 0
          ? Outcome.of(new State(0, 0, 0, 0))
          : Outcome.outOfRange("the load exceeds all side and base resistance");
    }
    double low = 0;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (atBaseMovement(middle).headLoadKilonewtons() < loadKilonewtons) {
        low = middle;
      } else {
        high = middle;
      }
    }
    State found = atBaseMovement(high);
    return Outcome.of(
        loadKilonewtons == 0
            ? new State(0, 0, 0, 0)
            : new State(
                loadKilonewtons,
                found.headSettlementMetres(),
                found.baseLoadKilonewtons(),
                found.baseSettlementMetres()));
  }

  private double largestSideRatio() {
    return stretches.stream().mapToDouble(one -> one.curve().fullAtRatio()).max().orElse(0);
  }
}
