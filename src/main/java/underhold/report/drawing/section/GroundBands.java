package underhold.report.drawing.section;

import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import underhold.quantity.Measure;
import underhold.quantity.QuantityPrinter;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.kit.Canvas;
import underhold.report.drawing.kit.Hatch;
import underhold.report.drawing.kit.Notes;
import underhold.report.drawing.kit.Pen;
import underhold.report.drawing.kit.SoilHatch;
import underhold.report.drawing.kit.View;
import underhold.site.FactDictionary;
import underhold.site.GroundLayer;
import underhold.site.GroundProfile;
import underhold.site.Site;
import underhold.site.Zone;

/** The layers of the ground, as far down as a drawing reaches. */
public final class GroundBands {
  private final GroundProfile ground;

  /** The layers that hold at the zone. */
  public GroundBands(Site site, Zone zone) {
    this.ground = zone.ground().isEmpty() ? site.ground() : zone.ground();
  }

  /** Whether no layer is known. */
  public boolean isEmpty() {
    return ground.isEmpty();
  }

  /**
   * Hatches the ground.
   *
   * @param left world x of its left end [m]
   * @param right world x of its right end [m]
   * @param bottom how far down the drawing goes [m]
   * @param holes what is not ground, on paper
   */
  public void draw(
      Canvas canvas, View view, double left, double right, double bottom, List<Shape> holes) {
    double known = ground.isEmpty() ? bottom : ground.layers().get(0).top().si();
    if (known > 0) {
      band(canvas, view, Hatch.UNKNOWN, view.box(left, 0, right, Math.min(known, bottom)), holes);
    }
    for (GroundLayer layer : shown(bottom)) {
      double low = Math.min(bottom, ground.bottomMetres(layer));
      double top = layer.top().si();
      canvas.group(
          "layer-" + (ground.layers().indexOf(layer) + 1),
          () ->
              band(
                  canvas,
                  view,
                  SoilHatch.of(layer.soil()),
                  view.box(left, top, right, low),
                  holes));
    }
  }

  private static void band(
      Canvas canvas, View view, Hatch hatch, Rectangle2D box, List<Shape> holes) {
    Area area = new Area(box);
    holes.forEach(hole -> area.subtract(new Area(hole)));
    canvas.hatch(hatch, area);
    canvas.outline(Pen.THIN, area);
  }

  /** The layers that begin above that depth [m]. */
  public List<GroundLayer> shown(double bottom) {
    return ground.layers().stream().filter(layer -> layer.top().si() < bottom - 1e-9).toList();
  }

  /** A note for each layer shown, at that world x [m]. */
  public void note(Notes notes, View view, double x, double bottom, UnitSystem units) {
    if (ground.isEmpty()) {
      notes.add(view.x(x), view.y(bottom / 2), "Ground: layers not known (?)");
    }
    for (GroundLayer layer : shown(bottom)) {
      double low = Math.min(bottom, ground.bottomMetres(layer));
      notes.addWithin(view.x(x), view.y(layer.top().si()), view.y(low), words(layer, units));
    }
  }

  /** "stiff clay from 0.9 m". */
  public static String words(GroundLayer layer, UnitSystem units) {
    return name(layer.soil())
        + " from "
        + QuantityPrinter.print(layer.top().si(), Measure.LENGTH, units);
  }

  /** Every layer in words, those below the drawing too. */
  public List<String> words(double bottom, UnitSystem units) {
    List<String> words = new ArrayList<>();
    if (ground.isEmpty()) {
      words.add("Ground: layers not known.");
    }
    for (GroundLayer layer : ground.layers()) {
      boolean below = layer.top().si() >= bottom - 1e-9;
      words.add("Ground: " + words(layer, units) + (below ? " (below the drawing)." : "."));
    }
    return words;
  }

  /** A soil class as the dictionary explains it. */
  public static String name(String soil) {
    return FactDictionary.standard().require("soilAtFooting").values().stream()
        .filter(value -> value.value().equals(soil))
        .map(value -> value.means())
        .findFirst()
        .orElse(soil);
  }
}
