package org.standoff.answers.floor;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.standoff.acoustics.UncertainDb;
import org.standoff.answers.Coordinates;
import org.standoff.floor.BleedCell;
import org.standoff.floor.BleedMatrix;
import org.standoff.floor.DirectTerms;
import org.standoff.floor.ExposureReport;
import org.standoff.floor.FloorMicrophone;
import org.standoff.floor.FloorSource;
import org.standoff.floor.MicrophoneBleed;
import org.standoff.floor.Offender;
import org.standoff.floor.Remedy;
import org.standoff.floor.SharedSource;
import org.standoff.floor.SourceInMix;

/** Represents a bleed matrix. */
final class BleedViews {
  private final BleedMatrix matrix;
  private final boolean octaves;

  BleedViews(BleedMatrix matrix, boolean octaves) {
    this.matrix = matrix;
    this.octaves = octaves;
  }

  BleedAnswer.HearingMicrophone microphone(int index, Optional<List<Remedy>> remedies) {
    MicrophoneBleed bleed = matrix.bleed(index);
    FloorMicrophone microphone = matrix.plan().microphones().get(index);
    List<BleedCell> row = matrix.row(index);
    List<BleedAnswer.HeardSourceLine> heard =
        IntStream.range(0, row.size())
            .mapToObj(source -> heard(index, source, microphone))
            .toList();
    return new BleedAnswer.HearingMicrophone(
        bleed.microphoneId(),
        Told.figure(bleed.wantedDirectDb()),
        Told.figure(bleed.wantedTotalDb()),
        Told.figure(bleed.unwantedDirectDb()),
        Told.figure(bleed.unwantedRoomDb()),
        Told.figure(bleed.unwantedDb()),
        bleed.isolationDb(),
        bleed.isolationDb().isPresent()
            ? OptionalDouble.of(spreadOfDifferenceDb())
            : OptionalDouble.empty(),
        bleed.roomDominates(),
        because(bleed, microphone),
        bleed.faderDb(),
        Told.figure(bleed.wantedTotalDb() + bleed.faderDb()),
        Told.figure(bleed.unwantedDb() + bleed.faderDb()),
        heard,
        bleed.offenders().stream().map(BleedViews::offender).toList(),
        remedies.map(all -> all.stream().map(BleedViews::remedy).toList()));
  }

  /** Two players differ independently of each other. */
  private static double spreadOfDifferenceDb() {
    UncertainDb player = new UncertainDb(0, ExposureReport.PLAYER_SPREAD_DB);
    return player.with(player).spreadDb();
  }

  private BleedAnswer.HeardSourceLine heard(int index, int source, FloorMicrophone microphone) {
    BleedCell cell = matrix.cell(index, source);
    FloorSource sounding = matrix.plan().sources().get(source);
    return new BleedAnswer.HeardSourceLine(
        cell.sourceId(),
        microphone.wants(sounding),
        cell.pathM(),
        cell.arrivalMs(),
        cell.microphoneAngleDeg(),
        cell.sourceAngleDeg(),
        cell.inverted(),
        Told.figure(cell.direct().overallDb()),
        Told.figure(cell.reflections().overallDb()),
        Told.figure(cell.late().overallDb()),
        Told.figure(cell.total().overallDb()),
        Told.figure(cell.total().overallDba()),
        Told.figure(cell.directOverRoomDb()),
        octaves ? Optional.of(perOctave(cell, matrix.terms(index, source))) : Optional.empty());
  }

  private static BleedAnswer.CellOctaves perOctave(BleedCell cell, DirectTerms terms) {
    return new BleedAnswer.CellOctaves(
        Told.octaves(cell.direct().octavesDb()),
        Told.octaves(cell.reflections().octavesDb()),
        Told.octaves(cell.late().octavesDb()),
        Told.octaves(cell.total().octavesDb()),
        Told.octaves(terms.powerDb()),
        terms.spreadingDb(),
        Told.octaves(terms.sourceDirectivityDb()),
        Told.octaves(terms.patternDb()),
        Told.octaves(terms.airDb()),
        Told.octaves(terms.barrierDb()));
  }

  private static BleedAnswer.OffenderLine offender(Offender offender) {
    return new BleedAnswer.OffenderLine(
        offender.sourceId(),
        Told.figure(offender.totalDb()),
        Told.figure(offender.directDb()),
        Told.figure(offender.roomDb()),
        Told.figure(offender.belowWantedDb()),
        offender.direct(),
        offender.distanceRatio(),
        offender.ratioPromisesDb());
  }

  private static BleedAnswer.RemedyLine remedy(Remedy remedy) {
    return new BleedAnswer.RemedyLine(
        remedy.kind(),
        remedy.appliesTo(),
        remedy.what(),
        Told.figure(remedy.gainDb()),
        Told.figure(remedy.isolationDb()),
        Told.figure(remedy.wantedDb()),
        remedy
            .microphone()
            .map(
                changed ->
                    new BleedAnswer.ChangedMicrophone(
                        Coordinates.of(changed.position()),
                        changed.aim().azimuthDeg(),
                        changed.aim().elevationDeg(),
                        changed.pattern().name())),
        remedy.barrier().map(BarrierPlace::of));
  }

  private static String because(MicrophoneBleed bleed, FloorMicrophone microphone) {
    if (microphone.wanted().isEmpty()) {
      return "it is there for the room, so nothing that it hears is unwanted";
    }
    if (bleed.offenders().isEmpty()) {
      return "nothing else sounds";
    }
    Offender worst = bleed.offenders().get(0);
    String relation =
        String.format(
            Locale.ROOT,
            "%s: %.1f dB %s the wanted direct sound, %s",
            worst.sourceId(),
            Math.abs(worst.belowWantedDb()),
            worst.belowWantedDb() < 0 ? "over" : "under",
            worst.direct() ? "mostly direct" : "mostly through the room");
    return relation
        + (worst.direct()
            ? "; an aim or a barrier can help"
            : "; no aim and no barrier takes that away");
  }

  static BleedAnswer.SourceInMixLine inMix(SourceInMix source) {
    return new BleedAnswer.SourceInMixLine(
        source.sourceId(), Told.figure(source.ownDb()), Told.figure(source.bleedDb()));
  }

  static BleedAnswer.SharedSourceLine shared(SharedSource shared) {
    return new BleedAnswer.SharedSourceLine(
        shared.sourceId(),
        shared.oneId(),
        shared.otherId(),
        shared.comb().levelDifferenceDb(),
        shared.comb().delayMs(),
        shared.comb().inverted(),
        shared.comb().peakDb(),
        Told.figure(shared.comb().dipDb()),
        Told.figure(shared.comb().rippleDb()),
        Told.figure(shared.comb().firstNotchHz()));
  }
}
