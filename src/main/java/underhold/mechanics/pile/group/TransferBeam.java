package underhold.mechanics.pile.group;

import underhold.mechanics.soil.Require;

/**
 * A beam that carries a structure's load to piles.
 *
 * <p>Centred: load P spread over w at mid span L gives M = P L/4 - P w/8, V = P/2 at each end.
 * Cantilever: load P at a past the near pile, far pile b behind it: near pile P (1 + a/b) in
 * compression, far pile P a/b in tension, M = P a. Symbols: kN, m. Statics; the beam's section is
 * designed elsewhere.
 */
public final class TransferBeam {
  private TransferBeam() {}

  /**
   * Forces of a beam between two piles.
   *
   * @param momentKilonewtonMetres largest moment
   * @param shearKilonewtons largest shear
   */
  public record Centred(double momentKilonewtonMetres, double shearKilonewtons) {}

  /**
   * Forces of a cantilevered beam.
   *
   * @param nearKilonewtons compression of the near pile
   * @param farKilonewtons tension of the far pile
   * @param momentKilonewtonMetres largest moment
   */
  public record Cantilever(
      double nearKilonewtons, double farKilonewtons, double momentKilonewtonMetres) {}

  /** A patch of load at mid span. */
  public static Centred centred(double loadKilonewtons, double spanMetres, double patchMetres) {
    Require.notNegative(loadKilonewtons, "load", "kN");
    Require.positive(spanMetres, "span", "m");
    Require.between(patchMetres, 0, spanMetres, "width of the load", "m");
    return new Centred(loadKilonewtons * (spanMetres / 4 - patchMetres / 8), loadKilonewtons / 2);
  }

  /** A load past the near pile. */
  public static Cantilever cantilever(
      double loadKilonewtons, double overhangMetres, double backSpanMetres) {
    Require.notNegative(loadKilonewtons, "load", "kN");
    Require.notNegative(overhangMetres, "overhang", "m");
    Require.positive(backSpanMetres, "back span", "m");
    double far = loadKilonewtons * overhangMetres / backSpanMetres;
    return new Cantilever(loadKilonewtons + far, far, loadKilonewtons * overhangMetres);
  }
}
