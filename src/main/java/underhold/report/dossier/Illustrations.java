package underhold.report.dossier;

import java.util.List;
import underhold.consult.ZoneAdvice;
import underhold.consult.scheme.Scheme;
import underhold.consult.stage.StagePlan;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.Figure;
import underhold.site.Site;
import underhold.sizing.Sheet;

/**
 * The drawings of a package. Every drawing made for a call has an id that is the prefix given, or
 * begins with it and a hyphen, no two alike; a prefix is made from the place of a zone and is given
 * once.
 */
public interface Illustrations {
  /** No drawings. */
  Illustrations NONE = new Illustrations() {};

  /** The whole site: zones, ground, water, excavation. */
  default List<Figure> ofSite(Site site, String prefix, UnitSystem units) {
    return List.of();
  }

  /** A zone as it is, and what was advised of it. */
  default List<Figure> ofAdvice(Site site, ZoneAdvice advice, String prefix, UnitSystem units) {
    return List.of();
  }

  /** What a sheet sized. */
  default List<Figure> ofSheet(
      Sheet sheet, Site site, ZoneAdvice advice, String prefix, UnitSystem units) {
    return List.of();
  }

  /** The methods of all zones together. */
  default List<Figure> ofScheme(Scheme scheme, String prefix, UnitSystem units) {
    return List.of();
  }

  /** The stages in time, and the order of pits. */
  default List<Figure> ofPlan(StagePlan plan, String prefix, UnitSystem units) {
    return List.of();
  }
}
