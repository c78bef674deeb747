package underhold.review.record;

import underhold.review.file.Fingerprint;
import underhold.review.file.RecordTree;
import underhold.review.saved.SavedAdvice;
import underhold.site.PlainText;

/**
 * What is reviewed.
 *
 * @param advice the file of the saved consultation, beside the review
 * @param fingerprint the fingerprint of its content
 * @param site the name of the site
 * @param rulePack the rules it rests on
 * @param program the program that answered
 */
public record Reviewed(
    String advice, String fingerprint, String site, String rulePack, String program) {
  public Reviewed {
    if (PlainText.whyNoName(advice).isPresent() || advice.contains("/") || advice.contains("\\")) {
      throw new IllegalArgumentException(
          "the saved consultation is named plainly and without folders: it lies beside the review");
    }
    if (!Fingerprint.isOne(fingerprint)) {
      throw new IllegalArgumentException(
          "the fingerprint of what is reviewed must have "
              + Fingerprint.LENGTH
              + " digits 0 to 9 and a to f");
    }
  }

  /** What is reviewed, in the file of that name. */
  static Reviewed of(SavedAdvice advice, String file) {
    return new Reviewed(
        file,
        advice.fingerprint(),
        advice.siteName(),
        advice.rulePack().line(),
        advice.made().program() + " " + advice.made().version());
  }

  /** Its own fingerprint, on which the first entry stands. */
  String root() {
    return Fingerprint.ofTree(RecordTree.of(this));
  }
}
