package underhold.site;

import org.jspecify.annotations.Nullable;
import underhold.quantity.Quantity;

/** The value of a fact: one of the dictionary's words, or an amount with its unit. */
public sealed interface FactValue {
  /** The value as a person reads it: a word of the dictionary, or the amount as typed. */
  String text();

  /** One of the values that the dictionary allows; {@code yes} and {@code no} among them. */
  record Choice(String text) implements FactValue {
    // Written out because trials compare words millions of times.
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Choice choice && text.equals(choice.text);
    }

    @Override
    public int hashCode() {
      return text.hashCode();
    }
  }

  /** An amount. */
  record Amount(Quantity quantity) implements FactValue {
    @Override
    public boolean equals(@Nullable Object other) {
      return this == other || other instanceof Amount amount && quantity.equals(amount.quantity);
    }

    @Override
    public int hashCode() {
      return quantity.hashCode();
    }

    @Override
    public String text() {
      return quantity.text();
    }
  }
}
