package underhold.shell;

import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.consult.Consultant;
import underhold.consult.stage.PlanSettings;
import underhold.quantity.UnitSystem;
import underhold.report.dossier.Audience;
import underhold.report.dossier.Gathering;
import underhold.report.dossier.Reviewing;
import underhold.review.saved.AdviceSaver;
import underhold.review.saved.SavedAdvice;
import underhold.site.Site;

/**
 * Whether what was reviewed is what a report shows. The site as its file has it is answered again,
 * in the units of the consultation that was reviewed, so that showing a report in other units
 * raises no doubt; what the command line changes beside the file is named for itself.
 */
final class ReviewMatch {
  private final Consultant consultant;
  private final ReviewFiles.Opened opened;

  ReviewMatch(Consultant consultant, ReviewFiles.Opened opened) {
    this.consultant = consultant;
    this.opened = opened;
  }

  /**
   * The review with every reason why its record may not speak of the report.
   *
   * @param file the site as its file has it
   * @param shown the site as the report shows it
   * @param settings those of the command line
   */
  Reviewing reviewing(Site file, Site shown, ReportSettings settings) {
    List<String> doubts = new ArrayList<>();
    String ofAdvice = ReviewFiles.ofAdvice(opened);
    if (!ofAdvice.isEmpty()) {
      doubts.add(ofAdvice);
    }
    reviewed()
        .map(was -> changed(was, file))
        .filter(words -> !words.isEmpty())
        .ifPresent(doubts::add);
    boolean otherSheets = !settings.over(file).equals(file.sizing());
    boolean otherPlan = !settings.plan().equals(PlanSettings.TABLE.defaults());
    if (otherSheets || otherPlan) {
      doubts.add(
          "This package is made with settings that the file of the site does not have: "
              + String.join(", ", settings.words())
              + ".");
    }
    if (shown.zones().size() != file.zones().size()) {
      doubts.add(
          "The record is of all "
              + file.zones().size()
              + " zones of the site; this package takes "
              + shown.zones().get(0).name()
              + " alone, without what ties the zones together.");
    }
    return new Reviewing(opened.record(), String.join(" ", doubts));
  }

  private Optional<SavedAdvice> reviewed() {
    return Files.exists(opened.advice())
        ? SavedAdvice.FILES.read(opened.advice()).content()
        : Optional.empty();
  }

  /** What of rules, site and answer is no longer as it was; empty where all is. */
  private String changed(SavedAdvice was, Site file) {
    SavedAdvice now = again(file, UnitSystem.valueOf(was.units()));
    List<String> changed = new ArrayList<>();
    if (!was.rulePack().equals(now.rulePack())) {
      changed.add("The rules are not those that were reviewed.");
    }
    if (!was.site().equals(now.site())) {
      changed.add("The facts of the site are not those that were reviewed.");
    }
    boolean same =
        was.zones().equals(now.zones())
            && was.scheme().equals(now.scheme())
            && was.plan().equals(now.plan());
    if (!same) {
      changed.add(
          changed.isEmpty()
              ? "The answer is not the one that was reviewed, though site and rules are the same:"
                  + " another version of the program gave it."
              : "The answer is not the one that was reviewed.");
    }
    return changed.isEmpty()
        ? ""
        : String.join(" ", changed) + " recheck " + opened.advice() + " tells what.";
  }

  private SavedAdvice again(Site file, UnitSystem units) {
    Site site =
        new Site(
            file.name(),
            units,
            file.facts(),
            file.ground(),
            file.zones(),
            file.relations(),
            file.sizing(),
            file.note());
    return new AdviceSaver(consultant.engine())
        .save(
            new Gathering(consultant)
                .of(site, PlanSettings.TABLE.defaults(), Audience.CLIENT)
                .consultation(),
            AdviceFiles.making());
  }
}
