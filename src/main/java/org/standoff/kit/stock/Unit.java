package org.standoff.kit.stock;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import org.jspecify.annotations.NullUnmarked;

/** The row of a unit; what everybody else works with are {@link StoredUnit}s. */
@Entity
@NullUnmarked
public class Unit extends PanacheEntityBase {

  /** For the database alone; outside, a unit is its serial number in its house. */
  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  public Long id;

  public String house;

  public String serial;

  public String microphone;

  @Column(name = "matched_group")
  public String matchedGroup;

  public String state;

  @Column(name = "day_rate_minor")
  public long dayRateMinor;

  public String note;

  @Column(name = "replacement_minor")
  public Long replacementMinor;

  @Column(name = "match_within_db")
  public Double matchWithinDb;

  public long revision;

  void take(KitUnit unit) {
    serial = unit.serial();
    microphone = unit.microphone();
    matchedGroup = unit.matchedGroup();
    state = unit.state().word();
    dayRateMinor = unit.dayRateMinor();
    note = unit.note();
    replacementMinor = unit.replacementMinor();
    matchWithinDb = unit.matchWithinDb();
    revision++;
  }

  StoredUnit stored() {
    KitUnit unit =
        new KitUnit(
            serial,
            microphone,
            matchedGroup,
            UnitState.of(state).orElseThrow(),
            dayRateMinor,
            note,
            replacementMinor,
            matchWithinDb);
    return new StoredUnit(house, unit, revision);
  }
}
