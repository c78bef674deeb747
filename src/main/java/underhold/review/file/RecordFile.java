package underhold.review.file;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import underhold.site.FileNode;
import underhold.site.FileNode.Kind;
import underhold.site.FileText;
import underhold.site.JsonFile;
import underhold.site.JsonText;
import underhold.site.PlainText;
import underhold.site.Problems;
import underhold.site.SavedState;
import underhold.site.SiteProblem.Code;
import underhold.site.SiteWriting;
import underhold.site.WholeFile;

/**
 * Reads and writes the files of one kind of record.
 *
 * @param type the record
 * @param form what stands under {@value #MARK} in every such file, such as {@code advice/1}
 * @param what what such a file is, in words: {@code a saved consultation}
 */
public record RecordFile<T extends Record>(Class<T> type, String form, String what) {
  /** The first entry of every file of this program. */
  public static final String MARK = "underhold";

  /** Reads a file; nothing is thrown whatever it holds. */
  public FileReading<T> read(Path file) {
    Path name = file.getFileName();
    Problems problems = new Problems(name == null ? file.toString() : name.toString());
    Optional<FileText> text = FileText.read(file, problems);
    return text.map(found -> read(found.text(), problems, found.state()))
        .orElseGet(
            () -> new FileReading<>(Optional.empty(), "", SavedState.NO_FILE, problems.all()));
  }

  /** Reads a text; messages name the file so. */
  public FileReading<T> read(String text, String fileName) {
    return read(text, new Problems(fileName), SavedState.NO_FILE);
  }

  private FileReading<T> read(String text, Problems problems, SavedState state) {
    Optional<T> content =
        JsonFile.read(text, problems)
            .filter(root -> ofThisForm(root, problems))
            .filter(root -> ofWholeSigns(root, "", problems))
            .flatMap(root -> Optional.ofNullable(new RecordReader(problems).read(root, type, "")))
            .filter(made -> problems.isEmpty());
    return new FileReading<>(content, text, state, problems.all());
  }

  /** Half a character has no UTF-8, so that no fingerprint could be taken of it. */
  private static boolean ofWholeSigns(FileNode node, String place, Problems problems) {
    boolean whole = isWhole(node.text());
    for (FileNode.Member member : node.members()) {
      String at = (place.isEmpty() ? "" : place + ".") + PlainText.shown(member.name());
      whole &= isWhole(member.name()) & ofWholeSigns(member.value(), at, problems);
    }
    for (int i = 0; i < node.items().size(); i++) {
      whole &= ofWholeSigns(node.items().get(i), place + "[" + i + "]", problems);
    }
    if (!whole && problems.isEmpty()) {
      problems.visit(place, node);
      problems.add(Code.NOT_ALLOWED_VALUE, place, "a text holds half a character", "");
    }
    return whole;
  }

  private static boolean isWhole(String text) {
    return text.codePoints().noneMatch(point -> Character.getType(point) == Character.SURROGATE);
  }

  /** A file of another kind or version would only give a hundred useless messages. */
  private boolean ofThisForm(FileNode root, Problems problems) {
    String found =
        root.members().stream()
            .filter(member -> member.name().equals(MARK) && member.value().kind() == Kind.TEXT)
            .map(member -> member.value().text())
            .findFirst()
            .orElse("");
    if (found.equals(form)) {
      return true;
    }
    String kind = form.substring(0, form.indexOf('/') + 1);
    problems.add(
        Code.WRONG_VERSION,
        MARK,
        found.startsWith(kind)
            ? "the file is of the form " + PlainText.quoted(found) + "; this program reads " + form
            : "this is not "
                + what
                + (found.isEmpty() ? "" : " but " + PlainText.quoted(found))
                + ": one begins with \""
                + MARK
                + "\": \""
                + form
                + "\"",
        found.startsWith(kind) ? "use the program that wrote it" : "is it another file?");
    return false;
  }

  /** The text of the file of a record; equal records have equal texts. */
  public String text(T record) {
    return JsonText.of(RecordTree.of(record));
  }

  /**
   * Writes the file, whole or not at all.
   *
   * @param expected the state of the file when it was last read or written; else it is refused
   */
  public SiteWriting write(Path file, T record, SavedState expected) {
    byte[] bytes = text(record).getBytes(StandardCharsets.UTF_8);
    if (bytes.length > FileText.LARGEST_BYTES) {
      return new SiteWriting.Refused(
          SiteWriting.Reason.CANNOT_WRITE,
          file
              + " was not written: it would have "
              + bytes.length / 1024
              + " KiB, more than the "
              + FileText.LARGEST_BYTES / 1024
              + " KiB that are read again; split the site");
    }
    return WholeFile.write(file, bytes, expected);
  }
}
