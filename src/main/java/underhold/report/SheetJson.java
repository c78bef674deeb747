package underhold.report;

import java.util.List;
import java.util.Optional;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import underhold.quantity.UnitSystem;
import underhold.sizing.Amount;
import underhold.sizing.BillItem;
import underhold.sizing.Caution;
import underhold.sizing.Check;
import underhold.sizing.Formula;
import underhold.sizing.Sheet;
import underhold.sizing.SheetInput;
import underhold.sizing.Source;
import underhold.sizing.Stage;
import underhold.sizing.Step;

/**
 * A calculation sheet as a tree for JSON. Every amount has its text in one unit system, its value
 * in the inside unit and that unit's symbol; the same sheet gives the same characters.
 */
public final class SheetJson {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final UnitSystem system;

  private SheetJson(UnitSystem system) {
    this.system = system;
  }

  /** The tree of a sheet, with texts in that unit system. */
  public static ObjectNode of(Sheet sheet, UnitSystem system) {
    return new SheetJson(system).sheet(sheet);
  }

  private ObjectNode sheet(Sheet sheet) {
    ObjectNode node = NODES.objectNode();
    node.put("title", sheet.title());
    node.put("method", sheet.methodId());
    node.put("units", system.name());
    node.put("complete", sheet.complete());
    node.put("verdict", sheet.verdict().label());
    ArrayNode missing = node.putArray("missing");
    sheet
        .missing()
        .forEach(
            one ->
                missing
                    .addObject()
                    .put("name", one.name())
                    .put("question", one.question())
                    .put("why", one.why()));
    ArrayNode cautions = node.putArray("cautions");
    sheet.cautions().forEach(one -> caution(cautions.addObject(), one));
    ArrayNode inputs = node.putArray("inputs");
    sheet.inputs().forEach(one -> input(inputs.addObject(), one));
    ArrayNode steps = node.putArray("steps");
    sheet.steps().forEach(one -> step(steps.addObject(), one));
    ArrayNode checks = node.putArray("checks");
    sheet.checks().forEach(one -> check(checks.addObject(), one));
    items(node.putArray("quantities"), sheet.quantities());
    items(node.putArray("time"), sheet.time());
    ArrayNode stages = node.putArray("stages");
    sheet.stages().forEach(one -> stage(stages.addObject(), one));
    ArrayNode notCovered = node.putArray("notCovered");
    sheet.notCovered().forEach(notCovered::add);
    return node;
  }

  private void input(ObjectNode node, SheetInput input) {
    node.put("name", input.name());
    node.put("label", input.label());
    amount(node, input.amount(), input.words());
    node.put("origin", input.origin().label());
    source(node, input.source());
  }

  private void step(ObjectNode node, Step step) {
    node.put("id", step.id());
    node.put("title", step.title());
    node.put("formula", step.formulaText(system));
    ArrayNode symbols = node.putArray("symbols");
    for (Formula.Symbol symbol : step.formula().symbols()) {
      ObjectNode one = symbols.addObject();
      one.put("symbol", symbol.sign());
      one.put("meaning", symbol.meaning());
      amount(one, symbol.amount());
    }
    node.put("substituted", step.calculation(system));
    amount(node.putObject("result"), step.result());
    source(node, step.source());
    node.put("note", step.note().in(system));
  }

  private void check(ObjectNode node, Check check) {
    node.put("id", check.id());
    node.put("title", check.title());
    amount(node.putObject("demand"), check.demand());
    amount(node.putObject("capacity"), check.capacity());
    node.put("unit", check.demand().unit(system));
    check
        .utilisation()
        .ifPresentOrElse(use -> node.put("utilisation", use), () -> node.putNull("utilisation"));
    node.put("verdict", check.verdict().label());
    source(node, check.source());
    node.put("note", check.note().in(system));
  }

  private void items(ArrayNode nodes, List<BillItem> items) {
    for (BillItem item : items) {
      ObjectNode node = nodes.addObject();
      node.put("name", item.name());
      amount(node, item.amount());
      node.put("note", item.note().in(system));
    }
  }

  private void stage(ObjectNode node, Stage stage) {
    node.put("title", stage.title());
    ArrayNode work = node.putArray("work");
    stage.work().forEach(one -> work.add(one.in(system)));
    ArrayNode holds = node.putArray("holdPoints");
    stage
        .holdPoints()
        .forEach(
            hold ->
                holds
                    .addObject()
                    .put("condition", hold.condition().in(system))
                    .put("releasedBy", hold.releasedBy()));
  }

  private void caution(ObjectNode node, Caution caution) {
    node.put("hazard", caution.hazard());
    node.put("advice", caution.advice().in(system));
    node.put("decidedBy", caution.decidedBy());
    source(node, caution.source());
  }

  private void amount(ObjectNode node, Optional<Amount> amount, String words) {
    amount.ifPresentOrElse(value -> amount(node, value), () -> node.put("value", words));
  }

  private void amount(ObjectNode node, Amount amount) {
    node.put("value", amount.in(system));
    node.put("si", amount.si());
    node.put("unit", amount.measure().insideUnit());
  }

  private static void source(ObjectNode node, Source source) {
    node.put("source", source.citation());
    node.put("basis", source.basis().label());
  }
}
