package org.standoff.rest.problem;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.ws.rs.ClientErrorException;
import jakarta.ws.rs.NotAcceptableException;
import jakarta.ws.rs.NotAllowedException;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.NotSupportedException;
import jakarta.ws.rs.ServiceUnavailableException;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

class ExceptionTableTest {

  @Test
  void frameworkExceptionsKeepTheirStatus() {
    assertThat(status(new NotFoundException())).isEqualTo(404);
    assertThat(status(new NotAllowedException("GET"))).isEqualTo(405);
    assertThat(status(new NotAcceptableException())).isEqualTo(406);
    assertThat(status(new ClientErrorException(413))).isEqualTo(413);
    assertThat(status(new NotSupportedException())).isEqualTo(415);
    assertThat(status(new ServiceUnavailableException())).isEqualTo(503);
  }

  @Test
  void aParameterThatCannotBeConvertedIsAFaultOfTheRequest() {
    assertThat(status(new NotFoundException(new NumberFormatException("abc")))).isEqualTo(400);
  }

  @Test
  void aStatusWithoutATypeOfItsOwnTakesTheNearest() {
    assertThat(ProblemType.ofStatus(418)).isEqualTo(ProblemType.INVALID_REQUEST);
    assertThat(ProblemType.ofStatus(502)).isEqualTo(ProblemType.INTERNAL);
  }

  @Test
  void anUnlistedSubclassTakesTheRowOfItsNearestListedSuperclass() {
    class RareFailure extends ServiceUnavailableException {}
    assertThat(ExceptionTable.tell(new RareFailure()).type()).isEqualTo(ProblemType.UNAVAILABLE);
  }

  @Test
  void whatNobodyExpectedIsOurFaultAndSaysNothingOfItsInside() {
    ExceptionTable.Told told =
        ExceptionTable.tell(new IllegalStateException("secret org.standoff.Thing"));
    assertThat(told.type()).isEqualTo(ProblemType.INTERNAL);
    assertThat(told.detail()).doesNotContain("secret");
  }

  @Test
  void anInvalidRequestTellsEveryFaultAndTheirNumber() {
    Fault one = Fault.atPointer("/a", FaultCode.MISSING, "A is missing.");
    Fault two = Fault.ofParameter("b", FaultCode.OUT_OF_RANGE, "B is too large.");
    ExceptionTable.Told told = ExceptionTable.tell(new InvalidRequest(List.of(one, two)));
    assertThat(told.faults()).containsExactly(one, two);
    assertThat(told.detail()).isEqualTo("A is missing. (2 faults, see 'errors')");
    assertThat(told.type().status()).isEqualTo(400);
  }

  @Test
  void aBodyThatIsTooSlowIsToldItsTimeInAMemberToo() {
    ExceptionTable.Told told = ExceptionTable.tell(new BodyTooSlow(Duration.ofSeconds(60)));
    assertThat(told.detail()).contains("60 s");
    assertThat(told.members().value(ProblemMember.BODY_WITHIN_S)).contains(BigDecimal.valueOf(60));
  }

  @Test
  void a503OfTheFrameworkSaysWhenToAskAgainToo() {
    assertThat(
            ExceptionTable.tell(new ServiceUnavailableException())
                .members()
                .value(ProblemMember.RETRY_AFTER_S))
        .contains(RetryAfter.SOMETHING_IS_MENDED.seconds());
  }

  @Test
  void aBrokenRuleIsTold422() {
    Fault fault = Fault.atPointer("/a", FaultCode.CONTRADICTION, "A contradicts B.");
    assertThat(status(new InvalidRequest(ProblemType.RULE_BROKEN, List.of(fault)))).isEqualTo(422);
  }

  private static int status(Throwable exception) {
    return ExceptionTable.tell(exception).type().status();
  }
}
