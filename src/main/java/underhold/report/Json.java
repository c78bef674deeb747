package underhold.report;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.ObjectWriter;
import tools.jackson.databind.json.JsonMapper;

/** JSON trees as maps and lists in the order written, and their text. */
public final class Json {
  private static final DefaultIndenter INDENT = new DefaultIndenter("  ", "\n");

  private static final ObjectWriter WRITER =
      JsonMapper.shared()
          .writer()
          .with(new DefaultPrettyPrinter().withObjectIndenter(INDENT).withArrayIndenter(INDENT));

  private Json() {}

  /** An object with the names and values given in turn. */
  public static Map<String, Object> object(@Nullable Object... namesAndValues) {
    Map<String, Object> object = new LinkedHashMap<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      object.put(String.valueOf(namesAndValues[i]), namesAndValues[i + 1]);
    }
    return object;
  }

  /** The text of a tree on one line, without a line end. */
  static String line(Object tree) {
    return SafeText.json(JsonMapper.shared().writeValueAsString(tree));
  }

  /** The text of a tree, ending with a line end; control characters in texts are escaped. */
  public static String text(Object tree) {
    return SafeText.json(WRITER.writeValueAsString(tree)) + "\n";
  }
}
