package underhold.site;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import underhold.site.SiteProblem.Code;

/**
 * Reads the settings for the sizing, as typed. Whether a method knows the setting, and what it may
 * be, is for the sizing of that method to say.
 */
final class SizingSection {
  private static final int LONGEST_SETTING = 200;
  private static final Pattern NAME = Pattern.compile("[A-Za-z][A-Za-z0-9]{0,59}");

  private final List<String> methods;
  private final Problems problems;

  SizingSection(FactDictionary dictionary, Problems problems) {
    this.methods =
        dictionary.all().stream()
            .flatMap(definition -> definition.options().stream())
            .distinct()
            .toList();
    this.problems = problems;
  }

  Map<String, Map<String, String>> read(FileNode node, String place) {
    Map<String, Map<String, String>> settings = new LinkedHashMap<>();
    ObjectEntries entries = ObjectEntries.of(node, place, methods, problems);
    entries
        .all()
        .forEach((method, value) -> settings.put(method, method(value, entries.placeOf(method))));
    return settings;
  }

  private Map<String, String> method(FileNode node, String place) {
    Map<String, String> values = new LinkedHashMap<>();
    List<String> names = node.members().stream().map(FileNode.Member::name).distinct().toList();
    ObjectEntries entries = ObjectEntries.of(node, place, new HashSet<>(names), problems);
    entries
        .all()
        .forEach(
            (name, value) -> {
              if (NAME.matcher(name).matches()) {
                setting(value, entries.placeOf(name)).ifPresent(text -> values.put(name, text));
              } else {
                problems.add(
                    Code.UNKNOWN_NAME,
                    entries.placeOf(PlainText.shown(name)),
                    value.line(),
                    value.column(),
                    PlainText.shown(name),
                    PlainText.quoted(name) + " cannot be the name of a setting",
                    "use letters and digits");
              }
            });
    return values;
  }

  private Optional<String> setting(FileNode value, String place) {
    return switch (value.kind()) {
      case TEXT, NUMBER, BOOLEAN -> {
        String text = value.text().strip();
        if (text.isEmpty()
            || text.length() > LONGEST_SETTING
            || text.codePoints().anyMatch(PlainText::isUnsafe)) {
          problems.add(
              Code.NOT_ALLOWED_VALUE,
              place,
              "a setting has 1 to " + LONGEST_SETTING + " characters and no control characters",
              "");
          yield Optional.empty();
        }
        yield Optional.of(text);
      }
      case OBJECT, LIST, NULL -> {
        ObjectEntries.wrongType(value, place, FileNode.Kind.TEXT, problems);
        yield Optional.empty();
      }
    };
  }
}
