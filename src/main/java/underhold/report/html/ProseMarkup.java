package underhold.report.html;

import gg.jte.html.HtmlContent;
import gg.jte.html.HtmlTemplateOutput;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import underhold.report.document.Prose;

/**
 * Prose as markup without a blank that the words do not have.
 *
 * @param prose the words, escaped as they are written
 * @param anchors where links lead
 * @param paged whether it is for paper, whose writer would part a bracket or a comma from its word
 */
public record ProseMarkup(Prose prose, Anchors anchors, boolean paged) implements HtmlContent {
  /** Words this long stay on one line with the sign that follows them. */
  private static final int SHORT = 14;

  /** The names of rules and methods, which no hyphen parts. */
  private static final Pattern NAME = Pattern.compile("[A-Z]{2,5}-[0-9]{1,3}[a-z]?");

  /** Signs that never begin a line. */
  private static final Pattern CLOSING = Pattern.compile("^[,;:.)\\]]+");

  /** Signs that never end one. */
  private static final Pattern OPENING = Pattern.compile("[(\\[]+$");

  @Override
  public void writeTo(HtmlTemplateOutput out) {
    String opening = "";
    String closed = "";
    for (int i = 0; i < prose.spans().size(); i++) {
      Prose.Span span = prose.spans().get(i);
      String text = span.text().substring(closed.length());
      String next = i + 1 < prose.spans().size() ? prose.spans().get(i + 1).text() : "";
      Matcher ends = OPENING.matcher(text);
      String left =
          paged && set(span).isEmpty() && !next.isEmpty() && ends.find() ? ends.group() : "";
      Matcher begins = CLOSING.matcher(next);
      boolean plain = !next.isEmpty() && set(prose.spans().get(i + 1)).isEmpty();
      closed = paged && plain && !set(span).isEmpty() && begins.find() ? begins.group() : "";
      text = text.substring(0, text.length() - left.length());
      span(out, span, opening, text, closed);
      opening = left;
    }
  }

  /** The elements in which a span is set; none where it is plain. */
  private List<String> set(Prose.Span span) {
    @Nullable String link = span.target().isEmpty() ? null : anchors.link(span.target());
    List<String> set = new ArrayList<>();
    if (link != null) {
      set.add("a href=\"" + link + "\"");
    }
    switch (span.style()) {
      case PLAIN -> {}
      case STRONG -> set.add("strong");
      case TYPED -> set.add("code");
    }
    return set;
  }

  /** Words with the signs before and after that must not be parted from them by a line's end. */
  private void span(
      HtmlTemplateOutput out, Prose.Span span, String opening, String text, String closing) {
    List<String> set = set(span);
    String all = opening + text + closing;
    boolean tied = !opening.isEmpty() || !closing.isEmpty() || NAME.matcher(text).matches();
    boolean apart = tied && all.length() <= SHORT;
    out.writeContent(apart ? "<span class=\"tied\">" : "");
    out.writeUserContent(apart ? opening : "");
    set.forEach(tag -> out.writeContent("<" + tag + ">"));
    out.writeUserContent(apart ? text : all);
    for (int i = set.size() - 1; i >= 0; i--) {
      out.writeContent("</" + set.get(i).split(" ", 2)[0] + ">");
    }
    out.writeUserContent(apart ? closing : "");
    out.writeContent(apart ? "</span>" : "");
  }
}
