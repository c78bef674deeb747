package underhold.review.record;

import java.util.ArrayList;
import java.util.List;
import underhold.review.file.RecordFile;

/**
 * The file of a review.
 *
 * @param underhold the form of the file
 * @param of what is reviewed
 * @param entries the entries, in the order written
 * @param head the fingerprint of the last entry, which stands for the whole record
 */
public record ReviewFile(String underhold, Reviewed of, List<Entry> entries, String head) {
  /** The form of the file. */
  public static final String FORM = "review/1";

  /** The end of the name of such a file. */
  public static final String ENDING = ".review.json";

  /** Such files. */
  public static final RecordFile<ReviewFile> FILES =
      new RecordFile<>(ReviewFile.class, FORM, "a review");

  public ReviewFile {
    entries = List.copyOf(entries);
    if (entries.isEmpty() || entries.get(0).does() != EntryKind.START) {
      throw new IllegalArgumentException("a review begins with an entry of the kind start");
    }
  }

  /** The last entry. */
  Entry last() {
    return entries.get(entries.size() - 1);
  }

  /** The same with one entry more. */
  ReviewFile with(Entry entry) {
    List<Entry> more = new ArrayList<>(entries);
    more.add(entry);
    return new ReviewFile(underhold, of, more, entry.hash());
  }
}
