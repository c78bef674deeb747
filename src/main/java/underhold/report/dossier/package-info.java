/**
 * The calculation package: from a consultation to one document, section by section, for a reviewer,
 * a site or a client.
 */
@NullMarked
package underhold.report.dossier;

import org.jspecify.annotations.NullMarked;
