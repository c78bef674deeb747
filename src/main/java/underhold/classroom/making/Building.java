package underhold.classroom.making;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import underhold.advice.OptionAdvice;
import underhold.advice.SupportOption;
import underhold.classroom.CaseFile;
import underhold.classroom.CaseReader;
import underhold.classroom.CaseStage;
import underhold.classroom.CaseStudy;
import underhold.classroom.Counterpart;
import underhold.classroom.Expected;
import underhold.classroom.Made;
import underhold.classroom.Question;
import underhold.classroom.QuestionDesk;
import underhold.classroom.Reckoned;
import underhold.review.file.Raw;
import underhold.site.JsonText;
import underhold.site.Site;
import underhold.site.Zone;

/** Builds the file of a case from a site, the way it comes to be known, and what it teaches. */
final class Building {
  private static final String NAME = "made";
  private static final int MOST_QUESTIONS = 2;

  private final Wish wish;
  private final Sketch sketch;
  private final Judge judge;
  private final List<CaseStage> stages;
  private final Knowing knowing;

  Building(Wish wish, Sketch sketch, Knowing knowing, Judge judge) {
    this.wish = wish;
    this.sketch = sketch;
    this.judge = judge;
    this.knowing = knowing;
    this.stages = Staging.stages(sketch, knowing);
  }

  /** A case as far as its stages, to see what leads at each; none where a stage is unsound. */
  Optional<CaseStudy> draft() {
    return read(
        file("draft", "draft", "draft", List.of(), List.of(), expected(), site("draft", "")));
  }

  /** The leader of a zone at a stage; none where there is no clear choice. */
  Optional<SupportOption> leader(CaseStudy draft, int stage, String zone) {
    Site known = draft.known(stage, Set.of());
    Zone found =
        known.zones().stream().filter(one -> one.name().equals(zone)).findFirst().orElseThrow();
    return judge.leader(known, found);
  }

  /** The whole case; none where it does not hold. */
  Optional<CaseFile> whole(CaseStudy draft, OptionAdvice leader, List<Turned> turns, String level) {
    Teller teller = new Teller(sketch);
    String title = teller.title();
    String lesson = teller.lesson(leader, wish, turns, level);
    CaseFile made =
        file(
            title,
            teller.story(knowing),
            lesson,
            questions(draft),
            turns,
            expected(draft),
            site(title, "Made for the classroom; invented."));
    return read(made).map(CaseStudy::file);
  }

  private CaseFile file(
      String title,
      String story,
      String lesson,
      List<Question> questions,
      List<Turned> turns,
      List<Expected> expected,
      Raw site) {
    return new CaseFile(
        CaseFile.FILES.form(),
        title,
        wish.level().word(),
        wish.theme().teaches(),
        lesson,
        "judgement",
        story,
        expected,
        site,
        stages,
        questions,
        Optional.of(made(turns)));
  }

  private Raw site(String title, String note) {
    return Raw.of(JsonText.of(sketch.tree(title, note)));
  }

  private Made made(List<Turned> turns) {
    return new Made(
        wish.leader().id(),
        wish.theme().word(),
        wish.seed(),
        judge.consultant().pack().fingerprint(),
        turns.stream().map(this::counterpart).toList());
  }

  private Counterpart counterpart(Turned turn) {
    Optional<Raw> ground =
        turn.change().ofGround()
            ? Optional.of(Raw.of(JsonText.of(Sketch.ground(turn.change().ground()))))
            : Optional.empty();
    return new Counterpart(sketch.first(), turn.change().facts(), ground, id(turn.then()));
  }

  private List<Expected> expected() {
    return sketch.zones().keySet().stream()
        .map(zone -> new Expected(zone, wish.leader().id(), Expected.NO_METHOD))
        .toList();
  }

  private List<Expected> expected(CaseStudy draft) {
    int last = stages.size() - 1;
    List<Expected> expected = new ArrayList<>();
    for (String zone : sketch.zones().keySet()) {
      expected.add(new Expected(zone, id(leader(draft, last, zone)), id(leader(draft, 0, zone))));
    }
    return expected;
  }

  private List<Question> questions(CaseStudy draft) {
    String last = stages.get(stages.size() - 1).name();
    QuestionDesk desk = new QuestionDesk(judge.consultant());
    List<Question> good = new ArrayList<>();
    for (Question question : Asking.of(wish, sketch.first(), last)) {
      boolean answered = !(desk.of(draft, question) instanceof Reckoned.Nothing);
      if (answered && good.size() < MOST_QUESTIONS) {
        good.add(question);
      }
    }
    return good;
  }

  private static Optional<CaseStudy> read(CaseFile file) {
    return CaseReader.read(CaseFile.FILES.text(file), NAME + CaseFile.ENDING).content();
  }

  private static String id(Optional<SupportOption> option) {
    return option.map(SupportOption::id).orElse(Expected.NO_METHOD);
  }
}
