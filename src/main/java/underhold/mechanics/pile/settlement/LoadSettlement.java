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
 * settlement under a given load is found by trial on the base movement. Pieces are cut to {@value
 * #PIECE_METRES} m. Symbols: m, kN. Assumptions: each piece answers to its own movement only; no
 * loss after the peak; short-term loading, creep excluded. Accuracy: that of the curves; cutting
 * adds less than 1 % (compared with an independent integration in the tests). Source: H. Coyle and
 * L. Reese, 1966 (load transfer method); basis: from memory, verify.
 */
public final class LoadSettlement {
  private static final double PIECE_METRES = 0.25;
  private static final int LARGEST_PIECES = 400;
  private static final int LARGEST_TRIALS = 300;

  /** A load this close, as a share of it, counts as met. */
  private static final double CLOSE = 1e-9;

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

  /**
   * The share at the middle of a piece, whose own movement depends on it: on a straight line of the
   * curve it follows at once, so that only the line is sought.
   */
  private double middleShare(
      MobilisationCurve curve, double below, double force, double side, double flexibility) {
    double atRest = (below + force * flexibility / 2) / diameterMetres;
    double perShare = side * flexibility / 8 / diameterMetres;
    return curve.shareWhere(atRest, perShare);
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
    return Outcome.of(loadKilonewtons == 0 ? new State(0, 0, 0, 0) : found(loadKilonewtons, high));
  }

  /** Between rest and a base movement that calls up more than the load: secants and halving. */
  private State found(double load, double high) {
    double low = 0;
    double top = high;
    double below = -load;
    State state = atBaseMovement(high);
    double above = state.headLoadKilonewtons() - load;
    for (int i = 0; i < LARGEST_TRIALS; i++) {
      if (state.headLoadKilonewtons() - load <= CLOSE * load) {
        break;
      }
      double secant = low - below * (top - low) / (above - below);
      boolean useSecant = i % 3 != 2 && secant > low && secant < top;
      double middle = useSecant ? secant : (low + top) / 2;
      State next = atBaseMovement(middle);
      double miss = next.headLoadKilonewtons() - load;
      // An end that stays loses half its weight, so that the next secant falls nearer to it.
      if (miss >= 0) {
        top = middle;
        above = miss;
        state = next;
        below /= 2;
      } else {
        low = middle;
        below = miss;
        above /= 2;
      }
    }
    return new State(
        load,
        state.headSettlementMetres(),
        state.baseLoadKilonewtons(),
        state.baseSettlementMetres());
  }

  private double largestSideRatio() {
    return stretches.stream().mapToDouble(one -> one.curve().fullAtRatio()).max().orElse(0);
  }
}
