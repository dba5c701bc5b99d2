package org.standoff.rest.stereo;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.standoff.acoustics.Polar;
import org.standoff.answers.stereo.GeometryAnswer.CapsuleLine;
import org.standoff.answers.stereo.GeometryAnswer.PairSettingOut;
import org.standoff.rest.media.Svg;

/** The capsules from above: places to scale, patterns, aims. */
final class CapsulesPanel {
  private static final double LOBE = 100;
  private static final double AIM = LOBE + 22;
  private static final double GREATEST_PER_M = 1500;
  private static final int STEP_DEG = 3;

  private final Svg svg;
  private final Svg.At middle;
  private final double perM;

  /**
   * @param half what may be used to each side of the middle
   */
  CapsulesPanel(Svg svg, Svg.At middle, double half, PairSettingOut plan) {
    this.svg = svg;
    this.middle = middle;
    double reachM =
        plan.capsules().stream()
            .mapToDouble(
                one -> Math.max(Math.abs(one.fromMiddleM().x()), Math.abs(one.fromMiddleM().y())))
            .max()
            .orElse(0);
    this.perM = Math.min(GREATEST_PER_M, (half - AIM - 30) / Math.max(reachM, 1e-6));
  }

  void draw(PairSettingOut plan) {
    bar(plan.capsules());
    plan.capsules().forEach(this::capsule);
  }

  double perM() {
    return perM;
  }

  private void bar(List<CapsuleLine> capsules) {
    for (CapsuleLine capsule : capsules) {
      svg.line(middle, at(capsule), Svg.Pen.THIN);
    }
  }

  private void capsule(CapsuleLine capsule) {
    Svg.At place = at(capsule);
    lobes(capsule, place);
    Svg.At tip = from(place, capsule.fromMiddleDeg(), AIM);
    svg.line(place, tip, Svg.Pen.LINE);
    arrow(tip, capsule.fromMiddleDeg());
    svg.circle(place, 3.5, Svg.Pen.BLACK);
    Svg.At name = from(place, capsule.fromMiddleDeg(), AIM + 12);
    svg.text(
        new Svg.At(name.x(), name.y() + 5),
        Svg.Anchor.MIDDLE,
        14,
        capsule.channel().substring(0, 1).toUpperCase(Locale.ROOT));
  }

  /** The front lobe whole, what is turned over dashed. */
  private void lobes(CapsuleLine capsule, Svg.At place) {
    Polar polar = Polar.firstOrder(capsule.omniPart());
    List<Svg.At> front = new ArrayList<>();
    List<Svg.At> rear = new ArrayList<>();
    for (int deg = -180; deg <= 180; deg += STEP_DEG) {
      double pressure = polar.pressure(Math.cos(Math.toRadians(deg)));
      Svg.At point = from(place, capsule.fromMiddleDeg() + deg, Math.abs(pressure) * LOBE);
      front.add(pressure >= 0 ? point : place);
      rear.add(pressure < 0 ? point : place);
    }
    svg.path(front, true, Svg.Pen.LINE);
    if (capsule.omniPart() < 0.5) {
      svg.path(rear, true, Svg.Pen.DASHED);
    }
  }

  private void arrow(Svg.At tip, double azimuthDeg) {
    svg.path(
        List.of(from(tip, azimuthDeg + 155, 9), tip, from(tip, azimuthDeg - 155, 9)),
        true,
        Svg.Pen.BLACK);
  }

  private Svg.At at(CapsuleLine capsule) {
    return new Svg.At(
        middle.x() + capsule.fromMiddleM().x() * perM,
        middle.y() - capsule.fromMiddleM().y() * perM);
  }

  /** The point in a direction: 0 is up the page, positive to the left. */
  static Svg.At from(Svg.At point, double azimuthDeg, double length) {
    double turn = Math.toRadians(azimuthDeg);
    return new Svg.At(point.x() - length * Math.sin(turn), point.y() - length * Math.cos(turn));
  }
}
