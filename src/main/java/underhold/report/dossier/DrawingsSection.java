package underhold.report.dossier;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.report.document.Block;
import underhold.report.document.Section;

/** The drawings of the method chosen in each zone, for those who build without the sheets. */
final class DrawingsSection {
  private final Material material;
  private final Illustrations illustrations;

  DrawingsSection(Material material, Illustrations illustrations) {
    this.material = material;
    this.illustrations = illustrations;
  }

  /** The section; nothing where nothing is drawn. */
  Optional<Section> section() {
    List<Section> parts = new ArrayList<>();
    for (ZonePart zone : material.zones()) {
      List<Block> blocks = blocks(zone);
      if (!blocks.isEmpty()) {
        parts.add(Section.of("drawings-" + zone.number(), "Zone: " + zone.name(), blocks));
      }
    }
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Section(
                "drawings",
                "Drawings",
                List.of(
                    Cells.paragraph(
                        "Drawn from the facts and the calculation sheets, for review, not for"
                            + " construction. Figured dimensions govern; do not scale.")),
                parts));
  }

  private List<Block> blocks(ZonePart zone) {
    String prefix = Anchor.figures("zone", zone.number());
    List<Block> blocks =
        new ArrayList<>(
            Cells.drawn(
                illustrations.ofZone(material.site(), zone.advice(), prefix, material.units())));
    material
        .chosen(zone)
        .ifPresent(
            sheet ->
                blocks.addAll(
                    Cells.drawn(
                        illustrations.toBuild(
                            sheet.sheet(),
                            material.site(),
                            zone.advice(),
                            Anchor.figures(sheet.anchor()),
                            material.units()))));
    return blocks;
  }
}
