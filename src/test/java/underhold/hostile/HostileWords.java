package underhold.hostile;

import java.util.List;
import java.util.Random;

/** Words and values that programs stumble over. */
public final class HostileWords {
  private static final int MANY = 1_000_000;
  private static final int DEEP = 100_000;

  /** Values as they would stand in a JSON text, sound and unsound ones. */
  static final List<String> VALUES =
      List.of(
          "null",
          "true",
          "0",
          "-0",
          "-1",
          "1e999",
          "-1e999",
          "1e-999",
          "NaN",
          "Infinity",
          "007",
          "0x10",
          "1.",
          ".5",
          "9".repeat(400),
          "9".repeat(2000),
          "123456789012345678901234567890",
          "2147483648",
          "[]",
          "{}",
          "[[]]",
          "[null]",
          "{\"\": 0}",
          "{\"value\": null}",
          "{\"value\": \"unknown\", \"note\": 3}",
          "{\"underhold\": \"site/1\"}",
          "'single'",
          "/* remark */ 1",
          "\"unclosed",
          "\"\\q\"",
          "\"\\u12\"",
          "\"\\ud800\"",
          "\"\\udc00\\ud800\"",
          "\"\\u0000\"",
          "\"\\u001b[2J\\u001b[H\"",
          "\"\\u009b31m\"",
          "\"\\u202egnp.txt\"",
          "\"\\u2028\"",
          "\"\\ufeff\"",
          "\"\\r\\n\\t\\b\\f\"",
          "\"\u001b]0;title\u0007\"",
          "\"\u009b2J\"",
          "\"a\u0000b\"",
          "\"\\ud83d\\ude80\"");

  /** Texts without quotation marks, for files and command lines alike. */
  private static final List<String> TEXTS =
      List.of(
          "",
          " ",
          "-",
          "--",
          "---",
          "-x",
          "--=",
          "--=x",
          "=",
          "==",
          "a=",
          "=1+1",
          "+1",
          "-1",
          "@SUM(A1)",
          "=cmd|' /C calc'!A0",
          "\t=1",
          "0",
          "-0 m",
          "1e999 m",
          "-1e-999 m",
          "NaN m",
          "Infinity kN",
          "1,2,3 m",
          "1/0 ft",
          "3 1/2 1/2 in",
          "4 ft 11 in 3",
          "\u0661 m",
          "\uff11 m",
          "1 \u00b5m",
          "1 m m",
          "5' 6\"",
          "1e9999999999 m",
          "9999999999999999999999",
          "9".repeat(99) + " m",
          "unknown",
          "UNKNOWN ",
          "none",
          "null",
          "?",
          "back",
          "stop",
          "<script>alert(1)</script>",
          "\"><img src=x onerror=alert(1)>",
          "&lt;&#0;]]>",
          "](javascript:alert(1))",
          "| a | b |",
          "`x` **y** _z_",
          "{0} %s %n %99999d",
          "{loadPattern} [first] {",
          "${user.home} #{1+1}",
          "$(id) `id` ; id",
          "\\",
          "\\u001b",
          "\"",
          "'",
          "\"'",
          "\u0000",
          "a\u0000b",
          "\u001b[2J",
          "\u001b]0;title\u0007",
          "\u009b31m",
          "\b\b\b",
          "one\ntwo",
          "one\r\ntwo",
          "\u0085",
          "\u2028",
          "\u202ereversed",
          "\u2066",
          "\ufeff",
          "\u200b",
          "\ud800",
          "\udfff\ud800",
          "\ud83d\ude80",
          "e\u0301\u0301\u0301",
          "\u0130",
          "Stra\u00dfe",
          ".",
          "..",
          "/",
          "//",
          "~",
          "*",
          "../../../../etc/passwd",
          "/dev/zero",
          "/dev/null",
          "/dev/full",
          "/proc/self/mem",
          "CON",
          "C:\\x",
          "a/b/c/d.site.json",
          "x.site.json/y",
          ".site.json",
          "x".repeat(300),
          "x".repeat(300) + ".site.json",
          "y".repeat(10_000),
          "\u001b".repeat(500));

  private HostileWords() {}

  /** A word that nobody should type. */
  public static String text(Random random) {
    return TEXTS.get(random.nextInt(TEXTS.size()));
  }

  /** All of them, to be tried one by one. */
  public static List<String> texts() {
    return TEXTS;
  }

  /** A value as it would stand in a JSON text. */
  static String value(Random random) {
    return random.nextBoolean()
        ? VALUES.get(random.nextInt(VALUES.size()))
        : quoted(text(random), random.nextBoolean());
  }

  /** The text as JSON writes it, or with its control characters as they are. */
  static String quoted(String text, boolean escaped) {
    StringBuilder out = new StringBuilder("\"");
    for (char sign : text.toCharArray()) {
      if (sign == '"' || sign == '\\') {
        out.append('\\').append(sign);
      } else if (escaped && (sign < ' ' || sign > '~')) {
        out.append(String.format(java.util.Locale.ROOT, "\\u%04x", (int) sign));
      } else {
        out.append(sign);
      }
    }
    return out.append('"').toString();
  }

  /** Values so large or so deep that each is tried only now and then. */
  static List<String> huge() {
    return List.of(
        "[".repeat(DEEP),
        "[".repeat(DEEP) + "]".repeat(DEEP),
        "{\"a\":".repeat(DEEP) + "1" + "}".repeat(DEEP),
        "\"" + "x".repeat(MANY) + "\"",
        "\"" + "\\u001b".repeat(MANY / 6) + "\"",
        "\"" + "1 ".repeat(MANY / 2) + "m\"",
        "\"" + "9".repeat(MANY) + " m\"",
        "9".repeat(MANY),
        "1e" + "9".repeat(MANY),
        "[" + "1,".repeat(MANY) + "1]",
        "[" + "{},".repeat(MANY / 3) + "{}]",
        "{" + "\"a\":1,".repeat(MANY / 6) + "\"a\":1}",
        "{" + members(MANY / 12) + "\"z\":1}",
        " ".repeat(MANY) + "1",
        "\n".repeat(MANY) + "?");
  }

  private static String members(int count) {
    StringBuilder all = new StringBuilder();
    for (int i = 0; i < count; i++) {
      all.append("\"name").append(i).append("\":1,");
    }
    return all.toString();
  }
}
