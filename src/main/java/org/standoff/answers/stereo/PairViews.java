package org.standoff.answers.stereo;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standoff.acoustics.Point3;
import org.standoff.acoustics.Polar;
import org.standoff.answers.OctaveFigures;
import org.standoff.answers.Position;
import org.standoff.answers.Resolved;
import org.standoff.pairs.Capsule;
import org.standoff.pairs.Channel;
import org.standoff.pairs.DiffuseCorrelation;
import org.standoff.pairs.MonoSum;
import org.standoff.pairs.Pair;
import org.standoff.pairs.PairHearing;
import org.standoff.pairs.PairLayout;
import org.standoff.pairs.PairParameters;
import org.standoff.pairs.Parameter;
import org.standoff.pairs.RecordingAngle;
import org.standoff.pairs.SettingOut;
import org.standoff.pairs.listening.ListeningModel;

/** Represents what belongs to a pair as a whole. */
final class PairViews {
  /** Steps of the mono sum round the pair. */
  private static final double MONO_STEP_DEG = 15;

  private PairViews() {}

  static GeometryAnswer.AskedPair asked(ResolvedGeometry resolved) {
    ResolvedPair pair = resolved.pair();
    Optional<PairLayout> layout = pair.layout();
    return new GeometryAnswer.AskedPair(
        pair.id(),
        layout.map(PairLayout::title),
        layout.map(one -> one.technique().id()),
        pair.pattern().map(pattern -> pattern.id()),
        pair.microphoneId(),
        layout.map(one -> measures(one, pair.measures())).orElseGet(() -> gain(pair)),
        pair.pair().rejectionCapDb(),
        resolved.placed() ? Optional.of(PairPosition.of(pair.pair().place())) : Optional.empty(),
        resolved.room().map(Resolved::id),
        resolved.criterion().study().id(),
        layout.map(PairLayout::source),
        layout.map(PairLayout::monoNote),
        layout.map(PairLayout::roomNote));
  }

  /** The measures that a layout has. */
  static Map<String, Double> measures(PairLayout layout, PairParameters values) {
    Map<String, Double> measures = new LinkedHashMap<>();
    for (Parameter parameter : Parameter.all()) {
      if (layout.parameters().containsKey(parameter)) {
        measures.put(parameter.id(), values.get(parameter));
      }
    }
    return measures;
  }

  private static Map<String, Double> gain(ResolvedPair pair) {
    return pair.pair().matrix().isPresent()
        ? Map.of(Parameter.SIDE_GAIN.id(), pair.measures().get(Parameter.SIDE_GAIN))
        : Map.of();
  }

  /** By the criterion, then by the other models. */
  static List<GeometryAnswer.RecordingAngleLine> recordingAngles(
      PairHearing hearing, ResolvedGeometry resolved, OptionalDouble distanceM) {
    List<GeometryAnswer.RecordingAngleLine> lines = new ArrayList<>();
    ListeningModel criterion = resolved.criterion();
    lines.add(recordingAngle(hearing, criterion, true, distanceM));
    for (ListeningModel model : resolved.models()) {
      if (!model.study().id().equals(criterion.study().id())) {
        lines.add(recordingAngle(hearing, model, false, distanceM));
      }
    }
    return lines;
  }

  static GeometryAnswer.RecordingAngleLine recordingAngle(
      PairHearing hearing, ListeningModel model, boolean criterion, OptionalDouble distanceM) {
    RecordingAngle far = RecordingAngle.far(hearing, model);
    RecordingAngle angle =
        distanceM.isPresent() ? RecordingAngle.at(hearing, model, distanceM.getAsDouble()) : far;
    return new GeometryAnswer.RecordingAngleLine(
        model.study().id(),
        model.study().title(),
        criterion,
        distanceM,
        angle.leftDeg(),
        angle.rightDeg(),
        angle.totalDeg(),
        far.totalDeg(),
        model.study().citation());
  }

  static OptionalDouble spreadDeg(List<GeometryAnswer.RecordingAngleLine> lines) {
    double[] totals =
        lines.stream()
            .filter(line -> line.totalDeg().isPresent())
            .mapToDouble(line -> line.totalDeg().getAsDouble())
            .sorted()
            .toArray();
    return totals.length < 2
        ? OptionalDouble.empty()
        : OptionalDouble.of(totals[totals.length - 1] - totals[0]);
  }

  static Optional<GeometryAnswer.EquivalentPair> equivalent(Pair pair) {
    return pair.matrix()
        .map(
            matrix -> {
              Polar mid = pair.capsule(Channel.MID).orElseThrow().pattern();
              return new GeometryAnswer.EquivalentPair(
                  matrix.equivalentAngleDeg(mid), matrix.equivalentPattern(mid).omniPart());
            });
  }

  static GeometryAnswer.MonoByDirection mono(PairHearing hearing, OptionalDouble distanceM) {
    return new GeometryAnswer.MonoByDirection(
        distanceM,
        MonoSum.around(hearing, distanceM.orElse(Double.POSITIVE_INFINITY), MONO_STEP_DEG).stream()
            .map(
                one ->
                    new GeometryAnswer.MonoDirectionLine(
                        one.azimuthDeg(),
                        OctaveFigures.of(one.sum().bandDb()),
                        SourceViews.notchHz(one.sum()),
                        SourceViews.notchDepthDb(one.sum())))
            .toList());
  }

  static List<GeometryAnswer.DiffuseLine> diffuse(PairHearing hearing) {
    List<GeometryAnswer.DiffuseLine> lines = new ArrayList<>();
    lines.add(diffuse(hearing, Channel.LEFT, Channel.RIGHT));
    if (hearing.pair().capsule(Channel.CENTRE).isPresent()) {
      lines.add(diffuse(hearing, Channel.LEFT, Channel.CENTRE));
      lines.add(diffuse(hearing, Channel.CENTRE, Channel.RIGHT));
    }
    return lines;
  }

  private static GeometryAnswer.DiffuseLine diffuse(
      PairHearing hearing, Channel one, Channel other) {
    DiffuseCorrelation correlation = DiffuseCorrelation.between(hearing, one, other);
    return new GeometryAnswer.DiffuseLine(
        one.id(),
        other.id(),
        OctaveFigures.of(correlation.perOctave()),
        correlation.firstZeroHz(),
        OctaveFigures.of(correlation.monoGainDb()));
  }

  static GeometryAnswer.PairSettingOut settingOut(PairHearing hearing, List<NamedOrigin> sources) {
    Map<String, Point3> marks = new LinkedHashMap<>();
    for (NamedOrigin source : sources) {
      SourceViews.place(hearing, source.origin()).ifPresent(at -> marks.put(source.id(), at));
    }
    SettingOut plan = SettingOut.of(hearing.pair(), marks);
    return new GeometryAnswer.PairSettingOut(
        plan.capsules().stream().map(mark -> capsule(hearing.pair(), mark)).toList(),
        plan.betweenCapsules().stream().map(PairViews::tape).toList(),
        plan.toMarks().stream().map(PairViews::tape).toList());
  }

  private static GeometryAnswer.CapsuleLine capsule(Pair pair, SettingOut.CapsuleMark mark) {
    Capsule capsule = pair.capsule(mark.channel()).orElseThrow();
    return new GeometryAnswer.CapsuleLine(
        mark.channel().id(),
        capsule.pattern().omniPart(),
        Position.of(mark.place()),
        Position.of(capsule.position()),
        mark.aim().azimuthDeg(),
        mark.aim().elevationDeg(),
        mark.fromBarDeg(),
        mark.fromMiddleDeg());
  }

  private static GeometryAnswer.TapeLine tape(SettingOut.TapeMeasure tape) {
    return new GeometryAnswer.TapeLine(tape.from(), tape.to(), tape.lengthM());
  }
}
