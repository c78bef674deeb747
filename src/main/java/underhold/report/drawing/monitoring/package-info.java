/** The zone of influence of an excavation by each published rule, in section. */
@NullMarked
package underhold.report.drawing.monitoring;

import org.jspecify.annotations.NullMarked;
