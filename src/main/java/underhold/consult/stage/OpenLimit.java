package underhold.consult.stage;

/**
 * How much of the wall of a zone may be open at once.
 *
 * @param zone the zone
 * @param metres length, m
 * @param wallMetres length of the whole wall, m
 */
public record OpenLimit(String zone, double metres, double wallMetres) {}
