package underhold.sizing.pits;

import static underhold.sizing.pits.PitsFact.*;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;
import underhold.sizing.pits.order.PitRow;

/** Width and number of pits. */
final class LayoutSection {
  /** DIN 4123:2013-04, 7.3, m. */
  private static final double STANDARD_CAP = 1.25;

  private final PitsCase site;
  private final SheetBuilder sheet;
  private final SpanLimit span;

  private LayoutSection(PitsCase site, SheetBuilder sheet, SpanLimit span) {
    this.site = site;
    this.sheet = sheet;
    this.span = span;
  }

  static Layout write(PitsCase site, SheetBuilder sheet, SpanLimit span) {
    return new LayoutSection(site, sheet, span).write();
  }

  private Layout write() {
    double length = site.get(WALL_LENGTH);
    double narrowest = Math.min(site.get(PitsSetting.NARROWEST_PIT), length);
    double limit = widthLimit();
    sheet.check(
        "pit-width-workable",
        "A pit that the wall can span is wide enough to dig in",
        Amount.length(narrowest),
        Amount.length(limit),
        workable(narrowest),
        PitsSetting.NARROWEST_PIT.setting().source(),
        Phrase.of(
            "If it does not pass, the rest of the sheet is reckoned for the narrowest workable pit and shows no more than orders of size."));
    double width = Math.max(narrowest, Math.min(limit, shareLimit()));
    double end = endWidth(width, narrowest);
    Layout layout = new Layout(row(length, width, end));
    sheet.check(
        "pit-width-least",
        "Every pit along the wall is wide enough to dig in",
        Amount.length(narrowest),
        Amount.length(Collections.min(layout.row().widthsMetres())),
        Verdict.REFER,
        PitsSetting.NARROWEST_PIT.setting().source(),
        Phrase.of(
            "The length of wall does not divide into workable pits: choose another length or dig the odd pit from a wider approach."));
    sheet.verdict(
        "span-checked",
        "The span of the wall was reckoned, not only taken from practice",
        Amount.length(layout.widest() + 2 * site.get(PitsSetting.EDGE_ALLOWANCE)),
        Amount.length(span.clearSpanMetres().orElse(0)),
        spanVerdict(layout),
        Source.judgement(),
        Phrase.of(
            span.clearSpanMetres().isPresent()
                ? "Pit and edges against the clear span."
                : "Height and thickness of what spans are not known: expose the footing at each typical place."));
    sheet.check(
        "pit-width-cap",
        "Width of a pit against the widest that a standard allows without further proof",
        Amount.length(layout.widest()),
        Amount.length(STANDARD_CAP),
        Verdict.REFER,
        Sources.DIN_4123,
        Phrase.of(
            "DIN 4123; UK guidance stops at 1.0 m (3.3 ft) without expert advice; US practice goes to 5 ft (1.5 m)."));
    sheet.check(
        "open-share-one-pit",
        "One open pit keeps within the share of wall that may be open",
        Amount.length(layout.widest()),
        Amount.length(site.get(site.openShare()) * length),
        Verdict.REFER,
        site.openShare().setting().source(),
        Phrase.of(
            "If not, the wall is too short to be underpinned in pits without other temporary support."));
    sheet.check(
        "line-load",
        "Wall load for sectional pits without a full design",
        site.amount(WALL_LINE_LOAD),
        site.amount(PitsSetting.LINE_LOAD_LIMIT),
        Verdict.REFER,
        PitsSetting.LINE_LOAD_LIMIT.setting().source(),
        Phrase.of("Above it the engineer of record designs every stage."));
    return layout;
  }

  private Verdict spanVerdict(Layout layout) {
    if (span.clearSpanMetres().isEmpty()) {
      return Verdict.REFER;
    }
    double needed = layout.widest() + 2 * site.get(PitsSetting.EDGE_ALLOWANCE);
    return underhold.sizing.Check.covers(needed, span.clearSpanMetres().getAsDouble())
        ? Verdict.PASSES
        : site.otherwise(CLEAR_SPAN, WALL_CONCRETE_STRENGTH);
  }

  /** The wall cannot span (by numbers) or should not (by practice lengths). */
  private Verdict workable(double narrowest) {
    double clear = span.clearSpanMetres().orElse(Double.MAX_VALUE);
    boolean cannot = clear - 2 * site.get(PitsSetting.EDGE_ALLOWANCE) < narrowest;
    return cannot ? site.otherwise(CLEAR_SPAN, WALL_CONCRETE_STRENGTH) : Verdict.REFER;
  }

  private double widthLimit() {
    PitsSetting practice = practice();
    if (span.clearSpanMetres().isEmpty()) {
      return sheet
          .step("pit-width-limit", "Widest pit", "b = min({cap}, {practice})")
          .with("cap", "cap on the width", site.amount(PitsSetting.WIDEST_PIT))
          .with("practice", practice.setting().label(), site.amount(practice))
          .from(Sources.DIN_4123)
          .gives(Amount.length(Math.min(site.get(PitsSetting.WIDEST_PIT), site.get(practice))));
    }
    double clear = span.clearSpanMetres().getAsDouble();
    double bySpan = clear - 2 * site.get(PitsSetting.EDGE_ALLOWANCE);
    double limit =
        Math.max(
            0, Math.min(bySpan, Math.min(site.get(PitsSetting.WIDEST_PIT), site.get(practice))));
    return sheet
        .step("pit-width-limit", "Widest pit", "b = max(0, min({cap}, {practice}, {L} - 2 × {e}))")
        .with("cap", "cap on the width", site.amount(PitsSetting.WIDEST_PIT))
        .with("practice", practice.setting().label(), site.amount(practice))
        .with("L", "clear span of what is above", Amount.length(clear))
        .with(
            "e",
            "length beside each side not counted as support",
            site.amount(PitsSetting.EDGE_ALLOWANCE))
        .from(Sources.DIN_4123)
        .gives(Amount.length(limit));
  }

  private double shareLimit() {
    return sheet
        .step("pit-width-share", "Widest single pit within the open share", "b = {s} × {L}")
        .with("s", "share of the wall open at once", site.amount(site.openShare()))
        .with("L", "length of the wall", site.amount(WALL_LENGTH))
        .from(site.openShare().setting().source())
        .gives(Amount.length(site.get(site.openShare()) * site.get(WALL_LENGTH)));
  }

  private PitsSetting practice() {
    if (site.material.value() == WallMaterial.RUBBLE) {
      return PitsSetting.RUBBLE_WIDTH;
    }
    if (site.poorWall()) {
      return PitsSetting.POOR_MASONRY_WIDTH;
    }
    return switch (site.material.value()) {
      case REINFORCED_CONCRETE -> PitsSetting.REINFORCED_WIDTH;
      case PLAIN_CONCRETE -> PitsSetting.PLAIN_WIDTH;
      default -> PitsSetting.MASONRY_WIDTH;
    };
  }

  private double endWidth(double width, double narrowest) {
    if (site.get(CORNERS) <= 0) {
      return width;
    }
    if (span.cantileverMetres().isEmpty()) {
      sheet.verdict(
          "free-end",
          "A pit at a free end of the wall",
          Amount.length(width),
          Amount.length(0),
          Verdict.REFER,
          Source.statics(),
          Phrase.of(
              "No strength past the last support can be relied on (an arch needs an abutment, bottom bars do not work there): tie or shore the end first, or show that the return wall carries it."));
      return width;
    }
    double end = span.cantileverMetres().getAsDouble() - site.get(PitsSetting.EDGE_ALLOWANCE);
    double used = Math.min(width, Math.max(end, narrowest));
    sheet.check(
        "free-end",
        "A pit at a free end of the wall",
        Amount.length(used),
        Amount.length(Math.max(0, end)),
        site.otherwise(CORNERS, CLEAR_SPAN, WALL_CONCRETE_STRENGTH),
        Source.statics(),
        Phrase.of(
            "The wall is a cantilever over the end pit. If it does not pass, shore the end first."));
    return used;
  }

  private PitRow row(double length, double width, double end) {
    int ends = (int) Math.min(2, Math.round(site.get(CORNERS)));
    double inner = length - ends * end;
    if (ends == 0 || end >= width || inner <= 0) {
      return PitRow.equal(pieces(length, width), length / pieces(length, width));
    }
    int count = pieces(inner, width);
    List<Double> widths = new ArrayList<>(Collections.nCopies(count, inner / count));
    widths.add(0, end);
    if (ends == 2) {
      widths.add(end);
    }
    return new PitRow(widths);
  }

  /** Fewest pieces not longer than the width; a millionth over is rounding. */
  private static int pieces(double length, double width) {
    return (int) Math.max(1, Math.ceil(length / width - 1e-6));
  }
}
