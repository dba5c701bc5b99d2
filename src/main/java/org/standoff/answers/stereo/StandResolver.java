package org.standoff.answers.stereo;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Point3;
import org.standoff.answers.Assumptions;
import org.standoff.answers.Coordinates;
import org.standoff.answers.QuestionFault;
import org.standoff.answers.References;
import org.standoff.pairs.ParameterRange;
import org.standoff.pairs.fit.PicturedPlayer;
import org.standoff.pairs.fit.Stand;

/** Resolves where the pair of a {@link StereoFitQuestion} may be. */
final class StandResolver {
  /** A stand in the very middle of the players still needs a direction to be seen from. */
  private static final double LEAST_M = 0.1;

  private final References references;
  private final PairStand asked;
  private final Point3 middle;
  private final Assumptions assumptions;

  StandResolver(
      References references,
      PairStand asked,
      List<PicturedPlayer> players,
      Assumptions assumptions) {
    this.references = references;
    this.asked = asked;
    this.assumptions = assumptions;
    this.middle =
        new Point3(
            middle(players, player -> player.position().xM()),
            middle(players, player -> player.position().yM()),
            middle(players, player -> player.position().zM()));
  }

  /** Empty where a fault was noted. */
  Optional<Stand> resolve() {
    Coordinates position = asked.positionM();
    PairStand.DistanceRange distance = asked.distanceM();
    if (position != null && distance == null) {
      return Optional.of(at(position.point()));
    }
    if (position == null && distance != null) {
      return range(distance).map(this::within);
    }
    references.fault(
        QuestionFault.of(
            "/stand/position_m",
            position == null ? QuestionFault.Kind.MISSING : QuestionFault.Kind.CONTRADICTION,
            "Give position_m or distance_m, one of them."));
    return Optional.empty();
  }

  private Stand at(Point3 position) {
    if (asked.heightM() != null) {
      references.fault(
          QuestionFault.of(
              "/stand/height_m",
              QuestionFault.Kind.CONTRADICTION,
              "The height is z of position_m."));
    }
    Point3 level = new Point3(middle.xM(), middle.yM(), position.zM());
    double facingDeg = facingDeg(position.directionTo(level).azimuthDeg());
    double distanceM = Math.max(position.distanceToM(level), LEAST_M);
    return new Stand(
        position.moved(new Direction(facingDeg, 0), distanceM),
        facingDeg,
        ParameterRange.fixed(distanceM),
        position.zM(),
        tiltDeg());
  }

  private Stand within(ParameterRange distanceM) {
    if (asked.facingAzimuthDeg() == null) {
      assumptions.add("the pair looks to the room's front, as nothing is told");
    }
    Double heightM = asked.heightM();
    if (heightM == null) {
      assumptions.add(
          "the pair stands %.3g m high, half-way between the lowest and the highest player",
          middle.zM());
    }
    return new Stand(
        middle, facingDeg(0), distanceM, heightM == null ? middle.zM() : heightM, tiltDeg());
  }

  private Optional<ParameterRange> range(PairStand.DistanceRange distance) {
    Double usual = distance.usual();
    Double least = distance.least() == null ? usual : distance.least();
    Double most = distance.most() == null ? usual : distance.most();
    if (least == null || most == null) {
      references.fault(
          QuestionFault.of(
              "/stand/distance_m",
              QuestionFault.Kind.MISSING,
              "Give least and most, or the usual distance alone."));
      return Optional.empty();
    }
    double middleM = usual == null ? (least + most) / 2 : usual;
    if (!(least <= middleM && middleM <= most)) {
      references.fault(
          QuestionFault.of(
                  "/stand/distance_m",
                  QuestionFault.Kind.CONTRADICTION,
                  "The usual distance lies between least and most.")
              .found("%s, %s, %s".formatted(least, middleM, most)));
      return Optional.empty();
    }
    return Optional.of(new ParameterRange(least, middleM, most));
  }

  private double facingDeg(double usualDeg) {
    return asked.facingAzimuthDeg() == null ? usualDeg : asked.facingAzimuthDeg();
  }

  private double tiltDeg() {
    return asked.tiltDownDeg() == null ? 0 : asked.tiltDownDeg();
  }

  private static double middle(
      List<PicturedPlayer> players, ToDoubleFunction<PicturedPlayer> coordinate) {
    double least = players.stream().mapToDouble(coordinate).min().orElse(0);
    double most = players.stream().mapToDouble(coordinate).max().orElse(0);
    return (least + most) / 2;
  }
}
