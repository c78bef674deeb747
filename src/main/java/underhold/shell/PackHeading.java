package underhold.shell;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import underhold.advice.BuiltInPack;
import underhold.advice.RulePack;
import underhold.report.Look;
import underhold.report.PackLines;
import underhold.report.RulePackJson;

/** Tells once above an answer, or in its JSON, that it does not rest on the rules built in. */
final class PackHeading {
  /** For answers that rest on no rules, or say themselves which. */
  static final PackHeading NONE = new PackHeading(null);

  private final @Nullable RulePack pack;
  private boolean told;

  PackHeading(@Nullable RulePack pack) {
    this.pack = pack == null || BuiltInPack.is(pack) ? null : pack;
  }

  /** The lines the first time, then nothing. */
  String take(Look look) {
    if (pack == null || told) {
      return "";
    }
    told = true;
    return PackLines.text(pack, look) + "\n";
  }

  /** The tree with the rules and all their differences from those built in. */
  Object on(Object tree) {
    if (pack != null && tree instanceof Map<?, ?> object && !object.containsKey("rulePack")) {
      Map<Object, Object> told = new LinkedHashMap<>(object);
      told.put("rulePack", RulePackJson.of(pack));
      return told;
    }
    return tree;
  }
}
