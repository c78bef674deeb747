package underhold.classroom.making;

import underhold.advice.SupportOption;

/** What a theme says beyond the one site (judgement). */
final class Morals {
  private Morals() {}

  static String of(Theme theme, SupportOption leader, Draw draw) {
    return switch (theme) {
      case LOAD ->
          draw.pick(
              "Ask first how the load comes down: along a line it can be carried piece by piece, at a"
                  + " point it has to be carried whole.",
              "A line of load and a point of load are two different structures, even where the"
                  + " building looks the same.");
      case SPANNING ->
          draw.pick(
              "Whatever is dug away must be bridged meanwhile: ask what can span it, and how far.",
              "Before anything is opened below a load, say what carries it across.");
      case WATER ->
          draw.pick(
              "Find out where the water stands, and who may lower it, before a method is named.",
              "Water decides more foundations than soil does: a hole that is dry on paper may run.");
      case ROCK ->
          draw.pick(
              "Rock and earth at the same level call for different works; know which before you"
                  + " draw.",
              "Where rock lies well it is a wall that costs nothing; where it does not, it is earth"
                  + " with a hard edge.");
      case GROUND ->
          draw.pick(
              "The look of a structure tells nothing of what it stands on; the borings do.",
              "Good ground near the footing and good ground far down are two different jobs.");
      case ACCESS ->
          draw.pick(
              "Walk the way that the machine has to take before a method is thrown away or chosen.",
              "A method that cannot get there is no method. Ask what could be opened, and by whom.");
      case WATCHING ->
          leader == SupportOption.MONITOR
              ? draw.pick(
                  "Work under a sound structure brings its own movement and its own dangers; leave it"
                      + " alone where the figures allow, and watch it.",
                  "Not to underpin is an answer too: survey it, set limits, watch, and say who stops"
                      + " the work.")
              : draw.pick(
                  "Ask what would let the structure be left alone before choosing how to work under"
                      + " it.",
                  "Watching is the cheapest answer where it is enough; here it is not.");
      case FOUNDATION ->
          draw.pick(
              "Nothing can honestly be chosen before somebody has seen what the structure stands on.",
              "A trial pit costs a few days; a foundation that is not what was thought costs the"
                  + " job.");
      case SURPRISE ->
          draw.pick(
              "To change the method for a fact that is new is good engineering, not weakness.",
              "Say on day one which fact would stop the work, and who says so when it turns up.");
      case MARRIED ->
          draw.pick(
              "One structure, two zones, two methods: the order of the work must marry them.",
              "Do not force one method on a whole structure; look at each part, then at both"
                  + " together.");
      case REFER ->
          leader == SupportOption.REFER
              ? draw.pick(
                  "Referring is an answer, with the reasons handed over.",
                  "Freezing, grouting and jacked elements belong to those who do them daily; tell"
                      + " them why the ordinary ways are out.")
              : draw.pick(
                  "Know the point at which a job is no longer yours, and say it early.",
                  "A specialist is called for a reason; here that reason is not there.");
    };
  }
}
