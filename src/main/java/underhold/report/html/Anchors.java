package underhold.report.html;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import underhold.report.document.Block;
import underhold.report.document.Document;
import underhold.report.document.Prose;

/** Which places of a document can be led to, and from which sections something leads to them. */
public final class Anchors {
  /** The top of the page. */
  public static final String TOP = "page-top";

  /** The list of contents. */
  public static final String CONTENTS = "page-contents";

  /** Where the sections begin. */
  public static final String MAIN = "page-main";

  private static final Pattern OTHERS = Pattern.compile("[^a-z0-9._-]+");

  private final Set<String> places = new HashSet<>();
  private final Map<String, Map<String, Outline>> leading = new LinkedHashMap<>();
  private final List<String> problems = new ArrayList<>();
  private final Set<String> set = new HashSet<>(Set.of(TOP, CONTENTS, MAIN));

  /** The anchors of a document. */
  Anchors(Document document, List<Outline> outline) {
    document.cover().forEach(entry -> collect(entry.words(), null));
    outline.forEach(this::collect);
    for (String target : leading.keySet()) {
      if (!places.contains(target)) {
        problems.add("nothing stands at the anchor \"" + target + "\"");
      }
    }
  }

  /**
   * Anchors given twice and links that lead nowhere, each in words; a document should have none.
   */
  public static List<String> problems(Document document) {
    return List.copyOf(new Anchors(document, Outline.of(document.sections())).problems);
  }

  /**
   * The id to set at a place. The first place of a name gets it; a second one gets none, so that
   * links stay unambiguous.
   */
  public @Nullable String id(String anchor) {
    String id = clean(anchor);
    return id.isEmpty() || !set.add(id) ? null : id;
  }

  /** Where a link leads; null when nothing stands there, and the words are then set as words. */
  public @Nullable String link(String target) {
    String id = clean(target);
    return places.contains(id) ? "#" + id : null;
  }

  /** The sections from which something leads to the anchor, in order. */
  public Collection<Outline> leadingTo(String anchor) {
    return leading.getOrDefault(clean(anchor), Map.of()).values();
  }

  private void collect(Outline outline) {
    place(outline.section().id());
    for (Block block : outline.section().blocks()) {
      collect(block, outline);
    }
    outline.parts().forEach(this::collect);
  }

  private void collect(Block block, Outline from) {
    if (block instanceof Block.Paragraph paragraph) {
      collect(paragraph.words(), from);
    } else if (block instanceof Block.Notice notice) {
      collect(notice.words(), from);
    } else if (block instanceof Block.Listing listing) {
      listing.items().forEach(item -> collect(item, from));
    } else if (block instanceof Block.Table table) {
      for (Block.Row row : table.rows()) {
        place(row.anchor());
        row.cells().forEach(cell -> collect(cell, from));
        collect(row.note(), from);
      }
    } else if (block instanceof Block.Working working) {
      place(working.anchor());
      collect(working.source(), from);
      collect(working.note(), from);
    } else if (block instanceof Block.Drawn drawn) {
      place(drawn.figure().id());
    }
  }

  private void collect(Prose prose, @Nullable Outline from) {
    for (Prose.Span span : prose.spans()) {
      if (!span.target().isEmpty()) {
        Map<String, Outline> sections =
            leading.computeIfAbsent(clean(span.target()), none -> new LinkedHashMap<>());
        if (from != null) {
          sections.put(from.number(), from);
        }
      }
    }
  }

  private void place(String anchor) {
    String id = clean(anchor);
    if (!id.isEmpty() && !places.add(id)) {
      problems.add("the anchor \"" + id + "\" stands at two places");
    }
  }

  /** Lower-case words joined by hyphens, whatever was given. */
  static String clean(String anchor) {
    return OTHERS.matcher(anchor.toLowerCase(Locale.ROOT)).replaceAll("-");
  }
}
