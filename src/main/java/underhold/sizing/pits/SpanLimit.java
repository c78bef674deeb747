package underhold.sizing.pits;

import java.util.OptionalDouble;

/**
 * What the wall can span.
 *
 * @param clearSpanMetres clear length between supports; empty where it could not be reckoned
 * @param cantileverMetres clear length past the last support at a free end; empty where there is
 *     none to rely on
 */
record SpanLimit(OptionalDouble clearSpanMetres, OptionalDouble cantileverMetres) {
  static final SpanLimit UNKNOWN = new SpanLimit(OptionalDouble.empty(), OptionalDouble.empty());
}
