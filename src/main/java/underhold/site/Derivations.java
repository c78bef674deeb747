package underhold.site;

import java.util.List;
import java.util.stream.Stream;

/** All ways in which facts follow from others. */
final class Derivations {
  /** Every derivation; those of the plain depths stand first, because others rest on them. */
  static final List<Derivation> ALL =
      Stream.of(
              DepthDerivations.ALL,
              BearingDerivations.ALL,
              LayerDerivations.ALL,
              PitDerivations.ALL,
              RatioDerivations.ALL)
          .flatMap(List::stream)
          .toList();

  private Derivations() {}

  /** The facts from which a fact may follow; empty where rules make it. */
  static List<String> sources(String target) {
    return ALL.stream()
        .filter(derivation -> derivation.target().equals(target))
        .flatMap(derivation -> derivation.from().stream())
        .distinct()
        .toList();
  }
}
