package underhold.advice;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The ways of holding the structure that are ranked. */
public enum SupportOption {
  PITS("pits", "underpinning pits"),
  NEEDLES("needles", "needle beams"),
  DRILLED_PILES("drilled-piles", "drilled piles"),
  BRACKET_PILES("bracket-piles", "mini piles with brackets"),
  EDGE_PITS("edge-pits", "drilled piles with edge pits"),
  MONITOR("monitor", "protect and monitor"),
  REFER("refer", "specialist referral");

  private final String id;
  private final String label;

  SupportOption(String id, String label) {
    this.id = id;
    this.label = label;
  }

  /** The name in rules, files and commands. */
  public String id() {
    return id;
  }

  /** The trade's name. */
  public String label() {
    return label;
  }

  /** The option of that id. */
  public static Optional<SupportOption> find(String id) {
    return Arrays.stream(values()).filter(option -> option.id.equals(id)).findFirst();
  }

  /** All ids, in order. */
  public static List<String> ids() {
    return Arrays.stream(values()).map(SupportOption::id).toList();
  }
}
