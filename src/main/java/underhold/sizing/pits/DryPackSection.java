package underhold.sizing.pits;

import static underhold.sizing.pits.PitsFact.*;

import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Verdict;

/** Gap and dry pack between pier and footing. */
final class DryPackSection {
  private DryPackSection() {}

  static void write(PitsCase site, SheetBuilder sheet) {
    double stress =
        sheet
            .step("dry-pack-stress", "Stress in the dry pack", "f = {w} / {B}")
            .with("w", "working line load", site.amount(WALL_LINE_LOAD))
            .with("B", "width in contact, the footing", site.amount(FOOTING_WIDTH))
            .gives(Amount.stress(site.get(WALL_LINE_LOAD) / site.get(FOOTING_WIDTH)));
    sheet.check(
        "dry-pack-stress",
        "Stress in the dry pack",
        Amount.stress(stress),
        site.amount(PitsSetting.DRY_PACK_STRESS),
        Verdict.REFER,
        Sources.PRACTITIONER,
        Phrase.of("Above what is usual the mix is proved by tests; masonry above may govern."));
    if (!site.material.value().concrete()) {
      PitsSetting allowable =
          site.poorWall() ? PitsSetting.POOR_MASONRY_COMPRESSION : PitsSetting.MASONRY_COMPRESSION;
      sheet.check(
          "dry-pack-masonry",
          "Masonry above the dry pack in bearing",
          Amount.stress(stress),
          site.amount(allowable),
          PitsCase.otherwise(site.condition),
          allowable.setting().source(),
          Phrase.of(""));
    }
  }
}
