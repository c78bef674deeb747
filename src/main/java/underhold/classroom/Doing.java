package underhold.classroom;

import java.util.List;

/** What became of something done to a class. */
public sealed interface Doing {
  /**
   * It is done.
   *
   * @param file the class as it is now
   * @param says what happened, in sentences
   */
  record Done(ClassFile file, List<String> says) implements Doing {
    public Done {
      says = List.copyOf(says);
    }
  }

  /**
   * It cannot be done.
   *
   * @param problems why and what to do, all at once
   */
  record Refused(List<String> problems) implements Doing {
    public Refused {
      problems = List.copyOf(problems);
    }
  }
}
