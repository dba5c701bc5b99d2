package org.standoff.rest.kit;

import org.standoff.catalogue.ItemId;
import org.standoff.kit.pack.HousePack;
import org.standoff.kit.stock.KitUnit;
import org.standoff.rest.problem.Fault;
import org.standoff.rest.problem.FaultCode;
import org.standoff.rest.problem.InvalidRequest;

/** Names in addresses, as far as something new takes them. */
final class KitNames {

  private KitNames() {}

  /** A house has the form of a pack's name, because its packs begin with it. */
  static void checkHouse(String id) {
    if (!ItemId.isPart(id)) {
      throw wrong("house", id, ItemId.FORM);
    }
  }

  static void checkPack(String house, String id) {
    if (!ItemId.isPart(id)) {
      throw wrong("pack", id, ItemId.FORM);
    }
    if (!HousePack.isNameOf(house, id)) {
      throw wrong("pack", id, house + ", or " + house + "- and more");
    }
  }

  static void checkSerial(String serial) {
    if (!serial.matches(KitUnit.NAME)) {
      throw wrong("serial", serial, KitUnit.NAME);
    }
  }

  private static InvalidRequest wrong(String parameter, String found, String allowed) {
    return new InvalidRequest(
        Fault.ofParameter(parameter, FaultCode.WRONG_FORM, "This is no name for a new one.")
            .found(found)
            .allowed(allowed));
  }
}
