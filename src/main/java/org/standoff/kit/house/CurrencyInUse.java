package org.standoff.kit.house;

import java.util.Currency;

/** A house would charge in another currency, although its units have rates in the one of now. */
public final class CurrencyInUse extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final Currency now;
  private final Currency wanted;

  CurrencyInUse(Currency now, Currency wanted) {
    super("The rates of the house's units, retired ones too, are in the currency of now.");
    this.now = now;
    this.wanted = wanted;
  }

  public Currency now() {
    return now;
  }

  public Currency wanted() {
    return wanted;
  }
}
