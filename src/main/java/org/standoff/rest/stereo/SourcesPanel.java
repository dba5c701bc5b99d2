package org.standoff.rest.stereo;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.standoff.answers.stereo.GeometryAnswer;
import org.standoff.answers.stereo.GeometryAnswer.CapsuleLine;
import org.standoff.answers.stereo.GeometryAnswer.RecordingAngleLine;
import org.standoff.answers.stereo.GeometryAnswer.SourceInPair;
import org.standoff.rest.media.Svg;
import org.standoff.rest.media.Words;

/** The sources from above, as the pair looks up the page, with the recording angle. */
final class SourcesPanel {
  private static final double BEYOND = 1.15;
  private static final double FRONTAL_DEG = 105;

  /** How far a pair that has nobody behind it stands below the upper edge, in halves. */
  private static final double UP = 1.72;

  private final Svg svg;
  private final GeometryAnswer answer;
  private final Svg.At origin;
  private final double radiusM;
  private final double perM;

  /**
   * @param middle of the panel
   * @param half what may be used to each side of it
   */
  SourcesPanel(Svg svg, GeometryAnswer answer, Svg.At middle, double half) {
    this.svg = svg;
    this.answer = answer;
    double farthestM =
        answer.sources().stream().mapToDouble(SourcesPanel::onFloorM).max().orElse(0);
    this.radiusM = farthestM > 0 ? farthestM * BEYOND : 1;
    boolean frontal = angles().allMatch(deg -> Math.abs(deg) <= FRONTAL_DEG);
    // with nobody behind, the pair moves down and everything grows
    this.origin = frontal ? new Svg.At(middle.x(), middle.y() + (UP - 1) * half) : middle;
    double widest = angles().map(SourcesPanel::aside).max().orElse(1);
    this.perM =
        frontal ? Math.min(UP * half - 34, (half - 16) / widest) / radiusM : (half - 22) / radiusM;
  }

  double perM() {
    return perM;
  }

  void draw() {
    recordingAngle(answer.recordingAngles().get(0));
    pair();
    Placing placing = new Placing(svg);
    placing.avoid(origin);
    // the words above the arc
    for (int aside = -60; aside <= 60; aside += 20) {
      placing.avoid(new Svg.At(origin.x() + aside, origin.y() - radiusM * perM - 10));
    }
    List<SourceInPair> sources = answer.sources();
    for (int i = 0; i < sources.size(); i++) {
      SourceInPair source = sources.get(i);
      boolean far = source.distanceM().isEmpty();
      double length = far ? radiusM * perM - Placing.RADIUS : onFloorM(source) * perM;
      placing.number(
          i + 1,
          CapsulesPanel.from(origin, source.azimuthDeg(), length),
          far ? Svg.Pen.DASHED.filled("#fff") : Svg.Pen.WHITE);
    }
    placing.draw();
  }

  private DoubleStream angles() {
    RecordingAngleLine criterion = answer.recordingAngles().get(0);
    return DoubleStream.concat(
        answer.sources().stream().mapToDouble(SourceInPair::azimuthDeg),
        DoubleStream.of(criterion.leftDeg().orElse(0), criterion.rightDeg().orElse(0)));
  }

  private void recordingAngle(RecordingAngleLine angle) {
    if (angle.leftDeg().isEmpty() || angle.rightDeg().isEmpty()) {
      svg.text(
          new Svg.At(origin.x(), origin.y() - radiusM * perM - 6),
          Svg.Anchor.MIDDLE,
          12,
          "no recording angle");
      return;
    }
    double leftDeg = angle.leftDeg().getAsDouble();
    double rightDeg = angle.rightDeg().getAsDouble();
    List<Svg.At> arc = new ArrayList<>();
    arc.add(origin);
    for (double deg = leftDeg; deg > -rightDeg; deg -= 2) {
      arc.add(CapsulesPanel.from(origin, deg, radiusM * perM));
    }
    arc.add(CapsulesPanel.from(origin, -rightDeg, radiusM * perM));
    svg.path(arc, true, Svg.Pen.DASHED.filled("#f4f4f4"));
    svg.text(
        new Svg.At(origin.x(), origin.y() - radiusM * perM - 6),
        Svg.Anchor.MIDDLE,
        12,
        "recording angle " + Words.degrees(angle.totalDeg()));
  }

  private void pair() {
    for (CapsuleLine capsule : answer.settingOut().capsules()) {
      Svg.At at =
          new Svg.At(
              origin.x() + capsule.fromMiddleM().x() * perM,
              origin.y() - capsule.fromMiddleM().y() * perM);
      svg.line(origin, at, Svg.Pen.THIN);
      svg.line(at, CapsulesPanel.from(at, capsule.fromMiddleDeg(), 16), Svg.Pen.LINE);
      svg.circle(at, 2.5, Svg.Pen.BLACK);
    }
  }

  /** How far off the middle axis an angle reaches, as a share of the radius. */
  private static double aside(double deg) {
    return Math.max(Math.sin(Math.min(Math.toRadians(Math.abs(deg)), Math.PI / 2)), 0.05);
  }

  private static double onFloorM(SourceInPair source) {
    return source.distanceM().orElse(0) * Math.cos(Math.toRadians(source.elevationDeg()));
  }
}
