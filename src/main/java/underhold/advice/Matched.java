package underhold.advice;

import underhold.site.Origin;

/**
 * A fact that a finding rests on, as it was when the rule fired.
 *
 * @param name the fact's name
 * @param label the fact's name in sentences
 * @param value its value as the user reads it
 * @param origin where the value comes from
 * @param how the note, derivation or reason behind it; may be empty
 */
public record Matched(String name, String label, String value, Origin origin, String how) {}
