package underhold.report.dossier;

import java.util.List;
import underhold.consult.ZoneAdvice;
import underhold.consult.stage.StagePlan;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.Drawn;
import underhold.site.Site;
import underhold.sizing.Sheet;

/**
 * The drawings of a package. Every drawing made for a call has an id that begins with the prefix
 * given, no two alike; a prefix is made from the place of a zone and is given once for each kind of
 * drawing.
 */
public interface Illustrations {
  /** No drawings. */
  Illustrations NONE = new Illustrations() {};

  /** A zone as it is told: structure, ground, water, excavation. */
  default List<Drawn> ofZone(Site site, ZoneAdvice advice, String prefix, UnitSystem units) {
    return List.of();
  }

  /** How the options of a zone stand. */
  default List<Drawn> ofAdvice(ZoneAdvice advice, String prefix) {
    return List.of();
  }

  /** What a sheet sized. */
  default List<Drawn> ofSheet(
      Sheet sheet, Site site, ZoneAdvice advice, String prefix, UnitSystem units) {
    return List.of();
  }

  /** What a sheet sized, as those need it who build it: without the chart of its checks. */
  default List<Drawn> toBuild(
      Sheet sheet, Site site, ZoneAdvice advice, String prefix, UnitSystem units) {
    return ofSheet(sheet, site, advice, prefix, units);
  }

  /** The stages in time. */
  default List<Drawn> ofPlan(StagePlan plan, String prefix) {
    return List.of();
  }
}
