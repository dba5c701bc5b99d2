package org.standoff.rest.json;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.tuple;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import jakarta.validation.Valid;
import jakarta.validation.Validation;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import java.io.ByteArrayInputStream;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standoff.rest.problem.Fault;
import org.standoff.rest.problem.FaultCode;
import org.standoff.rest.problem.InvalidRequest;
import org.standoff.rest.problem.ProblemMember;
import org.standoff.rest.problem.ProblemType;

class RequestReaderTest {

  enum Side {
    FRONT,
    REAR_WALL
  }

  record Preamp(
      @NotNull @DecimalMin("-20") @DecimalMax("40") Double maxInputDbu, Boolean phantom) {}

  record Question(
      @NotNull String source,
      @NotNull @DecimalMin("0.01") @DecimalMax("100") Double distanceM,
      Integer seats,
      Side side,
      @Valid Preamp preamp,
      @Size(max = 3) List<@NotNull String> microphones,
      @Size(max = 3) List<@Valid Preamp> others) {}

  record StoredShelf(String house, String label, List<StoredShelf> above, long revision) {}

  @TakesBack(StoredShelf.class)
  record Shelf(@NotNull String label, List<@Valid Shelf> above) {}

  private final RequestReader reader = reader();

  @Test
  void aRequestInOrderIsRead() {
    Question question =
        read(
            """
            {"source": "core/kick", "distance_m": 1, "seats": 3, "side": "rear-wall",
             "preamp": {"max_input_dbu": 10.5, "phantom": true}, "microphones": ["a", "b"]}""");
    assertThat(question)
        .isEqualTo(
            new Question(
                "core/kick",
                1.0,
                3,
                Side.REAR_WALL,
                new Preamp(10.5, true),
                List.of("a", "b"),
                null));
  }

  @Test
  void whatOnlyTheServiceSetsIsPassedOverAtAnyDepth() {
    Shelf shelf =
        shelf(
            """
            {"house": "h", "label": "a", "revision": 7,
             "above": [{"label": "b", "house": null, "revision": ["whatever"]}]}""");
    assertThat(shelf).isEqualTo(new Shelf("a", List.of(new Shelf("b", null))));
  }

  @Test
  void whatContradictsTheAddressOrIsUnknownIsToldAtItsPlace() {
    String body =
        """
        {"house": "x", "label": "a", "revison": 7,
         "above": [{"label": "b"}, {"house": {"id": "h"}, "label": 1}]}""";
    InvalidRequest refused = catchThrowableOfType(InvalidRequest.class, () -> shelf(body));
    assertThat(refused.faults())
        .extracting(Fault::pointer, Fault::code)
        .containsExactlyInAnyOrder(
            tuple("/house", FaultCode.CONTRADICTION),
            tuple("/revison", FaultCode.UNKNOWN_NAME),
            tuple("/above/1/house", FaultCode.CONTRADICTION),
            tuple("/above/1/label", FaultCode.WRONG_TYPE));
  }

  private Shelf shelf(String body) {
    return reader.read(
        new ByteArrayInputStream(body.getBytes(UTF_8)), Shelf.class, Map.of("house", "h"));
  }

  @Test
  void everyFaultIsToldAtOnceEachAtItsPlace() {
    List<Fault> faults =
        faults(
            """
            {"sorce": "x", "distance_m": "far", "seats": 1.5, "side": "fornt",
             "preamp": {"max_input_dbu": 41, "phantom": "yes"},
             "microphones": ["a", 5, {}], "others": [{"max_input_dbu": 1}, {}]}""");
    assertThat(faults)
        .extracting(Fault::pointer, Fault::code)
        .containsExactlyInAnyOrder(
            tuple("/sorce", FaultCode.UNKNOWN_NAME),
            tuple("/source", FaultCode.MISSING),
            tuple("/distance_m", FaultCode.WRONG_TYPE),
            tuple("/seats", FaultCode.WRONG_TYPE),
            tuple("/side", FaultCode.UNKNOWN_VALUE),
            tuple("/preamp/max_input_dbu", FaultCode.OUT_OF_RANGE),
            tuple("/preamp/phantom", FaultCode.WRONG_TYPE),
            tuple("/microphones/1", FaultCode.WRONG_TYPE),
            tuple("/microphones/2", FaultCode.WRONG_TYPE),
            tuple("/others/1/max_input_dbu", FaultCode.MISSING));
  }

  @Test
  void aNearMissIsSuggestedForNamesAndValues() {
    List<Fault> faults =
        faults("{\"source\": \"a\", \"distanse_m\": 1, \"distance_m\": 1, \"side\": \"fornt\"}");
    assertThat(faults)
        .extracting(Fault::found, Fault::suggestion)
        .containsExactlyInAnyOrder(tuple("distanse_m", "distance_m"), tuple("fornt", "front"));
    assertThat(faults)
        .extracting(Fault::allowed)
        .contains(
            "front, rear-wall", "distance_m, microphones, others, preamp, seats, side, source");
  }

  @Test
  void aFigureOutOfRangeIsToldWithItsLimit() {
    assertThat(faults("{\"source\": \"a\", \"distance_m\": 0}"))
        .containsExactly(
            Fault.atPointer(
                    "/distance_m",
                    FaultCode.OUT_OF_RANGE,
                    "'distance_m' must be greater than or equal to 0.01.")
                .found("0.0")
                .allowed("at least 0.01")
                .with(ProblemMember.MINIMUM, new BigDecimal("0.01")));
  }

  record Weights(@Size(max = 2) Map<@Size(max = 5) String, @DecimalMax("60") Double> weightsDb) {}

  @Test
  void aMapIsBoundedInItsEntriesInTheirNamesAndInTheirValues() {
    assertThat(faults("{\"weights_db\": {\"a\": 1, \"b\": 2, \"c\": 3}}", Weights.class))
        .extracting(Fault::pointer, Fault::code, Fault::found, Fault::allowed)
        .containsExactly(
            tuple("/weights_db", FaultCode.WRONG_LENGTH, "3 entries", "0 to 2 entries"));
    assertThat(faults("{\"weights_db\": {\"drums\": 61, \"violin\": 1}}", Weights.class))
        .extracting(Fault::pointer, Fault::code, Fault::found, Fault::allowed)
        .containsExactlyInAnyOrder(
            tuple("/weights_db/drums", FaultCode.OUT_OF_RANGE, "61.0", "at most 60"),
            tuple("/weights_db/violin", FaultCode.WRONG_LENGTH, "violin", "0 to 5 characters"));
  }

  record Booking(Integer quantity, Long rateMinor, Instant from) {}

  @Test
  void aWholeNumberMayHaveAPointAndNothingBehindIt() {
    Booking booking =
        reader.read("{\"quantity\": 3.0, \"rate_minor\": 1.2e3}".getBytes(UTF_8), Booking.class);
    assertThat(booking).isEqualTo(new Booking(3, 1200L, null));
    for (String other : List.of("3.5", "3000000000.0", "\"3\"", "1e400", "true")) {
      assertThat(bookingFaults("quantity", other)).as(other).isEqualTo("/quantity");
    }
    assertThat(bookingFaults("rate_minor", "1e17")).isEqualTo("/rate_minor");
  }

  @Test
  void aMomentIsReadAsRfc3339HasIt() {
    for (String same :
        List.of(
            "2027-06-11T08:00:00Z", "2027-06-11t10:00:00.000+02:00", "2027-06-10T22:30:00-09:30")) {
      byte[] body = "{\"from\": \"%s\"}".formatted(same).getBytes(UTF_8);
      Booking booking = reader.read(body, Booking.class);
      assertThat(booking.from()).as(same).isEqualTo("2027-06-11T08:00:00Z");
    }
    for (String other :
        List.of(
            "\"1812968400\"",
            "1812968400",
            "\"2027-06-11T08:00Z\"",
            "\"2027-06-11T08:00:00\"",
            "\"2027-06-11T08:00:00+0200\"",
            "\"2027-02-29T08:00:00Z\"",
            "\"2027-06-11T24:00:00Z\"",
            "\"+12027-06-11T08:00:00Z\"",
            "\"\"",
            "[]")) {
      assertThat(bookingFaults("from", other)).as(other).isEqualTo("/from");
    }
  }

  private String bookingFaults(String member, String value) {
    byte[] body = "{\"%s\": %s}".formatted(member, value).getBytes(UTF_8);
    InvalidRequest refused =
        catchThrowableOfType(InvalidRequest.class, () -> reader.read(body, Booking.class));
    return refused.faults().get(0).pointer();
  }

  @ParameterizedTest
  @ValueSource(strings = {"1e999", "-1e999"})
  void aNumberBeyondBinary64IsRefusedAtItsPlace(String number) {
    assertThat(faults("{\"source\": \"a\", \"distance_m\": " + number + "}"))
        .extracting(Fault::pointer, Fault::code)
        .containsExactly(tuple("/distance_m", FaultCode.OUT_OF_RANGE));
  }

  @Test
  void malformedJsonIsToldWithLineAndColumn() {
    InvalidRequest refused = refused("{\n  \"source\": }");
    assertThat(refused.type()).isEqualTo(ProblemType.MALFORMED_BODY);
    assertThat(refused.faults())
        .extracting(Fault::line, Fault::column, Fault::code)
        .containsExactly(tuple(2, 13, FaultCode.MALFORMED));
    assertThat(refused.getMessage()).doesNotContain("jackson").doesNotContain("java");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "{'b'}|~'~|~Unexpected character ('''): was expecting double-quote to start field name~",
        "{/* no */}|/|Unexpected character ('/')",
        "{\"a\": 01}||Invalid numeric value: Leading zeroes not allowed",
        "{\"7\": 1, \"7\": 2}|7|Duplicate field '7'",
        "[[1, 2||Unexpected end-of-input: expected close marker for Array"
      })
  void whyABodyCannotBeReadIsToldWithoutNumbersAndSwitchesOfTheLibrary(
      String body, String found, String detail) {
    assertThat(refused(body).faults())
        .singleElement()
        .returns(found, Fault::found)
        .returns(detail, Fault::detail);
  }

  @Test
  void textBeyondTheLimitsIsRefusedUnread() {
    List<String> bodies =
        List.of(
            "",
            "{\"source\": NaN}",
            "{\"source\": \"a\", \"source\": \"b\"}",
            "{} {}",
            "[".repeat(40),
            "{\"a\": " + "9".repeat(100) + "}",
            "{\"a\": \"" + "x".repeat(JsonSetup.LONGEST_TEXT + 1) + "\"}");
    assertThat(bodies)
        .allSatisfy(
            body -> {
              InvalidRequest refused = refused(body);
              assertThat(refused.type()).isEqualTo(ProblemType.MALFORMED_BODY);
              assertThat(refused.getMessage()).doesNotContain("StreamRead").doesNotContain("java");
            });
  }

  @ParameterizedTest
  @ValueSource(strings = {"null", "[]", "5", "\"text\""})
  void aBodyThatIsNoObjectIsToldAtTheRoot(String body) {
    assertThat(faults(body)).singleElement().returns("", Fault::pointer);
  }

  @Test
  void aQueryReadsAsTheBodyOfItsTwin() {
    MultivaluedMap<String, String> query = new MultivaluedHashMap<>();
    query.add("source", "5");
    query.add("distance_m", "2.5");
    query.add("seats", "4");
    query.add("side", "rear-wall");
    query.add("preamp.max_input_dbu", "1e1");
    query.add("preamp.phantom", "true");
    query.addAll("microphones", "a", "b");
    query.add("others.max_input_dbu", "1");
    query.add("page_size", "9");
    assertThat(reader.readQuery(query, Question.class, Set.of("page_size")))
        .isEqualTo(
            new Question(
                "5",
                2.5,
                4,
                Side.REAR_WALL,
                new Preamp(10.0, true),
                List.of("a", "b"),
                List.of(new Preamp(1.0, null))));
  }

  @Test
  void faultsOfAQueryNameTheirParameters() {
    MultivaluedMap<String, String> query = new MultivaluedHashMap<>();
    query.addAll("source", "a", "b");
    query.add("distance_m", "NaN");
    query.add("seats", "");
    query.add("preamp.max_input_dbu", "1e999");
    query.add("preamp.phntom", "true");
    query.add("microphones", "a");
    InvalidRequest refused =
        catchThrowableOfType(InvalidRequest.class, () -> reader.readQuery(query, Question.class));
    assertThat(refused.faults())
        .extracting(Fault::parameter, Fault::code)
        .containsExactlyInAnyOrder(
            tuple("source", FaultCode.WRONG_TYPE),
            tuple("distance_m", FaultCode.WRONG_TYPE),
            tuple("seats", FaultCode.WRONG_TYPE),
            tuple("preamp.max_input_dbu", FaultCode.WRONG_TYPE),
            tuple("preamp.phntom", FaultCode.UNKNOWN_NAME));
  }

  @Test
  void aMemberGivenWholeAndInPartsIsAContradiction() {
    MultivaluedMap<String, String> query = new MultivaluedHashMap<>();
    query.add("preamp", "core/a");
    query.add("preamp.phantom", "true");
    InvalidRequest refused =
        catchThrowableOfType(InvalidRequest.class, () -> reader.readQuery(query, Question.class));
    assertThat(refused.faults())
        .extracting(Fault::parameter, Fault::code)
        .containsExactly(tuple("preamp.phantom", FaultCode.CONTRADICTION));
  }

  private Question read(String body) {
    return reader.read(body.getBytes(UTF_8), Question.class);
  }

  private InvalidRequest refused(String body) {
    return catchThrowableOfType(InvalidRequest.class, () -> read(body));
  }

  private List<Fault> faults(String body) {
    return refused(body).faults();
  }

  private List<Fault> faults(String body, Class<?> type) {
    return catchThrowableOfType(InvalidRequest.class, () -> reader.read(body.getBytes(UTF_8), type))
        .faults();
  }

  private static RequestReader reader() {
    ObjectMapper mapper = new ObjectMapper().registerModule(new Jdk8Module());
    new JsonSetup().customize(mapper);
    return new RequestReader(mapper, Validation.buildDefaultValidatorFactory().getValidator());
  }
}
