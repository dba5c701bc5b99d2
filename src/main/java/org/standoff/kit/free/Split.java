package org.standoff.kit.free;

import java.util.List;

/**
 * A way to get what is wanted from several houses.
 *
 * @param parts what comes from where, in the order of lines, houses and rates
 * @param charges what each house that is used charges, in the order of the question
 * @param unmet what no house of the split has, by line
 * @param exact whether it was found by looking at every way; a very large question is cut off
 */
public record Split(List<Part> parts, List<HouseCharge> charges, List<Unmet> unmet, boolean exact) {

  /**
   * Units of one rate for one line.
   *
   * @param line its place in the question, from 0
   * @param house where they come from
   * @param quantity how many
   * @param dayRateMinor charge for a day and a unit
   * @param chargeMinor what they cost for the period
   */
  public record Part(int line, String house, int quantity, long dayRateMinor, long chargeMinor) {}

  /**
   * What a house charges.
   *
   * @param house the house
   * @param currency ISO 4217 code
   * @param chargedDays days that it charges for the period
   * @param sumMinor sum of the parts
   * @param minimumMinor least charge of the house
   * @param chargeMinor the greater of the two
   */
  public record HouseCharge(
      String house,
      String currency,
      double chargedDays,
      long sumMinor,
      long minimumMinor,
      long chargeMinor) {}

  /**
   * Units that are not to be had.
   *
   * @param line its place in the question, from 0
   * @param missingCount how many
   */
  public record Unmet(int line, int missingCount) {}

  public Split {
    parts = List.copyOf(parts);
    charges = List.copyOf(charges);
    unmet = List.copyOf(unmet);
  }
}
