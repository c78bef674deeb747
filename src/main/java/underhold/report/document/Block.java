package underhold.report.document;

import java.util.List;
import underhold.report.drawing.Figure;

/** What stands in a section. */
public sealed interface Block {

  /** What a notice or a row says of itself besides its words; colour alone never carries it. */
  enum Tone {
    PLAIN,
    GOOD,
    DOUBT,
    BAD,
    CAUTION
  }

  /** A paragraph. */
  record Paragraph(Prose words) implements Block {}

  /** A boxed notice under a short head, such as a caution or the status of the document. */
  record Notice(Tone tone, String head, Prose words) implements Block {
    public Notice {
      head = Clean.words(head);
    }
  }

  /** A list; numbered where the order matters. */
  record Listing(boolean numbered, List<Prose> items) implements Block {
    public Listing {
      items = List.copyOf(items);
    }
  }

  /** A table. */
  record Table(String caption, List<Column> columns, List<Row> rows) implements Block {
    public Table {
      caption = Clean.words(caption);
      columns = List.copyOf(columns);
      rows = List.copyOf(rows);
      int width = columns.size();
      if (rows.stream().anyMatch(row -> row.cells().size() != width)) {
        throw new IllegalArgumentException("a row differs from the columns of " + caption);
      }
    }

    /** Whether a column is empty in every row, so that it is written in by hand. */
    public boolean toWriteIn(int column) {
      return !rows.isEmpty()
          && !columns.get(column).title().isEmpty()
          && rows.stream().allMatch(row -> row.cells().get(column).spans().isEmpty());
    }

    /** Whether any row has words below it. */
    public boolean noted() {
      return rows.stream().anyMatch(row -> !row.note().spans().isEmpty());
    }
  }

  /** A column of a table; amounts are set right, words left. */
  record Column(String title, boolean amounts) {
    public Column {
      title = Clean.words(title);
    }

    /** A column of words. */
    public static Column words(String title) {
      return new Column(title, false);
    }

    /** A column of amounts, each cell with its unit. */
    public static Column amounts(String title) {
      return new Column(title, true);
    }
  }

  /**
   * A row of a table.
   *
   * @param anchor its anchor; empty where nothing leads to it
   * @param tone what it says of itself besides its words
   * @param cells a cell a column
   * @param note words about the whole row, set below it over all columns; may be empty
   */
  record Row(String anchor, Tone tone, List<Prose> cells, Prose note) {
    public Row {
      cells = List.copyOf(cells);
    }

    /** A row without a note. */
    public Row(String anchor, Tone tone, List<Prose> cells) {
      this(anchor, tone, cells, Prose.empty());
    }

    /** The same row with these words below it. */
    public Row noting(Prose words) {
      return new Row(anchor, tone, cells, words);
    }

    /** A row of plain words. */
    public static Row of(Prose... cells) {
      return new Row("", Tone.PLAIN, List.of(cells));
    }
  }

  /**
   * One step of a calculation, so that it can be redone by hand.
   *
   * @param anchor its anchor; empty where nothing leads to it
   * @param title what is reckoned
   * @param formula the formula in symbols, {@code B = W × L / (2 × fb)}
   * @param symbols each symbol with its meaning and value
   * @param substituted the formula with the numbers put in
   * @param result the result with its unit
   * @param source where the formula is from, with the basis
   * @param note what a reader must know beside it; empty where there is nothing
   */
  record Working(
      String anchor,
      String title,
      String formula,
      List<Symbol> symbols,
      String substituted,
      String result,
      Prose source,
      Prose note)
      implements Block {
    public Working {
      title = Clean.words(title);
      formula = Clean.words(formula);
      substituted = Clean.words(substituted);
      result = Clean.words(result);
      symbols = List.copyOf(symbols);
    }

    /** A step without a note. */
    public Working(
        String anchor,
        String title,
        String formula,
        List<Symbol> symbols,
        String substituted,
        String result,
        Prose source) {
      this(anchor, title, formula, symbols, substituted, result, source, Prose.empty());
    }
  }

  /** A symbol of a formula, its meaning, and its value with its unit. */
  record Symbol(String symbol, String meaning, String value) {
    public Symbol {
      symbol = Clean.words(symbol);
      meaning = Clean.words(meaning);
      value = Clean.words(value);
    }
  }

  /** A drawing. */
  record Drawn(Figure figure) implements Block {
    public Drawn {
      figure =
          new Figure(
              figure.id(),
              Clean.words(figure.title()),
              figure.svg(),
              figure.widthMillimetres(),
              figure.heightMillimetres(),
              figure.equivalent().stream().map(Clean::words).toList());
    }
  }
}
