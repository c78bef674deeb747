package underhold.consult.screening;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Writer;
import java.util.Optional;

/** The form of a table: how a zone is written as one line, and the lines as a whole file. */
public interface TableForm {
  /** The ending of a begun table of this form, with its dot. */
  String begunEnding();

  /** The first line of a begun table, without its end. */
  String head();

  /** A zone as a line, without its end and without a line end in it. */
  String row(ScreenedZone zone);

  /**
   * By what the zone of a line is known again.
   *
   * @return its id; empty where the line is none of this form, or rests on another program, other
   *     rules or other draws
   */
  Optional<String> id(String row);

  /** Writes the whole table from the lines of a begun one, head included. */
  void whole(BufferedReader begun, Writer table) throws IOException;

  /** Whether a file that begins so is a begun table of this form, if only its first bytes. */
  boolean isBegun(String beginning);

  /** Whether a file that begins so is a table of this form. */
  boolean isTable(String beginning);
}
