package underhold.site;

import underhold.quantity.Quantity;

/** The value of a fact: one of the dictionary's words, or an amount with its unit. */
public sealed interface FactValue {
  /** The value as a person reads it: a word of the dictionary, or the amount as typed. */
  String text();

  /** One of the values that the dictionary allows; {@code yes} and {@code no} among them. */
  record Choice(String text) implements FactValue {}

  /** An amount. */
  record Amount(Quantity quantity) implements FactValue {
    @Override
    public String text() {
      return quantity.text();
    }
  }
}
