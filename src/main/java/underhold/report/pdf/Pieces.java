package underhold.report.pdf;

import com.openhtmltopdf.newtable.TableRowBox;
import com.openhtmltopdf.render.BlockBox;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.LineBox;
import com.openhtmltopdf.render.PageBox;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Reads from a document that is set, in order, what stands on its pages and where. */
final class Pieces {
  private final Map<Element, Box> boxes = new IdentityHashMap<>();
  private final List<PageBox> pages;
  private final List<Piece> pieces = new ArrayList<>();

  /** The blank that was last seen above a piece of that name; it is none's own height. */
  private final Map<String, Integer> blanks = new HashMap<>();

  /** Items of a list from which on the last two are kept on one page. */
  private static final int KEPT_LAST = 4;

  private int end;

  private Pieces(BlockBox root) {
    this.pages = root.getLayer().getPages();
    collect(root);
  }

  /** The pieces of a document, in order. */
  static List<Piece> of(Element document, BlockBox root) {
    Pieces all = new Pieces(root);
    all.read(document);
    return all.pieces;
  }

  /** The height of the words on a page [dots]. */
  static int pageHeight(BlockBox root) {
    PageBox first = root.getLayer().getPages().get(0);
    return first.getBottom() - first.getTop();
  }

  private void collect(Box box) {
    Element element = box.getElement();
    if (element != null) {
      boxes.putIfAbsent(element, box);
    }
    for (Box child : box.getChildren()) {
      if (child instanceof BlockBox || child instanceof TableRowBox) {
        collect(child);
      }
    }
  }

  private void read(Element element) {
    for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element inner) {
        Box box = boxes.get(inner);
        if (box != null) {
          piece(inner, box);
        } else {
          read(inner);
        }
      }
    }
  }

  private void piece(Element element, Box box) {
    switch (element.getNodeName()) {
      case "h1", "h2", "h3", "h4", "h5", "h6" -> add(element, Piece.Kind.HEADING, box);
      case "p" -> add(element, leads(element) ? Piece.Kind.HEADING : Piece.Kind.RUNNING, box);
      case "ul", "ol" -> list(element, box);
      case "table", "svg" -> add(element, Piece.Kind.WHOLE, box);
      case "figure" -> drawing(element, box);
      default -> {
        String style = element.getAttribute("class");
        if (style.equals("wide") || style.equals("wide ends")) {
          table(element, box);
        } else if (isFew(element) || style.startsWith("notice") || style.equals("working")) {
          add(element, Piece.Kind.WHOLE, box);
        } else {
          read(element);
        }
      }
    }
  }

  /** A list or a table that is kept whole. */
  private static boolean isFew(Element element) {
    String style = element.getAttribute("class");
    return style.equals("few") || style.equals("wide few");
  }

  /** The items of a list; the blank above it belongs to the first. */
  private void list(Element list, Box outer) {
    List<Element> items = inside(list, "li");
    if (isFew(list) || items.isEmpty()) {
      add(list, Piece.Kind.WHOLE, outer);
      return;
    }
    for (int i = 0; i < items.size(); i++) {
      Box box = boxes.getOrDefault(items.get(i), outer);
      boolean first = i == 0;
      int above = first ? near(box.getAbsY() - outer.getAbsY()) : 0;
      Piece.Kind kind = first ? Piece.Kind.RUNNING : Piece.Kind.ITEM;
      boolean tied = KEPT_LAST <= items.size() && i == items.size() - 2;
      Set set = new Set(box.getHeight() + above, 0, lines(box), tied);
      add(first ? list : items.get(i), kind, first ? outer : box, set, null);
    }
  }

  /** The lines of words in a box that holds nothing else; 1 where it holds other boxes. */
  private static int lines(Box box) {
    return (int) Math.max(1, box.getChildren().stream().filter(LineBox.class::isInstance).count());
  }

  /** Words that stand with the list or the table below them, as a heading does. */
  private static boolean leads(Element paragraph) {
    return paragraph.getAttribute("class").equals("lead");
  }

  private void drawing(Element element, Box box) {
    if (element.getParentNode() instanceof Element section) {
      add(element, Piece.Kind.DRAWING, box, new Set(box.getHeight(), 0, 1, false), section);
    }
  }

  private void add(Element element, Piece.Kind kind, Box box) {
    int lines = kind == Piece.Kind.RUNNING ? lines(box) : 1;
    Set set = new Set(box.getHeight(), 0, lines, kind == Piece.Kind.HEADING);
    add(element, kind, box, set, null);
  }

  /** A piece with the blank above it, which belongs to a box around it or to none. */
  private void add(Element element, Piece.Kind kind, Box box, Set set, @Nullable Element scope) {
    int page = page(box);
    int from = box.getAbsY() - pages.get(page).getTop();
    int blank = box.getAbsY() - end;
    boolean seen = !pieces.isEmpty() && end > pages.get(page).getTop() && near(blank) == blank;
    String name = element.getNodeName();
    if (seen) {
      blanks.put(name, blank);
    }
    int above = seen ? blank : blanks.getOrDefault(name, 0);
    pieces.add(
        new Piece(
            element,
            kind,
            page,
            Math.max(0, from - above),
            set.height() + above,
            set.head(),
            set.lines(),
            set.tied(),
            scope));
    end = box.getAbsY() + set.height();
  }

  /** How a piece was set: see {@link Piece}. */
  private record Set(int height, int head, int lines, boolean tied) {}

  /** The rows of a table; what stands above its first row belongs to that row. */
  private void table(Element wide, Box outer) {
    List<Element> rows = inside(wide, "tr");
    int head = 0;
    for (Element row : rows) {
      head += TableCut.isHead(row) ? height(row) : 0;
    }
    List<Element> body = rows.stream().filter(row -> !TableCut.isHead(row)).toList();
    boolean ends = wide.getAttribute("class").endsWith("ends");
    int[] around = around(wide, outer);
    int above = head + around[0];
    for (int i = 0; i < body.size(); i++) {
      Element row = body.get(i);
      int height = height(row);
      while (i + 1 < body.size() && TableCut.isNote(body.get(i + 1))) {
        height += height(body.get(++i));
      }
      boolean first = row == body.get(0);
      Box box = first ? outer : boxes.getOrDefault(row, outer);
      int all = height + (first ? above : 0) + (i == body.size() - 1 ? around[1] : 0);
      Piece.Kind kind = first ? Piece.Kind.FIRST_ROW : Piece.Kind.ROW;
      int later = (int) body.subList(i + 1, body.size()).stream().filter(TableCut::begins).count();
      boolean tied = later > 0 && first || later == 1 && ends && i >= 2;
      add(first ? wide : row, kind, box, new Set(all, head, 1, tied), null);
    }
  }

  /** What stands above and below the table in its block: its title and the blank. */
  private int[] around(Element wide, Box outer) {
    for (Node child = wide.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element inner && inner.getNodeName().equals("table")) {
        Box table = boxes.getOrDefault(inner, outer);
        int above = table.getAbsY() - outer.getAbsY();
        int below = outer.getAbsY() + outer.getHeight() - table.getAbsY() - table.getHeight();
        return new int[] {near(above), near(below)};
      }
    }
    return new int[] {0, 0};
  }

  /** Nothing where a page break lies between. */
  private int near(int blank) {
    return blank < 0 || blank > (pages.get(0).getBottom() - pages.get(0).getTop()) / 8 ? 0 : blank;
  }

  private static List<Element> inside(Element element, String name) {
    List<Element> found = new ArrayList<>();
    for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element inner) {
        if (inner.getNodeName().equals(name)) {
          found.add(inner);
        } else {
          found.addAll(inside(inner, name));
        }
      }
    }
    return found;
  }

  private int height(Element element) {
    Box box = boxes.get(element);
    return box == null ? 0 : box.getHeight();
  }

  private int page(Box box) {
    int y = box.getAbsY();
    int page = 0;
    while (page + 1 < pages.size() && pages.get(page + 1).getTop() <= y) {
      page++;
    }
    return page;
  }
}
