package org.standoff.rest.kit;

import java.util.function.Function;
import org.standoff.kit.stock.FaultyKit;
import org.standoff.kit.stock.KitFault;
import org.standoff.rest.problem.Fault;
import org.standoff.rest.problem.FaultCode;
import org.standoff.rest.problem.InvalidRequest;
import org.standoff.rest.problem.ProblemType;

/** Tells what is wrong with a kit where the caller wrote it. */
final class KitFaults {

  private KitFaults() {}

  /** In a list of units. */
  static InvalidRequest inUnits(FaultyKit faulty) {
    return told(
        faulty,
        fault ->
            Fault.atPointer(
                "/units/" + fault.index() + "/" + fault.member(), code(fault), fault.detail()));
  }

  /** In the one unit that the body is. */
  static InvalidRequest inUnit(FaultyKit faulty) {
    return told(
        faulty, fault -> Fault.atPointer("/" + fault.member(), code(fault), fault.detail()));
  }

  /** The same fault, in a sheet. */
  static Fault inRow(KitFault fault, int row) {
    return complete(fault, Fault.inRow(row, fault.member(), code(fault), fault.detail()));
  }

  private static InvalidRequest told(FaultyKit faulty, Function<KitFault, Fault> place) {
    return new InvalidRequest(
        ProblemType.RULE_BROKEN,
        faulty.faults().stream().map(fault -> complete(fault, place.apply(fault))).toList());
  }

  private static Fault complete(KitFault fault, Fault placed) {
    return placed
        .found(fault.found())
        .allowed(fault.allowed().orElse(null))
        .suggestion(fault.suggestion().orElse(null));
  }

  private static FaultCode code(KitFault fault) {
    return switch (fault.kind()) {
      case UNKNOWN_MICROPHONE -> FaultCode.UNKNOWN_ITEM;
      case CONTRADICTION -> FaultCode.CONTRADICTION;
    };
  }
}
