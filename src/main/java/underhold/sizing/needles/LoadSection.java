package underhold.sizing.needles;

import static underhold.sizing.needles.NeedleInput.*;

import underhold.mechanics.beam.NeedlePair;
import underhold.sizing.Amount;
import underhold.sizing.SheetBuilder;

/** Load on one needle. */
final class LoadSection {
  private final NeedleCase site;
  private final SheetBuilder sheet;

  private LoadSection(NeedleCase site, SheetBuilder sheet) {
    this.site = site;
    this.sheet = sheet;
  }

  /**
   * The needles of a zone and what one of them carries.
   *
   * @param perNeedle working load that one needle is designed for, kN
   * @param lifted load of the column, or of the wall on one needle, kN, with its uncertainty
   * @param needles how many needles
   * @param spacing spacing of needles through a wall, m; distance within a pair
   */
  record Load(double perNeedle, double lifted, int needles, double spacing) {}

  static Load write(NeedleCase site, SheetBuilder sheet) {
    LoadSection section = new LoadSection(site, sheet);
    return site.row() ? section.row() : section.pair();
  }

  private Load pair() {
    double column =
        sheet
            .step("column-design-load", "Load of the column to be held", "P = {Q} × {u}")
            .with("Q", "stated load", site.amount(COLUMN_LOAD))
            .with("u", "factor on the stated load", site.amount(BeamSettings.UNCERTAINTY))
            .from(Sources.LOAD_KNOWN)
            .gives(Amount.force(site.get(COLUMN_LOAD) * site.get(BeamSettings.UNCERTAINTY)));
    double spacing = site.get(BeamSettings.PAIR_SPACING);
    double eccentricity = Math.min(site.get(BeamSettings.ECCENTRICITY), spacing / 2);
    NeedlePair pair = new NeedlePair(column, eccentricity, spacing);
    double each =
        sheet
            .step(
                "needle-load",
                "Load on one needle of the pair",
                "N = {P} × max({m}, 0.5 + {e} / {s})")
            .with("P", "load of the column", Amount.force(column))
            .with("m", "least share of one needle", site.amount(BeamSettings.SHARE))
            .with("e", "eccentricity from the mid-line", Amount.length(eccentricity))
            .with("s", "distance between the needles", site.amount(BeamSettings.PAIR_SPACING))
            .from(Sources.PAIR_SHARE)
            .gives(Amount.force(pair.nearer(site.get(BeamSettings.SHARE))));
    return new Load(each, column, 2, spacing);
  }

  private Load row() {
    RowSpacing.Row row = RowSpacing.write(site, sheet);
    double each =
        sheet
            .step("needle-load", "Load on one needle of the row", "N = {w} × {u} × {s}")
            .with("w", "line load", site.amount(LINE_LOAD))
            .with("u", "factor on the stated load", site.amount(BeamSettings.UNCERTAINTY))
            .with("s", "spacing", Amount.length(row.spacing()))
            .from(Sources.LOAD_KNOWN)
            .gives(
                Amount.force(
                    site.get(LINE_LOAD) * site.get(BeamSettings.UNCERTAINTY) * row.spacing()));
    return new Load(each, each, row.needles(), row.spacing());
  }
}
