package underhold.classroom.making;

import java.util.List;
import underhold.classroom.CaseFile;

/** What came of a wish. */
public sealed interface Making {

  /**
   * A case.
   *
   * @param file the case
   * @param tries how many sites were tried for it
   */
  record Found(CaseFile file, int tries) implements Making {}

  /**
   * Nothing.
   *
   * @param says what was tried, how far it came, and what else could be asked for
   */
  record Nothing(List<String> says) implements Making {
    public Nothing {
      says = List.copyOf(says);
    }
  }
}
