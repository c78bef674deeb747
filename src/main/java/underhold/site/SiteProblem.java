package underhold.site;

/**
 * Something in a site file that the user has to put right.
 *
 * @param code what sort of problem it is, for programs and tests
 * @param file the name of the file
 * @param place where in the file, such as {@code zones[0].facts.gapToExcavation}; empty for the
 *     whole file
 * @param line line in the file, from 1; 0 where it has none
 * @param column column in the file, from 1; 0 where it has none
 * @param value what was typed, made safe to print; may be empty
 * @param message what is wrong and what is allowed
 * @param suggestion what to type instead; may be empty
 */
public record SiteProblem(
    Code code,
    String file,
    String place,
    int line,
    int column,
    String value,
    String message,
    String suggestion) {

  /** What sort of problem it is. */
  public enum Code {
    /** The text is not JSON. */
    UNREADABLE_JSON,
    /** There is no readable ordinary file of that name. */
    NOT_A_FILE,
    /** The file is larger than any site. */
    TOO_LARGE,
    /** The bytes are not UTF-8 text. */
    NOT_UTF8,
    /** Objects or lists stand too deep inside each other. */
    TOO_DEEP,
    /** More entries than any site has. */
    TOO_MANY,
    /** No entry has that name. */
    UNKNOWN_NAME,
    /** An entry stands twice. */
    DUPLICATE_NAME,
    /** Two zones have one name. */
    DUPLICATE_ZONE,
    /** A value of the wrong kind: a list for a text, a number for a word. */
    WRONG_TYPE,
    /** A unit that is not known or measures something else. */
    WRONG_UNIT,
    /** A number without the unit it needs. */
    NO_UNIT,
    /** A text that cannot be read as a number with a unit. */
    NOT_A_QUANTITY,
    /** A word, name or note that is not allowed here. */
    NOT_ALLOWED_VALUE,
    /** An amount outside the limits of the dictionary. */
    OUT_OF_RANGE,
    /** An entry that every site needs. */
    MISSING_REQUIRED,
    /** A fact that always follows from others and may not be stated. */
    DERIVED_NOT_STATED,
    /** Facts that cannot all be true. */
    CONTRADICTION,
    /** Ground layers that do not go down from layer to layer. */
    LAYERS_OUT_OF_ORDER,
    /** A file of another form. */
    WRONG_VERSION
  }

  /** The problem in one line: file, line and column, place, what is wrong, what to do. */
  public String text() {
    StringBuilder text = new StringBuilder(file);
    if (line > 0) {
      text.append(':').append(line).append(':').append(column);
    }
    text.append(": ");
    if (!place.isEmpty()) {
      text.append(place).append(": ");
    }
    text.append(message);
    if (!suggestion.isEmpty()) {
      text.append("; ").append(suggestion);
    }
    return text.toString();
  }
}
