package underhold.report.dossier;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

  private QuantitiesSection() {}

  static Section of(Material material) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Cells.paragraph(
            "Net quantities of the methods chosen, from their sheets."
                + " They are for comparing and planning; they are no bill to order by."));
    Map<String, List<BillItem>> together = new LinkedHashMap<>();
    for (ZonePart zone : material.zones()) {
      Optional<ZoneSheet> sheet = material.chosen(zone);
      List<BillItem> items = sheet.map(one -> one.sheet().quantities()).orElse(List.of());
      blocks.add(
          Cells.table(
              caption(material, zone),
              COLUMNS,
              items.stream().map(item -> row(item, material.units())).toList(),
              caption(material, zone) + ": no quantity is known; nothing is sized there."));
      items.forEach(
          item ->
              together
                  .computeIfAbsent(
                      item.name() + "/" + item.amount().measure(), key -> new ArrayList<>())
                  .add(item));
    }
    List<Block.Row> sums =
        together.values().stream()
            .filter(items -> items.size() > 1)
            .map(items -> sum(items, material.units()))
            .toList();
    if (!sums.isEmpty()) {
      blocks.add(new Block.Table("Items of several zones together", COLUMNS, sums));
    }
    return Section.of("quantities", "Quantities", blocks);
  }

  private static String caption(Material material, ZonePart zone) {
    return zone.name()
        + ", "
        + material.method(zone).map(option -> option.label()).orElse("no method yet");
  }

  /** One item. */
  static Block.Row row(BillItem item, UnitSystem units) {
    return Block.Row.of(
        Prose.of(item.name()),
        Prose.of(Cells.amount(item.amount(), units)),
        Prose.of(item.note().in(units)));
  }

  private static Block.Row sum(List<BillItem> items, UnitSystem units) {
    double total = items.stream().mapToDouble(item -> item.amount().si()).sum();
    Amount first = items.get(0).amount();
    return Block.Row.of(
        Prose.of(items.get(0).name()),
        Prose.of(Cells.amount(first.with(total), units)),
        Prose.of("the sum over " + items.size() + " zones"));
  }
}
