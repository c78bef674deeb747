package underhold.consult.stage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import underhold.advice.SupportOption;
import underhold.sizing.Stage;
import underhold.sizing.StageDetail;

/**
 * What carries a zone, stage by stage. A zone on pits is carried pit by pit: its wall spans over an
 * open pit until the pier carries. Every other method takes the whole zone up before the ground
 * below it goes.
 */
final class LoadPath {
  private final String zone;
  private final SupportOption method;
  private final Place whole;
  private final Place dry;
  private final List<Place> pits = new ArrayList<>();
  private final List<Place> bared = new ArrayList<>();
  private final List<Support> temporary = new ArrayList<>();
  private boolean wet;
  private boolean undermined;
  private boolean lasting;

  LoadPath(String zone, SupportOption method) {
    this.zone = zone;
    this.method = method;
    this.whole = Place.of(zone, "the structure");
    this.dry = Place.of(zone, "dry pit bases");
  }

  /** Water is lowered, for as long as pits are dug. */
  Support lowerWater() {
    wet = true;
    Support pumps = new Support("lowered ground water at " + zone, List.of(dry), true);
    temporary.add(pumps);
    return pumps;
  }

  /** The support that the last step of load brings to bear. */
  Support carry() {
    boolean needles = method == SupportOption.NEEDLES;
    Support support =
        new Support(
            switch (method) {
                  case NEEDLES -> "needles";
                  case BRACKET_PILES -> "brackets on mini piles";
                  default -> "drilled piles";
                }
                + " of "
                + zone,
            List.of(whole),
            needles);
    if (needles) {
      temporary.add(support);
    }
    return support;
  }

  /** A round of pits, or all rounds where none is drawn up. */
  Moves pits(Optional<StageDetail.PitRound> round, boolean first, boolean last) {
    List<Place> opened = new ArrayList<>();
    round.ifPresentOrElse(
        one -> {
          for (int i = 0; i < one.pits().size(); i++) {
            int pit = one.pits().get(i);
            opened.add(new Place(zone, "pit " + pit, pit, one.widthsMetres().get(i)));
          }
        },
        () -> opened.add(Place.of(zone, "the wall, round by round")));
    pits.addAll(opened);
    List<Place> undermined = new ArrayList<>();
    if (first && wet) {
      undermined.add(dry);
    }
    if (first && method == SupportOption.EDGE_PITS) {
      this.undermined = true;
      undermined.add(whole);
    }
    List<Support> accepts = new ArrayList<>();
    String piers = (method == SupportOption.EDGE_PITS ? "wall panels " : "piers ") + "at " + zone;
    accepts.add(
        new Support(
            piers + ": " + String.join(", ", opened.stream().map(Place::name).toList()),
            opened,
            false));
    if (last && wet) {
      accepts.add(new Support("finished piers at " + zone, List.of(dry), false));
    }
    return new Moves(undermined, opened, accepts, List.of());
  }

  /** A lift of digging, with the brace set at its end if one is. */
  Moves dig(Stage stage) {
    List<Place> undermines = new ArrayList<>();
    if (!undermined && method != SupportOption.PITS && method != SupportOption.MONITOR) {
      undermined = true;
      undermines.add(whole);
    }
    if (!(stage.detail() instanceof StageDetail.Brace)) {
      return new Moves(undermines, List.of(), List.of(), List.of());
    }
    Place face = Place.of(zone, "side, level " + (bared.size() + 1));
    bared.add(face);
    Support brace = new Support("brace level " + bared.size() + " of " + zone, List.of(face), true);
    temporary.add(brace);
    return new Moves(undermines, List.of(face), List.of(brace), List.of());
  }

  /** Whether braces still wait for what holds in their place. */
  boolean needsLasting() {
    return !lasting && !bared.isEmpty();
  }

  /** What stays holds everything that was laid bare. */
  Moves lasting() {
    lasting = true;
    return bared.isEmpty()
        ? Moves.NONE
        : Moves.accepting(new Support("lasting works of " + zone, bared, false));
  }

  Support newSupport() {
    return new Support("new support of " + zone, List.of(whole), false);
  }

  /** What is temporary and still there, the last set first; it is taken away now, in that order. */
  List<Support> takeBack() {
    List<Support> left = new ArrayList<>(temporary);
    Collections.reverse(left);
    temporary.clear();
    return left;
  }
}
