package underhold.report.drawing.section;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.report.drawing.kit.Canvas;
import underhold.report.drawing.kit.Lettering;
import underhold.report.drawing.kit.Letters;
import underhold.report.drawing.kit.Pen;
import underhold.site.FactValue;
import underhold.site.Relation;
import underhold.site.Site;
import underhold.site.StatedFact;
import underhold.site.Zone;

/** The other zones of the site as a strip plan: what is stated of each and this one. */
final class Neighbours {
  private static final double EDGE = 2;
  private static final double BOX = 44;
  private static final double LINE = 38;
  private static final double STEP = 11;

  private final Site site;
  private final Zone zone;

  Neighbours(Site site, Zone zone) {
    this.site = site;
    this.zone = zone;
  }

  private List<Zone> others() {
    return site.zones().stream().filter(other -> !other.name().equals(zone.name())).toList();
  }

  /** Draws them below what is drawn already; nothing where the zone is alone. */
  void draw(Canvas canvas) {
    List<Zone> others = others();
    if (others.isEmpty()) {
      return;
    }
    double top = canvas.bottom() + 8;
    canvas.text(
        "Other zones of the site, distances as stated, not to scale", EDGE, top, Letters.LABEL);
    double y = top + 4;
    Rectangle2D own = new Rectangle2D.Double(EDGE, y, BOX, 7 + STEP * (others.size() - 1));
    canvas.group(
        "neighbours",
        () -> {
          canvas.outline(Pen.OUTLINE, own);
          canvas.text(
              canvas.fit(zone.name(), BOX - 3, Letters.LABEL),
              own.getCenterX(),
              own.getCenterY() + 1,
              Letters.LABEL.middle());
          for (int i = 0; i < others.size(); i++) {
            neighbour(canvas, others.get(i), y + i * STEP);
          }
        });
  }

  private void neighbour(Canvas canvas, Zone other, double top) {
    double from = EDGE + BOX;
    double to = from + LINE;
    double middle = top + 3.5;
    boolean known = distance(other).isPresent();
    canvas.line(known ? Pen.THIN : Pen.UNKNOWN, from, middle, to, middle);
    canvas.text(
        distance(other).orElse("distance not known (?)"),
        (from + to) / 2,
        middle - 0.9,
        Letters.DIMENSION);
    Rectangle2D box = new Rectangle2D.Double(to, top, BOX, 7);
    canvas.outline(Pen.MEDIUM, box);
    canvas.text(
        canvas.fit(other.name(), BOX - 3, Letters.NOTE),
        box.getCenterX(),
        middle + 1,
        Letters.NOTE.middle());
    double wide = canvas.width() - to - BOX - 3;
    int lines = Lettering.wrap(shared(other), wide, Letters.DIMENSION).size();
    canvas.paragraph(
        shared(other),
        to + BOX + 1.5,
        middle + 1 - (lines - 1) * Letters.DIMENSION.line() / 2,
        wide,
        Letters.DIMENSION.start());
  }

  private Optional<String> stated(Zone other, String fact) {
    return site.relation(zone.name(), other.name())
        .map(Relation::facts)
        .map(facts -> facts.get(fact))
        .map(StatedFact::value)
        .map(FactValue::text);
  }

  private Optional<String> distance(Zone other) {
    return stated(other, "distance");
  }

  private String shared(Zone other) {
    List<String> words = new ArrayList<>();
    if (yes(other, "oneStructure")) {
      words.add("one structure");
    }
    if (yes(other, "sharedEdge")) {
      words.add("same edge");
    }
    if (yes(other, "sharedGroundWater")) {
      words.add("same water");
    }
    return String.join(", ", words);
  }

  private boolean yes(Zone other, String fact) {
    return stated(other, fact).filter("yes"::equals).isPresent();
  }

  /** The same in words. */
  List<String> words() {
    return others().stream()
        .map(
            other ->
                "Zone "
                    + other.name()
                    + ": "
                    + distance(other)
                        .map(text -> text + " away")
                        .orElse("its distance is not known")
                    + (shared(other).isEmpty() ? "" : "; " + shared(other))
                    + ".")
        .toList();
  }
}
