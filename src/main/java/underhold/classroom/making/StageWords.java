package underhold.classroom.making;

import java.util.LinkedHashMap;
import java.util.Map;

/** The words of the stages. They tell of a fact only where it becomes known or is believed. */
final class StageWords {
  private final Sketch sketch;
  private final Knowing knowing;
  private final Draw draw;

  StageWords(Sketch sketch, Knowing knowing) {
    this.sketch = sketch;
    this.knowing = knowing;
    this.draw = sketch.draw();
  }

  /**
   * A stage by its names.
   *
   * @param name in commands
   * @param title in words
   * @param days working days
   * @param tells what happens
   */
  record Named(String name, String title, double days, String tells) {}

  Named look() {
    return knowing.fromFile()
        ? new Named(
            "first-look",
            draw.pick("The file and a look round", "An old file and a first visit"),
            0,
            draw.pick(
                "An earlier job on this plot left a thick file. You read it and walk round.",
                "The owner hands you the file of a job that was never built. It tells a great deal.",
                "You begin with the file of a scheme some years old, and a walk round the site."))
        : new Named(
            "first-look",
            draw.pick("Drawings and a look round", "A first visit", "Day one"),
            0,
            draw.pick(
                "Your first visit, with the drawings in hand.",
                "You walk round the site with the drawings of the new work.",
                "You see what can be seen from the street and from the drawings."));
  }

  Named survey() {
    return new Named(
        "survey",
        draw.pick(
            "The owner's papers and a survey", "A survey of the structure", "Measured survey"),
        draw.whole(3, 6),
        draw.pick(
            "What the owner, the old papers and a measured survey say.",
            "The structure is measured, its condition noted, and its loads reckoned.",
            "Two days on site and two with the owner's papers."));
  }

  Named pits() {
    return new Named(
        "trial-pits",
        draw.pick("Trial pits at the footing", "Pits dug to look at the footing"),
        draw.whole(4, 7),
        draw.pick(
            "Small pits dug by hand beside the footing.",
            "The footing is laid bare in two places.",
            "Hand-dug pits show what it stands on."));
  }

  Named borings(boolean ground) {
    return new Named(
        "borings",
        draw.pick("Borings, water and laboratory", "Borings and standpipes"),
        draw.whole(9, 15),
        ground
            ? draw.pick(
                "Holes sunk beside the structure, with the water watched in them.",
                "Borings, samples for the laboratory, and standpipes that are read for a week.",
                "The ground is bored, and the water given time to settle in the holes.")
            : draw.pick(
                "New borings, to see whether the file is right.",
                "You check the file by borings of your own and by standpipes."));
  }

  Named work() {
    Surprises.Coming coming = Surprises.of(knowing.belief().orElseThrow(), draw);
    return new Named(coming.stage(), coming.title(), coming.days(), coming.opens());
  }

  /** What is believed, as it is told when it begins. */
  String believed(boolean dayOne) {
    String clause = Phrases.clause(knowing.believed());
    return (dayOne
        ? draw.pick(
            "By the papers, " + clause + ".",
            "You are told that " + clause + ".",
            "On paper " + clause + ".")
        : draw.pick(
            "From all that can be seen, " + clause + ".",
            "It seems that " + clause + ".",
            "Nothing speaks against it that " + clause + "."));
  }

  /** How it is, as it is told when the belief ends. */
  String truth(boolean work) {
    Map<String, String> facts = new LinkedHashMap<>();
    knowing
        .believed()
        .keySet()
        .forEach(fact -> sketch.value(fact).ifPresent(value -> facts.put(fact, value)));
    String clause = Phrases.clause(facts);
    return work
        ? clause + "."
        : draw.pick("But in truth ", "The papers were wrong: ", "And yet ") + clause + ".";
  }
}
