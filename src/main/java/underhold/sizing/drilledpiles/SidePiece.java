package underhold.sizing.drilledpiles;

/**
 * A piece of shaft in one layer with its side resistance.
 *
 * @param layer the layer
 * @param topMetres depth of its top below ground
 * @param bottomMetres depth of its bottom
 * @param diameterMetres diameter of the hole
 * @param stressKilopascals effective vertical stress at its middle after digging
 * @param coefficient alpha, beta, C or aE, as the layer's method has it
 * @param unitKilopascals unit side resistance
 */
record SidePiece(
    BondLayer layer,
    double topMetres,
    double bottomMetres,
    double diameterMetres,
    double stressKilopascals,
    double coefficient,
    double unitKilopascals) {
  double lengthMetres() {
    return bottomMetres - topMetres;
  }

  double middleMetres() {
    return (topMetres + bottomMetres) / 2;
  }

  /** Ultimate side resistance, kN. */
  double resistanceKilonewtons() {
    return Math.PI * diameterMetres * lengthMetres() * unitKilopascals;
  }
}
