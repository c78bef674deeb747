package underhold.report;

import java.util.List;
import java.util.Map;
import underhold.advice.BuiltInPack;
import underhold.report.drawing.section.SectionText;
import underhold.site.Fact;
import underhold.site.FactDictionary;
import underhold.site.FactView;
import underhold.site.GroundLayer;
import underhold.site.GroundProfile;
import underhold.site.Origin;
import underhold.site.Relation;
import underhold.site.Site;
import underhold.site.StatedFact;
import underhold.site.Zone;
import underhold.site.ZoneViews;

/** What is known of a site: stated, derived, and said to be unknown. */
public final class SiteText {
  private static final int MARGIN = 2;
  private static final int NAME = 25;

  private SiteText() {}

  public static String of(Site site, Look look) {
    TextPage page = new TextPage(look);
    page.heading(site.name());
    page.para(0, "Numbers nobody typed are shown in " + site.units() + " units.");
    if (!site.note().isEmpty()) {
      page.para(MARGIN, site.note());
    }
    page.heading("The whole site");
    stated(page, site.facts());
    ground(page, site.ground());
    for (Zone zone : site.zones()) {
      page.heading("Zone: " + zone.name());
      if (!zone.note().isEmpty()) {
        page.para(MARGIN, zone.note());
      }
      stated(page, zone.facts());
      ground(page, zone.ground());
      derived(page, ZoneViews.known(site, zone, FactDictionary.standard()));
      section(page, site, zone);
    }
    for (Relation relation : site.relations()) {
      page.heading("Zones: " + relation.first() + " and " + relation.second());
      if (!relation.note().isEmpty()) {
        page.para(MARGIN, relation.note());
      }
      stated(page, relation.facts());
    }
    return page.text();
  }

  private static void section(TextPage page, Site site, Zone zone) {
    SectionText.of(site, zone, BuiltInPack.pack().limits(), site.units())
        .ifPresent(
            section -> {
              page.heading("Section: " + zone.name());
              page.sketch(section.lines(page.look().width()));
            });
  }

  private static void stated(TextPage page, Map<String, StatedFact> facts) {
    if (facts.isEmpty()) {
      page.para(MARGIN, "no facts stated");
    }
    facts.forEach(
        (name, fact) -> {
          var value = fact.value();
          String text = value == null ? "unknown" : value.text();
          page.item(
              MARGIN, name, NAME, text + (fact.note().isEmpty() ? "" : " (" + fact.note() + ")"));
        });
  }

  private static void ground(TextPage page, GroundProfile ground) {
    for (GroundLayer layer : ground.layers()) {
      page.item(MARGIN, "ground from " + layer.top().text(), NAME, layer.soil());
    }
  }

  private static void derived(TextPage page, FactView view) {
    List<Fact> derived =
        view.present().stream().filter(fact -> fact.origin() == Origin.DERIVED).toList();
    derived.forEach(f -> page.item(MARGIN, f.name(), NAME, "follows: " + f.how()));
  }
}
