package underhold.report;

import java.util.List;
import java.util.Map;
import underhold.advice.RulePack;

/**
 * What a screened zone rests on, and what was left out: stands in every row, so that a row copied
 * elsewhere still tells it, and tells whether a begun table may be gone on with.
 *
 * @param pack the rules
 * @param draws how many draws tell how firm an answer is; 0 for none
 * @param seed their seed
 */
public record ScreeningBasis(RulePack pack, int draws, long seed) {
  /** What a screening leaves out beside the whole advice. */
  private static final List<String> LEFT_OUT =
      List.of(
          "open questions are not tried",
          "zones of one site are not chosen together",
          "only the sheet of the leader is made whole; of the others only failing checks are found,"
              + " which are all that counts in the ranking");

  /** In one line. */
  public String text() {
    return "Quick: Underhold "
        + Program.version()
        + ", rule pack "
        + Program.rules(pack)
        + (underhold.advice.BuiltInPack.is(pack) ? "" : ", not the rules built in")
        + "; every option sized, whole sheet for the leader only; "
        + (draws == 0 ? "no draws" : draws + " draws from seed " + seed)
        + "; open questions and scheme left out. Decision support only: an engineer must check.";
  }

  /** For programs. */
  Map<String, Object> tree() {
    return Json.object(
        "program", Json.object("name", Program.NAME, "version", Program.version()),
        "rulePack", RulePackJson.of(pack),
        "caution", Program.CAUTION,
        "quick",
            Json.object(
                "sizing", "every option that is not ruled out",
                "draws", draws,
                "seed", seed,
                "leftOut", LEFT_OUT));
  }
}
