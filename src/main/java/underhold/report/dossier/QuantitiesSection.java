package underhold.report.dossier;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import underhold.advice.SupportOption;
import underhold.quantity.UnitSystem;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;
import underhold.sizing.Amount;
import underhold.sizing.BillItem;

/** The quantities of the methods chosen, zone by zone and together. */
final class QuantitiesSection {
  static final List<Block.Column> COLUMNS =
      List.of(
          Block.Column.words("Item"),
          Block.Column.amounts("Amount"),
          Block.Column.words("How it was taken off"));

  /** Soil is soil whatever dug it; all else is summed with what the same method counts. */
  private static final String SPOIL = "spoil to cart";

  private QuantitiesSection() {}

  static Section of(Material material) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Cells.paragraph(
            "Net quantities of the methods chosen, from their sheets."
                + " They are for comparing and planning; they are no bill to order by."));
    Map<String, Together> together = new LinkedHashMap<>();
    for (ZonePart zone : material.zones()) {
      Optional<SupportOption> method = material.method(zone);
      table(material, zone, method, material.chosen(zone), together, blocks);
      if (method.filter(SupportOption.EDGE_PITS::equals).isPresent()) {
        Optional<SupportOption> piles = Optional.of(SupportOption.DRILLED_PILES);
        Optional<ZoneSheet> sheet = material.sheet(zone, SupportOption.DRILLED_PILES);
        if (sheet.isPresent()) {
          table(material, zone, piles, sheet, together, blocks);
        }
      }
    }
    List<Block.Row> sums =
        together.values().stream()
            .filter(one -> one.zones().size() > 1)
            .map(one -> sum(one, material.units()))
            .toList();
    if (!sums.isEmpty()) {
      blocks.add(new Block.Table("Items of several zones together", COLUMNS, sums));
    }
    return Section.of("quantities", "Quantities", blocks);
  }

  /** Like items of several zones, by the name under which they are summed. */
  private record Together(String name, List<BillItem> items, Set<Integer> zones) {
    void add(ZonePart zone, BillItem item) {
      items.add(item);
      zones.add(zone.number());
    }
  }

  private static void table(
      Material material,
      ZonePart zone,
      Optional<SupportOption> method,
      Optional<ZoneSheet> sheet,
      Map<String, Together> together,
      List<Block> blocks) {
    String kind = method.map(SupportOption::label).orElse("no method yet");
    String caption = zone.name() + ", " + kind;
    List<BillItem> items = sheet.map(one -> one.sheet().quantities()).orElse(List.of());
    blocks.add(
        Cells.table(
            caption,
            COLUMNS,
            items.stream().map(item -> row(item, material.units())).toList(),
            caption + ": no quantity is known; nothing is sized there."));
    for (BillItem item : items) {
      String name = item.name().equals(SPOIL) ? SPOIL : item.name() + ", " + kind;
      together
          .computeIfAbsent(
              name + "/" + item.amount().measure(),
              key -> new Together(name, new ArrayList<>(), new HashSet<>()))
          .add(zone, item);
    }
  }

  /** One item. */
  static Block.Row row(BillItem item, UnitSystem units) {
    return Block.Row.of(
        Prose.of(item.name()),
        Prose.of(Cells.amount(item.amount(), units)),
        Prose.of(item.note().in(units)));
  }

  private static Block.Row sum(Together together, UnitSystem units) {
    List<BillItem> items = together.items();
    double total = items.stream().mapToDouble(item -> item.amount().si()).sum();
    Amount first = items.get(0).amount();
    return Block.Row.of(
        Prose.of(together.name()),
        Prose.of(Cells.amount(first.with(total), units)),
        Prose.of("the sum over " + together.zones().size() + " zones"));
  }
}
