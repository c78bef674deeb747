package underhold.classroom.making;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import underhold.advice.SupportOption;
import underhold.classroom.CaseFile;
import underhold.consult.ZoneAdvice;
import underhold.site.Site;

/** One search for a case, and how far it came. */
final class Search {
  private static final long PARTS = 1_000_003L;

  /** Sites that are good but for the level, after which others like them will hardly be better. */
  private static final int MOST_FINALISTS = 50;

  private final Wish wish;
  private final Judge judge;
  private final List<SiteKind> kinds;
  private int tried;
  private int led;
  private int turned;
  private String nearest = "";
  private int nearness;
  private int finalists;

  Search(Wish wish, Judge judge, List<SiteKind> kinds) {
    this.wish = wish;
    this.judge = judge;
    this.kinds = kinds;
  }

  /** Tries so many sites. */
  Making run(int most) {
    while (goesOn(most)) {
      Draw draw = new Draw(new SplittableRandom(PARTS * wish.start() + tried));
      tried++;
      Optional<CaseFile> found = attempt(draw);
      if (found.isPresent()) {
        return new Making.Found(found.get(), tried);
      }
    }
    return new Making.Nothing(says());
  }

  private boolean goesOn(int most) {
    return !kinds.isEmpty()
        && tried < most
        && finalists < MOST_FINALISTS
        && !Thread.currentThread().isInterrupted();
  }

  private Optional<CaseFile> attempt(Draw draw) {
    SiteKind kind = draw.pick(kinds);
    Sketch sketch = kind.draw(draw);
    Optional<Site> site = sketch.read();
    if (site.isEmpty()) {
      return Optional.empty();
    }
    Optional<SupportOption> wanted = Optional.of(wish.leader());
    if (!judge.roughly(site.get()).equals(wanted) || !Plausible.leads(wish.leader(), sketch)) {
      return Optional.empty();
    }
    led++;
    near(1, kind, sketch);
    List<Change> changes = changes(sketch);
    if (changes.isEmpty() || !judge.leader(site.get()).equals(wanted)) {
      return Optional.empty();
    }
    turned++;
    near(2, kind, sketch);
    ZoneAdvice advice = judge.consultant().reasons(site.get(), site.get().zones().get(0));
    if (!Judge.sound(advice, wish.leader())) {
      return Optional.empty();
    }
    near(3, kind, sketch);
    finalists++;
    return new Levels(wish, sketch, site.get(), changes, judge, advice).made();
  }

  /** What could turn it; where the work is to show it, only what shows itself then. */
  private List<Change> changes(Sketch sketch) {
    return judge.roughTurns(wish, wish.theme(), sketch).stream()
        .filter(change -> wish.theme() != Theme.SURPRISE || Surprises.can(change, sketch))
        .toList();
  }

  private void near(int how, SiteKind kind, Sketch sketch) {
    if (how > nearness) {
      nearness = how;
      nearest = kind.name() + " on " + GroundKind.words(sketch.layers());
    }
  }

  private List<String> says() {
    List<String> says = new ArrayList<>();
    says.add(
        "No case was found: "
            + wish.words()
            + ", in "
            + tried
            + " sites tried from seed "
            + wish.seed()
            + ".");
    if (led == 0) {
      says.add("On none of them does " + wish.leader().label() + " come first.");
    } else {
      says.add(
          "It came first on "
              + led
              + " of them; on "
              + turned
              + " of those a fact of "
              + wish.theme().word()
              + " turned the answer.");
      says.add("The nearest: " + nearest + ", where " + missing() + ".");
    }
    says.add("Ask for another level, another theme or another method.");
    return says;
  }

  private String missing() {
    return switch (nearness) {
      case 1 -> "no fact of the theme turned the answer";
      case 2 -> "the sheet of the method asks for more or fails";
      default -> "the answer was not as firm, as doubtful or as late as the level asks";
    };
  }
}
