package underhold.classroom;

/**
 * A case of a class.
 *
 * @param name its name in commands
 * @param file where it lies, seen from the folder of the class file
 * @param open the number of the last stage that is open, from 0
 */
public record CaseRef(String name, String file, int open) {
  public CaseRef {
    Names.mustBe("case", name);
    if (open < 0) {
      throw new IllegalArgumentException("the first stage has the number 0, not " + open);
    }
  }

  /** The same case with one stage more open. */
  CaseRef next() {
    return new CaseRef(name, file, open + 1);
  }
}
