package underhold.report.drawing.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.kit.Canvas;
import underhold.report.drawing.kit.Hatch;
import underhold.report.drawing.kit.Pen;
import underhold.report.drawing.kit.SoilHatch;
import underhold.report.drawing.kit.View;
import underhold.site.GroundLayer;
import underhold.site.GroundProfile;
import underhold.site.Site;
import underhold.sizing.Amount;

/**
 * The layers at a zone between two depths below ground. Above the first layer told, and where none
 * is told, the ground is not known and drawn so.
 *
 * @param layers from the top down, without gaps
 */
public record Strata(List<Stratum> layers) {
  /** The last layer has no bottom that anybody told. */
  public static final String REACHES_ON = "taken to reach on";

  public Strata {
    layers = List.copyOf(layers);
  }

  /**
   * A layer.
   *
   * @param name in words
   * @param top depth below ground [m]
   * @param bottom depth below ground [m]
   * @param hatch how it is drawn
   * @param last whether nothing is told below it
   */
  public record Stratum(String name, double top, double bottom, Hatch hatch, boolean last) {
    /** The layer with its top, as written on a drawing. */
    public String words(UnitSystem units) {
      return name + " from " + Amount.length(top).in(units) + (last ? ", " + REACHES_ON : "");
    }
  }

  /** The layers of a zone between two depths [m]. */
  public static Strata of(Site site, String zone, double from, double to) {
    GroundProfile profile =
        site.zones().stream()
            .filter(one -> one.name().equals(zone) && !one.ground().isEmpty())
            .findFirst()
            .map(one -> one.ground())
            .orElse(site.ground());
    List<Stratum> layers = new ArrayList<>();
    double at = from;
    for (GroundLayer layer : profile.between(from, to)) {
      double top = Math.max(layer.top().si(), from);
      double bottom = Math.min(profile.bottomMetres(layer), to);
      if (top > at) {
        layers.add(unknown(at, top));
      }
      boolean last = Double.isInfinite(profile.bottomMetres(layer));
      layers.add(
          new Stratum(
              layer.soil().replace('-', ' '), top, bottom, SoilHatch.of(layer.soil()), last));
      at = bottom;
    }
    if (at < to) {
      layers.add(unknown(at, to));
    }
    return new Strata(layers);
  }

  private static Stratum unknown(double from, double to) {
    return new Stratum("ground not known", from, to, Hatch.UNKNOWN, false);
  }

  /** What of the layers lies between two depths below ground [m]. */
  public Strata between(double from, double to) {
    return new Strata(
        layers.stream()
            .filter(layer -> layer.bottom() > from && layer.top() < to)
            .map(
                layer ->
                    new Stratum(
                        layer.name(),
                        Math.max(layer.top(), from),
                        Math.min(layer.bottom(), to),
                        layer.hatch(),
                        layer.last()))
            .toList());
  }

  /** Hatches the layers between two places and parts them by lines, without groups. */
  public void fill(Canvas canvas, View view, double left, double right) {
    layers.forEach(layer -> band(canvas, view, layer, left, right));
  }

  private static void band(Canvas canvas, View view, Stratum layer, double left, double right) {
    if (right > left) {
      canvas.hatch(layer.hatch(), view.box(left, layer.top(), right, layer.bottom()));
      canvas.line(
          Pen.THIN, view.x(left), view.y(layer.bottom()), view.x(right), view.y(layer.bottom()));
    }
  }

  /** Hatches the layers between two places and parts them by lines. */
  public void draw(Canvas canvas, View view, double left, double right) {
    for (int i = 0; i < layers.size(); i++) {
      Stratum layer = layers.get(i);
      canvas.group(
          "layer-" + (i + 1),
          Map.of("name", layer.name(), "top", layer.top() + " m"),
          () -> band(canvas, view, layer, left, right));
    }
  }

  /** The layers in words, one a line. */
  public List<String> words(UnitSystem units) {
    return layers.stream()
        .map(
            layer ->
                "Layer: "
                    + layer.name()
                    + " from "
                    + Amount.length(layer.top()).in(units)
                    + " to "
                    + Amount.length(layer.bottom()).in(units)
                    + (layer.last() ? " and on, as the last that is told" : "")
                    + ".")
        .toList();
  }
}
