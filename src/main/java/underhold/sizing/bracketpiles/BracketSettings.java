package underhold.sizing.bracketpiles;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import underhold.mechanics.micropile.CasingSection;
import underhold.mechanics.micropile.GroutBond.Grouting;
import underhold.mechanics.micropile.SteelBar;
import underhold.sizing.Amount;
import underhold.sizing.Choice;
import underhold.sizing.SettingTable;
import underhold.sizing.Settings;
import underhold.sizing.Source;

/**
 * The settings in force.
 *
 * @param all the settings, of the table of bracket piles
 */
record BracketSettings(Settings all) {
  private static final String UNDECIDED = "undecided";
  private static final double METRES_PER_INCH = 0.0254;
  private static final String LIGHTEST = "lightest-that-passes";

  /** No default hides who carries the moment. */
  static final Choice MOMENT_PATH =
      new Choice(
          "moment-path",
          "what carries the moment of the eccentricity; no default, to be decided",
          List.of(UNDECIDED, "pile-head", "couple", "paired", "tied"),
          Source.statics());

  static final Choice SURVEYED =
      new Choice(
          "pile-position",
          "whether the pile's place is planned or surveyed as built",
          List.of("planned", "surveyed"),
          Sources.IBC_MISLOCATION);

  static final Choice CASING = new Choice("casing", "casing of the pile", casings(), Sources.FHWA);

  static final Choice BAR = new Choice("bar", "bar of the pile", bars(), Sources.FHWA);

  static final Choice GROUTING =
      new Choice(
          "grouting",
          "how the bond length is grouted: types A, B, C and D",
          List.of("gravity", "pressure", "post-grouted-once", "post-grouted-repeatedly"),
          Sources.FHWA_BOND);

  static final Choice WELD =
      new Choice(
          "weld",
          "weld of the bracket plates to the sleeve",
          List.of("two-verticals", "box"),
          Sources.WELD_METHOD);

  static final Choice ANCHORS =
      new Choice(
          "anchors",
          "anchors of a couple; brick and rubble are always bolted through",
          List.of("post-installed", "through-bolts"),
          Sources.ACI_ANCHOR);

  static final SettingTable TABLE =
      new SettingTable(
          "bracket piles",
          Arrays.stream(BracketSetting.values()).map(BracketSetting::setting).toList(),
          List.of(MOMENT_PATH, SURVEYED, CASING, BAR, GROUTING, WELD, ANCHORS));

  double get(BracketSetting setting) {
    return all.get(setting.setting());
  }

  Amount amount(BracketSetting setting) {
    return all.amount(setting.setting());
  }

  Source source(BracketSetting setting) {
    return setting.setting().source();
  }

  /** The path that the user decided on. */
  Optional<MomentPath> path() {
    String word = all.get(MOMENT_PATH);
    return word.equals(UNDECIDED) ? Optional.empty() : Optional.of(MomentPath.of(word));
  }

  boolean surveyed() {
    return all.get(SURVEYED).equals("surveyed");
  }

  SteelBar bar() {
    return SteelBar.named(all.get(BAR)).orElseThrow();
  }

  Grouting grouting() {
    return Grouting.valueOf(all.get(GROUTING).toUpperCase(Locale.ROOT).replace('-', '_'));
  }

  boolean boxWeld() {
    return all.get(WELD).equals("box");
  }

  boolean throughBolts() {
    return all.get(ANCHORS).equals("through-bolts");
  }

  /** The casings to try, the lightest first. */
  List<CasingSection> casingsToTry() {
    String word = all.get(CASING);
    return CasingSection.table().stream()
        .filter(one -> word.equals(LIGHTEST) || name(one).equals(word))
        .sorted((one, other) -> Double.compare(one.area(), other.area()))
        .toList();
  }

  /** A casing as ordered: "7 x 0.5 in". */
  static String name(CasingSection casing) {
    return inches(casing.outsideDiameterMetres()) + " x " + inches(casing.wallMetres()) + " in";
  }

  private static String inches(double metres) {
    return BigDecimal.valueOf(metres / METRES_PER_INCH)
        .setScale(3, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  private static List<String> casings() {
    List<String> words = new ArrayList<>(List.of(LIGHTEST));
    CasingSection.table().forEach(one -> words.add(name(one)));
    return words;
  }

  private static List<String> bars() {
    String usual = "No. 14 Gr 75";
    List<String> words = new ArrayList<>(SteelBar.table().stream().map(SteelBar::name).toList());
    words.remove(usual);
    words.add(0, usual);
    return words;
  }
}
