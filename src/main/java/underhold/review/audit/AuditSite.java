package underhold.review.audit;

import underhold.site.Site;

/**
 * A site on which a pack is audited.
 *
 * @param group where it comes from, such as {@code demo}
 * @param name its name there
 * @param site the site
 */
public record AuditSite(String group, String name, Site site) {}
