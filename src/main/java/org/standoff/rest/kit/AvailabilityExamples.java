package org.standoff.rest.kit;

/** Questions that the description shows; a test sends each of them. */
final class AvailabilityExamples {

  static final String QUERY =
      "microphone=boathouse/sdc-omni-1&quantity=2&matched=true&from=2027-06-11T08:00:00Z"
          + "&to=2027-06-14T09:00:00Z&houses=ostrel-hire&houses=vennick-loan-store";

  static final String SESSION =
      """
      {
        "from": "2027-06-11T10:00:00+02:00", "to": "2027-06-14T11:00:00+02:00",
        "houses": ["ostrel-hire", "vennick-loan-store"],
        "lines": [
          { "microphone": "boathouse/sdc-omni-1", "quantity": 2, "matched": true },
          { "microphone": "boathouse/ldc-multi-1", "quantity": 2 },
          { "microphone": "boathouse/clip-sup-1", "quantity": 3 },
          { "microphone": "boathouse/rib-8-1" }
        ]
      }
      """;

  private AvailabilityExamples() {}
}
