package underhold.consult.change;

import underhold.site.Fact;

/**
 * A fact that followed, or follows, from others, and is another than before.
 *
 * @param before the fact before
 * @param after the fact now
 */
public record FactChange(Fact before, Fact after) {}
