package underhold.classroom.making;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.advice.Effect;
import underhold.advice.Finding;
import underhold.advice.OptionAdvice;

/** Tells a case: its title, its story, and the lesson for its close. */
final class Teller {
  private static final int LONGEST_REASON = 150;

  private final Sketch sketch;
  private final Draw draw;

  Teller(Sketch sketch) {
    this.sketch = sketch;
    this.draw = sketch.draw();
  }

  /** An invented place and the element. */
  String title() {
    String place = Places.name(draw);
    return sketch.zones().size() > 1
        ? place + ", one structure in two zones"
        : place + ", " + sketch.first();
  }

  /** What the student hears first; nothing that a later stage tells. */
  String story(Knowing knowing) {
    List<String> more = new ArrayList<>();
    extra("programme", "tight", "Time is short.", knowing, more);
    extra("heritage", "listed", "It is a listed building.", knowing, more);
    extra("heritage", "landmark", "It is a landmark by law.", knowing, more);
    extra(
        "outsideAccess",
        "hand",
        "Only what people can carry gets there from outside.",
        knowing,
        more);
    extra("outsideAccess", "large-rig", "There is a broad way in for machines.", knowing, more);
    extra(
        "insideAccess",
        "small-rig",
        "A small machine could get in through the doors.",
        knowing,
        more);
    extra(
        "excavationWall", "none", "No wall is planned to hold the face of the dig.", knowing, more);
    boolean one = sketch.is("columnCount", "1");
    extra(
        "newBaseSameSpot",
        "yes",
        one
            ? "A new base is to be built lower on the very same spot."
            : "New bases are to be built lower on the same spots.",
        knowing,
        more);
    String last = more.isEmpty() ? "" : " " + draw.pick(more);
    return sketch.scene().digs() + " " + sketch.scene().stands() + last;
  }

  private void extra(String fact, String word, String says, Knowing knowing, List<String> more) {
    if (sketch.is(fact, word) && !knowing.believed().containsKey(fact)) {
      more.add(says);
    }
  }

  /**
   * What is to be learnt.
   *
   * @param leader the method that leads
   * @param turns the changes that turn the answer
   * @param level what makes the case as hard as it is
   */
  String lesson(OptionAdvice leader, Wish wish, List<Turned> turns, String level) {
    List<String> sentences = new ArrayList<>();
    sentences.add(reason(leader));
    boolean again = false;
    for (Turned turn : turns) {
      sentences.add(turn(turn, again));
      again = true;
    }
    sentences.add(level);
    sentences.add(Morals.of(wish.theme(), wish.leader(), draw));
    return String.join(" ", sentences.stream().filter(one -> !one.isEmpty()).toList());
  }

  /** Why it leads, in the words of the rule that counts most. */
  private String reason(OptionAdvice leader) {
    String name = Methods.capital(Methods.words(leader.option()));
    String verb = Methods.lead(Optional.of(leader.option()));
    Finding strongest =
        leader.findings().stream()
            .filter(one -> one.effect() == Effect.FOR || one.effect() == Effect.REFER)
            .filter(one -> !leader.uncounted().contains(one))
            .findFirst()
            .orElseThrow();
    String why = strongest.rule().sentence();
    boolean more = strongest.reason().length() < LONGEST_REASON && draw.chance(0.6);
    String opening =
        draw.pick(
            name + " " + verb + " here.",
            "Here " + Methods.words(leader.option()) + " " + verb + ".",
            "Once all is known, " + Methods.words(leader.option()) + " " + verb + ".");
    return opening + " " + why + (more ? " " + strongest.reason() : "");
  }

  private String turn(Turned turn, boolean again) {
    String with = Phrases.with(turn.change(), sketch.layers());
    String then = Methods.words(turn.then());
    return again
        ? draw.pick(
            "Nor is it that alone: with " + with + ", " + then + " would lead.",
            "A second thing decides as well: with " + with + ", " + then + " would lead.")
        : draw.pick(
            "With " + with + ", " + then + " would lead.",
            "Take the same site with " + with + ": " + then + " would lead.",
            "One change would do: with " + with + ", " + then + " would lead.");
  }
}
