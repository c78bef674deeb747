package underhold.consult.stage;

/**
 * A stage that must be released before another begins.
 *
 * @param before the id of the stage that comes first
 * @param why why it does; empty where one step simply follows the other
 */
public record Link(String before, String why) {}
