package underhold.report.drawing.kit;

import java.util.List;
import underhold.quantity.UnitSystem;

/**
 * A scale of drawing.
 *
 * @param ratio how many times smaller the paper is than the world
 * @param label as printed: "1:50", "1:48 (1/4 in = 1 ft)"
 */
public record DrawingScale(int ratio, String label) {
  private static final double MILLIMETRES = 1000;

  private static final List<DrawingScale> METRIC =
      List.of(5, 10, 20, 25, 50, 100, 200, 250, 500, 1000, 2000, 5000).stream()
          .map(ratio -> new DrawingScale(ratio, "1:" + ratio))
          .toList();

  private static final List<DrawingScale> US =
      List.of(
          new DrawingScale(8, "1:8 (1 1/2 in = 1 ft)"),
          new DrawingScale(12, "1:12 (1 in = 1 ft)"),
          new DrawingScale(16, "1:16 (3/4 in = 1 ft)"),
          new DrawingScale(24, "1:24 (1/2 in = 1 ft)"),
          new DrawingScale(32, "1:32 (3/8 in = 1 ft)"),
          new DrawingScale(48, "1:48 (1/4 in = 1 ft)"),
          new DrawingScale(64, "1:64 (3/16 in = 1 ft)"),
          new DrawingScale(96, "1:96 (1/8 in = 1 ft)"),
          new DrawingScale(120, "1:120 (1 in = 10 ft)"),
          new DrawingScale(192, "1:192 (1/16 in = 1 ft)"),
          new DrawingScale(240, "1:240 (1 in = 20 ft)"),
          new DrawingScale(480, "1:480 (1 in = 40 ft)"),
          new DrawingScale(600, "1:600 (1 in = 50 ft)"),
          new DrawingScale(1200, "1:1200 (1 in = 100 ft)"),
          new DrawingScale(6000, "1:6000 (1 in = 500 ft)"));

  /**
   * The largest usual scale at which a part of the world [m] fits on paper [mm]; the smallest one
   * if none does.
   */
  public static DrawingScale fitting(
      double worldWidth, double worldHeight, double width, double height, UnitSystem system) {
    List<DrawingScale> usual = system == UnitSystem.US ? US : METRIC;
    return usual.stream()
        .filter(scale -> scale.paper(worldWidth) <= width && scale.paper(worldHeight) <= height)
        .findFirst()
        .orElse(usual.get(usual.size() - 1));
  }

  /**
   * How high a figure may be so that a page of the readers' paper, A4 or Letter, shows it as large
   * as it is drawn [mm].
   */
  public static double page(UnitSystem system) {
    return system == UnitSystem.US ? 215 : 233;
  }

  /** The smallest usual scale at which a length [m] still takes that much paper [mm]. */
  public static DrawingScale atLeast(double metres, double millimetres, UnitSystem system) {
    List<DrawingScale> usual = system == UnitSystem.US ? US : METRIC;
    DrawingScale found = usual.get(0);
    for (DrawingScale scale : usual) {
      if (scale.paper(metres) >= millimetres) {
        found = scale;
      }
    }
    return found;
  }

  /** A length of the world [m] on paper [mm]. */
  public double paper(double metres) {
    return metres * MILLIMETRES / ratio;
  }

  /** A length on paper [mm] in the world [m]. */
  public double world(double millimetres) {
    return millimetres * ratio / MILLIMETRES;
  }
}
