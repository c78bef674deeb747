package underhold.sizing.needles;

import underhold.mechanics.beam.PointLoadBeam;
import underhold.mechanics.beam.TailedCantilever;
import underhold.mechanics.beam.UniformLoadBeam;

/** One needle under its working load and its own weight. */
sealed interface NeedleBeam {
  /** Load on the needle, kN. */
  double load();

  /** Length against which deflection is measured, m. */
  double span();

  /** From outer seat to outer seat, or from tip to tail, m. */
  double length();

  /** Largest moment, kN m, with that own weight in kN/m. */
  double moment(double ownWeight);

  /** Largest shear, kN. */
  double shear(double ownWeight);

  /** Larger reaction of its seats, kN. */
  double reaction(double ownWeight);

  /** Deflection by the load, largest, m; E I in kN m2. */
  double deflection(double stiffness);

  /** Longest part between points held sideways, m. */
  double unbraced(boolean held, double tipFactor);

  /**
   * On a seat each side of the load.
   *
   * @param load N
   * @param near distance of the load from the nearer seat
   * @param far distance from the farther seat
   */
  record Seated(double load, double near, double far) implements NeedleBeam {
    private PointLoadBeam beam() {
      return new PointLoadBeam(load, near, far);
    }

    private UniformLoadBeam own(double weight) {
      return new UniformLoadBeam(weight, span());
    }

    @Override
    public double span() {
      return near + far;
    }

    @Override
    public double length() {
      return span();
    }

    @Override
    public double moment(double ownWeight) {
      return beam().moment() + own(ownWeight).moment();
    }

    @Override
    public double shear(double ownWeight) {
      return reaction(ownWeight);
    }

    @Override
    public double reaction(double ownWeight) {
      return beam().largestReaction() + own(ownWeight).reaction();
    }

    @Override
    public double deflection(double stiffness) {
      return beam().largestDeflection(stiffness);
    }

    @Override
    public double unbraced(boolean held, double tipFactor) {
      return held ? far : span();
    }
  }

  /**
   * Over a fulcrum, its tail held down.
   *
   * @param load N, at the tip
   * @param overhang from the fulcrum to the load
   * @param back from the fulcrum to the tail
   */
  record Tailed(double load, double overhang, double back) implements NeedleBeam {
    private TailedCantilever beam() {
      return new TailedCantilever(load, overhang, back);
    }

    @Override
    public double span() {
      return overhang;
    }

    @Override
    public double length() {
      return overhang + back;
    }

    @Override
    public double moment(double ownWeight) {
      return beam().moment() + ownWeight * overhang * overhang / 2;
    }

    @Override
    public double shear(double ownWeight) {
      return beam().largestShear() + ownWeight * overhang;
    }

    @Override
    public double reaction(double ownWeight) {
      return beam().fulcrum() + ownWeight * length() * length() / (2 * back);
    }

    @Override
    public double deflection(double stiffness) {
      return beam().tipDeflection(stiffness);
    }

    @Override
    public double unbraced(boolean held, double tipFactor) {
      return Math.max(held ? overhang : tipFactor * overhang, back);
    }

    /** Uplift of the tail by the load, kN; the needle's own weight is not counted. */
    double uplift() {
      return beam().uplift();
    }
  }
}
