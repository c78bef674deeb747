package underhold.shell;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import underhold.advice.BuiltInPack;
import underhold.advice.RulePack;
import underhold.consult.Consultant;
import underhold.consult.Consultation;
import underhold.site.Site;

/** What commands share: the site at hand, where they write, and the services, made when needed. */
final class Session {
  private final boolean interactive;
  private final Lines lines;
  private Output output;
  private @Nullable OpenSite current;
  private RulePack usualPack = BuiltInPack.pack();
  private RulePack pack = usualPack;
  private @Nullable Consultant consultant;

  Session(boolean interactive, Lines lines, Output output) {
    this.interactive = interactive;
    this.lines = lines;
    this.output = output;
  }

  boolean interactive() {
    return interactive;
  }

  Lines lines() {
    return lines;
  }

  Output output() {
    return output;
  }

  void writeTo(Output other) {
    output = other;
  }

  Optional<OpenSite> current() {
    return Optional.ofNullable(current);
  }

  void open(OpenSite site) {
    current = site;
  }

  /**
   * Lets the site at hand go, unless it has changes that are not saved.
   *
   * @throws Refusal if it has
   */
  void keepChanges() {
    current()
        .filter(OpenSite::changed)
        .ifPresent(
            open -> {
              throw Refusal.usage(
                  "The changes to " + open.file() + " are not saved.",
                  "Save them first: site save. Or let them go: site drop");
            });
  }

  void close() {
    current = null;
  }

  /** The rules by which the command at hand answers. */
  RulePack pack() {
    return pack;
  }

  /** The rules by which commands answer that name no others. */
  RulePack usualPack() {
    return usualPack;
  }

  /** Lets commands answer by other rules from now on. */
  void use(RulePack other) {
    usualPack = other;
    take(other);
  }

  /** Lets the command at hand answer by these rules. */
  void take(RulePack other) {
    if (pack != other) {
      pack = other;
      consultant = null;
    }
  }

  Consultant consultant() {
    Consultant made = consultant;
    if (made == null) {
      made = Consultant.of(pack);
      consultant = made;
    }
    return made;
  }

  Consultation advise(Site site) {
    return consultant().advise(site);
  }

  /**
   * The site a command is about: the file named, else the one at hand.
   *
   * @throws Refusal if no file is named and none is at hand
   */
  OpenSite site(Optional<String> file) {
    return file.map(name -> SiteFiles.read(SiteFiles.path(name)))
        .orElseGet(() -> checked(current().orElseThrow(this::noSite)));
  }

  /** The same for commands that fill in a site: facts every zone needs may still be missing. */
  OpenSite draft(Optional<String> file) {
    return file.map(name -> SiteFiles.readDraft(SiteFiles.path(name)))
        .orElseGet(() -> current().orElseThrow(this::noSite));
  }

  /** The site at hand, once nothing in it stands against an answer. */
  private static OpenSite checked(OpenSite open) {
    var problems = SiteChecking.problems(open.site(), open.fileName());
    if (!problems.isEmpty()) {
      throw Refusal.site(problems);
    }
    return open;
  }

  private Refusal noSite() {
    return interactive
        ? Refusal.usage("No site is open.", "Name a FILE, or open one: site open FILE")
        : Refusal.usage(
            "A site FILE is needed; where a command takes other words, --site FILE. (In the"
                + " interactive shell it may be left out once a site is open.)");
  }
}
