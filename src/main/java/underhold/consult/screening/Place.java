package underhold.consult.screening;

/**
 * Where a zone comes from.
 *
 * @param source the file, as it was named
 * @param line the line on which its row begins, from 1; 0 where it stands in a site file
 * @param zone the name of the zone, as typed; empty where it has none
 */
public record Place(String source, int line, String zone) {
  /** File and line, for messages. */
  public String text() {
    return line == 0 ? source : source + ":" + line;
  }
}
