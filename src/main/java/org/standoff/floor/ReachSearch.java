package org.standoff.floor;

import java.util.ArrayList;
import java.util.List;
import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Point3;

/**
 * Moves a microphone within its reach: from today's place and from places at the reach in six
 * directions and towards what is wanted, in five dimensions at once (three of place, two of aim).
 */
final class ReachSearch {
  private static final int FROM_BEST = 2;
  private static final double AIM_SIDE_DEG = 10;
  private static final double REACH_SHARE = 0.4;

  /** A place that nobody can stand in costs this per metre, in dB of wanted sound. */
  private static final double OUTSIDE_DB_PER_M = 100;

  private final FloorField field;
  private final FloorMicrophone microphone;
  private final AimLimits limits;
  private final AimView standing;
  private Point3 viewedFrom;
  private AimView viewed;

  ReachSearch(FloorField field, FloorMicrophone microphone, AimLimits limits, AimView standing) {
    this.field = field;
    this.microphone = microphone;
    this.limits = limits;
    this.standing = standing;
    viewedFrom = microphone.position();
    viewed = standing;
  }

  /** The best that moving makes of the best aims known. */
  List<AimSetting> from(List<AimSetting> aims) {
    List<AimSetting> found = new ArrayList<>();
    for (AimSetting aim : aims.subList(0, Math.min(FROM_BEST, aims.size()))) {
      for (double[] offset : offsets()) {
        double[] start = {
          offset[0], offset[1], offset[2], aim.aim().azimuthDeg(), aim.aim().elevationDeg()
        };
        AimDescent descent = new AimDescent(objective(aim.pattern()), start);
        double side = limits.reachM() * REACH_SHARE;
        descent.walk(new double[] {side, side, side, AIM_SIDE_DEG, AIM_SIDE_DEG});
        if (Double.isFinite(descent.bestDb())) {
          found.add(view(descent.best()).setting(aim.pattern(), aim(descent.best())));
        }
      }
    }
    return found;
  }

  private AimDescent.Objective objective(FloorPattern pattern) {
    return new AimDescent.Objective() {
      @Override
      public double levelDb(double[] place) {
        return outsideM(place) > 0 ? 0 : view(place).unwantedDb(pattern, aim(place));
      }

      @Override
      public double excessDb(double[] place) {
        double outsideM = outsideM(place);
        return outsideM > 0
            ? OUTSIDE_DB_PER_M * (1 + outsideM)
            : view(place).excess(pattern, aim(place), limits.outsideDeg(place[3], place[4]));
      }
    };
  }

  /** Level and allowance of one place are asked one after the other: the view is kept for both. */
  private AimView view(double[] place) {
    Point3 at = at(place);
    if (!at.equals(viewedFrom)) {
      viewedFrom = at;
      viewed = new AimView(field, microphone.at(at), limits).keeping(standing);
    }
    return viewed;
  }

  /** Beyond the reach, or where the floor forbids to stand. */
  private double outsideM(double[] place) {
    double gone = Math.hypot(Math.hypot(place[0], place[1]), place[2]) - limits.reachM();
    if (gone > 0) {
      return gone;
    }
    FloorPlan moved = field.plan().with(List.of(microphone.at(at(place))));
    return moved.faults().isEmpty() ? 0 : limits.reachM();
  }

  private List<double[]> offsets() {
    double r = limits.reachM();
    List<double[]> offsets =
        new ArrayList<>(
            List.of(
                new double[] {0, 0, 0},
                new double[] {r, 0, 0},
                new double[] {-r, 0, 0},
                new double[] {0, r, 0},
                new double[] {0, -r, 0},
                new double[] {0, 0, r},
                new double[] {0, 0, -r}));
    for (FloorSource source : field.plan().sources()) {
      if (microphone.wants(source)) {
        Direction to = microphone.position().directionTo(source.position());
        offsets.add(new double[] {r * to.x(), r * to.y(), r * to.z()});
      }
    }
    return offsets;
  }

  private Point3 at(double[] place) {
    Point3 today = microphone.position();
    return new Point3(today.xM() + place[0], today.yM() + place[1], today.zM() + place[2]);
  }

  private static Direction aim(double[] place) {
    return AimView.aim(new double[] {place[3], place[4]});
  }
}
