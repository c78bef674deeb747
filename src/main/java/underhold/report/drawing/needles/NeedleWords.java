package underhold.report.drawing.needles;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.kit.DrawingScale;
import underhold.report.drawing.section.GroundBands;
import underhold.sizing.Amount;

/** A needle in words, for whoever cannot see its elevation. */
final class NeedleWords {
  private final NeedlePlace place;
  private final NeedleSheet needle;
  private final GroundBands ground;
  private final UnitSystem units;

  NeedleWords(NeedlePlace place, GroundBands ground, UnitSystem units) {
    this.place = place;
    this.needle = place.needle();
    this.ground = ground;
    this.units = units;
  }

  String description() {
    return (needle.cantilever()
            ? "A needle over a fulcrum, overhang " + needle.near().in(units)
            : "A needle on seats "
                + needle.far().in(units)
                + " and "
                + needle.near().in(units)
                + " from the load")
        + ", largest moment "
        + needle.text("needle-moment", units)
        + ". The same follows in words.";
  }

  List<String> words(DrawingScale scale) {
    List<String> words = new ArrayList<>();
    words.add("Needle: " + needle.section() + ".");
    words.add("Load on one needle: " + needle.text("needle-load", units) + ".");
    if (needle.cantilever()) {
      words.add("Overhang, from the fulcrum to the load: " + needle.near().in(units) + ".");
      words.add("Back span, from the fulcrum to the tail: " + needle.far().in(units) + ".");
    } else {
      words.add("From the load to the farther seat: " + needle.far().in(units) + ".");
      words.add("From the load to the nearer seat: " + needle.near().in(units) + ".");
      needle.span().ifPresent(span -> words.add("Between the seats: " + span.in(units) + "."));
    }
    word(words, "Width of the excavation", needle.input("excavation-width"));
    word(words, "Depth of the excavation", needle.input("excavation-depth"));
    word(words, "Depth of the seats", needle.input("seat-depth"));
    word(words, "Setback by the influence line", needle.result("setback"));
    word(words, "Side of a pad", needle.symbol("seat-pressure", "B"));
    words.add("Largest moment: " + needle.text("needle-moment", units) + ".");
    words.add("Largest shear: " + needle.text("needle-shear", units) + ".");
    words.add(
        (needle.cantilever() ? "Reaction of the fulcrum: " : "Reaction of the nearer seat: ")
            + needle.text("needle-reaction", units)
            + ".");
    if (needle.insideLine()) {
      words.add("The seats stand inside the influence line; see the check of their setback.");
    }
    words.addAll(ground.words(place.bottom(), units));
    words.add(
        "The excavation is drawn midway between the seats; heights above ground are not to scale.");
    words.add("Scale " + scale.label() + ".");
    return words;
  }

  private void word(List<String> words, String name, Optional<Amount> amount) {
    words.add(name + ": " + amount.map(value -> value.in(units)).orElse("not known") + ".");
  }
}
