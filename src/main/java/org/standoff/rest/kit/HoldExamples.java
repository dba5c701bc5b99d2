package org.standoff.rest.kit;

/** What the description shows of holds; a test sends each of them. */
final class HoldExamples {

  static final String TENTATIVE = "01978d1e-6f00-7a11-8c01-5f0c3b9d2a01";
  static final String CONFIRMED = "01978d1e-6f00-7a11-8c02-5f0c3b9d2a02";
  static final String OUT = "01978d1e-6f00-7a11-8c03-5f0c3b9d2a03";

  static final String HOUSE = "ostrel-hire";
  static final String SERIAL = "sdc-omni-1-1";
  static final String KEY = "8e03978e-40d5-43dd-bc93-6894a57f9324";
  static final String ANY = "*";

  static final String WISH =
      """
      {
        "reference": "saltlight-2027-06",
        "from": "2027-06-11T10:00:00+02:00", "to": "2027-06-14T11:00:00+02:00",
        "lines": [
          { "house": "ostrel-hire", "microphone": "boathouse/sdc-omni-1", "quantity": 2, "matched": true },
          { "house": "ostrel-hire", "microphone": "boathouse/ldc-multi-1" }
        ],
        "lifetime_min": 2880
      }
      """;

  static final String SECOND =
      """
      {
        "reference": "saltlight-2027-06-ribbon",
        "from": "2027-06-11T10:00:00+02:00", "to": "2027-06-14T11:00:00+02:00",
        "lines": [ { "house": "vennick-loan-store", "microphone": "boathouse/rib-8-1", "quantity": 2 } ],
        "second": true
      }
      """;

  static final String EXTENSION =
      """
      { "to": "2027-06-15T09:00:00+02:00" }
      """;

  static final String SOME_UNITS =
      """
      { "units": ["clip-sup-1-3"] }
      """;

  static final String SEARCH =
      "house=ostrel-hire&state=confirmed&from=2027-06-01T00:00:00Z&to=2027-07-01T00:00:00Z";

  static final String WINDOW = "from=2027-06-01T00:00:00Z&to=2027-07-01T00:00:00Z";

  private HoldExamples() {}
}
