package underhold.classroom;

import java.util.HashSet;
import java.util.Set;
import underhold.site.FileNode;
import underhold.site.JsonFile;
import underhold.site.PlainText;
import underhold.site.Problems;
import underhold.site.SiteProblem.Code;

/** Finds entries that stand twice in the site of a case, which is kept as a tree. */
final class DoubleEntries {
  private DoubleEntries() {}

  static void find(String text, Problems problems) {
    JsonFile.read(text, new Problems("text"))
        .ifPresent(
            root ->
                root.members().stream()
                    .filter(member -> member.name().equals("site"))
                    .forEach(member -> visit(member.value(), "site", problems)));
  }

  private static void visit(FileNode node, String place, Problems problems) {
    Set<String> seen = new HashSet<>();
    for (FileNode.Member member : node.members()) {
      String at = place + "." + PlainText.shown(member.name());
      if (!seen.add(member.name())) {
        problems.visit(at, member.value());
        problems.add(Code.DUPLICATE_NAME, at, "it stands twice", "keep one of the two");
      }
      visit(member.value(), at, problems);
    }
    for (int i = 0; i < node.items().size(); i++) {
      visit(node.items().get(i), place + "[" + i + "]", problems);
    }
  }
}
