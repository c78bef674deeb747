package underhold.classroom;

import underhold.site.PlainText;

/** Names that stand in commands: of stages, questions and cases. */
final class Names {
  private static final String FORM = "[a-z0-9]+(-[a-z0-9]+)*";

  private Names() {}

  static void mustBe(String what, String name) {
    if (!name.matches(FORM)) {
      throw new IllegalArgumentException(
          "the name of a "
              + what
              + " is "
              + PlainText.quoted(name)
              + "; it must be small letters, digits and single hyphens, such as trial-pits");
    }
  }
}
