package underhold.report.html;

import java.util.List;

/** What a user, or a file of unknown origin, may put where a page expects words. */
public final class HostileTexts {
  private HostileTexts() {}

  /** The texts. */
  public static List<String> all() {
    return List.of(
        "<script>alert(1)</script>",
        "</title></style></svg><h1>mine</h1>",
        "\"]]>",
        "<![CDATA[ x ]]> <!-- y --> <?z?>",
        "{{ 7 * 7 }} ${7*7} !{x} @if(true)@endif @raw",
        "' onmouseover='alert(1)\" onload=\"alert(1)",
        "javascript:alert(1)",
        "\\\"; } body { display: none } @import url(http://example.invalid/x); \\",
        "&lt;b&gt; &amp; &#x3c; &copy",
        "W".repeat(10_000),
        "a b ".repeat(300),
        "bell \u0007, null \u0000, escape \u001b[31m, delete \u007f, next line \u0085",
        "half \ud83c and half \udf89, turned \udf89\ud83c",
        "price \u202e21 m\u202c override, \u2066isolate",
        "site \u05d0\u05ea\u05e8 12 m beside \u0645\u0648\u0642\u0639 34 kN",
        "\u5de5\u5730 emoji \ud83c\udfd7 combining e\u0301\u0323 \ufdd0 \uffff",
        "((((((((((".repeat(500),
        "M = ".repeat(200) + "1",
        "x = sqrt(((a / b)^2 + c)^2 / <i>d</i>)",
        " ",
        "\n\r\n\t");
  }
}
