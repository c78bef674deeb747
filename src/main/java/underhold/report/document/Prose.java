package underhold.report.document;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Words, some of them set apart or leading to another place of the document. */
public record Prose(List<Span> spans) {

  public Prose {
    spans = List.copyOf(spans);
  }

  /** How a span is set. */
  public enum Style {
    PLAIN,
    STRONG,
    /** A name, a value or a command as it is typed. */
    TYPED
  }

  /**
   * Words set in one way.
   *
   * @param text the words; data, whatever they hold
   * @param style how they are set
   * @param target the anchor they lead to; empty for none
   */
  public record Span(String text, Style style, String target) {
    public Span {
      text = Clean.words(text);
    }
  }

  /** Plain words. */
  public static Prose of(String text) {
    return new Prose(List.of(new Span(text, Style.PLAIN, "")));
  }

  /** Nothing. */
  public static Prose empty() {
    return new Prose(List.of());
  }

  /** With plain words after. */
  public Prose then(String text) {
    return with(new Span(text, Style.PLAIN, ""));
  }

  /** With strong words after. */
  public Prose strong(String text) {
    return with(new Span(text, Style.STRONG, ""));
  }

  /** With words after that are typed as they stand. */
  public Prose typed(String text) {
    return with(new Span(text, Style.TYPED, ""));
  }

  /** With words after that lead to an anchor. */
  public Prose link(String text, String target) {
    return with(new Span(text, Style.PLAIN, target));
  }

  /** With other words after. */
  public Prose then(Prose other) {
    List<Span> all = new ArrayList<>(spans);
    all.addAll(other.spans);
    return new Prose(all);
  }

  /** The words alone. */
  public String text() {
    return spans.stream().map(Span::text).collect(Collectors.joining());
  }

  private Prose with(Span span) {
    if (span.text().isEmpty()) {
      return this;
    }
    List<Span> all = new ArrayList<>(spans);
    all.add(span);
    return new Prose(all);
  }
}
