package underhold.mechanics.soil.edgewall;

import java.util.ArrayList;
import java.util.List;
import underhold.mechanics.soil.Require;

/**
 * A wall held by props (struts, rakers or ties) at several depths and by the ground at its foot, in
 * one stage of the excavation.
 *
 * <p>Hinge method: a hinge at every prop below the first. R1 = M(l2)/(l2 - l1), no more than F(l2);
 * below, each length between supports is a simple beam: its lower end takes R = moment about the
 * upper support/length, the upper end the rest. Where the first prop lies below the resultant the
 * foot would have to pull: the prop then carries all, F(l2), and the wall's foot the moment.
 * Tributary method: each prop carries the pressure between the middles of the lengths above and
 * below it, the first from the top. The lowest support is the level of the ground in front.
 *
 * <p>Symbols: l depth of a prop, l2 the next support below the first [m]; F, M of {@link
 * BackPressure}; R [kN per metre run]. Assumptions: wall stiff against the props, pressure counted
 * down to the ground in front, below it soil stands on both sides. Accuracy: statics; the two
 * methods differ from each other and from a wall on springs by tens of per cent. Source: both are
 * given for multi-tier walls by Caltrans, Trenching and Shoring Manual; basis: from memory, verify;
 * the cap at F(l2) is judgement, it keeps every force from falling as the cut deepens.
 *
 * @param pressure pressure on the back
 * @param propDepthsMetres depths of the props, from the top down
 * @param groundDepthMetres depth of the ground in front, the lowest support
 */
public record ProppedWall(
    BackPressure pressure, List<Double> propDepthsMetres, double groundDepthMetres) {

  /** Least length between supports [m] (judgement, guards the arithmetic). */
  private static final double LEAST_LENGTH = 1e-6;

  public ProppedWall {
    propDepthsMetres = List.copyOf(propDepthsMetres);
    if (propDepthsMetres.isEmpty()) {
      throw new IllegalArgumentException("a propped wall needs a prop");
    }
    double above = 0;
    for (double depth : propDepthsMetres) {
      Require.between(depth, above, Require.LARGEST, "depth of a prop", "m");
      above = depth + LEAST_LENGTH;
    }
    Require.between(groundDepthMetres, above, Require.LARGEST, "depth of the ground in front", "m");
  }

  /**
   * Forces of one method.
   *
   * @param props forces of the props, from the top down [kN per metre]
   * @param foot force at the ground in front [kN per metre]
   */
  public record Forces(List<Double> props, double foot) {
    public Forces {
      props = List.copyOf(props);
    }
  }

  /** Depth of a support: the props, then the ground in front. */
  private double support(int index) {
    return index < propDepthsMetres.size() ? propDepthsMetres.get(index) : groundDepthMetres;
  }

  /** Forces by the hinge method. */
  public Forces byHinges() {
    int count = propDepthsMetres.size();
    double second = support(1);
    double first =
        Math.min(pressure.momentAbove(second) / (second - support(0)), pressure.forceAbove(second));
    List<Double> props = new ArrayList<>(List.of(first));
    double carriedOver = pressure.forceAbove(second) - first;
    for (int i = 1; i < count; i++) {
      double upper = upperEnd(i);
      props.add(carriedOver + upper);
      carriedOver = pressure.forceBetween(support(i), support(i + 1)) - upper;
    }
    return new Forces(props, Math.max(0, carriedOver));
  }

  /** Force that the length below a prop brings to it as a simple beam [kN per metre]. */
  public double upperEnd(int prop) {
    double upper = support(prop);
    double lower = support(prop + 1);
    return pressure.momentAboutLower(upper, lower) / (lower - upper);
  }

  /** Forces by tributary lengths. */
  public Forces byTributaryLengths() {
    List<Double> props = new ArrayList<>();
    double above = 0;
    for (int i = 0; i < propDepthsMetres.size(); i++) {
      double below = (support(i) + support(i + 1)) / 2;
      props.add(pressure.forceBetween(above, below));
      above = below;
    }
    return new Forces(props, pressure.forceBetween(above, groundDepthMetres));
  }

  /** Moment over the first prop of the wall that stands above it [kN m per metre]. */
  public double momentOverFirst() {
    return pressure.momentAbove(support(0));
  }

  /**
   * Greatest moment between a prop and the next support [kN m per metre].
   *
   * @param kilonewtonMetresPerMetre the moment, tension in front
   * @param depthMetres where it acts
   */
  public record SpanMoment(double kilonewtonMetresPerMetre, double depthMetres) {}

  /**
   * Greatest moment below a prop as a simple beam, which leaves out the relief by the moment over
   * the first prop.
   *
   * @param prop number of the prop above, from 0
   */
  public SpanMoment below(int prop) {
    double upper = support(prop);
    double end = upperEnd(prop);
    double depth =
        Math.min(support(prop + 1), pressure.depthOfForce(pressure.forceAbove(upper) + end));
    double moment = end * (depth - upper) - pressure.momentAboutLower(upper, depth);
    return new SpanMoment(Math.max(0, moment), depth);
  }

  /** Greatest shear: above the first prop or at the end of a length below [kN per metre]. */
  public double greatestShear() {
    double greatest = pressure.forceAbove(support(0));
    for (int i = 0; i < propDepthsMetres.size(); i++) {
      double upper = upperEnd(i);
      double lower = pressure.forceBetween(support(i), support(i + 1)) - upper;
      greatest = Math.max(greatest, Math.max(upper, lower));
    }
    return greatest;
  }

  /** Greatest moment: over the first prop or between supports [kN m per metre]. */
  public double greatestMoment() {
    double greatest = momentOverFirst();
    for (int i = 0; i < propDepthsMetres.size(); i++) {
      greatest = Math.max(greatest, below(i).kilonewtonMetresPerMetre());
    }
    return greatest;
  }
}
