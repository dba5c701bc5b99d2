package org.standoff.answers.stereo;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standoff.advice.Caution;
import org.standoff.answers.Basis;
import org.standoff.answers.Position;

/**
 * The answer to a {@link GeometryQuestion}. Differences are left minus right, time positive when
 * the left leads; images run from −100 (right loudspeaker) to +100 (left).
 *
 * @param pair the resolved pair, defaults included
 * @param sources what it makes of each source, in the order of the question
 * @param recordingAngles by every model that was asked, the criterion first
 * @param recordingAngleSpreadDeg between them; absent where fewer than two have one
 * @param equivalentPair two capsules that amount to mid and side; absent for others
 * @param mono what is left of a sound from any direction when the channels are added
 * @param diffuse how alike the channels are in a diffuse field
 * @param settingOut what tape and protractor need
 * @param flags what deserves a second look
 * @param cautions about the place
 * @param basis what the answer rests on
 */
public record GeometryAnswer(
    AskedPair pair,
    List<SourceInPair> sources,
    List<RecordingAngleLine> recordingAngles,
    OptionalDouble recordingAngleSpreadDeg,
    Optional<EquivalentPair> equivalentPair,
    MonoByDirection mono,
    List<DiffuseLine> diffuse,
    PairSettingOut settingOut,
    List<PairFlag> flags,
    List<Caution> cautions,
    Basis basis) {

  /**
   * The resolved pair.
   *
   * @param pair id of the layout
   * @param parameters its measures, units in their names
   * @param criterion id of the model behind the recording angle
   * @param source who published the layout
   */
  public record AskedPair(
      String pair,
      Optional<String> title,
      Optional<String> technique,
      Optional<String> pattern,
      Optional<String> microphone,
      Map<String, Double> parameters,
      double rejectionCapDb,
      Optional<PairPosition> place,
      Optional<String> room,
      String criterion,
      Optional<String> source,
      Optional<String> monoNote,
      Optional<String> roomNote) {}

  /**
   * One source.
   *
   * @param distanceM from the middle of the pair; absent for far ones
   * @param images by the models that place any, in their order
   * @param spreadPct between the models
   * @param room direct sound over late field; empty without a room
   */
  public record SourceInPair(
      String id,
      double azimuthDeg,
      double elevationDeg,
      OptionalDouble distanceM,
      double levelDifferenceDb,
      double timeDifferenceMs,
      boolean oppositePolarity,
      List<ChannelLine> channels,
      List<ImageLine> images,
      double spreadPct,
      MonoLine mono,
      List<DirectOverLate> room) {}

  /**
   * One channel.
   *
   * @param levelDb re an omnidirectional capsule in the middle of the pair
   * @param leadMs how much earlier than there the sound arrives
   * @param pathM absent for far sources
   */
  public record ChannelLine(
      String channel,
      double levelDb,
      String polarity,
      double leadMs,
      OptionalDouble pathM,
      boolean rejectionCapped,
      boolean shadowed) {}

  /**
   * One image.
   *
   * @param imageDeg on a base of ±30°, positive to the left
   * @param angularDistortionDeg less where the criterion's recording angle puts the source in
   *     proportion; absent without one
   * @param beyondStudy past what the study's figures are meant for
   */
  public record ImageLine(
      String model,
      double positionPct,
      double imageDeg,
      OptionalDouble angularDistortionDeg,
      boolean beyondStudy) {}

  /**
   * One source in mono.
   *
   * @param lossDb in the worst octave, re the channels heard apart
   * @param bandDb re the same straight ahead
   * @param foldDownDb re the channels heard apart
   * @param firstNotchHz absent where there is none
   */
  public record MonoLine(
      double lossDb,
      String worstOctave,
      Map<String, Double> bandDb,
      Map<String, Double> foldDownDb,
      OptionalDouble firstNotchHz,
      OptionalDouble notchDepthDb) {}

  /** Direct sound over late field in one channel; the single figure is that of 500 Hz and 1 kHz. */
  public record DirectOverLate(
      String channel, double directToReverberantDb, Map<String, Double> octavesDb) {}

  /**
   * A recording angle.
   *
   * @param criterion true for the model that others are held against
   * @param distanceM of the sources from the middle of the pair; absent for far ones
   * @param leftDeg absent where the limit is never met
   * @param totalDeg left and right together
   * @param farTotalDeg the same for far sources, as published figures have it
   * @param study who published the model
   */
  public record RecordingAngleLine(
      String model,
      String title,
      boolean criterion,
      OptionalDouble distanceM,
      OptionalDouble leftDeg,
      OptionalDouble rightDeg,
      OptionalDouble totalDeg,
      OptionalDouble farTotalDeg,
      String study) {}

  /** Two equal capsules that hear what mid and side hear through their matrix. */
  public record EquivalentPair(double angleDeg, double omniPart) {}

  /**
   * The mono sum round the pair.
   *
   * @param distanceM of the sources; absent for far ones
   */
  public record MonoByDirection(OptionalDouble distanceM, List<MonoDirectionLine> directions) {}

  /** One direction; levels re the same straight ahead. */
  public record MonoDirectionLine(
      double azimuthDeg,
      Map<String, Double> bandDb,
      OptionalDouble firstNotchHz,
      OptionalDouble notchDepthDb) {}

  /**
   * Two channels in a diffuse field.
   *
   * @param correlation per octave: 1 the same signal, 0 none in common
   * @param monoGainDb their sum re two independent signals
   */
  public record DiffuseLine(
      String one,
      String other,
      Map<String, Double> correlation,
      OptionalDouble firstZeroHz,
      Map<String, Double> monoGainDb) {}

  /**
   * What an assistant needs. Without a place the middle of the pair is the origin.
   *
   * @param betweenCapsules tape measures
   * @param toSources tape measures
   */
  public record PairSettingOut(
      List<CapsuleLine> capsules, List<TapeLine> betweenCapsules, List<TapeLine> toSources) {}

  /**
   * One capsule.
   *
   * @param positionM in the room
   * @param fromMiddleM from the middle of the pair, in the pair's axes: x right along the bar
   * @param fromBarDeg protractor angle between axis and bar, from the end to which the axis turns
   * @param fromMiddleDeg between axis and middle axis, positive to the left
   */
  public record CapsuleLine(
      String channel,
      double omniPart,
      Position positionM,
      Position fromMiddleM,
      double azimuthDeg,
      double elevationDeg,
      double fromBarDeg,
      double fromMiddleDeg) {}

  /** A length to check with the tape. */
  public record TapeLine(String from, String to, double lengthM) {}

  /**
   * Something that deserves a second look.
   *
   * @param sources which sources; empty where it is the pair
   */
  public record PairFlag(String code, List<String> sources, String detail) {}
}
