package underhold.advice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;
import underhold.site.PlainText;

/**
 * Reads a table of a rule pack piece by piece. Nothing in it names a class or makes an object of
 * ours; numbers stay as they are written until they are asked for.
 */
final class PackJson {
  /** Objects and lists inside each other; a pack needs four. */
  private static final int DEEPEST = 10;

  private static final int LONGEST_TEXT = 4000;
  private static final JsonFactory FACTORY = new JsonFactory();

  private final JsonParser parser;
  private final String file;
  private final List<PackProblem> problems;

  private PackJson(JsonParser parser, String file, List<PackProblem> problems) {
    this.parser = parser;
    this.file = file;
    this.problems = problems;
  }

  /** Stops the reading where going on makes no sense. */
  private static final class Stop extends Exception {
    private static final long serialVersionUID = 1L;
    final int line;

    Stop(int line, String message) {
      super(message, null, false, false);
      this.line = line;
    }
  }

  /** The object that the text holds; empty, with a problem, where it holds none. */
  static Optional<PackNode> read(String file, String text, List<PackProblem> problems) {
    try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), text)) {
      return Optional.of(new PackJson(parser, file, problems).root());
    } catch (Stop stop) {
      problems.add(new PackProblem(file, stop.line, String.valueOf(stop.getMessage())));
    } catch (JacksonException e) {
      int line = e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getLineNr());
      problems.add(new PackProblem(file, line, "is not readable JSON: " + reason(e)));
    }
    return Optional.empty();
  }

  private static String reason(JacksonException e) {
    String message = String.valueOf(e.getOriginalMessage());
    return message.startsWith("Unexpected end-of-input")
        ? "it ends too early: a brace, bracket or quotation mark is not closed"
        : PlainText.shown(message.lines().findFirst().orElse(""));
  }

  private PackNode root() throws Stop {
    if (parser.nextToken() != JsonToken.START_OBJECT) {
      throw new Stop(1, "is not readable JSON: it begins with { and ends with }");
    }
    PackNode root = value(1);
    if (parser.nextToken() != null) {
      throw new Stop(line(), "something follows after the closing brace");
    }
    return root;
  }

  private PackNode value(int depth) throws Stop {
    int line = line();
    if (depth > DEEPEST) {
      throw new Stop(line, "more than " + DEEPEST + " objects or lists stand inside each other");
    }
    return switch (parser.currentToken()) {
      case START_OBJECT -> new PackNode(PackNode.Kind.OBJECT, "", members(depth), List.of(), line);
      case START_ARRAY -> new PackNode(PackNode.Kind.LIST, "", Map.of(), items(depth), line);
      case VALUE_STRING -> leaf(PackNode.Kind.TEXT, text(line), line);
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT ->
          leaf(PackNode.Kind.NUMBER, parser.getString(), line);
      case VALUE_TRUE, VALUE_FALSE -> leaf(PackNode.Kind.TRUTH, parser.getString(), line);
      default -> leaf(PackNode.Kind.NULL, "null", line);
    };
  }

  private static PackNode leaf(PackNode.Kind kind, String text, int line) {
    return new PackNode(kind, text, Map.of(), List.of(), line);
  }

  private Map<String, PackNode> members(int depth) throws Stop {
    Map<String, PackNode> members = new LinkedHashMap<>();
    while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
      String name = parser.getString();
      int line = line();
      parser.nextToken();
      if (members.putIfAbsent(name, value(depth + 1)) != null) {
        problems.add(
            new PackProblem(file, line, PlainText.quoted(name) + " stands twice in one object"));
      }
    }
    return members;
  }

  private List<PackNode> items(int depth) throws Stop {
    List<PackNode> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      items.add(value(depth + 1));
    }
    return items;
  }

  /** A text that can be shown to a reader as it is. */
  private String text(int line) {
    String text = parser.getString();
    if (text.length() > LONGEST_TEXT) {
      problem(line, "a text has " + text.length() + " characters; at most " + LONGEST_TEXT);
      return text.substring(0, LONGEST_TEXT);
    }
    if (text.codePoints().anyMatch(PlainText::isUnsafe)) {
      problem(
          line,
          PlainText.quoted(text)
              + " holds a control character, or one that turns the direction of writing");
    }
    return text;
  }

  private void problem(int line, String message) {
    problems.add(new PackProblem(file, line, message));
  }

  private int line() {
    return parser.currentTokenLocation().getLineNr();
  }
}
