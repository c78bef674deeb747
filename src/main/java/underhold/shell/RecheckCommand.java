package underhold.shell;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import underhold.consult.Consultant;
import underhold.report.RecheckJson;
import underhold.report.RecheckText;
import underhold.review.recheck.Recheck;
import underhold.review.saved.SavedAdvice;
import underhold.site.Site;

/**
 * {@code recheck}: runs a saved consultation again. Done (0) where it is identical or its
 * recommendation stands; 1 where it does not stand, must be looked at again, or was edited by hand:
 * then whoever relies on the file has something to put right, as with a site that has a problem.
 */
final class RecheckCommand {
  private final Session session;

  private RecheckCommand(Session session) {
    this.session = session;
  }

  static ShellCommand of(Session session) {
    return new ShellCommand(
        "recheck",
        Commands.REVIEW,
        "runs a saved consultation again: what changed, and whether it still stands",
        List.of(Parameter.needed("FILE.advice.json", AdviceFiles::here)),
        Stream.concat(Stream.of(Options.SITE_OPTION), Options.PACK.stream()).toList(),
        new RecheckCommand(session)::run);
  }

  private int run(Call call) {
    Path file = SiteFiles.path(call.needed(0));
    SavedAdvice saved = AdviceFiles.read(file);
    Site site =
        call.option(Options.SITE)
            .map(name -> SiteFiles.read(SiteFiles.path(name)).site())
            .orElseGet(() -> AdviceFiles.site(saved, file));
    Consultant other = Consultant.toCheckBy(session.pack());
    Recheck recheck = Recheck.run(saved, site, other, AdviceFiles.making());
    session.output().answer(look -> RecheckText.of(recheck, look), () -> RecheckJson.of(recheck));
    return recheck.stand().holds() && saved.intact() ? Exit.DONE : Exit.SITE;
  }
}
