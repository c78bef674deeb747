package underhold.sizing;

import java.util.ArrayList;
import java.util.List;
import underhold.sizing.Formula.Symbol;

/** One step while it is written. */
public final class StepBuilder {
  private static final Phrase NO_NOTE = Phrase.of("");

  private final SheetBuilder sheet;
  private final String id;
  private final String title;
  private final String siFormula;
  private final String usFormula;
  private final List<Symbol> symbols = new ArrayList<>();
  private Source source = Source.statics();
  private Phrase note = NO_NOTE;

  StepBuilder(SheetBuilder sheet, String id, String title, String siFormula, String usFormula) {
    this.sheet = sheet;
    this.id = id;
    this.title = title;
    this.siFormula = siFormula;
    this.usFormula = usFormula;
  }

  /** Gives a symbol its meaning and value. */
  public StepBuilder with(String sign, String meaning, Amount amount) {
    if (sheet.whole()) {
      symbols.add(new Symbol(sign, meaning, amount));
    }
    return this;
  }

  /** Cites the formula; statics unless said otherwise. */
  public StepBuilder from(Source formulaSource) {
    source = formulaSource;
    return this;
  }

  /** Adds a remark. */
  public StepBuilder note(String words) {
    if (sheet.whole()) {
      note = Phrase.of(words);
    }
    return this;
  }

  /** Adds a remark with amounts. */
  public StepBuilder note(Phrase words) {
    note = words;
    return this;
  }

  /** Closes the step with its result, which it returns. */
  public double gives(Amount result) {
    if (sheet.whole()) {
      sheet.add(
          new Step(id, title, new Formula(siFormula, usFormula, symbols), result, source, note));
    }
    return result.si();
  }
}
