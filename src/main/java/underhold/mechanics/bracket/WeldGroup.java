package underhold.mechanics.bracket;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A weld group as lines of unit throat, elastic method.
 *
 * <p>Per unit throat: length L (m), second moments Ix and Iy (m3), polar J = Ix + Iy (m3) about the
 * centroid. Force per length: P/L for shear, M c/I or M r/J for moment, added as vectors. Exact for
 * straight lines; the method is conservative against the instantaneous centre. Source: elastic
 * method as in a published chapter on eccentric welded connections (read); line properties after
 * Blodgett (from memory), here computed from the lines themselves.
 *
 * @param segments straight welds
 */
public record WeldGroup(List<Segment> segments) {

  public WeldGroup {
    segments = List.copyOf(segments);
    if (segments.isEmpty()) {
      throw new IllegalArgumentException("a weld group has at least one weld");
    }
  }

  /**
   * One straight weld from (x1, y1) to (x2, y2), m; y up.
   *
   * @param x1 x of one end
   * @param y1 y of one end
   * @param x2 x of the other end
   * @param y2 y of the other end
   */
  public record Segment(double x1, double y1, double x2, double y2) {
    public Segment {
      Require.finite("coordinates", x1 + y1 + x2 + y2);
      Require.positive("weld length", Math.hypot(x2 - x1, y2 - y1));
    }

    double length() {
      return Math.hypot(x2 - x1, y2 - y1);
    }
  }

  /** Two vertical welds of height d, b apart. */
  public static WeldGroup twoVerticals(double heightMetres, double apartMetres) {
    Require.positive("height", heightMetres);
    Require.notNegative("distance", apartMetres);
    return new WeldGroup(
        List.of(
            new Segment(0, 0, 0, heightMetres),
            new Segment(apartMetres, 0, apartMetres, heightMetres)));
  }

  /** Welds all round a box b wide and d high. */
  public static WeldGroup box(double widthMetres, double heightMetres) {
    Require.positive("width", widthMetres);
    Require.positive("height", heightMetres);
    return new WeldGroup(
        List.of(
            new Segment(0, 0, 0, heightMetres),
            new Segment(widthMetres, 0, widthMetres, heightMetres),
            new Segment(0, 0, widthMetres, 0),
            new Segment(0, heightMetres, widthMetres, heightMetres)));
  }

  /** A channel: a vertical back of height d and two legs b. */
  public static WeldGroup channel(double legMetres, double backMetres) {
    Require.positive("leg", legMetres);
    Require.positive("back", backMetres);
    return new WeldGroup(
        List.of(
            new Segment(0, 0, 0, backMetres),
            new Segment(0, 0, legMetres, 0),
            new Segment(0, backMetres, legMetres, backMetres)));
  }

  /** L, m. */
  public double length() {
    return sum(Segment::length);
  }

  /** x of the centroid, m. */
  public double centroidX() {
    return sum(one -> one.length() * (one.x1() + one.x2()) / 2) / length();
  }

  /** y of the centroid, m. */
  public double centroidY() {
    return sum(one -> one.length() * (one.y1() + one.y2()) / 2) / length();
  }

  /** Second moment about the horizontal axis through the centroid, m3. */
  public double aboutHorizontal() {
    double centre = centroidY();
    return sum(one -> secondMoment(one.length(), one.y1() - centre, one.y2() - centre));
  }

  /** Second moment about the vertical axis through the centroid, m3. */
  public double aboutVertical() {
    double centre = centroidX();
    return sum(one -> secondMoment(one.length(), one.x1() - centre, one.x2() - centre));
  }

  /** J, m3. */
  public double polar() {
    return aboutHorizontal() + aboutVertical();
  }

  /** Section modulus for a moment that bends out of the plane of the weld about x, m2. */
  public double modulusOutOfPlane() {
    double centre = centroidY();
    double farthest =
        segments.stream()
            .mapToDouble(one -> Math.max(Math.abs(one.y1() - centre), Math.abs(one.y2() - centre)))
            .max()
            .orElseThrow();
    return aboutHorizontal() / farthest;
  }

  /**
   * Greatest force per length with a vertical load P that also bends the group out of its plane:
   * sqrt((P/L)^2 + (M/S)^2), kN/m.
   */
  public double outOfPlane(double loadKilonewtons, double momentKilonewtonMetres) {
    Require.notNegative("load", loadKilonewtons);
    Require.notNegative("moment", momentKilonewtonMetres);
    return Math.hypot(loadKilonewtons / length(), momentKilonewtonMetres / modulusOutOfPlane());
  }

  /** Greatest force per length at a weld end, vertical load P in the plane at x = xP, kN/m. */
  public double inPlane(double loadKilonewtons, double loadXMetres) {
    Require.notNegative("load", loadKilonewtons);
    Require.finite("position of the load", loadXMetres);
    return segments.stream()
        .mapToDouble(
            one ->
                Math.max(
                    inPlaneAt(loadKilonewtons, loadXMetres, one.x1(), one.y1()),
                    inPlaneAt(loadKilonewtons, loadXMetres, one.x2(), one.y2())))
        .max()
        .orElseThrow();
  }

  /** Force per length at a point of the weld, vertical load P in the plane at x = xP, kN/m. */
  public double inPlaneAt(
      double loadKilonewtons, double loadXMetres, double xMetres, double yMetres) {
    double perPolar = loadKilonewtons * (loadXMetres - centroidX()) / polar();
    double vertical = loadKilonewtons / length() + perPolar * (xMetres - centroidX());
    double horizontal = perPolar * (yMetres - centroidY());
    return Math.hypot(vertical, horizontal);
  }

  private double sum(ToDoubleFunction<Segment> term) {
    return segments.stream().mapToDouble(term).sum();
  }

  /** Integral of u^2 along a line whose u runs evenly from u1 to u2. */
  private static double secondMoment(double length, double u1, double u2) {
    return length * (u1 * u1 + u1 * u2 + u2 * u2) / 3;
  }
}
