package org.standoff.floor;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.standoff.acoustics.Box;
import org.standoff.acoustics.Point3;
import org.standoff.acoustics.Radiator;

/** What makes a floor plan impossible, each told with its figures. */
final class FloorChecks {
  /** Nearer than this to a reference point, the laws have nothing to say. */
  private static final double LEAST_DISTANCE_M = 0.005;

  /** A capsule this near to a panel stands in it, for all that anyone can measure. */
  private static final double PANEL_MARGIN_M = 0.005;

  private FloorChecks() {}

  static List<FloorFault> of(FloorPlan plan) {
    List<FloorFault> faults = new ArrayList<>();
    Set<String> sources = new HashSet<>();
    for (FloorSource source : plan.sources()) {
      if (!sources.add(source.id())) {
        faults.add(twice(source.id(), "two sources have this id"));
      }
      inside(plan.room().box(), source.id(), source.position(), faults);
    }
    Set<String> microphones = new HashSet<>();
    for (FloorMicrophone microphone : plan.microphones()) {
      if (!microphones.add(microphone.id())) {
        faults.add(twice(microphone.id(), "two microphones have this id"));
      }
      inside(plan.room().box(), microphone.id(), microphone.position(), faults);
      wanted(microphone, sources, faults);
      plan.sources().forEach(source -> apart(microphone, source, faults));
      plan.barriers().forEach(barrier -> clear(microphone, barrier, faults));
    }
    return List.copyOf(faults);
  }

  private static void inside(Box box, String id, Point3 at, List<FloorFault> faults) {
    boolean within =
        at.xM() >= 0
            && at.xM() <= box.lengthM()
            && at.yM() >= 0
            && at.yM() <= box.widthM()
            && at.zM() >= 0
            && at.zM() <= box.heightM();
    if (!within) {
      String room =
          String.format(
              Locale.ROOT,
              "the room's box of %.2f × %.2f × %.2f m",
              box.lengthM(),
              box.widthM(),
              box.heightM());
      faults.add(
          new FloorFault(
              "outside-room", id, place(at) + " is outside " + room, place(at), "within " + room));
    }
  }

  private static FloorFault twice(String id, String detail) {
    return new FloorFault("same-id-twice", id, detail, id, "each id once");
  }

  private static String place(Point3 at) {
    return String.format(Locale.ROOT, "(%.2f, %.2f, %.2f) m", at.xM(), at.yM(), at.zM());
  }

  private static void wanted(
      FloorMicrophone microphone, Set<String> sources, List<FloorFault> faults) {
    for (String wanted : microphone.wanted()) {
      if (!sources.contains(wanted)) {
        faults.add(
            new FloorFault(
                "unknown-source",
                microphone.id(),
                "wants " + wanted + ", which is not here",
                wanted,
                "a source that is here"));
      }
    }
  }

  /** A sphere has a body behind its reference point; the other laws know only a surface. */
  private static void apart(
      FloorMicrophone microphone, FloorSource source, List<FloorFault> faults) {
    double distanceM = microphone.position().distanceToM(source.position());
    boolean inBody = false;
    if (source.radiator() instanceof Radiator.Sphere sphere) {
      Point3 centre = source.position().moved(source.facing().opposite(), sphere.radiusM());
      inBody = microphone.position().distanceToM(centre) < sphere.radiusM() - LEAST_DISTANCE_M;
    }
    if (inBody || !(distanceM >= LEAST_DISTANCE_M)) {
      faults.add(
          new FloorFault(
              "microphone-inside-source",
              microphone.id(),
              String.format(
                  Locale.ROOT,
                  "is inside %s, %.3f m from its reference point",
                  source.id(),
                  distanceM),
              String.format(Locale.ROOT, "%.3f m", distanceM),
              String.format(
                  Locale.ROOT, "at least %.3f m, and outside its body", LEAST_DISTANCE_M)));
    }
  }

  private static void clear(
      FloorMicrophone microphone, PlacedBarrier barrier, List<FloorFault> faults) {
    if (barrier.touches(microphone.position(), PANEL_MARGIN_M)) {
      String there =
          String.format(
              Locale.ROOT,
              "the barrier %s at (%.2f, %.2f) m",
              barrier.barrier().id(),
              barrier.xM(),
              barrier.yM());
      faults.add(
          new FloorFault(
              "barrier-cuts-microphone",
              microphone.id(),
              "stands in " + there,
              place(microphone.position()),
              "clear of " + there));
    }
  }
}
