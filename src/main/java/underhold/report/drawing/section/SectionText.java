package underhold.report.drawing.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.advice.Limits;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.kit.Hatch;
import underhold.report.drawing.kit.SoilHatch;
import underhold.report.drawing.text.TextGrid;
import underhold.site.GroundLayer;
import underhold.site.Site;
import underhold.site.Zone;

/** The section of a zone sketched for a terminal, and in words. */
public final class SectionText {
  /** What a section with an excavation must not be taken for. */
  static final String BARE =
      "The excavation is drawn at its full depth and the structure as it stands now: no support is"
          + " shown.";

  private static final int SCALE = 10;
  private static final int MOST_ROWS = 22;

  /** A square of a terminal is about twice as high as wide. */
  private static final double TALL = 2;

  private final SectionModel model;
  private final GroundBands ground;

  SectionText(SectionModel model, GroundBands ground) {
    this.model = model;
    this.ground = ground;
  }

  /** The sketch of a zone; empty where no depth of it is known. */
  public static Optional<SectionText> of(Site site, Zone zone, Limits limits, UnitSystem units) {
    SectionModel model = SectionModel.of(site, zone, limits, units);
    return model.whyNot().isPresent()
        ? Optional.empty()
        : Optional.of(new SectionText(model, new GroundBands(site, zone)));
  }

  /** The sketch, no line longer than that many columns; block and box signs beyond ASCII. */
  public List<String> lines(int columns) {
    double wide = model.right() - model.left();
    double high = model.above() + model.bottom();
    double perColumn = Math.max(wide / (columns - SCALE - 1), high / MOST_ROWS / TALL);
    Sketch sketch =
        new Sketch(
            new TextGrid(columns, (int) Math.ceil(high / perColumn / TALL) + 1),
            perColumn,
            model.left(),
            -model.above());
    ground(sketch);
    excavation(sketch);
    influence(sketch);
    water(sketch);
    structure(sketch);
    depths(sketch);
    List<String> lines = new ArrayList<>(sketch.grid.lines());
    while (!lines.isEmpty() && lines.get(0).isBlank()) {
      lines.remove(0);
    }
    lines.addAll(legend());
    return lines.stream().map(line -> TextGrid.fit(line, columns)).toList();
  }

  /** Squared paper with a world on it. */
  private record Sketch(TextGrid grid, double perColumn, double left, double top) {
    int column(double x) {
      return SCALE + (int) Math.round((x - left) / perColumn);
    }

    int row(double y) {
      return (int) Math.round((y - top) / perColumn / TALL);
    }

    void box(double fromX, double fromY, double toX, double toY, int sign) {
      int right = Math.max(column(fromX), column(toX) - 1);
      int low = Math.max(row(fromY), row(toY) - 1);
      grid.fill(column(fromX), row(fromY), right, low, sign);
    }
  }

  private void ground(Sketch sketch) {
    double from = model.left();
    double to = model.right();
    sketch.box(from, 0, to, model.bottom(), '?');
    for (GroundLayer layer : ground.shown(model.bottom())) {
      sketch.box(from, layer.top().si(), to, model.bottom(), sign(layer));
    }
  }

  private static int sign(GroundLayer layer) {
    return sign(SoilHatch.of(layer.soil()));
  }

  private static int sign(Hatch hatch) {
    return switch (hatch) {
      case CLAY -> '-';
      case SILT -> ';';
      case SAND -> '.';
      case GRAVEL -> 'o';
      case FILL -> '/';
      case ROCK -> '^';
      case ORGANIC -> '"';
      default -> '?';
    };
  }

  private void excavation(Sketch sketch) {
    if (!model.digs()) {
      return;
    }
    sketch.box(0, 0, model.dugRight(), model.excavation(), ' ');
    int bottom = sketch.row(model.excavation());
    boolean known = model.known("excavationDepth").isPresent();
    for (int row = sketch.row(0); row < bottom; row++) {
      sketch.grid.put(sketch.column(0), row, model.positionKnown() ? '│' : '┆');
    }
    for (int column = sketch.column(0); column < sketch.column(model.dugRight()); column++) {
      sketch.grid.put(column, bottom, known ? '─' : '┄');
    }
    sketch.grid.put(sketch.column(0), bottom, '└');
    if (model.whollyUnder()) {
      int far = sketch.column(model.dugRight()) - 1;
      for (int row = sketch.row(0); row < bottom; row++) {
        sketch.grid.put(far, row, model.known("underminedWidth").isPresent() ? '│' : '┆');
      }
      sketch.grid.put(far, bottom, '┘');
    }
  }

  private void influence(Sketch sketch) {
    if (!model.hasInfluence()) {
      return;
    }
    for (double slope : new double[] {model.core(), model.screening()}) {
      int from = sketch.row(model.founding());
      int to = sketch.row(model.excavation());
      for (int row = from; row < to; row++) {
        double share = (to - row) / (double) Math.max(1, to - from);
        double x = -share * model.reach(slope);
        if (x >= model.left()) {
          sketch.grid.put(sketch.column(x), row, '╲');
        }
      }
    }
  }

  private void water(Sketch sketch) {
    model
        .known("groundWaterDepth")
        .filter(level -> level < model.bottom())
        .ifPresent(
            level -> {
              boolean lower = model.digs() && level < model.excavation();
              int to = sketch.column(lower ? 0 : model.right());
              for (int column = SCALE; column < to; column += 2) {
                sketch.grid.put(column, sketch.row(level), '≈');
              }
            });
  }

  private void structure(Sketch sketch) {
    double thick = Math.max(0.3, 0.15 * model.founding());
    double top = Math.max(0, model.founding() - thick);
    double middle = (model.footingLeft() + model.footingRight()) / 2;
    double half = model.wall() / 2;
    boolean known = model.known("footingWidth").isPresent();
    if (model.piled()) {
      double toe = Math.min(model.bottom(), model.known("pileToeDepth").orElse(model.bottom()));
      for (double share : new double[] {0.2, 0.8}) {
        double x = model.footingLeft() + share * model.footing();
        sketch.box(x, model.founding(), x, toe, '┃');
      }
    }
    if (model.slab()) {
      sketch.box(model.footingLeft(), model.inside(), model.footingRight(), top, ' ');
      sketch.box(model.footingLeft(), model.inside(), model.footingLeft() + half, top, '▒');
      sketch.box(model.footingRight() - half, model.inside(), model.footingRight(), top, '▒');
    } else {
      sketch.box(
          middle - half,
          -model.above(),
          middle + half,
          top,
          model.known("wallThickness").isPresent() ? '█' : '▒');
    }
    int row = sketch.row(model.founding()) - 1;
    int right =
        Math.max(sketch.column(model.footingLeft()), sketch.column(model.footingRight()) - 1);
    sketch.grid.fill(sketch.column(model.footingLeft()), row, right, row, known ? '█' : '▒');
  }

  private void depths(Sketch sketch) {
    depth(sketch, 0, "0");
    model
        .known("groundWaterDepth")
        .filter(level -> level < model.bottom())
        .ifPresent(level -> depth(sketch, level, model.text("groundWaterDepth")));
    if (model.digs()) {
      depth(sketch, model.excavation(), model.text("excavationDepth"));
    }
    depth(sketch, model.founding(), model.text("foundingDepth"));
  }

  private static void depth(Sketch sketch, double depth, String text) {
    String fit = TextGrid.fit(text, SCALE - 2);
    int row = sketch.row(depth);
    sketch.grid.fill(0, row, SCALE - 2, row, ' ');
    sketch.grid.write(SCALE - 1 - fit.codePointCount(0, fit.length()), row, fit);
    sketch.grid.put(SCALE - 1, row, '┤');
  }

  private List<String> legend() {
    List<String> lines = new ArrayList<>();
    StringBuilder soils = new StringBuilder();
    for (GroundLayer layer : ground.shown(model.bottom())) {
      soils
          .append(soils.length() == 0 ? "" : "   ")
          .append((char) sign(layer))
          .append(' ')
          .append(GroundBands.name(layer.soil()));
    }
    boolean unknown = ground.isEmpty() || ground.shown(0.01).isEmpty();
    if (unknown) {
      soils.append(soils.length() == 0 ? "" : "   ").append("? ground not known");
    }
    lines.add(soils.toString());
    lines.add(
        "█ structure   ▒ its size not known"
            + (model.hasInfluence() ? "   ╲ influence lines" : "")
            + (model.known("groundWaterDepth").filter(level -> level < model.bottom()).isPresent()
                ? "   ≈ ground water"
                : ""));
    return lines;
  }

  /** One sentence on what is shown. */
  String description() {
    return "Foundation at "
        + model.text("foundingDepth")
        + (model.digs()
            ? ", excavation " + model.text("excavationDepth") + " deep"
            : ", no excavation")
        + ". The same follows in words; a question mark stands for what is not known.";
  }

  /** Every depth and width in words. */
  public List<String> words() {
    List<String> words = new ArrayList<>();
    word(words, "Underside of the foundation below ground", "foundingDepth");
    word(words, "Width of the footing", "footingWidth");
    word(words, "Thickness of the wall", "wallThickness");
    if (model.digs()) {
      word(words, "Depth of the excavation below ground", "excavationDepth");
      word(words, "Excavation below the footing", "excavationBelowFooting");
      if (model.whollyUnder() || model.partlyUnder()) {
        word(words, "Soil removed from under the structure, width", "underminedWidth");
      } else {
        word(words, "From the footing to the face of the excavation", "gapToExcavation");
      }
      words.add("Where the excavation lies: " + or(model.word("excavationPosition")) + ".");
      words.add("Wall of the excavation: " + or(model.word("excavationWall")) + ".");
      words.add(BARE);
    } else {
      words.add("There is no excavation.");
    }
    word(words, "Ground water below ground surface", "groundWaterDepth");
    words.addAll(ground.words(model.bottom(), model.units()));
    if (model.hasInfluence()) {
      words.add(
          "Core zone at founding level, from the face: "
              + model.metres(model.reach(model.core()))
              + ".");
      words.add(
          "Screening zone at founding level, from the face: "
              + model.metres(model.reach(model.screening()))
              + ".");
    }
    words.addAll(new Neighbours(model.site(), model.zone()).words());
    words.add("Dashed or marked with a question mark: not known, drawn where it has room.");
    return words;
  }

  private void word(List<String> words, String what, String fact) {
    words.add(what + ": " + (model.known(fact).isPresent() ? model.text(fact) : "not known") + ".");
  }

  private static String or(String word) {
    return word.isEmpty() ? "not known" : word.replace('-', ' ');
  }
}
