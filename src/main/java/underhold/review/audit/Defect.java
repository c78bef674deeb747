package underhold.review.audit;

import java.util.List;
import java.util.Optional;
import underhold.site.Site;

/**
 * Something in the pack that should not be, or that an engineer has to say why it is.
 *
 * @param section the section that found it, by its name in commands
 * @param about the ids of the rules, or the names of the facts, limits or sources concerned
 * @param text what is wrong, in words
 * @param method how it was found
 * @param witness a site that shows it; none where sets prove it or nothing can show it
 */
public record Defect(
    String section, List<String> about, String text, Method method, Optional<Site> witness) {
  public Defect {
    about = List.copyOf(about);
  }

  static Defect proved(String section, List<String> about, String text) {
    return new Defect(section, about, text, Method.PROVED, Optional.empty());
  }

  static Defect shown(String section, List<String> about, String text, Method by, Site witness) {
    return new Defect(section, about, text, by, Optional.of(witness));
  }
}
