package underhold.report.html;

import gg.jte.Content;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.TemplateOutput;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import underhold.report.document.Block;
import underhold.report.document.Document;
import underhold.report.document.Prose;
import underhold.report.document.Section;
import underhold.report.drawing.Figure;
import underhold.threads.AllProcessors;

/**
 * A document while it is set: what the templates ask for. Made for one document and one writing.
 */
public final class PageMarkup {
  private static final TemplateEngine TEMPLATES =
      TemplateEngine.createPrecompiled(null, ContentType.Html, PageMarkup.class.getClassLoader());

  /** The contents list sections and their parts; the headings below stand where they stand. */
  public static final int CONTENTS_DEPTH = 2;

  private static final int LONGEST_HEAD = 160;

  /** Letters of a paragraph that stays with the table or list below it. */
  private static final int LEAD = 200;

  /** Letters of a formula and its numbers that have room on one line of paper. */
  private static final int ONE_LINE = 104;

  private final Document document;
  private final Medium medium;
  private final List<Outline> outline;
  private final Anchors anchors;
  private final Map<String, Double> scales;
  private final Map<Figure, String> drawings;
  private final Set<Block.Table> captioned = Collections.newSetFromMap(new IdentityHashMap<>());

  private PageMarkup(Document document, Medium medium) {
    this.document = document;
    this.medium = medium;
    this.outline = Outline.of(document.sections());
    this.anchors = new Anchors(document, outline);
    this.scales = FigureScales.of(document, medium);
    this.drawings = drawings(document.sections());
    captioned(document.sections(), captioned);
  }

  /** The document as a page that is well-formed XML as well as HTML. */
  public static String of(Document document, Medium medium) {
    StringOutput out = new StringOutput(1 << 16);
    TEMPLATES.render("document.jte", new PageMarkup(document, medium), out);
    return SafeText.of(out.toString());
  }

  /** The document. */
  public Document document() {
    return document;
  }

  /** Whether it is set for the PDF writer. */
  public boolean paged() {
    return medium.paged();
  }

  /** A title, or a word that says that there is none: a heading never stands empty. */
  public String title(String title) {
    return title.isBlank() ? "untitled" : title;
  }

  /** The numbered sections. */
  public List<Outline> outline() {
    return outline;
  }

  /** Where links lead. */
  public Anchors anchors() {
    return anchors;
  }

  /** Words with their links. */
  public Content prose(Prose prose) {
    return new ProseMarkup(prose, anchors, paged());
  }

  /** A formula or a symbol, set. */
  public Content formula(String text) {
    return FormulaMarkup.of(text);
  }

  /** A calculation in one line: set on screen, as typed on paper, where no sign can be hidden. */
  public Content numbers(Block.Working working) {
    String line = calculation(working);
    return paged() ? prose(Prose.of(line)) : FormulaMarkup.inline(line);
  }

  /** Whether the plain formula is to be printed as well: paper keeps no hidden signs. */
  public boolean alsoPlain(String formula) {
    return paged() && FormulaMarkup.of(formula).hidesSigns();
  }

  /** Whether formula and numbers have room on one line of paper. */
  public boolean oneLine(Block.Working working) {
    int letters = working.formula().length() + calculation(working).length();
    return letters <= ONE_LINE && !alsoPlain(working.formula());
  }

  /** The sign of a tone, and its word for whoever does not see the sign. */
  public Content sign(Block.Tone tone) {
    return new Trusted(
        tone == Block.Tone.PLAIN
            ? ""
            : "<span class=\"sign\" aria-hidden=\"true\">"
                + Tones.sign(tone)
                + "</span><span class=\"spoken\">"
                + Tones.word(tone)
                + " </span>");
  }

  /** Links to the sections from which something leads to the anchor. */
  public Content back(String anchor) {
    return new BackLinks(List.copyOf(anchors.leadingTo(anchor)), anchors);
  }

  /** Whether something leads to the anchor. */
  public boolean referred(String anchor) {
    return !anchors.leadingTo(anchor).isEmpty();
  }

  /** The id of a place; null where it has none. */
  public @Nullable String id(String anchor) {
    return anchors.id(anchor);
  }

  /** The calculation of a step in one line: what is found, the numbers put in, the result. */
  static String calculation(Block.Working working) {
    String line = working.substituted().strip();
    int equals = working.formula().indexOf(" = ");
    String sign = equals < 0 ? "" : working.formula().substring(0, equals) + " = ";
    if (!line.startsWith(sign)) {
      line = sign + line;
    }
    String result = working.result().strip();
    String value = result.startsWith(sign) ? result.substring(sign.length()) : result;
    String bare = value.replaceFirst(" \\((?:count|ratio)\\)$", "");
    boolean whole = result.isEmpty() || line.endsWith(" = " + bare) || line.equals(bare);
    return whole ? line : line + " = " + value;
  }

  /** The sketch in signs that stands for a drawing; empty where it has none. */
  public List<String> sketch(Figure figure) {
    return DrawingWords.of(figure.equivalent()).sketch();
  }

  /** The words of a drawing, without its sketch. */
  public List<String> words(Figure figure) {
    return DrawingWords.of(figure.equivalent()).words();
  }

  /** The drawing of a figure. */
  public Content drawing(Figure figure) {
    return new Trusted(Objects.requireNonNull(drawings.get(figure)));
  }

  /** The markup of every drawing, side by side: it takes as long as all the rest. */
  private Map<Figure, String> drawings(List<Section> sections) {
    List<Figure> figures = new ArrayList<>();
    figures(sections, figures);
    List<String> markup =
        AllProcessors.each(
            figures, one -> DrawingMarkup.of(one, Anchors.clean(one.id()), medium, scale(one)));
    Map<Figure, String> all = new IdentityHashMap<>();
    for (int i = 0; i < markup.size(); i++) {
      all.put(figures.get(i), markup.get(i));
    }
    return all;
  }

  private static void figures(List<Section> sections, List<Figure> figures) {
    for (Section section : sections) {
      for (Block block : section.blocks()) {
        if (block instanceof Block.Drawn drawn) {
          figures.add(drawn.figure());
        }
      }
      figures(section.parts(), figures);
    }
  }

  private double scale(Figure figure) {
    return scales.getOrDefault(figure.id(), 1.0);
  }

  /** That a drawing to scale is not printed at its scale; empty where it is, or has none. */
  public String reduced(Figure figure) {
    double scale = scale(figure);
    return paged() && scale < 0.995 && FigureScales.toScale(figure)
        ? String.format(
            Locale.ROOT, " (printed at %.0f %% of its size: its scale does not hold)", 100 * scale)
        : "";
  }

  /** The caption of a table on paper; none where it says again what the heading above it says. */
  public String caption(Block.Table table) {
    return captioned.contains(table) ? "" : table.caption();
  }

  private static void captioned(List<Section> sections, Set<Block.Table> tables) {
    for (Section section : sections) {
      boolean first = true;
      for (Block block : section.blocks()) {
        boolean heads = first && block instanceof Block.Table;
        if (heads && ((Block.Table) block).caption().startsWith(section.title())) {
          tables.add((Block.Table) block);
        }
        first &= block instanceof Block.Paragraph;
      }
      captioned(section.parts(), tables);
    }
  }

  /** The class of a list; on paper a short one is kept whole. */
  public @Nullable String style(Block.Listing listing) {
    return paged() && KeptTogether.whole(listing) ? "few" : null;
  }

  /** The class of the block of a table; on paper a short one is kept whole. */
  public String style(Block.Table table) {
    if (!paged()) {
      return "wide";
    }
    return KeptTogether.whole(table)
        ? "wide few"
        : KeptTogether.endsWithTwo(table) ? "wide ends" : "wide";
  }

  /** The room with which a longer table begins on a page, as a style; none on a screen. */
  public @Nullable String beginning(Block.Table table) {
    return paged() && !KeptTogether.whole(table)
        ? String.format(
            Locale.ROOT, "-fs-page-break-min-height: %.0fmm", KeptTogether.beginning(table))
        : null;
  }

  /** What a row comes to, for whoever sees no more than its first cell; none where none is said. */
  public @Nullable String verdict(Block.Table table, Block.Row row) {
    return paged() ? null : Verdicts.of(table, row);
  }

  /** Whether a long table of short rows is set two rows side by side: only on paper. */
  public boolean pairs(Block.Table table) {
    return paged() && SideBySide.saves(table);
  }

  /** The widths of the columns in percent; of both halves and the gap where rows stand in pairs. */
  public List<String> widths(Block.Table table, boolean pairs) {
    List<Integer> shares =
        pairs ? SideBySide.shares(table) : ColumnWidths.of(table, line()).shares();
    return shares.stream()
        .map(share -> String.format(Locale.ROOT, "%d.%02d", share / 100, share % 100))
        .toList();
  }

  private int line() {
    return paged() ? ColumnWidths.PAPER : ColumnWidths.SCREEN;
  }

  /** The class of a cell: of its column, and of its row where the row has none of its own. */
  public @Nullable String cell(Block.Table table, int column, @Nullable String tone) {
    List<String> classes = new ArrayList<>();
    if (table.columns().get(column).amounts()) {
      classes.add("amounts");
    }
    if (table.toWriteIn(column)) {
      classes.add("write");
    }
    if (tone != null) {
      classes.add(tone);
    }
    return classes.isEmpty() ? null : String.join(" ", classes);
  }

  /**
   * The class of a paragraph that never stands at the foot of a page, parted from what it leads.
   */
  public @Nullable String lead(Section section, Block block) {
    int next = section.blocks().indexOf(block) + 1;
    if (!paged() || next >= section.blocks().size()) {
      return null;
    }
    boolean colon =
        block instanceof Block.Paragraph paragraph && paragraph.words().text().endsWith(":");
    Block after = section.blocks().get(next);
    boolean leads = after instanceof Block.Table || colon && after instanceof Block.Listing;
    return leads && block instanceof Block.Paragraph words && words.words().text().length() <= LEAD
        ? "lead"
        : null;
  }

  /** The width under which a table is scrolled, as a style; none on paper. */
  public @Nullable String breadth(Block.Table table) {
    return paged()
        ? null
        : String.format(
            Locale.ROOT, "min-width: %.1fem", 0.56 * ColumnWidths.of(table, line()).letters());
  }

  /** Whether the head of the table is short enough to be repeated on every page. */
  public boolean repeats(Block.Table table) {
    return table.columns().stream().allMatch(column -> column.title().length() <= LONGEST_HEAD);
  }

  /** The style of the page. */
  public Content style() {
    String shared = resource("document.css");
    String own = resource(paged() ? "paged.css" : "screen.css");
    return new Trusted(
        (shared + own)
            .replace("\"STATUS\"", CssText.quoted(line(document.status(), 240)))
            .replace("\"TITLE\"", CssText.quoted(line(document.title(), 120)))
            .replace("PAGE-SIZE", medium.pageSize()));
  }

  /** The words in one line at the edge of a page; cut, and seen to be cut, where they are many. */
  private static String line(String words, int letters) {
    String safe = SafeText.of(words).strip();
    int count = safe.codePointCount(0, safe.length());
    return count <= letters
        ? safe
        : safe.substring(0, safe.offsetByCodePoints(0, letters - 1)) + "…";
  }

  private static String resource(String name) {
    try (InputStream in = PageMarkup.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its own " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /** The numbers of sections, each leading there. */
  private record BackLinks(List<Outline> sections, Anchors anchors) implements Content {
    @Override
    public void writeTo(TemplateOutput out) {
      String between = "";
      for (Outline from : sections) {
        out.writeContent(between + "<a href=\"" + anchors.link(from.section().id()) + "\">");
        out.writeUserContent(from.number());
        out.writeContent("</a>");
        between = ", ";
      }
    }
  }

  /** Markup of our own, in which no words of a user stand unescaped. */
  private record Trusted(String markup) implements Content {
    @Override
    public void writeTo(TemplateOutput out) {
      out.writeContent(markup);
    }
  }
}
