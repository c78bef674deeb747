/** The ground and the structure of a zone in section, to scale on paper and as a sketch. */
@NullMarked
package underhold.report.drawing.section;

import org.jspecify.annotations.NullMarked;
