package underhold.advice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import underhold.advice.RuleTokens.Kind;
import underhold.advice.RuleTokens.NotReadable;
import underhold.advice.RuleTokens.Token;

/**
 * Reads a rule file by the narrow grammar that rules are held to. Whatever the grammar does not
 * know (imports, functions, arithmetic, loops, other patterns, other actions) is refused with its
 * line, so a rule file can neither run code nor say what a program cannot read.
 *
 * <pre>
 * file      = "package" name "import" (ZoneFacts | PairFacts) "global" FindingSink "findings" rule*
 * rule      = "rule" text header* "agenda-group" text "when" (ZoneFacts | PairFacts) "(" condition ("," condition)* ")"
 *             "then" action "end"
 * header    = "@" ("id" | "basis" | "source" | "because" | "cause" | "hold") "(" text ")"
 * condition = fact "==" (text | "null") | fact "in" "(" text ("," text)* ")"
 *           | fact ("&lt;" | "&lt;=" | "&gt;" | "&gt;=") "limit" "(" text ")"
 * action    = "findings." verb "(" (text ",")* "drools.getRule" "(" ")" ")" ";"
 * </pre>
 */
final class RuleFileParser {
  private static final String IMPORT = "underhold.advice.ZoneFacts";
  private static final String PAIR_IMPORT = "underhold.advice.PairFacts";
  private static final String GLOBAL = "underhold.advice.FindingSink";

  /** Nobody reads more; the reading ends there. */
  static final int MOST_PROBLEMS = 200;

  private static final int MOST_CONDITIONS = 60;

  private final String file;
  private final RuleChecks checks;
  private final List<PackProblem> problems;
  private List<Token> tokens = List.of();
  private int at;
  private boolean pairs;

  RuleFileParser(String file, RuleChecks checks, List<PackProblem> problems) {
    this.file = file;
    this.checks = checks;
    this.problems = problems;
  }

  /**
   * The rules of the text; problems are added to the list and the rules that have them left out.
   */
  List<Rule> parse(String text) {
    List<Rule> rules = new ArrayList<>();
    tokens = RuleTokens.of(text);
    pairs = tokens.stream().anyMatch(token -> token.text().equals(PAIR_IMPORT));
    try {
      head();
    } catch (NotReadable e) {
      goOn(e, at);
    }
    while (peek().kind() != Kind.END && problems.size() < MOST_PROBLEMS) {
      int start = at;
      try {
        rule(rules);
      } catch (NotReadable e) {
        goOn(e, start + 1);
      }
    }
    return rules;
  }

  /** Tells what cannot be read and goes on with the next rule. */
  private void goOn(NotReadable e, int from) {
    problems.add(new PackProblem(file, e.line, String.valueOf(e.getMessage())));
    at = Math.max(from, at - 1);
    while (tokens.get(at).kind() != Kind.END && !ruleBegins()) {
      at++;
    }
  }

  private boolean ruleBegins() {
    Token token = tokens.get(at);
    return token.kind() == Kind.NAME
        && token.text().equals("rule")
        && tokens.get(at + 1).kind() == Kind.TEXT;
  }

  private void head() throws NotReadable {
    name("package");
    Token pack = next(Kind.NAME, "a package name");
    if (!pack.text().matches("[a-z][a-z0-9_]*(\\.[a-z][a-z0-9_]*)*")) {
      throw new NotReadable(pack.line(), "a package name is lower-case words with dots");
    }
    name("import");
    name(pairs ? PAIR_IMPORT : IMPORT);
    name("global");
    name(GLOBAL);
    name("findings");
  }

  private void rule(List<Rule> rules) throws NotReadable {
    int line = peek().line();
    name("rule");
    String sentence = next(Kind.TEXT, "the rule's sentence in quotes").text();
    Map<String, String> header = header();
    name("agenda-group");
    String phase = next(Kind.TEXT, "a phase in quotes").text();
    name("when");
    name(pairs ? "PairFacts" : "ZoneFacts");
    sign("(");
    List<Condition> conditions = new ArrayList<>();
    do {
      conditions.add(condition());
    } while (takeSign(","));
    if (conditions.size() > MOST_CONDITIONS) {
      throw new NotReadable(line, "a rule has at most " + MOST_CONDITIONS + " conditions");
    }
    sign(")");
    name("then");
    RuleDraft draft =
        new RuleDraft(sentence, header, phase, pairs, conditions, verb(), arguments(), line);
    name("end");
    checks.rule(file, draft, problems).ifPresent(rules::add);
  }

  private Map<String, String> header() throws NotReadable {
    Map<String, String> header = new LinkedHashMap<>();
    while (takeSign("@")) {
      Token key = next(Kind.NAME, "a header's name");
      sign("(");
      String value = next(Kind.TEXT, "a text in quotes").text();
      sign(")");
      if (header.put(key.text(), value) != null) {
        throw new NotReadable(key.line(), "@" + key.text() + " stands twice");
      }
    }
    return header;
  }

  private Condition condition() throws NotReadable {
    String fact = next(Kind.NAME, "a fact's name").text();
    Token operator = next();
    switch (operator.text()) {
      case "==" -> {
        Token operand = next();
        if (operand.kind() == Kind.NAME && operand.text().equals("null")) {
          return Condition.written(fact, Condition.Operator.UNKNOWN, List.of(), null);
        }
        if (operand.kind() != Kind.TEXT) {
          throw unexpected(operand, "a word in quotes or null");
        }
        return Condition.written(fact, Condition.Operator.IS, List.of(operand.text()), null);
      }
      case "in" -> {
        sign("(");
        List<String> words = new ArrayList<>();
        do {
          words.add(next(Kind.TEXT, "a word in quotes").text());
        } while (takeSign(","));
        sign(")");
        return Condition.written(fact, Condition.Operator.IN, words, null);
      }
      case "<", "<=", ">", ">=" -> {
        name("limit");
        sign("(");
        String limit = next(Kind.TEXT, "a limit's name in quotes").text();
        sign(")");
        return Condition.written(fact, numeric(operator.text()), List.of(), limit);
      }
      default -> throw unexpected(operator, "==, in, <, <=, > or >=");
    }
  }

  private static Condition.Operator numeric(String symbol) {
    return switch (symbol) {
      case "<" -> Condition.Operator.BELOW;
      case "<=" -> Condition.Operator.AT_MOST;
      case ">" -> Condition.Operator.ABOVE;
      default -> Condition.Operator.AT_LEAST;
    };
  }

  private String verb() throws NotReadable {
    Token call = next(Kind.NAME, "one action on findings");
    if (!call.text().startsWith("findings.")) {
      throw unexpected(call, "one action on findings");
    }
    return call.text().substring("findings.".length());
  }

  private List<String> arguments() throws NotReadable {
    List<String> arguments = new ArrayList<>();
    sign("(");
    while (peek().kind() == Kind.TEXT) {
      arguments.add(next().text());
      sign(",");
    }
    name("drools.getRule");
    sign("(");
    sign(")");
    sign(")");
    sign(";");
    return arguments;
  }

  private Token peek() {
    return tokens.get(at);
  }

  private Token next() throws NotReadable {
    Token token = tokens.get(at);
    if (token.kind() != Kind.END) {
      at++;
    }
    if (token.kind() == Kind.WRONG) {
      throw new NotReadable(token.line(), token.text());
    }
    return token;
  }

  private Token next(Kind kind, String what) throws NotReadable {
    Token token = next();
    if (token.kind() != kind) {
      throw unexpected(token, what);
    }
    return token;
  }

  private void name(String expected) throws NotReadable {
    Token token = next();
    if (token.kind() != Kind.NAME || !token.text().equals(expected)) {
      throw unexpected(token, expected);
    }
  }

  private void sign(String expected) throws NotReadable {
    Token token = next();
    if (token.kind() != Kind.SIGN || !token.text().equals(expected)) {
      throw unexpected(token, "'" + expected + "'");
    }
  }

  private boolean takeSign(String sign) {
    Token token = peek();
    boolean found = token.kind() == Kind.SIGN && token.text().equals(sign);
    if (found) {
      at++;
    }
    return found;
  }

  private static NotReadable unexpected(Token token, String wanted) {
    String found = token.kind() == Kind.END ? "the end of the file" : token.text();
    return new NotReadable(
        token.line(), "the rule grammar allows " + wanted + " here, not " + Texts.shorten(found));
  }
}
