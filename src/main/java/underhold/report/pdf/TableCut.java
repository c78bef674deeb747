package underhold.report.pdf;

import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Parts a table in two before a row; the second half has the head and widths of the first. */
final class TableCut {
  private TableCut() {}

  /** Whether a row belongs to the head of its table. */
  static boolean isHead(Element row) {
    return row.getParentNode() != null && row.getParentNode().getNodeName().equals("thead");
  }

  /** Whether a row is the note of the row above it. */
  static boolean isNote(Element row) {
    return (" " + row.getAttribute("class") + " ").contains(" note ");
  }

  /** Whether a row begins a piece of its own: it is no note. */
  static boolean begins(Element row) {
    return !isNote(row);
  }

  /** Parts the table before the row; gives the block of the second half. */
  static Element before(Element row) {
    Element body = parent(row);
    Element table = parent(body);
    Element block = parent(table);
    Element second = bare(block);
    Element secondTable = bare(table);
    for (Node child = table.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element inner && !inner.getNodeName().equals("tbody")) {
        secondTable.appendChild(inner.cloneNode(true));
      }
    }
    Element secondBody = bare(body);
    @Nullable Node later = body.getNextSibling();
    moveFrom(row, secondBody);
    secondTable.appendChild(secondBody);
    moveFrom(later, secondTable);
    if (body.getElementsByTagName("tr").getLength() == 0) {
      table.removeChild(body);
    }
    second.appendChild(secondTable);
    parent(block).insertBefore(second, block.getNextSibling());
    return second;
  }

  /** Moves a node and those after it. */
  private static void moveFrom(@Nullable Node first, Element to) {
    @Nullable Node next = first;
    while (next != null) {
      Node moved = next;
      next = next.getNextSibling();
      to.appendChild(moved);
    }
  }

  private static Element bare(Element element) {
    Element copy = (Element) element.cloneNode(false);
    copy.removeAttribute("id");
    return copy;
  }

  private static Element parent(Element element) {
    if (element.getParentNode() instanceof Element parent) {
      return parent;
    }
    throw new IllegalStateException("a row stands in no table");
  }
}
