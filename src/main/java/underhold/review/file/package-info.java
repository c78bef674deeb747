/**
 * Records in files: the names of a record's components are the names in the file. Reading is strict
 * and tells all problems at once; every tree has one canonical text (RFC 8785), over which
 * fingerprints are taken.
 */
@NullMarked
package underhold.review.file;

import org.jspecify.annotations.NullMarked;
