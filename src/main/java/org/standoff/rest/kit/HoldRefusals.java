package org.standoff.rest.kit;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.NotFoundException;
import java.util.List;
import java.util.function.Supplier;
import org.standoff.kit.hold.HoldRefused;
import org.standoff.kit.hold.HoldUnknown;
import org.standoff.kit.hold.KeyBusy;
import org.standoff.kit.hold.KeyReused;
import org.standoff.kit.hold.ReferenceTaken;
import org.standoff.kit.hold.Shortage;
import org.standoff.kit.hold.StepRefused;
import org.standoff.kit.hold.UnitsTaken;
import org.standoff.kit.hold.WishFault;
import org.standoff.kit.hold.WishRefused;
import org.standoff.rest.problem.Clash;
import org.standoff.rest.problem.Fault;
import org.standoff.rest.problem.FaultCode;
import org.standoff.rest.problem.InvalidRequest;
import org.standoff.rest.problem.ProblemMember;
import org.standoff.rest.problem.ProblemType;
import org.standoff.rest.problem.RetryAfter;
import org.standoff.rest.problem.ToldMembers;

/** Tells what keeps a hold from being made or changed, with what stands in its way. */
@ApplicationScoped
class HoldRefusals {

  private final Shortfalls shortfalls;

  HoldRefusals(Shortfalls shortfalls) {
    this.shortfalls = shortfalls;
  }

  /** The hold that was wished for, or why not, line by line. */
  <T> T told(HoldTold wish, Supplier<T> answer) {
    return told(
        () -> {
          try {
            return answer.get();
          } catch (Shortage shortage) {
            throw new Clash(shortage.getMessage())
                .with(HoldClash.of(shortfalls.of(wish, shortage)))
                .telling(
                    ToldMembers.of(ProblemMember.SHORTFALL_COUNT, shortage.shortfalls().size()));
          }
        });
  }

  /** The answer, or the refusal in the words of this interface. */
  <T> T told(Supplier<T> answer) {
    try {
      return answer.get();
    } catch (HoldRefused refused) {
      throw problem(refused);
    }
  }

  private static RuntimeException problem(HoldRefused refused) {
    if (refused instanceof HoldUnknown) {
      return new NotFoundException();
    }
    if (refused instanceof WishRefused wish) {
      return new InvalidRequest(
          ProblemType.RULE_BROKEN, wish.faults().stream().map(HoldRefusals::fault).toList());
    }
    if (refused instanceof KeyReused reused) {
      return new InvalidRequest(
          ProblemType.RULE_BROKEN,
          List.of(Fault.ofParameter(HoldWords.KEY, FaultCode.CONTRADICTION, reused.getMessage())));
    }
    if (refused instanceof KeyBusy busy) {
      return new Clash(busy.getMessage()).telling(RetryAfter.OTHERS_ARE_ANSWERED.told());
    }
    return new Clash(refused.getMessage()).with(inTheWay(refused));
  }

  private static HoldClash inTheWay(HoldRefused refused) {
    if (refused instanceof UnitsTaken taken) {
      return HoldClash.ofUnits(taken.conflicts().stream().map(ConflictView::of).toList());
    }
    if (refused instanceof StepRefused step) {
      return HoldClash.of(step.state());
    }
    if (refused instanceof ReferenceTaken taken) {
      return HoldClash.ofReference(taken.reference(), HoldView.PATH + taken.hold());
    }
    throw new IllegalStateException("say what stands in the way", refused);
  }

  private static Fault fault(WishFault wish) {
    return Fault.atPointer(pointer(wish), code(wish), wish.detail())
        .found(wish.found())
        .allowed(wish.allowed().orElse(null));
  }

  private static String pointer(WishFault fault) {
    return switch (fault.place()) {
      case HOUSE -> "/lines/" + fault.line().orElse(0) + "/house";
      case FROM -> "/from";
      case TO -> "/to";
      case UNIT -> "/units";
    };
  }

  private static FaultCode code(WishFault fault) {
    return switch (fault.place()) {
      case HOUSE, UNIT -> FaultCode.UNKNOWN_VALUE;
      case FROM, TO -> FaultCode.OUT_OF_RANGE;
    };
  }
}
