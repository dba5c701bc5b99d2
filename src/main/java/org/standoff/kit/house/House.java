package org.standoff.kit.house;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.ZoneId;
import java.util.Currency;
import org.jspecify.annotations.NullUnmarked;

/** The row of a house; what everybody else works with are its {@link HouseTerms}. */
@Entity
@NullUnmarked
public class House extends PanacheEntityBase {

  /** Lower case, digits and hyphens. */
  @Id public String id;

  public String title;

  /** IANA name of the time zone in which the house's days begin and end. */
  public String zone;

  /** ISO 4217 code in which it charges. */
  public String currency;

  /** As {@link OpeningHours#toString()} writes it. */
  public String hours;

  /** Minutes between a return and the next collection. */
  @Column(name = "turn_round_min")
  public int turnRoundMin;

  @Column(name = "drop_box")
  public boolean dropBox;

  @Column(name = "weekend_days")
  public BigDecimal weekendDays;

  @Column(name = "minimum_charge_minor")
  public long minimumChargeMinor;

  public long revision;

  /** Counts changes of its units. */
  @Column(name = "stock_revision")
  public long stockRevision;

  /** A new one, without terms; its revision counts from the first that it takes. */
  static House named(String id) {
    House house = new House();
    house.id = id;
    house.stockRevision = 1;
    return house;
  }

  void take(HouseTerms terms) {
    title = terms.title();
    zone = terms.zone().getId();
    currency = terms.currency().getCurrencyCode();
    hours = terms.hours().toString();
    turnRoundMin = (int) terms.turnRound().toMinutes();
    dropBox = terms.dropBox();
    weekendDays = terms.weekendDays();
    minimumChargeMinor = terms.minimumChargeMinor();
    revision++;
  }

  HouseTerms terms() {
    return new HouseTerms(
        id,
        title,
        ZoneId.of(zone),
        Currency.getInstance(currency),
        OpeningHours.parse(hours),
        Duration.ofMinutes(turnRoundMin),
        dropBox,
        weekendDays,
        minimumChargeMinor,
        revision);
  }
}
