package underhold.shell;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import underhold.review.file.FileReading;
import underhold.review.record.Entry;
import underhold.review.record.ReviewFile;
import underhold.review.record.ReviewRecord;
import underhold.review.record.Target;
import underhold.review.record.Targets;
import underhold.review.saved.SavedAdvice;
import underhold.site.SavedState;

/** Reads and writes reviews, and finds the consultation beside them, for the commands. */
final class ReviewFiles {
  private ReviewFiles() {}

  /**
   * A review and its file.
   *
   * @param file as the user named it
   * @param record the review
   * @param state the file when it was read
   */
  record Opened(Path file, ReviewRecord record, SavedState state) {
    /** Where the consultation lies. */
    Path advice() {
      return file.resolveSibling(record.file().of().advice());
    }
  }

  /** Reviews of this folder, for completion. */
  static List<String> here() {
    return SiteFiles.here(ReviewFile.ENDING);
  }

  /**
   * Reads a review.
   *
   * @throws Refusal with all its problems
   */
  static Opened read(String typed) {
    Path file = SiteFiles.path(typed);
    SiteFiles.existing(file);
    FileReading<ReviewFile> reading = ReviewFile.FILES.read(file);
    return reading
        .content()
        .map(found -> new Opened(file, ReviewRecord.of(found, reading.text()), reading.state()))
        .orElseThrow(() -> Refusal.site(reading.messages()));
  }

  /**
   * Writes a review, whole or not at all.
   *
   * @throws Refusal if somebody else has changed the file meanwhile
   */
  static void write(Path file, ReviewFile review, SavedState expected) {
    ReviewFile.FILES
        .write(file, review, expected)
        .fold(
            written -> file,
            refused -> {
              throw Refusal.site(refused.message() + ".");
            });
  }

  /** Whether the original that an entry quotes is what the consultation says. */
  private static boolean quotes(Entry entry, Targets targets) {
    return entry
        .target()
        .map(path -> targets.find(path).map(Target::original).equals(entry.original()))
        .orElse(true);
  }

  /** What became of the consultation reviewed, in words; empty where it is as it was. */
  static String ofAdvice(Opened opened) {
    Path file = opened.advice();
    if (!Files.exists(file)) {
      return "The consultation is not at hand: there is no file " + file + ".";
    }
    Optional<SavedAdvice> advice = SavedAdvice.FILES.read(file).content();
    if (advice.isEmpty()) {
      return file + " cannot be read as a saved consultation any more; recheck tells why.";
    }
    if (!opened.record().isOf(advice.get().fingerprint())) {
      return file + " is not what was reviewed: its content has changed since.";
    }
    Targets targets = new Targets(advice.get());
    return opened.record().entries().stream()
        .filter(entry -> !quotes(entry, targets))
        .map(entry -> "Entry " + entry.number() + " quotes what the consultation does not say. ")
        .collect(Collectors.joining())
        .strip();
  }
}
