package underhold.sizing.monitoring;

import static underhold.sizing.monitoring.MonitoringInputs.*;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import underhold.mechanics.movement.AverageSettlementLimit;
import underhold.mechanics.movement.DistortionLimit;
import underhold.mechanics.movement.RankinRisk;
import underhold.sizing.Amount;
import underhold.sizing.Basis;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.StepBuilder;

/** Limits of movement and of distortion that serve the structure; the strictest governs. */
final class LimitSection {
  private static final Source STATED = new Source("limit as stated for the site", Basis.SITE_FACT);

  /** A limit that may govern. */
  private record Candidate(String sign, String words, double value, Source source, boolean binds) {}

  private final MonitoringCase site;
  private final SheetBuilder sheet;

  private LimitSection(MonitoringCase site, SheetBuilder sheet) {
    this.site = site;
    this.sheet = sheet;
  }

  static Limits write(MonitoringCase site, SheetBuilder sheet) {
    return new LimitSection(site, sheet).write();
  }

  private Limits write() {
    List<Candidate> movements = movements();
    Candidate movement = strictest("movement-limit", "Movement limit", "S", movements, true);
    comparisons();
    List<Candidate> distortions = distortions();
    Optional<Candidate> distortion =
        distortions.isEmpty()
            ? Optional.empty()
            : Optional.of(
                strictest(
                    "distortion-limit", "Limit of angular distortion", "b", distortions, false));
    return new Limits(
        movement.value(),
        movement.source(),
        binding(movements),
        distortion.map(one -> OptionalDouble.of(one.value())).orElseGet(OptionalDouble::empty),
        distortion.map(Candidate::source).orElse(Source.judgement()),
        binding(distortions));
  }

  private static OptionalDouble binding(List<Candidate> candidates) {
    return candidates.stream().filter(Candidate::binds).mapToDouble(Candidate::value).min();
  }

  private List<Candidate> movements() {
    List<Candidate> candidates = new ArrayList<>();
    double limit = site.get(LIMIT);
    candidates.add(
        candidate(
            "s1",
            site.assumed(LIMIT) ? MovementLimit.assumed(limit) : MovementLimit.stated(limit)));
    if (site.historic()) {
      candidates.add(candidate("s2", MovementLimit.historic()));
    }
    for (Candidate one : candidates) {
      sheet
          .step(
              "movement-limit-" + one.sign(),
              "Movement limit, " + one.words(),
              "S = {" + one.sign() + "}")
          .with(one.sign(), one.words(), Amount.thickness(one.value()))
          .from(one.source())
          .gives(Amount.thickness(one.value()));
    }
    return candidates;
  }

  private static Candidate candidate(String sign, MovementLimit limit) {
    return new Candidate(sign, limit.words(), limit.metres(), limit.source(), limit.binds());
  }

  /** Published values that do not govern. */
  private void comparisons() {
    if (!site.building()) {
      return;
    }
    sheet
        .step("rankin-negligible", "For comparison: settlement of negligible risk", "S = {sr}")
        .with(
            "sr",
            "with a slope up to 1 in 500",
            Amount.thickness(RankinRisk.NEGLIGIBLE.mostSettlementMetres()))
        .from(Sources.of(RankinRisk.CITATION))
        .note("A first sieve for buildings above tunnels; it does not govern here.")
        .gives(Amount.thickness(RankinRisk.NEGLIGIBLE.mostSettlementMetres()));
    AverageSettlementLimit usual =
        AverageSettlementLimit.find(site.masonry() ? "plain-brick-long" : "framed").orElseThrow();
    sheet
        .step(
            "average-settlement",
            "For comparison: average settlement of " + usual.structure(),
            "S = {sa}")
        .with(
            "sa",
            "of a structure that goes down as a whole",
            Amount.thickness(usual.settlementMetres()))
        .from(Sources.of(AverageSettlementLimit.CITATION))
        .note("Beside an excavation only one end goes down: this does not govern.")
        .gives(Amount.thickness(usual.settlementMetres()));
  }

  private List<Candidate> distortions() {
    List<Candidate> candidates = new ArrayList<>();
    if (site.inputs().has(TILT)) {
      candidates.add(new Candidate("b0", "stated for the site", site.get(TILT), STATED, true));
    }
    int number = 1;
    for (DistortionLimit row : rows()) {
      candidates.add(
          new Candidate(
              "b" + number++,
              "%s, %s: %s".formatted(row.author(), row.structure(), row.meaning()),
              row.least(),
              Sources.of(row.citation()),
              false));
    }
    for (Candidate one : candidates) {
      sheet
          .step(
              "distortion-limit-" + one.sign(),
              "Limit of angular distortion, " + one.words(),
              "b = {" + one.sign() + "}")
          .with(one.sign(), one.words(), Amount.ratio(one.value()))
          .from(one.source())
          .gives(Amount.ratio(one.value()));
    }
    List<Candidate> chosen = chosen(candidates);
    if (chosen.isEmpty()) {
      sheet.notCovered(
          "Limits of angular distortion: none of the published ones at hand serves this kind of structure; its owner must state one.");
    }
    return chosen;
  }

  /** A stated limit always counts; of the others those of the author chosen, if he has any. */
  private List<Candidate> chosen(List<Candidate> candidates) {
    String author = site.get(MonitoringSettings.AUTHOR);
    List<Candidate> others =
        candidates.stream()
            .filter(one -> !one.binds())
            .filter(one -> plain(one.words()).startsWith(author.replace("-macdonald", "")))
            .toList();
    if (others.isEmpty()) {
      return candidates;
    }
    List<Candidate> chosen = new ArrayList<>(candidates.stream().filter(Candidate::binds).toList());
    chosen.addAll(others);
    return chosen;
  }

  private static String plain(String words) {
    return words.toLowerCase(Locale.ROOT);
  }

  private List<DistortionLimit> rows() {
    List<String> ids = new ArrayList<>();
    boolean high = site.get(STOREYS) > 1;
    if (site.building() || site.get(KIND).equals("tower-or-monument")) {
      ids.add("skempton-design");
      ids.add("bjerrum-no-cracking");
      if (site.masonry()) {
        ids.add(high ? "sowers-high-brick" : "sowers-low-brick");
        ids.add(high ? "hutchings-high-brick" : "hutchings-low-brick");
      } else if (site.get(MATERIAL).equals("reinforced-concrete")) {
        ids.add(site.framed() ? "sowers-concrete-frame" : "sowers-curtain-wall");
        ids.add("hutchings-frames");
      } else if (site.get(MATERIAL).equals("steel")) {
        ids.add("sowers-continuous-steel");
        ids.add("hutchings-frames");
      }
    }
    return ids.stream().map(id -> DistortionLimit.find(id).orElseThrow()).toList();
  }

  private Candidate strictest(
      String id, String title, String sign, List<Candidate> candidates, boolean length) {
    Candidate least =
        candidates.stream().min(Comparator.comparingDouble(Candidate::value)).orElseThrow();
    List<String> slots = candidates.stream().map(one -> "{" + one.sign() + "}").toList();
    StepBuilder step =
        sheet
            .step(id, title + " that governs", sign + " = min(" + String.join(", ", slots) + ")")
            .from(least.source());
    for (Candidate one : candidates) {
      step.with(one.sign(), one.words(), amount(one.value(), length));
    }
    step.note("Governs: " + least.words() + ".").gives(amount(least.value(), length));
    return least;
  }

  private static Amount amount(double value, boolean length) {
    return length ? Amount.thickness(value) : Amount.ratio(value);
  }
}
