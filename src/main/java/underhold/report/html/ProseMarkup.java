package underhold.report.html;

import gg.jte.html.HtmlContent;
import gg.jte.html.HtmlTemplateOutput;
import org.jspecify.annotations.Nullable;
import underhold.report.document.Prose;

/**
 * Prose as markup without a blank that the words do not have.
 *
 * @param prose the words, escaped as they are written
 * @param anchors where links lead
 */
public record ProseMarkup(Prose prose, Anchors anchors) implements HtmlContent {

  @Override
  public void writeTo(HtmlTemplateOutput out) {
    for (Prose.Span span : prose.spans()) {
      @Nullable String link = span.target().isEmpty() ? null : anchors.link(span.target());
      if (link != null) {
        out.writeContent("<a href=\"" + link + "\">");
      }
      String tag =
          switch (span.style()) {
            case PLAIN -> "";
            case STRONG -> "strong";
            case TYPED -> "code";
          };
      out.writeContent(tag.isEmpty() ? "" : "<" + tag + ">");
      out.writeUserContent(span.text());
      out.writeContent(tag.isEmpty() ? "" : "</" + tag + ">");
      if (link != null) {
        out.writeContent("</a>");
      }
    }
  }
}
