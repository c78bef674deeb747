package underhold.report.drawing.section;

import java.awt.Shape;
import underhold.report.drawing.kit.Canvas;
import underhold.report.drawing.kit.Hatch;
import underhold.report.drawing.kit.Notes;
import underhold.report.drawing.kit.Pen;
import underhold.report.drawing.kit.View;

/** The foundation and what stands on it; sizes that nobody stated are dashed. */
final class StructurePart {
  private final Canvas canvas;
  private final View view;
  private final SectionModel model;
  private final double thick;

  StructurePart(Canvas canvas, View view, SectionModel model) {
    this.canvas = canvas;
    this.view = view;
    this.model = model;
    this.thick = Math.min(model.founding(), Math.max(0.3, 0.15 * model.founding()));
  }

  void draw() {
    canvas.group(
        "structure",
        () -> {
          if (model.piled()) {
            piles();
          }
          footing();
          shaft();
        });
  }

  private double top() {
    return model.founding() - thick;
  }

  private boolean widthKnown() {
    return model.known("footingWidth").isPresent();
  }

  private void footing() {
    double left = model.footingLeft();
    double right = model.footingRight();
    Pen side = widthKnown() ? Pen.OUTLINE : Pen.UNKNOWN;
    Pen under = model.known("foundingDepth").isPresent() ? Pen.OUTLINE : Pen.UNKNOWN;
    Shape box = view.box(left, top(), right, model.founding());
    canvas.hatch(
        model.word("foundationKind").equals("mass-rubble") ? Hatch.MASONRY : Hatch.CONCRETE, box);
    canvas.line(Pen.UNKNOWN, view.x(left), view.y(top()), view.x(right), view.y(top()));
    canvas.line(side, view.x(left), view.y(top()), view.x(left), view.y(model.founding()));
    canvas.line(side, view.x(right), view.y(top()), view.x(right), view.y(model.founding()));
    canvas.line(
        under, view.x(left), view.y(model.founding()), view.x(right), view.y(model.founding()));
  }

  private void shaft() {
    boolean known = model.known("wallThickness").isPresent();
    double middle = (model.footingLeft() + model.footingRight()) / 2;
    double half = model.wall() / 2;
    if (model.slab()) {
      for (double side : new double[] {model.footingLeft(), model.footingRight()}) {
        double inner = side < middle ? side + 2 * half : side - 2 * half;
        Shape wall = view.box(side, model.inside(), inner, top());
        canvas.hatch(material(), wall);
        canvas.outline(Pen.UNKNOWN, wall);
      }
      double roof = view.y(model.inside());
      canvas.line(
          Pen.UNKNOWN, view.x(model.footingLeft()), roof, view.x(model.footingRight()), roof);
      return;
    }
    Shape wall = view.box(middle - half, -model.above(), middle + half, top());
    canvas.hatch(material(), wall);
    canvas.outline(known ? Pen.OUTLINE : Pen.UNKNOWN, wall);
  }

  private void piles() {
    double toe = model.known("pileToeDepth").orElse(model.bottom() - 0.1);
    double low = Math.min(toe, model.bottom());
    double wide = 0.12 * model.footing();
    Pen pen = model.known("pileToeDepth").isPresent() ? Pen.MEDIUM : Pen.UNKNOWN;
    Hatch hatch = model.word("foundationKind").equals("timber-piles") ? Hatch.TIMBER : Hatch.PLAIN;
    for (double share : new double[] {0.2, 0.8}) {
      double x = model.footingLeft() + share * model.footing();
      Shape pile = view.box(x - wide / 2, model.founding(), x + wide / 2, low);
      canvas.hatch(hatch, pile);
      canvas.outline(pen, pile);
    }
  }

  private Hatch material() {
    return switch (model.word("structureMaterial")) {
      case "reinforced-concrete" -> Hatch.CONCRETE;
      case "steel", "cast-iron" -> Hatch.STEEL;
      case "timber" -> Hatch.TIMBER;
      case "reinforced-masonry", "unreinforced-masonry", "rubble" -> Hatch.MASONRY;
      default -> Hatch.PLAIN;
    };
  }

  void note(Notes notes) {
    double middle = (model.footingLeft() + model.footingRight()) / 2;
    double high = model.slab() ? 0.6 * top() : -0.6 * model.above();
    double x = model.slab() ? model.footingRight() - model.wall() / 2 : middle + model.wall() / 4;
    notes.add(view.x(x), view.y(high), structureWords());
    notes.add(
        view.x(middle + 0.3 * model.footing()),
        view.y(model.founding() - thick / 2),
        footingWords());
    if (model.piled()) {
      notes.add(
          view.x(model.footingLeft() + 0.8 * model.footing()),
          view.y((model.founding() + model.bottom()) / 2),
          model.word("foundationKind").replace('-', ' ')
              + (model.known("pileToeDepth").isPresent()
                  ? ", toes at " + model.text("pileToeDepth")
                  : ", toes not known (?)"));
    }
  }

  private String structureWords() {
    String material = model.word("structureMaterial").replace('-', ' ');
    String words = material.isEmpty() ? "structure, material not known (?)" : material;
    String load = load();
    String thickness =
        model.known("wallThickness").isPresent()
            ? ", " + model.text("wallThickness") + " thick"
            : ", thickness not known (?)";
    return words + thickness + load;
  }

  private String load() {
    for (String fact : new String[] {"lineLoad", "columnLoad", "areaLoad"}) {
      if (model.known(fact).isPresent()) {
        return "; load " + model.text(fact);
      }
    }
    return "; load not known (?)";
  }

  private String footingWords() {
    String kind = model.word("foundationKind").replace('-', ' ');
    String what = kind.isEmpty() || model.piled() ? "foundation" : kind;
    return what
        + (model.known("foundingDepth").isPresent()
            ? " at " + model.text("foundingDepth")
            : ", depth not known (?)")
        + (widthKnown() ? "" : ", width not known (?)");
  }
}
