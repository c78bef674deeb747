package underhold.shell;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import underhold.consult.OpenQuestion;
import underhold.shell.Question.Topic;
import underhold.site.FactDefinition;
import underhold.site.FactDefinition.Scope;
import underhold.site.FactDictionary;
import underhold.site.FactReading;
import underhold.site.FactValue;
import underhold.site.Site;
import underhold.site.SiteChecks;
import underhold.site.SiteProblem;
import underhold.site.StatedFact;
import underhold.site.Zone;

/**
 * The course of an interview, without a terminal: what to ask, what to make of an answer, how to go
 * back. What is known of the site says where it stands, so that a later interview goes on at the
 * same question.
 */
final class Interview {
  private static final String FIRST_ZONE = "zone 1";

  /** How many deciding questions commonly follow the core ones; only for the progress shown. */
  private static final int USUAL_DECIDING = 8;

  private final Agenda agenda;
  private final Deque<Step> behind = new ArrayDeque<>();
  private final Deque<Step> ahead = new ArrayDeque<>();
  private final Set<Integer> namedZones = new HashSet<>();
  private @Nullable Site site;
  private @Nullable Step again;
  private @Nullable Question current;
  private int toGo = guess();
  private boolean minor;
  private boolean minorAsked;
  private boolean finished;

  /** One question of the course. */
  private record Step(Topic topic, int zone, Optional<FactDefinition> fact) {}

  /** An interview about a new site. */
  Interview(Agenda agenda) {
    this.agenda = agenda;
  }

  /** An interview that goes on with a site. */
  Interview(Agenda agenda, Site site) {
    this.agenda = agenda;
    this.site = site;
    retrace(site);
  }

  /** What is known so far; empty before the site has a name. */
  Optional<Site> site() {
    return Optional.ofNullable(site);
  }

  /** Whether nothing is left to ask. */
  boolean finished() {
    return question().topic() == Topic.NONE;
  }

  /** What is asked now; the same until an answer is taken. */
  Question question() {
    Question question = current;
    if (question == null) {
      question = next();
      current = question;
    }
    return question;
  }

  /** Takes what was typed. */
  Reply answer(String typed) {
    Question question = question();
    String text = typed.strip();
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "?" -> new Reply(Reply.Kind.EXPLAIN, "");
      case "stop" -> new Reply(Reply.Kind.STOP, "");
      case "back" -> back();
      default ->
          text.isEmpty() && !question.former().isEmpty() ? kept(question) : take(question, text);
    };
  }

  private Reply take(Question question, String text) {
    return switch (question.topic()) {
      case SITE_NAME -> siteName(text);
      case ZONE_NAME -> zoneName(question, text);
      case FACT -> fact(question, text);
      case GO_ON -> goOn(text);
      case ANOTHER_ZONE -> anotherZone(text);
      case NONE -> Reply.refused("Nothing is left to ask.");
    };
  }

  private Reply siteName(String text) {
    Optional<String> why = Names.why(text);
    if (why.isPresent()) {
      return Reply.refused(sentence(why.get()) + " Type a name for the site.");
    }
    site = site == null ? Edits.fresh(text, FIRST_ZONE) : Edits.named(site, text);
    return done("");
  }

  private Reply zoneName(Question question, String text) {
    Site known = known();
    Optional<String> why = Names.why(text);
    if (why.isPresent()) {
      return Reply.refused(sentence(why.get()) + " Type a name for the zone.");
    }
    OptionalInt other = Edits.find(known, text);
    if (other.isPresent() && other.getAsInt() != question.zone()) {
      return Reply.refused("Another zone has that name.");
    }
    Zone zone = known.zones().get(question.zone());
    Zone named = new Zone(text, zone.facts(), zone.ground(), zone.note());
    site = Edits.with(known, question.zone(), named);
    return done("");
  }

  private Reply fact(Question question, String text) {
    FactDefinition fact = question.fact().orElseThrow();
    if (text.isEmpty()) {
      return Reply.refused("Type an answer, or unknown if nobody knows; ? says why it matters.");
    }
    FactReading reading = AnswerReader.read(fact, text);
    return reading.fold(
        value -> state(question, fact, new StatedFact(value, "")),
        () ->
            fact.required()
                ? Reply.refused(
                    "Nothing can be advised before this is known. Find it out; stop keeps what you"
                        + " have answered.")
                : state(question, fact, StatedFact.unknown("")),
        rejected -> Reply.refused(sentence(rejected.explanation())));
  }

  private Reply state(Question question, FactDefinition fact, StatedFact stated) {
    Site before = known();
    boolean whole =
        fact.scope() == Scope.SITE
            && !before.zones().get(question.zone()).facts().containsKey(fact.name());
    Site after =
        whole
            ? Edits.with(before, fact, stated)
            : Edits.with(before, question.zone(), fact, stated);
    List<String> told = contradictions(before);
    List<String> contradictions =
        contradictions(after).stream().filter(text -> !told.contains(text)).toList();
    if (!contradictions.isEmpty()) {
      return Reply.refused(
          "That cannot be: "
              + String.join("; ", contradictions)
              + ". Type it again, or back to correct an earlier answer.");
    }
    site = AnswerReader.inUnitsOf(before, after, stated);
    FactValue value = stated.value();
    return done(value == null ? "noted as unknown" : value.text());
  }

  private static List<String> contradictions(Site site) {
    return SiteChecks.contradictions(site, FactDictionary.standard(), "").stream()
        .map(SiteProblem::message)
        .toList();
  }

  private Reply goOn(String text) {
    Optional<Boolean> decision = AnswerReader.decision(text);
    if (decision.isEmpty()) {
      return Reply.refused("Type yes or no.");
    }
    minorAsked = true;
    minor = decision.get();
    current = null;
    return Reply.taken("");
  }

  private Reply anotherZone(String text) {
    if (text.isEmpty() || text.equalsIgnoreCase("no")) {
      finished = true;
      current = null;
      return Reply.taken("");
    }
    Optional<String> why = Names.why(text);
    if (why.isPresent()) {
      return Reply.refused(sentence(why.get()));
    }
    if (Edits.find(known(), text).isPresent()) {
      return Reply.refused("There is a zone of that name already.");
    }
    int place = known().zones().size();
    site = Edits.with(known(), place, Edits.zone(text));
    namedZones.add(place);
    minorAsked = false;
    minor = false;
    current = null;
    return Reply.taken("");
  }

  private Reply kept(Question question) {
    return done(question.former());
  }

  /** The question is answered: it lies behind, and the next one comes up. */
  private Reply done(String text) {
    Question question = question();
    behind.push(new Step(question.topic(), question.zone(), question.fact()));
    if (question.topic() == Topic.ZONE_NAME) {
      namedZones.add(question.zone());
    }
    again = ahead.poll();
    current = null;
    return Reply.taken(text);
  }

  private Reply back() {
    if (behind.isEmpty()) {
      return Reply.refused("This is the first question.");
    }
    if (again != null) {
      ahead.push(again);
    }
    again = behind.pop();
    current = null;
    finished = false;
    return new Reply(Reply.Kind.BACK, "");
  }

  private Question next() {
    Step forced = again;
    if (forced != null) {
      return question(forced, Optional.empty(), toGo + 1);
    }
    Site known = site;
    if (known == null) {
      return question(new Step(Topic.SITE_NAME, 0, Optional.empty()), Optional.empty(), guess());
    }
    for (int zone = 0; zone < known.zones().size(); zone++) {
      Optional<Question> question = next(known, zone);
      if (question.isPresent()) {
        return question.get();
      }
    }
    return last(known);
  }

  private static int guess() {
    return Agenda.CORE.size() + USUAL_DECIDING;
  }

  private Optional<Question> next(Site known, int zone) {
    Zone asked = known.zones().get(zone);
    boolean nameless = asked.name().equals(FIRST_ZONE) && asked.facts().isEmpty();
    if (nameless && !namedZones.contains(zone)) {
      Step step = new Step(Topic.ZONE_NAME, zone, Optional.empty());
      return Optional.of(question(step, Optional.empty(), guess() - 1));
    }
    List<FactDefinition> core = agenda.core(known, zone);
    if (!core.isEmpty()) {
      Step step = new Step(Topic.FACT, zone, Optional.of(core.get(0)));
      return Optional.of(question(step, Optional.empty(), core.size() - 1 + USUAL_DECIDING));
    }
    return first(agenda.deciding(known, zone), zone);
  }

  private Optional<Question> first(List<OpenQuestion> questions, int zone) {
    return questions.stream()
        .findFirst()
        .map(
            open ->
                question(
                    new Step(Topic.FACT, zone, Optional.of(open.fact())),
                    Optional.of(open),
                    questions.size() - 1));
  }

  /** What is asked once every zone is decided. */
  private Question last(Site known) {
    Step none = new Step(Topic.NONE, 0, Optional.empty());
    if (finished) {
      return question(none, Optional.empty(), 0);
    }
    if (!minorAsked || minor) {
      for (int zone = 0; zone < known.zones().size(); zone++) {
        List<OpenQuestion> questions = agenda.minor(known, zone);
        if (!questions.isEmpty()) {
          Step offer = new Step(Topic.GO_ON, zone, Optional.empty());
          return minor
              ? first(questions, zone).orElseThrow()
              : question(offer, Optional.empty(), questions.size());
        }
      }
    }
    return question(new Step(Topic.ANOTHER_ZONE, 0, Optional.empty()), Optional.empty(), 0);
  }

  private Question question(Step step, Optional<OpenQuestion> open, int about) {
    toGo = Math.max(0, about);
    Site known = site;
    String zone =
        known == null || step.zone() >= known.zones().size()
            ? ""
            : known.zones().get(step.zone()).name();
    return new Question(
        step.topic(), step.zone(), zone, step.fact(), open, former(step), behind.size() + 1, toGo);
  }

  /** What was answered before; a zone's first name may be kept too. */
  private String former(Step step) {
    Site known = site;
    if (known == null) {
      return "";
    }
    return switch (step.topic()) {
      case SITE_NAME -> known.name();
      case ZONE_NAME -> known.zones().get(step.zone()).name();
      case FACT -> stated(known, step.zone(), step.fact().orElseThrow());
      case GO_ON, ANOTHER_ZONE, NONE -> "";
    };
  }

  private static String stated(Site site, int zone, FactDefinition fact) {
    StatedFact own = site.zones().get(zone).facts().get(fact.name());
    StatedFact stated = own == null ? site.facts().get(fact.name()) : own;
    if (stated == null) {
      return "";
    }
    FactValue value = stated.value();
    return value == null ? "unknown" : value.text();
  }

  /** The answers of earlier sittings, so that one can go back to them. */
  private void retrace(Site known) {
    behind.push(new Step(Topic.SITE_NAME, 0, Optional.empty()));
    for (int i = 0; i < known.zones().size(); i++) {
      int zone = i;
      Zone asked = known.zones().get(zone);
      if (!asked.name().equals(FIRST_ZONE) || !asked.facts().isEmpty()) {
        behind.push(new Step(Topic.ZONE_NAME, zone, Optional.empty()));
      }
      Agenda.CORE.stream()
          .filter(fact -> asked.facts().containsKey(fact.name()) || whole(known, fact, zone))
          .forEach(fact -> behind.push(new Step(Topic.FACT, zone, Optional.of(fact))));
      FactDictionary.standard().all().stream()
          .filter(fact -> fact.core() == 0)
          .filter(fact -> asked.facts().containsKey(fact.name()) || whole(known, fact, zone))
          .forEach(fact -> behind.push(new Step(Topic.FACT, zone, Optional.of(fact))));
    }
  }

  /** Facts of the whole site belong to the first zone's course. */
  private static boolean whole(Site site, FactDefinition fact, int zone) {
    return zone == 0 && site.facts().containsKey(fact.name());
  }

  private Site known() {
    Site known = site;
    if (known == null) {
      throw new IllegalStateException("the site has no name yet");
    }
    return known;
  }

  private static String sentence(String text) {
    String capital = Character.toUpperCase(text.charAt(0)) + text.substring(1);
    return capital.endsWith(".") || capital.endsWith("?") ? capital : capital + ".";
  }
}
