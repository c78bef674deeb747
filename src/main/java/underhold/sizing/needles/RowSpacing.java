package underhold.sizing.needles;

import static underhold.sizing.needles.NeedleInput.*;

import underhold.mechanics.masonry.ArchOverGap;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;

/** Spacing of needles through a wall. */
final class RowSpacing {
  private static final double RISE_SHARE = 0.6;
  private static final double COMPRESSED_SHARE = 0.1;

  private final NeedleCase site;
  private final SheetBuilder sheet;
  private final double load;

  private RowSpacing(NeedleCase site, SheetBuilder sheet) {
    this.site = site;
    this.sheet = sheet;
    this.load = site.get(LINE_LOAD) * site.get(BeamSettings.UNCERTAINTY);
  }

  /**
   * The row.
   *
   * @param spacing from needle to needle, m
   * @param needles how many
   */
  record Row(double spacing, int needles) {}

  static Row write(NeedleCase site, SheetBuilder sheet) {
    return new RowSpacing(site, sheet).write();
  }

  private Row write() {
    double span = bridged();
    double closing = closing();
    double arch = arch();
    double bearing = bearing();
    double practice = site.get(SupportSettings.MOST_SPACING);
    double least = site.get(SupportSettings.LEAST_SPACING);
    double limit = Math.min(Math.min(span, closing), Math.min(arch, Math.min(bearing, practice)));
    double widest =
        sheet
            .step(
                "widest-spacing",
                "Widest spacing of the needles",
                "sm = max({sl}, min({sb}, {so}, {sa}, {sp}, {sr}))")
            .with("sl", "closest that can be threaded", site.amount(SupportSettings.LEAST_SPACING))
            .with("sb", "that the wall is said to bridge, and a pack", Amount.length(span))
            .with("so", "that closes below the first opening", Amount.length(closing))
            .with("sa", "that the wall can arch", Amount.length(arch))
            .with("sp", "that its bearing on the packs allows", Amount.length(bearing))
            .with("sr", "by practice", site.amount(SupportSettings.MOST_SPACING))
            .from(Sources.SPACING)
            .note("Modern practice for solid brick: 3 to 6 ft, under piers, never under openings.")
            .gives(Amount.length(Math.max(least, limit)));
    int needles = (int) Math.max(1, Math.ceil(site.get(WALL_LENGTH) / widest - 1e-9));
    double spacing =
        sheet
            .step("needle-spacing", "Spacing of the needles, evenly over the wall", "s = {L} / {n}")
            .with("L", "length of the wall", site.amount(WALL_LENGTH))
            .with("n", "needles, the next whole number above L / sm", Amount.count(needles))
            .gives(Amount.length(site.get(WALL_LENGTH) / needles));
    sheet.check(
        "needle-spacing",
        "Spacing of the needles against what the wall can bridge",
        Amount.length(spacing),
        Amount.length(limit),
        Verdict.REFER,
        Source.judgement(),
        Phrase.of(
            "Wider than the wall is known to bridge: tie or needle it with a spreader beam first."
                + " The arch needs an abutment at both ends of the row."));
    return new Row(spacing, needles);
  }

  private double bridged() {
    return sheet
        .step(
            "bridged-spacing",
            "Spacing by what the wall or footing can bridge from pack to pack",
            "sb = {c} + {p}")
        .with("c", "clear length it can bridge", site.amount(CLEAR_SPAN))
        .with("p", "length of a pack", site.amount(SupportSettings.PACK))
        .gives(Amount.length(site.get(CLEAR_SPAN) + site.get(SupportSettings.PACK)));
  }

  private double closing() {
    return sheet
        .step(
            "closing-spacing",
            "Spacing whose 45 degree arch closes below the first opening",
            "so = 2 × {h}")
        .with("h", "sound wall above the needles", site.amount(SupportSettings.ARCH_HEIGHT))
        .gives(Amount.length(2 * site.get(SupportSettings.ARCH_HEIGHT)));
  }

  /** By compression in the arch; a wall of no load arches over anything. */
  private double arch() {
    double height = site.get(SupportSettings.ARCH_HEIGHT);
    double thickness = site.get(WALL_THICKNESS);
    double stress = PickUp.allowableStress(site);
    double longest =
        stress > 0
            ? new ArchOverGap(Math.max(load, 1e-6), height, thickness, RISE_SHARE, COMPRESSED_SHARE)
                .longestSpan(stress)
            : 0;
    double rise = RISE_SHARE * height;
    double thrust = stress * COMPRESSED_SHARE * height * thickness;
    boolean high = 4 * thrust <= 2 * rise * Math.max(load, 1e-6);
    return sheet
        .step(
            "arch-spacing",
            "Longest arch in the wall, by its compression",
            high
                ? "sa = 4 × {f} × 0.1 × {h} × {t} / max({w}, 0.000001)"
                : "sa = sqrt(8 × 0.6 × {h} × {f} × 0.1 × {h} × {t} / max({w}, 0.000001))")
        .with("f", "allowable compression", Amount.stress(stress))
        .with("h", "sound wall above the needles", site.amount(SupportSettings.ARCH_HEIGHT))
        .with("t", "thickness", site.amount(WALL_THICKNESS))
        .with("w", "line load with its factor", Amount.lineLoad(load))
        .from(Sources.ARCH)
        .gives(Amount.length(longest));
  }

  private double bearing() {
    double stress = PickUp.allowableStress(site);
    double capacity = stress * site.get(SupportSettings.PACK) * site.get(WALL_THICKNESS);
    return sheet
        .step(
            "bearing-spacing",
            "Spacing by the bearing of the wall on its packs",
            "sp = {f} × {p} × {t} / max({w}, 0.000001)")
        .with("f", "allowable bearing stress", Amount.stress(stress))
        .with("p", "length of a pack", site.amount(SupportSettings.PACK))
        .with("t", "thickness", site.amount(WALL_THICKNESS))
        .with("w", "line load with its factor", Amount.lineLoad(load))
        .gives(Amount.length(capacity / Math.max(load, 1e-6)));
  }
}
