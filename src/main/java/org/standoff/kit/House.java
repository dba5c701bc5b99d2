package org.standoff.kit;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;

/** Who owns microphones and lends them. */
@Entity
public class House extends PanacheEntityBase {

  /** Lower case, digits and hyphens. */
  @Id public String id;

  public String title;

  /** IANA name of the time zone in which the house's days begin and end. */
  public String zone;
}
