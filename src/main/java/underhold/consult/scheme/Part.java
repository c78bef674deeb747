package underhold.consult.scheme;

import java.util.Optional;
import underhold.advice.SupportOption;
import underhold.site.FactView;

/** The part a method plays in a scheme. */
public enum Part {
  CARRIES("carries the structure"),
  CLOSES_EDGE("closes the edge"),
  PROPS_EDGE("props the overhanging edge"),
  WATCHES("is watched"),
  OPEN("is decided first");

  private final String words;

  Part(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }

  /** The part that the method of a zone plays there. */
  static Part of(ZoneChoice zone) {
    Optional<SupportOption> method = zone.method();
    if (method.isEmpty()) {
      return OPEN;
    }
    return switch (method.get()) {
      case EDGE_PITS -> CLOSES_EDGE;
      case MONITOR -> WATCHES;
      default -> overhangs(zone.zone().view()) ? PROPS_EDGE : CARRIES;
    };
  }

  private static boolean overhangs(FactView view) {
    return view.word("loadPattern").filter("cantilevered-edge"::equals).isPresent();
  }
}
