package org.standoff.floor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.standoff.acoustics.Direction;

/** All aims from one place: weighs them, and finds the basins of a pattern. */
final class AimView {
  /** Aims nearer than this are of one basin as far as anybody can aim a microphone. */
  static final double BASINS_APART_DEG = 20;

  private static final double GRID_DEG = 5;
  private static final int MOST_DESCENTS = 8;

  /** Rounding of a level that was computed on two ways. */
  private static final double ROUNDING_DB = 1e-9;

  private final AimField field;
  private final FloorMicrophone microphone;
  private final AimLimits limits;
  private final double onAxisTodayDb;
  private final double leastWantedDb;

  AimView(FloorField floor, FloorMicrophone microphone, AimLimits limits) {
    this.field = new AimField(floor, microphone, limits);
    this.microphone = microphone;
    this.limits = limits;
    this.onAxisTodayDb = field.wantedOnAxisDb();
    this.leastWantedDb =
        field.wantedDb(microphone.pattern(), microphone.aim())
            - limits.wantedLossDb()
            - ROUNDING_DB;
  }

  private AimView(AimView at, AimView standing) {
    field = at.field;
    microphone = at.microphone;
    limits = at.limits;
    onAxisTodayDb = standing.onAxisTodayDb;
    leastWantedDb = standing.leastWantedDb;
  }

  /** The same place, held to the wanted level that another view has today. */
  AimView keeping(AimView standing) {
    return new AimView(this, standing);
  }

  AimSetting today() {
    return setting(microphone.pattern(), microphone.aim());
  }

  /** The search may go round more than once; a setting tells the azimuth within half a turn. */
  AimSetting setting(FloorPattern pattern, Direction aim) {
    return new AimSetting(
        microphone.position(),
        new Direction(Math.IEEEremainder(aim.azimuthDeg(), 360), aim.elevationDeg()),
        pattern,
        field.wantedDb(pattern, aim),
        field.unwantedDb(pattern, aim),
        field.unwantedRoomDb(pattern, aim),
        trimDb());
  }

  /** One setting for each basin of {@code pattern}, in no order; empty when nothing is allowed. */
  List<AimSetting> basins(FloorPattern pattern) {
    List<AimSetting> found = new ArrayList<>();
    List<Direction> starts = starts(pattern);
    for (Direction start : starts) {
      Optional<Direction> bottom = descend(pattern, start, GRID_DEG / 2);
      boolean known =
          bottom.isEmpty()
              || found.stream()
                  .anyMatch(other -> other.aim().angleBetweenDeg(bottom.orElseThrow()) < 1);
      if (!known) {
        found.add(setting(pattern, bottom.orElseThrow()));
      }
    }
    return found;
  }

  /** Down from {@code start}; empty when neither it nor what was met is allowed. */
  Optional<Direction> descend(FloorPattern pattern, Direction start, double sideDeg) {
    AimDescent descent =
        new AimDescent(
            new AimDescent.Objective() {
              @Override
              public double levelDb(double[] place) {
                return unwantedDb(pattern, aim(place));
              }

              @Override
              public double excessDb(double[] place) {
                return excess(pattern, aim(place), limits.outsideDeg(place[0], place[1]));
              }
            },
            new double[] {start.azimuthDeg(), start.elevationDeg()});
    descent.walk(new double[] {sideDeg, sideDeg});
    return Double.isInfinite(descent.bestDb())
        ? Optional.empty()
        : Optional.of(aim(descent.best()));
  }

  /** Unwanted level at equal gain. */
  double unwantedDb(FloorPattern pattern, Direction aim) {
    return field.unwantedDb(pattern, aim) - trimDb();
  }

  /** How far an aim is from being allowed; 0 or less is allowed. */
  double excess(FloorPattern pattern, Direction aim, double outsideDeg) {
    double lost = silent() ? 0 : leastWantedDb - (field.wantedDb(pattern, aim) - trimDb());
    return outsideDeg > 0 ? outsideDeg + Math.max(lost, 0) : lost;
  }

  static Direction aim(double[] place) {
    return new Direction(place[0], Math.min(Math.max(place[1], -90), 90));
  }

  private double trimDb() {
    return silent() ? 0 : field.wantedOnAxisDb() - onAxisTodayDb;
  }

  /** Nothing wanted sounds: then nothing of it can be lost. */
  private boolean silent() {
    return onAxisTodayDb == Double.NEGATIVE_INFINITY;
  }

  /** Today's aim, the wanted sources, and the lowest dips of the grid. */
  private List<Direction> starts(FloorPattern pattern) {
    List<Direction> starts = new ArrayList<>();
    starts.add(microphone.aim());
    starts.addAll(field.wantedAims());
    int columns = steps(limits.azimuthToDeg() - limits.azimuthFromDeg());
    int rows = steps(limits.elevationToDeg() - limits.elevationFromDeg());
    double[][] level = new double[columns + 1][rows + 1];
    for (int i = 0; i <= columns; i++) {
      for (int j = 0; j <= rows; j++) {
        Direction aim = grid(i, columns, j, rows);
        level[i][j] =
            excess(pattern, aim, 0) <= 0 ? unwantedDb(pattern, aim) : Double.POSITIVE_INFINITY;
      }
    }
    List<int[]> dips = new ArrayList<>();
    for (int i = 0; i <= columns; i++) {
      for (int j = 0; j <= rows; j++) {
        if (dip(level, i, j)) {
          dips.add(new int[] {i, j});
        }
      }
    }
    dips.sort(Comparator.comparingDouble(at -> level[at[0]][at[1]]));
    dips.stream().limit(MOST_DESCENTS).forEach(at -> starts.add(grid(at[0], columns, at[1], rows)));
    return starts;
  }

  private static boolean dip(double[][] level, int i, int j) {
    if (Double.isInfinite(level[i][j])) {
      return false;
    }
    for (int di = -1; di <= 1; di++) {
      for (int dj = -1; dj <= 1; dj++) {
        boolean inside =
            i + di >= 0 && i + di < level.length && j + dj >= 0 && j + dj < level[0].length;
        if (inside && level[i + di][j + dj] < level[i][j]) {
          return false;
        }
      }
    }
    return true;
  }

  private Direction grid(int i, int columns, int j, int rows) {
    double azimuth =
        limits.azimuthFromDeg() + i * (limits.azimuthToDeg() - limits.azimuthFromDeg()) / columns;
    double elevation =
        limits.elevationFromDeg()
            + j * (limits.elevationToDeg() - limits.elevationFromDeg()) / rows;
    return new Direction(azimuth, elevation);
  }

  private static int steps(double rangeDeg) {
    return Math.max((int) Math.ceil(rangeDeg / GRID_DEG), 1);
  }
}
