package underhold.advice;

import java.util.List;
import java.util.Map;

/** A rule whose form is right and whose content is not yet checked. */
record RuleDraft(
    String sentence,
    Map<String, String> header,
    String phase,
    boolean pairs,
    List<Condition> conditions,
    String verb,
    List<String> arguments,
    int line) {

  String header(String name) {
    return header.getOrDefault(name, "");
  }
}
