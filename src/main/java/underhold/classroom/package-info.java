/**
 * Cases for a class: an engineer's first knowledge of a site, what is found out stage by stage, the
 * answers of students and their marks. Whatever an answer is held against is reckoned from what its
 * student knew. Marks are points; amounts keep the inside units of their measures.
 */
@NullMarked
package underhold.classroom;

import org.jspecify.annotations.NullMarked;
