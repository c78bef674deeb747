package underhold.report;

import underhold.advice.Basis;
import underhold.advice.Finding;
import underhold.advice.Matched;
import underhold.advice.MatchedLimit;
import underhold.advice.NearMiss;
import underhold.advice.Truth;

/** One finding, or one rule that nearly fired, with all that it rests on. */
final class FindingBlock {
  private static final int MARK = 10;

  private final TextPage page;
  private final int margin;

  FindingBlock(TextPage page, int margin) {
    this.page = page;
    this.margin = margin;
  }

  /** The finding under a word of what it does, with its rule, facts, limits and source. */
  void full(Finding finding, String mark, String tag) {
    page.item(Words.tint(finding.effect()), margin, mark, MARK, finding.reason() + " " + tag);
    detail("rule", finding.rule().sentence());
    grounds(finding);
  }

  /** The facts, limits and source of a finding. */
  void grounds(Finding finding) {
    finding.facts().forEach(fact -> detail("fact", fact(fact)));
    finding.limits().forEach(limit -> detail("limit", limit(limit)));
    detail("source", source(finding));
  }

  void detail(String mark, String words) {
    page.item(Tint.QUIET, margin + MARK, mark, MARK, words);
  }

  private static String fact(Matched fact) {
    String how = fact.how().isEmpty() ? "" : ": " + fact.how();
    return fact.label() + " " + fact.value() + " (" + fact.origin().word() + how + ")";
  }

  private static String limit(MatchedLimit limit) {
    return limit.label() + " " + limit.value() + " (" + limit.basis().notice() + ")";
  }

  static String source(Finding finding) {
    return finding.source().isEmpty()
        ? "none; " + finding.rule().basis().notice()
        : finding.rule().basis() == Basis.FROM_MEMORY
            ? finding.source()
            : finding.source() + " (" + finding.rule().basis().notice() + ")";
  }

  /** A rule that nearly fired: what it would have said and what stood in its way. */
  void nearMiss(NearMiss miss) {
    String would = Words.verb(miss.rule().effect());
    page.item(
        margin,
        miss.rule().id(),
        MARK,
        miss.rule().sentence() + " (" + would + Words.about(miss.rule()) + ")");
    detail(
        miss.truth() == Truth.OPEN ? "open" : "failed", Words.sentence(miss.explanation()) + ".");
  }
}
