package underhold.mechanics.steel;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** A family of rolled sections, lightest first. */
@SuppressWarnings("ImmutableEnumChecker") // its parts are records of immutable parts
public enum SectionTable {
  /** Wide-flange sections W8 to W36. */
  US_W("us-w", true, "W"),
  /** Bearing pile sections HP8 to HP14. */
  US_HP("us-hp", true, "HP"),
  /** HEA160 to HEA600. */
  EU_HEA("eu-hea", false, "HEA"),
  /** HEB160 to HEB900. */
  EU_HEB("eu-heb", false, "HEB"),
  /** IPE200 to IPE600. */
  EU_IPE("eu-ipe", false, "IPE");

  /** Origin of the US tables, with its disclaimer. */
  public static final String US_ORIGIN =
      "AISC Shapes Database v15.0; its numbers come without warranty and need professional"
          + " verification";

  /** Origin of the European tables. */
  public static final String EU_ORIGIN =
      "Euronorm 53-62 (HE) and 19-57 (IPE) dimensions; properties computed from them";

  private final String id;
  private final boolean american;
  private final List<RolledSection> sections;

  SectionTable(String id, boolean american, String prefix) {
    this.id = id;
    this.american = american;
    List<RolledSection> all =
        american ? SectionReader.american(prefix) : SectionReader.european(prefix);
    sections =
        all.stream()
            .sorted(Comparator.comparingDouble(RolledSection::massKilogramsPerMetre))
            .toList();
  }

  /** Name as typed. */
  public String id() {
    return id;
  }

  /** Whether its sections are American. */
  public boolean american() {
    return american;
  }

  /** Where the numbers come from. */
  public String origin() {
    return american ? US_ORIGIN : EU_ORIGIN;
  }

  /** All sections, lightest first. */
  public List<RolledSection> sections() {
    return sections;
  }

  /** The section of that designation. */
  public Optional<RolledSection> section(String name) {
    return sections.stream().filter(one -> one.name().equalsIgnoreCase(name.strip())).findFirst();
  }

  /** The table of that name. */
  public static Optional<SectionTable> named(String id) {
    return Arrays.stream(values()).filter(table -> table.id.equals(id)).findFirst();
  }

  /** The section of that designation in whichever table has it. */
  public static Optional<RolledSection> find(String name) {
    return Arrays.stream(values()).flatMap(table -> table.section(name).stream()).findFirst();
  }
}
