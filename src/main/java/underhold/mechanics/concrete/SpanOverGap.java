package underhold.mechanics.concrete;

/**
 * Longest gap that a wall or footing bridges as a simply supported strip under uniform load: L =
 * sqrt(8 M / w) by moment, L = 2 V / w by shear, the lesser of the two; as a cantilever past a
 * corner half of each.
 *
 * <p>Plain concrete has no hinges to redistribute, so no end fixity is taken. M and V are design
 * (reduced) strengths, w the factored load. Statics.
 *
 * @param designMoment phi Mn, kN m
 * @param designShear phi Vn, kN
 * @param factoredLoad w, kN/m
 */
public record SpanOverGap(double designMoment, double designShear, double factoredLoad) {
  public SpanOverGap {
    Require.positive("design moment", designMoment);
    Require.positive("design shear", designShear);
    Require.positive("factored load", factoredLoad);
  }

  /** Span that moment allows, m. */
  public double byMoment() {
    return Math.sqrt(8 * designMoment / factoredLoad);
  }

  /** Span that shear at the face of the support allows, m. */
  public double byShear() {
    return 2 * designShear / factoredLoad;
  }

  /** The weaker of the two, m. */
  public double longest() {
    return Math.min(byMoment(), byShear());
  }

  /** Longest cantilever past the last support: M = w a^2 / 2 and V = w a, m. */
  public double longestCantilever() {
    return Math.min(Math.sqrt(2 * designMoment / factoredLoad), designShear / factoredLoad);
  }
}
