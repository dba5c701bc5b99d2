package org.standoff.rest.kit;

/** Words that the description of several operations needs. */
final class KitWords {

  static final String HOUSE = "Id of the house";
  static final String SERIAL = "Serial number of the unit in its house";
  static final String PACK =
      "Name of the pack: the id of the house, or that with a hyphen and more";

  static final String CONDITIONS =
      "To change what exists send its ETag as If-Match (428 without it, 412 where it is not the"
          + " present one); If-None-Match: * makes it only where it is new.";

  static final String TAKEN_BACK =
      "What was read can be sent back: members that only the service sets (readOnly) are passed"
          + " over, but the house or id of another one than the address names is refused (400). ";

  static final String DRY_RUN_NAME = "dry_run";
  static final String DRY_RUN = "true: check and report as ever, but change nothing";

  private KitWords() {}
}
