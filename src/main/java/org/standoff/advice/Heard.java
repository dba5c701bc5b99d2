package org.standoff.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.standoff.acoustics.Level;
import org.standoff.acoustics.Polar;
import org.standoff.acoustics.Room;
import org.standoff.acoustics.SoundPower;

/**
 * What a candidate hears besides the wanted direct sound, all as on-axis levels of the microphone,
 * long-term, rms.
 *
 * @param wantedDbSpl the wanted direct sound at the first position
 * @param unwantedDbSpl everything else; absent where nothing is around
 * @param unwantedReWantedDb the same re the wanted
 * @param directToReverberantDb the source's direct sound over its own late field; absent where room
 *     or sound power is not known
 * @param neighbours one by one
 */
public record Heard(
    double wantedDbSpl,
    OptionalDouble unwantedDbSpl,
    OptionalDouble unwantedReWantedDb,
    OptionalDouble directToReverberantDb,
    List<Line> neighbours) {

  /**
   * One neighbour.
   *
   * @param title the name for people
   * @param directDbSpl its direct sound through the pattern
   * @param lateDbSpl its late field through the pattern; absent where room or power is not known
   * @param reWantedDb both together re the wanted
   */
  public record Line(
      String title, double directDbSpl, OptionalDouble lateDbSpl, double reWantedDb) {}

  public Heard {
    neighbours = List.copyOf(neighbours);
  }

  /** What an assessed candidate hears. */
  public static Heard of(Assessor assessor, Assessment assessment) {
    Question question = assessor.question();
    Surroundings around = question.surroundings();
    Polar polar = assessment.view().pattern().polar();
    double cap = assessment.microphone().rejectionCapDb();
    double wanted = assessor.arrivals().get(0).longTerm().db() - assessment.view().aimLossDb();
    List<Line> lines = new ArrayList<>();
    for (Neighbour neighbour : around.neighbours()) {
      double direct = Hearing.directDb(neighbour, polar, cap);
      OptionalDouble late = late(around, neighbour.power().orElse(null), polar);
      double both = Level.energySum(direct, late.orElse(Double.NEGATIVE_INFINITY));
      lines.add(new Line(neighbour.title(), direct, late, both - wanted));
    }
    double unwanted = assessment.view().unwantedDb();
    boolean any = unwanted != Double.NEGATIVE_INFINITY;
    OptionalDouble own = late(around, question.power().orElse(null), polar);
    return new Heard(
        wanted,
        any ? OptionalDouble.of(unwanted) : OptionalDouble.empty(),
        any ? OptionalDouble.of(unwanted - wanted) : OptionalDouble.empty(),
        own.isPresent() ? OptionalDouble.of(wanted - own.getAsDouble()) : OptionalDouble.empty(),
        lines);
  }

  private static OptionalDouble late(Surroundings around, @Nullable SoundPower power, Polar polar) {
    if (power == null || around.room().isEmpty()) {
      return OptionalDouble.empty();
    }
    Room room = around.room().get();
    return OptionalDouble.of(Hearing.lateDb(power, polar, room));
  }
}
