package org.standoff.answers.stereo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Point3;
import org.standoff.acoustics.Room;
import org.standoff.answers.OctaveFigures;
import org.standoff.answers.Resolved;
import org.standoff.pairs.DirectToReverberant;
import org.standoff.pairs.Heard;
import org.standoff.pairs.MonoSum;
import org.standoff.pairs.Notch;
import org.standoff.pairs.PairHearing;
import org.standoff.pairs.PairPlace;
import org.standoff.pairs.SoundOrigin;
import org.standoff.pairs.StereoDifferences;
import org.standoff.pairs.listening.Image;
import org.standoff.pairs.listening.Images;
import org.standoff.pairs.listening.ListeningModel;
import org.standoff.pairs.listening.LoudspeakerBase;

/** Represents what a pair makes of single sources. */
final class SourceViews {
  private final PairHearing hearing;
  private final List<ListeningModel> models;
  private final Optional<Room> room;
  private final OptionalDouble recordingAngleDeg;

  SourceViews(
      PairHearing hearing,
      List<ListeningModel> models,
      Optional<Resolved<Room>> room,
      OptionalDouble recordingAngleDeg) {
    this.hearing = hearing;
    this.models = models;
    this.room = room.map(Resolved::item);
    this.recordingAngleDeg = recordingAngleDeg;
  }

  GeometryAnswer.SourceInPair of(NamedOrigin source) {
    SoundOrigin origin = source.origin();
    StereoDifferences heard = hearing.differences(origin);
    Direction direction = direction(hearing, origin);
    Images images = Images.of(models, heard.levelDb(), heard.timeMs());
    return new GeometryAnswer.SourceInPair(
        source.id(),
        direction.azimuthDeg(),
        direction.elevationDeg(),
        distanceM(hearing, origin),
        heard.levelDb(),
        heard.timeMs(),
        heard.oppositePolarity(),
        channels(heard, origin),
        images.images().stream().map(image -> image(image, direction.azimuthDeg())).toList(),
        images.spreadPct(),
        mono(MonoSum.of(hearing, origin)),
        room.map(in -> overLate(origin, in)).orElse(List.of()));
  }

  /** Where the pair sees the source. */
  static Direction direction(PairHearing hearing, SoundOrigin origin) {
    if (origin instanceof SoundOrigin.InRoom inRoom) {
      Point3 own = hearing.pair().place().toPair(inRoom.position());
      return PairPlace.ORIGIN.middle().directionTo(own);
    }
    return origin instanceof SoundOrigin.FromPair seen
        ? seen.direction()
        : ((SoundOrigin.Far) origin).direction();
  }

  /** From the middle of the pair; empty for a far source. */
  static OptionalDouble distanceM(PairHearing hearing, SoundOrigin origin) {
    return place(hearing, origin)
        .map(at -> OptionalDouble.of(hearing.pair().place().middle().distanceToM(at)))
        .orElse(OptionalDouble.empty());
  }

  /** In the room; empty for a far source. */
  static Optional<Point3> place(PairHearing hearing, SoundOrigin origin) {
    if (origin instanceof SoundOrigin.InRoom inRoom) {
      return Optional.of(inRoom.position());
    }
    return origin instanceof SoundOrigin.FromPair seen
        ? Optional.of(
            hearing
                .pair()
                .place()
                .toRoom(PairPlace.ORIGIN.middle().moved(seen.direction(), seen.distanceM())))
        : Optional.empty();
  }

  private static List<GeometryAnswer.ChannelLine> channels(
      StereoDifferences heard, SoundOrigin origin) {
    List<Heard> all = new ArrayList<>(List.of(heard.left(), heard.right()));
    heard.centre().ifPresent(all::add);
    boolean far = origin instanceof SoundOrigin.Far;
    return all.stream()
        .map(
            one ->
                new GeometryAnswer.ChannelLine(
                    one.channel().id(),
                    one.levelDb(),
                    one.inverted() ? "inverted" : "normal",
                    one.leadMs(),
                    far ? OptionalDouble.empty() : OptionalDouble.of(one.pathM()),
                    one.rejectionCapped(),
                    one.shadowed()))
        .toList();
  }

  private GeometryAnswer.ImageLine image(Image image, double azimuthDeg) {
    double imageDeg = LoudspeakerBase.STANDARD.imageDeg(image.positionPct());
    OptionalDouble distortionDeg =
        recordingAngleDeg.isEmpty()
            ? OptionalDouble.empty()
            : OptionalDouble.of(
                LoudspeakerBase.STANDARD.angularDistortionDeg(
                    imageDeg, azimuthDeg, recordingAngleDeg.getAsDouble()));
    return new GeometryAnswer.ImageLine(
        image.modelId(), image.positionPct(), imageDeg, distortionDeg, image.beyondStudy());
  }

  static GeometryAnswer.MonoLine mono(MonoSum sum) {
    return new GeometryAnswer.MonoLine(
        lossDb(sum),
        sum.worstOctave().label(),
        OctaveFigures.of(sum.bandDb()),
        OctaveFigures.of(sum.foldDownDb()),
        notchHz(sum),
        notchDepthDb(sum));
  }

  static OptionalDouble notchHz(MonoSum sum) {
    Optional<Notch> notch = sum.notch();
    return notch.isPresent() ? OptionalDouble.of(notch.get().hz()) : OptionalDouble.empty();
  }

  static OptionalDouble notchDepthDb(MonoSum sum) {
    Optional<Notch> notch = sum.notch();
    return notch.isPresent() ? OptionalDouble.of(notch.get().depthDb()) : OptionalDouble.empty();
  }

  private static double lossDb(MonoSum sum) {
    return Math.max(-sum.foldDownDb().get(sum.worstOctave()), 0);
  }

  private List<GeometryAnswer.DirectOverLate> overLate(SoundOrigin origin, Room in) {
    return place(hearing, origin).stream()
        .flatMap(at -> DirectToReverberant.of(hearing, at, in, 1).stream())
        .map(
            one ->
                new GeometryAnswer.DirectOverLate(
                    one.channel().id(), one.midDb(), OctaveFigures.of(one.octavesDb())))
        .toList();
  }
}
