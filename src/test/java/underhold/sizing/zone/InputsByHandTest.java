package underhold.sizing.zone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.quantity.UnitSystem;
import underhold.site.FactDictionary;
import underhold.site.Site;
import underhold.site.SiteReader;
import underhold.site.SiteReading;
import underhold.site.ZoneViews;
import underhold.sizing.Amount;
import underhold.sizing.Basis;
import underhold.sizing.Check;
import underhold.sizing.Given;
import underhold.sizing.MissingInput;
import underhold.sizing.Origin;
import underhold.sizing.Phrase;
import underhold.sizing.Sheet;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;

/** Inputs that a method takes from a zone, by hand; own cases. */
class InputsByHandTest {
  private static final Source GUESS = Source.judgement();
  private static final NumberInput SPAN =
      NumberInput.of("span", "clear span", Amount.length(0), 0.5, 5, "");
  private static final NumberInput LEVEL =
      NumberInput.of("level", "water level", Amount.length(0), -3, 3, "")
          .tried(NumberInput.Trial.SHIFT);
  private static final NumberInput WIDTH =
      NumberInput.of("width", "width", Amount.length(0), 0.1, 20, "footingWidth");
  private static final WordInput ROOM =
      WordInput.among("room", "room for braces", List.of("yes", "no", "little"), "bracingRoom");
  private static final WordInput CAREFUL =
      new WordInput("state", "state", List.of("poor", "good"), "", "What state is it in?", true);

  private static Site site(String facts, String layers) {
    String text =
        """
        { "underhold": "site/1", "name": "Own case, Kiln Row", "units": "SI",
          "ground": { "layers": [ %s ] },
          "zones": [ { "name": "wall", "facts": { "loadPattern": "continuous",
            "excavationPosition": "beside"%s } } ] }
        """
            .formatted(layers, facts.isEmpty() ? "" : ", " + facts);
    SiteReading reading = SiteReader.read(text, "own case");
    assertThat(reading).as(reading.toString()).isInstanceOf(SiteReading.Valid.class);
    return ((SiteReading.Valid) reading).site();
  }

  private static SiteFacts facts(String facts) {
    Site site = site(facts, "");
    return facts(site);
  }

  private static SiteFacts facts(Site site) {
    return new SiteFacts(ZoneViews.known(site, site.zones().get(0), FactDictionary.standard()));
  }

  @Test
  void input_that_stands_at_its_unfavourable_end_is_no_guess() {
    NumberInput still = SPAN.tried(NumberInput.Trial.NONE);
    assertThat(still.trial()).isEqualTo(NumberInput.Trial.NONE);
    assertThat(still.most()).isEqualTo(5);
    SiteFacts facts = facts("\"bracingRoom\": \"yes\"");
    Inputs inputs =
        Inputs.from(facts)
            .known(ROOM)
            .put(CAREFUL, Given.stated("good"))
            .orAssume(still, 2, GUESS)
            .orAssume(LEVEL, 1, GUESS)
            .build();
    assertThat(inputs.guessedNumbers()).containsExactly(LEVEL);
    assertThat(inputs.get(ROOM)).isEqualTo("yes");
    assertThat(inputs.get(CAREFUL)).isEqualTo("good");
  }

  @Test
  void number_input_accepts_its_ends() {
    assertThat(SPAN.accepts(0.5)).isTrue();
    assertThat(SPAN.accepts(5)).isTrue();
    assertThat(SPAN.accepts(0.49)).isFalse();
    assertThat(SPAN.accepts(5.01)).isFalse();
    assertThat(SPAN.accepts(Double.NaN)).isFalse();
    assertThat(SPAN.amount(2)).isEqualTo(Amount.length(2));
    assertThat(SPAN.trial()).isEqualTo(NumberInput.Trial.SCALE);
    assertThat(LEVEL.trial()).isEqualTo(NumberInput.Trial.SHIFT);
    assertThat(LEVEL.name()).isEqualTo("level");
    assertThat(NumberInput.of("x", "x", Amount.ratio(0), 1, 1, "").accepts(1)).isTrue();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> NumberInput.of("x", "x", Amount.ratio(0), 2, 1, ""))
        .withMessage("x: least is above most");
  }

  @Test
  void facts_are_known_assumed_or_absent() {
    SiteFacts facts = facts("\"footingWidth\": \"0.8 m\", \"bracingRoom\": \"yes\"");
    assertThat(facts.number("footingWidth").orElseThrow().value()).isEqualTo(0.8);
    assertThat(facts.number("footingWidth").orElseThrow().origin()).isEqualTo(Origin.STATED);
    assertThat(facts.number("footingWidth").orElseThrow().source().basis())
        .isEqualTo(Basis.SITE_FACT);
    assertThat(facts.number("clearSpan")).isEmpty();
    assertThat(facts.numberOrAssumed("clearSpan").orElseThrow().value()).isEqualTo(0.6);
    assertThat(facts.numberOrAssumed("clearSpan").orElseThrow().origin()).isEqualTo(Origin.ASSUMED);
    assertThat(facts.numberOrAssumed("clearSpan").orElseThrow().source().basis())
        .isEqualTo(Basis.JUDGEMENT);
    assertThat(facts.numberOrAssumed("footingWidth").orElseThrow().origin())
        .isEqualTo(Origin.STATED);
    assertThat(facts.word("bracingRoom").orElseThrow().value()).isEqualTo("yes");
    assertThat(facts.word("stabilitySeen")).isEmpty();
    assertThat(facts.wordOrAssumed("stabilitySeen").orElseThrow().value()).isEqualTo("no");
    assertThat(facts.wordOrAssumed("bracingRoom").orElseThrow().origin()).isEqualTo(Origin.STATED);
    assertThat(facts.word("footingWidth")).isEmpty();
    assertThat(facts.number("bracingRoom")).isEmpty();
    assertThat(facts.question("footingWidth")).isEqualTo("How wide is the footing?");
    SiteFacts deep = facts("\"foundingDepth\": \"1 m\", \"excavationDepth\": \"3 m\"");
    Given<Double> below = deep.number("excavationBelowFooting").orElseThrow();
    assertThat(below.value()).isCloseTo(2, within(1e-12));
    assertThat(below.origin()).isEqualTo(Origin.DERIVED);
    assertThat(below.source().basis()).isEqualTo(Basis.STATICS);
    Given<Double> shallow = SiteFacts.as(below, 1.0);
    assertThat(shallow.origin()).isEqualTo(Origin.DERIVED);
    assertThat(shallow.source()).isEqualTo(below.source());
    assertThat(shallow.value()).isEqualTo(1);
  }

  @Test
  void word_that_follows_by_a_rule_is_a_judgement() {
    Site site =
        site("\"foundingDepth\": \"1 m\"", "{ \"top\": \"0 m\", \"soil\": \"dense-sand\" }");
    Given<String> soil = facts(site).word("soilAtFooting").orElseThrow();
    assertThat(soil.value()).isEqualTo("dense-sand");
    assertThat(soil.origin()).isEqualTo(Origin.DERIVED);
    assertThat(soil.source().basis()).isEqualTo(Basis.JUDGEMENT);
  }

  @Test
  void inputs_ask_for_what_is_out_of_range_with_the_range() {
    SiteFacts facts = facts("\"footingWidth\": \"0.8 m\"");
    Inputs inputs =
        Inputs.from(facts)
            .put(SPAN, Given.stated(6.0))
            .put(LEVEL, Given.stated(Double.NaN))
            .known(WIDTH)
            .need(SPAN, "again")
            .need(CAREFUL, "it matters")
            .need(ROOM, "it braces")
            .object("wallLength", "too short")
            .ask("other", "What else?", "because")
            .build();
    assertThat(inputs.missing())
        .containsExactly(
            new MissingInput(
                "span",
                "What is the clear span?",
                "the clear span is 6 m (19.69 ft), and this sheet holds from 0.5 m (1.64 ft) to 5 m"
                    + " (16.4 ft)"),
            new MissingInput(
                "level",
                "What is the water level?",
                "the water level is 0 m (0 ft), and this sheet holds from -3 m (-9.843 ft) to 3 m"
                    + " (9.843 ft)"),
            new MissingInput("state", "What state is it in?", "it matters"),
            new MissingInput("bracingRoom", facts.question("bracingRoom"), "it braces"),
            new MissingInput("wallLength", facts.question("wallLength"), "too short"),
            new MissingInput("other", "What else?", "because"));
    assertThat(inputs.has(SPAN)).isFalse();
    assertThat(inputs.has(WIDTH)).isTrue();
    assertThat(inputs.find(SPAN)).isEmpty();
    assertThat(inputs.find(WIDTH).orElseThrow().value()).isEqualTo(0.8);
    assertThatIllegalStateException()
        .isThrownBy(() -> inputs.get(SPAN))
        .withMessage("no value for span");
    assertThatIllegalStateException()
        .isThrownBy(() -> inputs.get(ROOM))
        .withMessage("no value for room");
    NumberInput ratio = NumberInput.of("r", "ratio", Amount.ratio(0), 1, 2, "");
    assertThat(Inputs.from(facts).put(ratio, Given.stated(3.0)).build().missing().get(0).why())
        .isEqualTo("the ratio is 3, and this sheet holds from 1 to 2");
  }

  @Test
  void inputs_take_known_then_assumed_values_and_keep_their_order() {
    SiteFacts facts = facts("\"footingWidth\": \"0.8 m\", \"bracingRoom\": \"yes\"");
    NumberInput bridge = NumberInput.of("bridge", "bridge", Amount.length(0), 0, 9, "clearSpan");
    WordInput seen = WordInput.among("seen", "seen", List.of("yes", "no"), "stabilitySeen");
    Inputs.Builder builder =
        Inputs.from(facts)
            .known(bridge)
            .known(seen)
            .knownOrAssumed(WIDTH)
            .knownOrAssumed(ROOM)
            .orAssume(ROOM, "no", GUESS)
            .orAssume(CAREFUL, "poor", GUESS);
    assertThat(builder.has(bridge)).isFalse();
    assertThat(builder.has(WIDTH)).isTrue();
    Inputs inputs =
        builder
            .knownOrAssumed(bridge)
            .knownOrAssumed(seen)
            .orAssume(bridge, 5, GUESS)
            .orAssume(SPAN, 2, GUESS)
            .need(WIDTH, "no")
            .need(ROOM, "no")
            .build();
    assertThat(inputs.missing()).isEmpty();
    assertThat(inputs.numbers()).containsExactly(WIDTH, bridge, SPAN);
    assertThat(inputs.words()).containsExactly(ROOM, CAREFUL, seen);
    assertThat(inputs.get(ROOM)).isEqualTo("yes");
    assertThat(inputs.get(seen)).isEqualTo("no");
    assertThat(inputs.get(bridge)).isEqualTo(0.6);
    assertThat(inputs.amount(SPAN)).isEqualTo(Amount.length(2));
    assertThat(inputs.guessedNumbers()).containsExactly(bridge, SPAN);
    assertThat(inputs.guessedWords()).containsExactly(seen);
    SheetBuilder sheet = SheetBuilder.titled("t", "m");
    inputs.write(sheet);
    assertThat(sheet.build().inputs().stream().map(one -> one.name()))
        .containsExactly("width", "bridge", "span", "room", "state", "seen");
    assertThat(sheet.build().input("room").orElseThrow().words()).isEqualTo("yes");
    assertThat(sheet.build().input("span").orElseThrow().amount()).contains(Amount.length(2));
    assertThat(sheet.build().input("span").orElseThrow().origin()).isEqualTo(Origin.ASSUMED);
    Inputs other = inputs.with(SPAN, Given.stated(3.0)).with(ROOM, Given.stated("no"));
    assertThat(other.get(SPAN)).isEqualTo(3);
    assertThat(other.get(ROOM)).isEqualTo("no");
    assertThat(inputs.get(SPAN)).isEqualTo(2);
    assertThat(other.guessedNumbers()).containsExactly(bridge);
  }

  @Test
  @DisplayName(
      "Own case: an assumed span of 2 m is tried at 1 and 4 m, a level at one metre off, a word at"
          + " each other")
  void assumed_inputs_are_tried_at_their_other_values() {
    Inputs inputs =
        Inputs.from(facts(""))
            .orAssume(SPAN, 4, GUESS)
            .orAssume(LEVEL, 2.5, GUESS)
            .orAssume(ROOM, "yes", GUESS)
            .orAssume(CAREFUL, "poor", GUESS)
            .build();
    List<String> tried = new ArrayList<>();
    Function<Inputs, Sheet> method =
        in -> {
          tried.add(in.get(SPAN) + " " + in.get(LEVEL) + " " + in.get(ROOM));
          SheetBuilder sheet = SheetBuilder.titled("t", "m");
          check(sheet, "span", in.get(SPAN) < 3 ? 1 : 0, 2);
          check(sheet, "capacity", 1, in.get(LEVEL) > 2.9 ? 3 : 2);
          check(sheet, "word", in.get(ROOM).equals("little") ? 1 : 0, 2);
          check(sheet, "still", 1, 2);
          if (in.get(SPAN) < 4.5) {
            check(sheet, "gone", 1, 2);
          }
          sheet.verdict(
              "verdict",
              "v",
              Amount.ratio(1),
              Amount.ratio(2),
              in.get(LEVEL) < 2 ? Verdict.REFER : Verdict.PASSES,
              GUESS,
              Phrase.of("Note {n}.", "n", Amount.count(1)));
          return sheet.build();
        };
    Sheet sheet = AssumedInputs.referred(inputs, method);
    // 4 m: 2 m, and 8 m held at the greatest 5 m; 2.5 m: 1.5 m, and 3.5 m held at 3 m
    assertThat(tried)
        .containsExactly(
            "4.0 2.5 yes",
            "2.0 2.5 yes",
            "5.0 2.5 yes",
            "4.0 1.5 yes",
            "4.0 3.0 yes",
            "4.0 2.5 no",
            "4.0 2.5 little");
    assertThat(sheet.checks().stream().map(Check::id))
        .containsExactly("span", "capacity", "word", "still", "gone", "verdict");
    assertThat(sheet.checks().stream().map(Check::verdict))
        .containsExactly(
            Verdict.REFER,
            Verdict.REFER,
            Verdict.REFER,
            Verdict.PASSES,
            Verdict.REFER,
            Verdict.REFER);
    assertThat(sheet.check("span").orElseThrow().note().in(UnitSystem.SI))
        .isEqualTo("It would pass, but nobody stated what it rests on: clear span.");
    assertThat(sheet.check("verdict").orElseThrow().note().in(UnitSystem.SI))
        .isEqualTo("Note 1. It would pass, but nobody stated what it rests on: water level.");
    assertThat(sheet.check("word").orElseThrow().note().in(UnitSystem.SI))
        .endsWith("rests on: room for braces.");
  }

  private static void check(SheetBuilder sheet, String id, double demand, double capacity) {
    sheet.check(id, id, Amount.ratio(demand), Amount.ratio(capacity), GUESS, "");
  }

  @Test
  void only_a_pass_is_referred() {
    SheetBuilder sheet = SheetBuilder.titled("t", "m");
    check(sheet, "fails", 3, 2);
    check(sheet, "passes", 1, 2);
    Sheet done = sheet.build();
    Check fails = done.checks().get(0);
    Check passes = done.checks().get(1);
    assertThat(AssumedInputs.refer(fails, List.of("a"))).isSameAs(fails);
    assertThat(AssumedInputs.refer(passes, List.of())).isSameAs(passes);
    Check referred = AssumedInputs.refer(passes, List.of("a", "b"));
    assertThat(referred.verdict()).isEqualTo(Verdict.REFER);
    assertThat(referred.note().template())
        .isEqualTo("It would pass, but nobody stated what it rests on: a; b.");
    assertThat(referred.demand()).isEqualTo(passes.demand());
  }
}
