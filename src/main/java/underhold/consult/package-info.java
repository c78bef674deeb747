/**
 * The whole consultation: from a site to its facts, the rules' findings, the ranking of the support
 * options, the questions still open and how firm the answer is. Every result is immutable; screens
 * and files are views of it.
 */
@NullMarked
package underhold.consult;

import org.jspecify.annotations.NullMarked;
