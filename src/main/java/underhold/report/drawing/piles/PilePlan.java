package underhold.report.drawing.piles;

import java.awt.geom.Ellipse2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.Drawn;
import underhold.report.drawing.kit.Canvas;
import underhold.report.drawing.kit.Colours;
import underhold.report.drawing.kit.Dimensions;
import underhold.report.drawing.kit.DrawingScale;
import underhold.report.drawing.kit.Hatch;
import underhold.report.drawing.kit.Letters;
import underhold.report.drawing.kit.Pen;
import underhold.report.drawing.kit.Symbols;
import underhold.report.drawing.kit.View;
import underhold.report.drawing.numbers.SheetNumbers;
import underhold.report.drawing.piles.PileField.Kind;
import underhold.report.drawing.piles.PileField.Place;
import underhold.sizing.Sheet;

/** Layout plan of drilled piles: their places, numbers and spacing, and what they carry. */
public final class PilePlan {
  private static final double WIDTH = 170;
  private static final double SIDE = 21;
  private static final double DRAWN = WIDTH - 2 * SIDE;
  private static final double HIGHEST = 150;

  /** Piles closer on paper than this are numbered at the ends of rows alone [mm]. */
  private static final double NUMBERED = 7;

  private static final double LEAST_CIRCLE = 0.9;

  /** What a number above a pile takes [mm]. */
  private static final double NUMBER = 3.6;

  /** Half of an outline that is not told past the piles [m]. */
  private static final double OPEN_END = 0.6;

  private final SheetNumbers numbers;
  private final PileField field;
  private final String zone;
  private final Canvas canvas;
  private final DrawingScale scale;
  private final View view;
  private final double half;

  private PilePlan(SheetNumbers numbers, PileField field, String zone, String id) {
    this.numbers = numbers;
    this.field = field;
    this.zone = zone;
    this.canvas = new Canvas(id, WIDTH);
    double top = Symbols.heading(canvas, "Drilled piles: layout plan", zone);
    double along =
        Math.max(
            field.length() + field.diameter() + (field.structure().told() ? 0 : 2 * OPEN_END),
            field.structure().along());
    double across =
        Math.max(field.width() + field.diameter(), Math.max(field.structure().across(), 0.1));
    this.scale = DrawingScale.fitting(along, across, DRAWN, HIGHEST, numbers.units());
    this.half = across / 2;
    double zeroX = WIDTH / 2 - scale.paper(field.length() / 2);
    double zeroY = top + 14 + NUMBER + scale.paper(half - field.width() / 2);
    this.view = new View(scale, zeroX, zeroY);
  }

  /**
   * The plan, or why there is none.
   *
   * @param zone the zone's name
   * @param sheet the sheet of drilled piles
   * @param units in which it is read
   * @param id the figure's id
   */
  public static Drawn of(String zone, Sheet sheet, UnitSystem units, String id) {
    SheetNumbers numbers = new SheetNumbers(sheet, units);
    Optional<Drawn> refusal = numbers.refusal(List.of("pile-load", "group-factor"), List.of());
    if (refusal.isPresent()) {
      return refusal.get();
    }
    if (numbers.symbol("side-1", "D").isEmpty()) {
      return numbers.withheld("no layer that the piles reach holds them").orElseThrow();
    }
    return PileField.of(numbers)
        .<Drawn>map(field -> new PilePlan(numbers, field, zone, id).draw())
        .orElseGet(
            () ->
                numbers
                    .withheld("its spacing and lengths do not add up to its number of piles")
                    .orElseThrow());
  }

  private Drawn draw() {
    structure();
    if (field.kind() == Kind.WALL) {
      beams();
    }
    field.places().forEach(this::pile);
    dimensions();
    List<String> notes = notes();
    Symbols.foot(canvas, notes, scale, numbers.units());
    List<String> words = new ArrayList<>();
    words.add("Layout plan of the drilled piles of " + zone + ".");
    words.addAll(notes);
    words.addAll(measures());
    return Drawn.of(
        canvas.finish(
            "Drilled piles: layout plan of " + zone,
            "Plan of "
                + field.count()
                + " drilled piles with their numbers and spacing, and the outline of what they carry.",
            words));
  }

  private void structure() {
    PileField.Outline outline = field.structure();
    if (!(outline.across() > 0)) {
      return;
    }
    double middleX = field.length() / 2;
    double middleY = field.width() / 2;
    double top = middleY - outline.across() / 2;
    double bottom = middleY + outline.across() / 2;
    canvas.group(
        "structure",
        Map.of(
            "across",
            outline.across() + " m",
            "along",
            outline.told() ? outline.along() + " m" : "not told"),
        () -> {
          if (outline.told()) {
            double reach = outline.along() / 2;
            if (field.kind() != Kind.SLAB) {
              canvas.hatch(Hatch.CONCRETE, view.box(middleX - reach, top, middleX + reach, bottom));
            }
            canvas.outline(
                field.kind() == Kind.SLAB ? Pen.HIDDEN : Pen.MEDIUM,
                view.box(middleX - reach, top, middleX + reach, bottom));
          } else {
            double reach = field.length() / 2 + OPEN_END;
            for (double y : new double[] {top, bottom}) {
              canvas.line(
                  Pen.UNKNOWN,
                  view.x(middleX - reach),
                  view.y(y),
                  view.x(middleX + reach),
                  view.y(y));
            }
          }
        });
  }

  /** One beam across at each pair of piles. */
  private void beams() {
    canvas.group(
        "beams",
        () -> {
          for (int column = 0; column < field.columns(); column++) {
            double x = view.x(column * field.along());
            canvas.line(Pen.CENTRE, x, view.y(0), x, view.y(field.width()));
          }
        });
  }

  private void pile(Place place) {
    double x = view.x(place.x());
    double y = view.y(place.y());
    double size = circle();
    canvas.group(
        "pile-" + place.number(),
        Map.of("x", String.valueOf(x), "y", String.valueOf(y)),
        () -> {
          Ellipse2D circle = new Ellipse2D.Double(x - size / 2, y - size / 2, size, size);
          canvas.fill(Colours.TINT_NEW, circle);
          canvas.outline(Pen.MEDIUM, Colours.NEW, circle);
        });
    if (isNumbered(place)) {
      String number = String.valueOf(place.number());
      if (within()) {
        canvas.text(number, x, y + 1, Letters.DIMENSION);
      } else {
        canvas.label(number, x, y - size / 2 - 0.8, Letters.DIMENSION);
      }
    }
  }

  /** Whether every number has room in its circle; else all stand above. */
  private boolean within() {
    String last = String.valueOf(field.places().size());
    return Letters.DIMENSION.width(last) + 1 <= circle();
  }

  /** From the middle of a pile at the edge to what is clear of it and of its number [m]. */
  private double room(double more) {
    return scale.world(circle() / 2 + more);
  }

  /** Across a circle [mm]. */
  private double circle() {
    return Math.max(LEAST_CIRCLE, scale.paper(field.diameter()));
  }

  private boolean isNumbered(Place place) {
    boolean roomAlong = field.columns() == 1 || scale.paper(field.along()) >= NUMBERED;
    boolean roomAcross = field.rows() == 1 || scale.paper(field.across()) >= NUMBERED / 1.4;
    int column = (place.number() - 1) % field.columns();
    int row = (place.number() - 1) / field.columns();
    boolean end = column == 0 || column == field.columns() - 1;
    boolean side = row == 0 || row == field.rows() - 1;
    return (roomAlong || end) && (roomAcross || side);
  }

  private void dimensions() {
    PileField.Outline outline = field.structure();
    double left = Math.min(field.length() / 2 - Math.max(outline.along(), 0) / 2, -room(1.5));
    double top = Math.min(field.width() / 2 - half, -room(within() ? 0 : NUMBER));
    Dimensions above = new Dimensions(canvas, view, Dimensions.Side.ABOVE, view.y(top) - 5);
    if (field.columns() > 1) {
      above.add("spacing-along", 0, field.along(), top, numbers.length(field.along()));
    }
    if (field.columns() > 2) {
      above.add(
          "piles-along",
          0,
          field.length(),
          top,
          (field.columns() - 1)
              + " x "
              + numbers.length(field.along())
              + " = "
              + numbers.length(field.length()));
    }
    above.draw();
    Dimensions beside = new Dimensions(canvas, view, Dimensions.Side.LEFT, view.x(left) - 4);
    if (field.rows() > 1) {
      beside.add("spacing-across", 0, field.across(), left, numbers.length(field.across()));
    }
    if (outline.across() > 0) {
      beside.add(
          "structure-across",
          field.width() / 2 - outline.across() / 2,
          field.width() / 2 + outline.across() / 2,
          left,
          outline.words() + " " + numbers.length(outline.across()));
    }
    beside.draw();
    if (outline.told()) {
      double bottom = field.width() / 2 + half;
      new Dimensions(canvas, view, Dimensions.Side.BELOW, view.y(bottom) + 6)
          .add(
              "structure-along",
              field.length() / 2 - outline.along() / 2,
              field.length() / 2 + outline.along() / 2,
              bottom,
              outline.words() + " " + numbers.length(outline.along()))
          .draw();
    }
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    notes.add(
        field.count()
            + " piles"
            + (field.groups() > 1
                ? " under each of " + field.groups() + " like columns, one group drawn"
                : "")
            + ", "
            + underhold.sizing.Amount.thickness(field.diameter()).in(numbers.units())
            + " across, numbered row by row; working load of the one loaded most "
            + numbers.in(numbers.result("pile-load"))
            + ".");
    if (!field.structure().told()) {
      notes.add(
          "The footing is dashed across its width alone: its length and its column are not told, set out on site.");
    }
    if (field.kind() == Kind.WALL) {
      notes.add(
          "A beam across at each pair (axis lines), "
              + numbers.in(
                  numbers
                      .result("beam-span")
                      .or(() -> numbers.check("beam-span").map(check -> check.demand())))
              + " of span.");
    }
    if (field.kind() == Kind.SLAB) {
      notes.add(
          "Dashed: the part of the structure that is undermined. Each pile stands in the middle of its share.");
    }
    return notes;
  }

  private List<String> measures() {
    List<String> words = new ArrayList<>();
    words.add(
        field.columns()
            + " along at "
            + numbers.length(field.along())
            + ", "
            + field.rows()
            + " across at "
            + numbers.length(field.across())
            + ".");
    PileField.Outline outline = field.structure();
    if (outline.across() > 0) {
      words.add(
          outline.words()
              + ": "
              + numbers.length(outline.across())
              + " across"
              + (outline.told() ? ", " + numbers.length(outline.along()) + " along." : "."));
    }
    return words;
  }
}
