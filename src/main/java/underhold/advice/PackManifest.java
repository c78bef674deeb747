package underhold.advice;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import underhold.site.PlainText;

/**
 * What {@code pack.json} says.
 *
 * @param name the pack's name
 * @param version the pack's version
 * @param extending whether the pack is written as changes to the pack built in
 * @param files its rule files, in order
 * @param removed the rules of the pack built in that it leaves out
 */
record PackManifest(
    String name, String version, boolean extending, List<String> files, List<Entry> removed) {
  static final String FILE = "pack.json";

  private static final String BUILT_IN = "built-in";
  private static final int MOST_FILES = 200;
  private static final int LONGEST_NAME = 80;
  private static final List<String> FIELDS =
      List.of("name", "version", "note", "extends", "files", "remove");

  /** Folders below the pack are allowed; a dot stands only before {@code drl}. */
  private static final Pattern RULE_FILE =
      Pattern.compile("([A-Za-z0-9_-]{1,60}/){0,3}[A-Za-z0-9_-]{1,60}\\.drl");

  PackManifest {
    files = List.copyOf(files);
    removed = List.copyOf(removed);
  }

  /** A rule named in the manifest, and the line. */
  record Entry(String id, int line) {}

  static PackManifest read(PackNode root, List<PackProblem> problems) {
    PackFields fields = new PackFields(FILE, problems);
    fields.only(root, "the manifest", FIELDS);
    boolean extending = extending(root, fields);
    List<String> files = files(root, extending, fields);
    List<Entry> removed =
        fields.texts(root, "remove").stream().map(n -> new Entry(n.text(), n.line())).toList();
    if (!removed.isEmpty() && !extending) {
      fields.problem(
          removed.get(0).line(), "only a pack that \"extends\" the built-in can \"remove\" rules");
    }
    return new PackManifest(
        name(root, "name", fields), name(root, "version", fields), extending, files, removed);
  }

  private static String name(PackNode root, String field, PackFields fields) {
    String text = fields.text(root, field).orElse("");
    if (text.isBlank() || text.length() > LONGEST_NAME || text.contains("\n")) {
      fields.problem(
          root.line(), "the pack needs a " + field + " of at most " + LONGEST_NAME + " characters");
    }
    return text;
  }

  private static boolean extending(PackNode root, PackFields fields) {
    String base = fields.text(root, "extends").orElse("");
    if (!base.isEmpty() && !base.equals(BUILT_IN)) {
      fields.problem(
          root.line(),
          "a pack extends \"" + BUILT_IN + "\" or nothing, not " + PlainText.quoted(base));
    }
    return root.members().containsKey("extends");
  }

  private static List<String> files(PackNode root, boolean extending, PackFields fields) {
    List<String> files = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    List<PackNode> entries = fields.texts(root, "files");
    if (entries.isEmpty() && !extending) {
      fields.problem(root.line(), "the manifest names no rule files under \"files\"");
    }
    if (entries.size() > MOST_FILES) {
      fields.problem(entries.get(MOST_FILES).line(), "more than " + MOST_FILES + " rule files");
      return files;
    }
    for (PackNode entry : entries) {
      String file = entry.text();
      if (!RULE_FILE.matcher(file).matches()) {
        fields.problem(
            entry.line(),
            "a rule file is named from the pack's folder, such as pits/load.drl, without dots,"
                + " blanks or a way out of it, not "
                + PlainText.quoted(file));
      } else if (!seen.add(file)) {
        fields.problem(entry.line(), "names " + file + " twice");
      } else {
        files.add(file);
      }
    }
    return files;
  }
}
