package underhold.shell;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.SavedState;
import underhold.site.Site;
import underhold.site.SiteProblem;
import underhold.site.SiteReader;
import underhold.site.SiteReading;
import underhold.site.StatedFact;
import underhold.site.Zone;

/**
 * Reads a site file that lacks nothing but facts that every zone needs: one that is still being
 * filled in. The missing facts are filled in for the reader and taken out again.
 */
final class DraftReader {
  private static final Pattern PLACE = Pattern.compile("zones\\[(\\d+)]\\.facts\\.(\\w+)");

  private DraftReader() {}

  /** The site; empty where the file has any other problem. */
  static Optional<OpenSite> read(Path file, SiteReading.Invalid invalid) {
    if (!invalid.problems().stream().allMatch(DraftReader::lacksFact)) {
      return Optional.empty();
    }
    try {
      byte[] bytes = Files.readAllBytes(file);
      JsonNode root = JsonMapper.shared().readTree(bytes);
      invalid.problems().forEach(problem -> fill(root, problem));
      String text = JsonMapper.shared().writeValueAsString(root);
      SavedState state = SavedState.of(bytes);
      return SiteReader.read(text, String.valueOf(file.getFileName()))
          .fold(
              valid ->
                  Optional.of(
                      new OpenSite(file, emptied(valid.site(), invalid.problems()), state, false)),
              still -> Optional.empty());
    } catch (IOException | JacksonException e) { // changed since it was read
      return Optional.empty();
    }
  }

  private static boolean lacksFact(SiteProblem problem) {
    return problem.code() == SiteProblem.Code.MISSING_REQUIRED
        && PLACE.matcher(problem.place()).matches();
  }

  private static void fill(JsonNode root, SiteProblem problem) {
    Matcher place = place(problem);
    JsonNode zone = root.path("zones").path(Integer.parseInt(place.group(1)));
    FactDefinition definition = FactDictionary.standard().require(place.group(2));
    if (zone instanceof ObjectNode object) {
      ObjectNode facts =
          object.get("facts") instanceof ObjectNode given ? given : object.putObject("facts");
      facts.put(definition.name(), definition.values().get(0).value());
    }
  }

  private static Site emptied(Site site, List<SiteProblem> problems) {
    Site emptied = site;
    for (SiteProblem problem : problems) {
      Matcher place = place(problem);
      int index = Integer.parseInt(place.group(1));
      Zone zone = emptied.zones().get(index);
      Map<String, StatedFact> facts = new LinkedHashMap<>(zone.facts());
      facts.remove(place.group(2));
      Zone without = new Zone(zone.name(), facts, zone.ground(), zone.note());
      emptied = Edits.with(emptied, index, without);
    }
    return emptied;
  }

  private static Matcher place(SiteProblem problem) {
    Matcher matcher = PLACE.matcher(problem.place());
    if (!matcher.matches()) {
      throw new IllegalStateException("no place of a fact: " + problem.place());
    }
    return matcher;
  }
}
