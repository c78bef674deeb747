package underhold.review.saved;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import underhold.review.file.Fingerprint;
import underhold.review.file.Raw;
import underhold.review.file.RecordFile;
import underhold.review.file.RecordTree;
import underhold.site.PlainText;
import underhold.site.Site;
import underhold.site.SiteReader;
import underhold.site.SiteReading;
import underhold.site.Zone;

/**
 * A consultation in a file.
 *
 * @param underhold the form of the file
 * @param made how it came about
 * @param units the units in which amounts are shown, SI or US
 * @param rulePack the rules it rests on
 * @param site the site, as its own file holds it
 * @param zones what was advised, zone by zone
 * @param scheme the methods together
 * @param plan the plan of the stages
 * @param seal the fingerprint of everything before it; of another content the seal is another
 */
public record SavedAdvice(
    String underhold,
    SavedMaking made,
    String units,
    PackDigest rulePack,
    Raw site,
    List<SavedZone> zones,
    SavedScheme scheme,
    SavedPlan plan,
    String seal) {
  /** The form of the file. */
  public static final String FORM = "advice/1";

  /** The end of the name of such a file. */
  public static final String ENDING = ".advice.json";

  /** Such files. */
  public static final RecordFile<SavedAdvice> FILES =
      new RecordFile<>(SavedAdvice.class, FORM, "a saved consultation");

  private static final String SEAL = "seal";

  public SavedAdvice {
    zones = List.copyOf(zones);
    if (zones.isEmpty()) {
      throw new IllegalArgumentException("a saved consultation has at least one zone");
    }
  }

  /** The same with the seal that its content asks for. */
  SavedAdvice sealed() {
    return new SavedAdvice(
        underhold, made, units, rulePack, site, zones, scheme, plan, fingerprint());
  }

  /** The fingerprint of the content, whatever the layout of the file; the seal is no part of it. */
  public String fingerprint() {
    Map<String, Object> tree = RecordTree.of(this);
    tree.remove(SEAL);
    return Fingerprint.ofTree(tree);
  }

  /** Whether the content is what the program sealed; else somebody has edited the file. */
  public boolean intact() {
    return seal.equals(fingerprint());
  }

  /**
   * The site.
   *
   * @param fileName the name that problems show
   */
  public SiteReading readSite(String fileName) {
    return SiteReader.read(site.json(), fileName);
  }

  /** The name of the site. */
  public String siteName() {
    return site.tree() instanceof Map<?, ?> map && map.get("name") instanceof String name
        ? name
        : "";
  }

  /** What is wrong with the parts together; empty where nothing is. */
  public List<String> problems() {
    List<String> problems = new ArrayList<>();
    Optional<Site> read =
        readSite("site").fold(valid -> Optional.of(valid.site()), i -> Optional.empty());
    read.ifPresent(
        found -> {
          List<String> named = found.zones().stream().map(Zone::name).toList();
          List<String> advised = zones.stream().map(SavedZone::name).toList();
          if (!named.equals(advised)) {
            problems.add(
                "zones: the zones advised are "
                    + shown(advised)
                    + "; those of the site are "
                    + shown(named));
          }
        });
    return problems;
  }

  private static String shown(List<String> names) {
    return names.stream().map(PlainText::shown).collect(Collectors.joining(", "));
  }

  /** The zone of that name, in any case. */
  public Optional<SavedZone> zone(String name) {
    return zones.stream().filter(zone -> zone.name().equalsIgnoreCase(name)).findFirst();
  }
}
