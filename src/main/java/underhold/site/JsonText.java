package underhold.site;

import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/**
 * Writes maps, lists, texts, numbers and booleans as JSON for people: an object or list that fits
 * on a line stays on it.
 */
public final class JsonText {
  private static final int LINE = 100;

  private JsonText() {}

  /** The text of a tree of maps, lists, texts, numbers and truth values. */
  public static String of(Object value) {
    StringBuilder out = new StringBuilder();
    write(value, 0, out);
    return out.append('\n').toString();
  }

  private static void write(Object value, int indent, StringBuilder out) {
    String flat = flat(value);
    boolean nested = value instanceof Map<?, ?> map && indent == 0 && !map.isEmpty();
    if (!nested && indent + flat.length() <= LINE) {
      out.append(flat);
    } else if (value instanceof Map<?, ?> map) {
      out.append("{\n");
      for (Iterator<? extends Map.Entry<?, ?>> it = map.entrySet().iterator(); it.hasNext(); ) {
        Map.Entry<?, ?> entry = it.next();
        out.append(" ".repeat(indent + 2))
            .append(quoted(String.valueOf(entry.getKey())))
            .append(": ");
        write(required(entry.getValue()), indent + 2, out);
        out.append(it.hasNext() ? ",\n" : "\n");
      }
      out.append(" ".repeat(indent)).append('}');
    } else if (value instanceof List<?> list) {
      out.append("[\n");
      for (Iterator<?> it = list.iterator(); it.hasNext(); ) {
        out.append(" ".repeat(indent + 2));
        write(required(it.next()), indent + 2, out);
        out.append(it.hasNext() ? ",\n" : "\n");
      }
      out.append(" ".repeat(indent)).append(']');
    } else {
      out.append(flat);
    }
  }

  private static String flat(Object value) {
    StringBuilder out = new StringBuilder();
    if (value instanceof Map<?, ?> map) {
      String between = map.isEmpty() ? "{" : "{ ";
      for (Map.Entry<?, ?> entry : map.entrySet()) {
        out.append(between).append(quoted(String.valueOf(entry.getKey()))).append(": ");
        out.append(flat(required(entry.getValue())));
        between = ", ";
      }
      return map.isEmpty() ? "{}" : out.append(" }").toString();
    }
    if (value instanceof List<?> list) {
      String between = "[";
      for (Object item : list) {
        out.append(between).append(flat(required(item)));
        between = ", ";
      }
      return list.isEmpty() ? "[]" : out.append(']').toString();
    }
    return value instanceof String text ? quoted(text) : value.toString();
  }

  private static Object required(@org.jspecify.annotations.Nullable Object value) {
    return Objects.requireNonNull(value);
  }

  static String quoted(String text) {
    StringBuilder out = new StringBuilder("\"");
    for (int i = 0; i < text.length(); i++) {
      char character = text.charAt(i);
      switch (character) {
        case '"' -> out.append("\\\"");
        case '\\' -> out.append("\\\\");
        case '\n' -> out.append("\\n");
        case '\r' -> out.append("\\r");
        case '\t' -> out.append("\\t");
        default -> {
          boolean pair =
              Character.isHighSurrogate(character)
                  && i + 1 < text.length()
                  && Character.isLowSurrogate(text.charAt(i + 1));
          if (pair) {
            out.append(character).append(text.charAt(++i));
          } else if (PlainText.isUnsafe(character)) {
            out.append(String.format(Locale.ROOT, "\\u%04x", (int) character));
          } else {
            out.append(character);
          }
        }
      }
    }
    return out.append('"').toString();
  }
}
