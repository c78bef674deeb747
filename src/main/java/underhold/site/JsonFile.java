package underhold.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;
import underhold.site.SiteProblem.Code;

/** Reads a JSON text into nodes that know their line and column. */
public final class JsonFile {
  /** Objects and lists inside each other; a site needs six. */
  static final int DEEPEST = 20;

  /** Values in one file; the largest saved consultations have some ten thousands. */
  static final int MOST_VALUES = 400_000;

  private static final int LONGEST_REASON = 200;
  private static final Pattern PROGRAMMERS_ADVICE =
      Pattern.compile(
          ", from `[^`]*`|[:;]? *(?:\\(start marker|\\(for Object starting|enable `|\\[Source).*");

  private static final JsonFactory FACTORY = new JsonFactory();
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private final JsonParser parser;
  private final Problems problems;
  private int values;
  private boolean givenUp;

  private JsonFile(JsonParser parser, Problems problems) {
    this.parser = parser;
    this.problems = problems;
  }

  /** The root of the text; empty, with a problem, where it is not JSON. */
  public static Optional<FileNode> read(String text, Problems problems) {
    // RFC 8259, section 8.1: a reader may pass over a byte order mark.
    String json = text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
    try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), json)) {
      try {
        return new JsonFile(parser, problems).root();
      } catch (JacksonException e) {
        TokenStreamLocation told = e.getLocation();
        TokenStreamLocation at = told == null ? parser.currentLocation() : told;
        problems.add(
            Code.UNREADABLE_JSON,
            "",
            Math.max(1, at.getLineNr()),
            Math.max(1, at.getColumnNr()),
            "",
            "this is not JSON: " + reason(e.getOriginalMessage()),
            "");
        return Optional.empty();
      }
    }
  }

  /** What the parser says, without its advice to programmers. */
  private static String reason(String message) {
    if (message.startsWith("Unexpected end-of-input")) {
      return "the file ends too early: a brace, bracket or quotation mark is not closed";
    }
    String line = message.lines().findFirst().orElse("");
    String plain = PROGRAMMERS_ADVICE.matcher(line).replaceAll("");
    StringBuilder safe = new StringBuilder();
    plain
        .codePoints()
        .limit(LONGEST_REASON)
        .forEach(point -> safe.appendCodePoint(PlainText.isUnsafe(point) ? '?' : point));
    return safe.toString();
  }

  private Optional<FileNode> root() {
    if (parser.nextToken() == null) {
      problems.add(
          Code.UNREADABLE_JSON,
          "",
          1,
          1,
          "",
          "the file is empty",
          "begin it with { and end with }");
      return Optional.empty();
    }
    FileNode root = value(1);
    if (givenUp) {
      return Optional.empty();
    }
    JsonToken more = parser.nextToken();
    if (more != null) {
      TokenStreamLocation at = parser.currentTokenLocation();
      problems.add(
          Code.UNREADABLE_JSON,
          "",
          at.getLineNr(),
          at.getColumnNr(),
          "",
          "something follows after the end of the file",
          "delete it, or check the braces before it");
      return Optional.empty();
    }
    return Optional.of(root);
  }

  private FileNode value(int depth) {
    TokenStreamLocation at = parser.currentTokenLocation();
    if (++values > MOST_VALUES) {
      return giveUp(Code.TOO_MANY, "the file holds more than " + MOST_VALUES + " values", at);
    }
    JsonToken token = parser.currentToken();
    return switch (token) {
      case START_OBJECT, START_ARRAY -> {
        if (depth > DEEPEST) {
          yield giveUp(
              Code.TOO_DEEP,
              "more than " + DEEPEST + " objects or lists stand inside each other",
              at);
        }
        yield token == JsonToken.START_OBJECT ? object(depth, at) : list(depth, at);
      }
      case VALUE_STRING -> node(FileNode.Kind.TEXT, parser.getString(), at);
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT ->
          node(FileNode.Kind.NUMBER, parser.getString(), at);
      case VALUE_TRUE, VALUE_FALSE -> node(FileNode.Kind.BOOLEAN, parser.getString(), at);
      default -> node(FileNode.Kind.NULL, "null", at);
    };
  }

  private FileNode giveUp(Code code, String why, TokenStreamLocation at) {
    problems.add(code, "", at.getLineNr(), at.getColumnNr(), "", why, "");
    givenUp = true;
    return node(FileNode.Kind.NULL, "", at);
  }

  private FileNode object(int depth, TokenStreamLocation start) {
    List<FileNode.Member> members = new ArrayList<>();
    while (parser.nextToken() == JsonToken.PROPERTY_NAME && !givenUp) {
      TokenStreamLocation at = parser.currentTokenLocation();
      String name = parser.getString();
      parser.nextToken();
      members.add(new FileNode.Member(name, value(depth + 1), at.getLineNr(), at.getColumnNr()));
    }
    return new FileNode(
        FileNode.Kind.OBJECT, "", members, List.of(), start.getLineNr(), start.getColumnNr());
  }

  private FileNode list(int depth, TokenStreamLocation start) {
    List<FileNode> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY && !givenUp) {
      items.add(value(depth + 1));
    }
    return new FileNode(
        FileNode.Kind.LIST, "", List.of(), items, start.getLineNr(), start.getColumnNr());
  }

  private static FileNode node(FileNode.Kind kind, String text, TokenStreamLocation at) {
    return new FileNode(kind, text, List.of(), List.of(), at.getLineNr(), at.getColumnNr());
  }
}
