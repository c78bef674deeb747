package underhold.report.pdf;

import com.openhtmltopdf.render.BlockBox;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Lets the words of a section run on past a drawing that has no room on the page: it stands at the
 * top of the next page instead of leaving half of this one empty, or further down that page where
 * words run on over its top. No drawing passes another or the end of its section, and none parts a
 * heading from what it heads. It reckons by the pages as they were set, moves what is to be moved,
 * and looks once more at the pages that come of it: what its first reckoning left is moved then.
 */
final class FigureFlow {
  /** A gap that is worth moving a drawing, as a share of the page. */
  private static final double WORTH = 0.08;

  /** The same where a heading stays on the page with the words below it. */
  private static final double WORTH_HEADED = 0.18;

  /** The blank above and below a table, as the part of a page that it is less than. */
  private static final int BLANK = 100;

  /** The least with which a list and a table begin, as parts of a page: as the style has them. */
  private static final int LIST = 22;

  private static final int TABLE = 11;

  /** What the reckoning of a page may be out by, as a part of the page. */
  private static final int DOUBT = 250;

  /** How often the pages are looked at: what the second look finds is rare. */
  private static final int TIMES = 3;

  private final List<Piece> pieces;
  private final Map<Element, Element> scopes;
  private final int page;
  private final List<Piece> waiting = new ArrayList<>();
  private final Map<Element, List<Piece>> moves = new IdentityHashMap<>();
  private final List<Element> places = new ArrayList<>();
  private boolean moved;

  /** Whether a drawing of the section at hand was moved. */
  private boolean passed;

  /** Whether the drawing that waits would stand on a later page than it was set after. */
  private boolean turned;

  /** The pieces that stand before the drawing that waits, if it is set now, and did not before. */
  private int since;

  private int y;

  private FigureFlow(List<Piece> pieces, Map<Element, Element> scopes, int page) {
    this.pieces = pieces;
    this.scopes = scopes;
    this.page = page;
    for (Piece piece : pieces) {
      if (piece.scope() != null) {
        scopes.putIfAbsent(piece.element(), piece.scope());
      }
    }
  }

  /**
   * Sets a document, and again where drawings are moved.
   *
   * @param layout sets the document as it stands and gives its outermost box
   * @return the outermost box as it was set last
   */
  static BlockBox set(Element document, Supplier<BlockBox> layout) {
    BlockBox root = layout.get();
    Map<Element, Element> scopes = new IdentityHashMap<>();
    for (int time = 0; time < TIMES; time++) {
      FigureFlow flow = new FigureFlow(Pieces.of(document, root), scopes, Pieces.pageHeight(root));
      flow.run();
      if (flow.places.isEmpty()) {
        return root;
      }
      flow.places.forEach(flow::move);
      root = layout.get();
    }
    return root;
  }

  private void run() {
    for (int i = 0; i < pieces.size(); i++) {
      Piece piece = pieces.get(i);
      if (!moved) {
        y = piece.from();
      }
      if (!waiting.isEmpty() && !inside(piece.element(), scopes.get(waiting.get(0).element()))) {
        end(piece);
      }
      if (piece.kind() == Piece.Kind.DRAWING) {
        drawing(i);
      } else {
        words(i);
      }
    }
  }

  private void drawing(int at) {
    Piece drawing = pieces.get(at);
    int first = at;
    while (!moved && first > 0 && pieces.get(first - 1).kind() == Piece.Kind.HEADING) {
      first--; // its headings stay behind with the words
    }
    int left = left(first);
    boolean fits = moved ? y + drawing.height() <= page : !begunOnNext(first);
    double worth = first < at ? WORTH_HEADED : WORTH;
    boolean settled = fits || page - left < worth * page;
    if (waiting.isEmpty() && settled) {
      set(drawing);
      return;
    }
    if (!moved) {
      moved = true;
      y = left + pieces.subList(first, at).stream().mapToInt(Piece::height).sum();
    }
    if (waiting.isEmpty()) {
      turned = false;
      since = 0;
    }
    waiting.add(drawing);
  }

  /** The drawings that still wait stand at the end of their section, behind those before them. */
  private void end(Piece next) {
    for (Piece drawing : waiting) {
      set(drawing);
      @Nullable Element scope = scopes.get(drawing.element());
      if (scope != null && passed) {
        place(scope, drawing);
      }
    }
    waiting.clear();
    passed = false;
    moved = !places.isEmpty();
    y = moved ? y : next.from();
  }

  private void place(Element place, Piece drawing) {
    List<Piece> here = moves.get(place);
    if (here == null) {
      here = new ArrayList<>();
      moves.put(place, here);
      places.add(place);
    }
    here.add(drawing);
  }

  /** Whether the drawing was moved to a new page though words before it left room. */
  private boolean begunOnNext(int at) {
    return at > 0 && pieces.get(at).page() > last(at - 1);
  }

  /** Where the piece before ends on its page. */
  private int left(int at) {
    if (moved || at == 0) {
      return y;
    }
    Piece before = pieces.get(at - 1);
    return (before.from() + before.height()) % Math.max(1, page);
  }

  private int last(int at) {
    Piece piece = pieces.get(at);
    return piece.page() + (piece.from() + piece.height()) / Math.max(1, page);
  }

  private void words(int at) {
    Piece piece = pieces.get(at);
    if (!moved) {
      return;
    }
    // a row that might not fit is set after the drawing: it would stand alone above it
    int doubt = waiting.isEmpty() ? 0 : page / DOUBT;
    if (y + needed(at) > page - doubt) {
      y = 0;
      turned = true;
      if (piece.kind() != Piece.Kind.ITEM) { // a list is not cut
        top(piece);
      }
      boolean cut = y > 0; // the table begins anew below the drawing, with its blank
      y += piece.kind() == Piece.Kind.ROW ? piece.head() + (cut ? page / BLANK : 0) : 0;
    } else {
      below(at);
    }
    if (waiting.isEmpty() && places.isEmpty()) { // nothing was moved: the pages stand as set
      moved = false;
      return;
    }
    since++;
    int room = page - y;
    y += piece.height();
    if (y > page) { // it runs on
      y = piece.rest(room);
      turned = true;
    }
    while (y > page) {
      y -= page;
    }
  }

  /** What must have room for the piece to begin here: a heading takes what it heads with it. */
  private int needed(int at) {
    Piece piece = pieces.get(at);
    if (piece.kind() == Piece.Kind.DRAWING) {
      return 0;
    }
    boolean tied = piece.tied() && at + 1 < pieces.size();
    int own = tied ? piece.height() + needed(at + 1) : piece.least();
    boolean list = at + 1 < pieces.size() && pieces.get(at + 1).kind() == Piece.Kind.ITEM;
    return switch (piece.kind()) {
      case RUNNING -> list ? Math.max(own, page / LIST) : own;
      case FIRST_ROW -> Math.max(own, page / TABLE);
      default -> own;
    };
  }

  /**
   * At the top of a page the drawings that wait are set, as many as have room, before the piece.
   */
  private void top(Piece piece) {
    while (!waiting.isEmpty() && (y == 0 || fits(0))) {
      first(piece);
    }
  }

  /**
   * Where words run on over the top of a page, the drawings that wait are set below them: before
   * the next heading, or before the last piece that leaves them room.
   */
  private void below(int at) {
    Piece piece = pieces.get(at);
    boolean free = turned && piece.free() && (at == 0 || !pieces.get(at - 1).tied());
    boolean last = isHeading(piece) || !fits(toNext(at) + page / BLANK);
    while (free && last && !waiting.isEmpty() && fits(page / BLANK)) {
      first(piece);
    }
  }

  private static boolean isHeading(Piece piece) {
    return piece.element().getNodeName().startsWith("h");
  }

  /** How far it is to the next place where a drawing may stand. */
  private int toNext(int at) {
    int height = pieces.get(at).height();
    for (int i = at + 1; i < pieces.size(); i++) {
      Piece piece = pieces.get(i);
      if (piece.free() && !pieces.get(i - 1).tied()) {
        return height;
      }
      height += piece.height();
    }
    return height;
  }

  /** Whether the drawing that waits longest has room so far below the place reached. */
  private boolean fits(int below) {
    return !waiting.isEmpty() && y + below + waiting.get(0).height() <= page;
  }

  private void first(Piece piece) {
    Piece drawing = waiting.remove(0);
    if (since > 0) {
      place(piece.element(), drawing);
      passed = true;
    }
    set(drawing);
  }

  private void set(Piece drawing) {
    if (moved) {
      y = y + drawing.height() > page ? drawing.height() : y + drawing.height();
    }
  }

  private static boolean inside(Element element, @Nullable Element scope) {
    Node node = element;
    while (node != null && node != scope) {
      node = node.getParentNode();
    }
    return node != null;
  }

  private void move(Element place) {
    List<Piece> drawings = moves.getOrDefault(place, List.of());
    if (place.getNodeName().equals("section")) {
      drawings.forEach(drawing -> place.appendChild(drawing.element()));
      return;
    }
    Element before = place.getNodeName().equals("tr") ? TableCut.before(place) : place;
    while (isFirst(before) && before.getParentNode() instanceof Element section) {
      before = section; // a drawing before a heading stands before its section
    }
    Node parent = before.getParentNode();
    for (Piece drawing : drawings) {
      parent.insertBefore(drawing.element(), before);
    }
  }

  private static boolean isFirst(Element element) {
    for (Node node = element.getPreviousSibling(); node != null; node = node.getPreviousSibling()) {
      if (node instanceof Element) {
        return false;
      }
    }
    return element.getParentNode() instanceof Element parent
        && parent.getNodeName().equals("section");
  }
}
