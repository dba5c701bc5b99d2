package org.standoff.rest.floor;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.standoff.acoustics.Direction;
import org.standoff.answers.Coordinates;
import org.standoff.answers.floor.BarrierOnFloor;
import org.standoff.answers.floor.BleedAnswer;
import org.standoff.answers.floor.BleedAnswer.HearingMicrophone;
import org.standoff.answers.floor.FloorAsAsked;
import org.standoff.answers.floor.MicrophoneOnFloor;
import org.standoff.answers.floor.SourceOnFloor;
import org.standoff.rest.media.ScaleBar;
import org.standoff.rest.media.Svg;
import org.standoff.rest.media.Words;

/**
 * A floor from above, to scale: sources as numbered circles with a tick where they face,
 * microphones as lettered squares with their aims and nulls, barriers, and dotted lines to the
 * worst offenders. The front (+y) is up the page.
 */
final class PlanPicture {
  private static final int WIDTH = 900;
  private static final double LEFT = 24;
  private static final double TOP = 84;
  private static final double MOST_HEIGHT = 620;
  private static final double RADIUS = 10;
  private static final double AIM = 26;
  private static final double NULL = 20;
  private static final int MOST_OFFENDERS = 5;

  /** Below this elevation a null lies near enough to the plane of the page. */
  private static final double LEVEL_DEG = 30;

  private final BleedAnswer answer;
  private final FloorAsAsked floor;
  private final double perM;
  private final Svg svg;
  private final Labels labels;

  private PlanPicture(BleedAnswer answer) {
    this.answer = answer;
    floor = answer.floor();
    perM = Math.min((WIDTH - 2 * LEFT) / floor.lengthM(), MOST_HEIGHT / floor.widthM());
    svg = new Svg(WIDTH, "Floor plan of " + floor.room(), words(answer));
    labels = new Labels(LEFT, TOP, LEFT + floor.lengthM() * perM, TOP + floor.widthM() * perM);
  }

  static String draw(BleedAnswer answer) {
    return new PlanPicture(answer).draw();
  }

  private String draw() {
    svg.text(new Svg.At(LEFT, 34), Svg.Anchor.START, 18, "Floor plan: " + floor.room());
    svg.text(
        new Svg.At(LEFT, 56),
        Svg.Anchor.START,
        12,
        "%s × %s, %s high%s. From above, to scale; front (+y) is up the page."
            .formatted(
                Words.metres(floor.lengthM()),
                Words.metres(floor.widthM()),
                Words.metres(floor.heightM()),
                floor.equivalentBox() ? " (a box that stands in for the room)" : ""));
    double bottom = TOP + floor.widthM() * perM;
    svg.box(new Svg.At(LEFT, TOP), floor.lengthM() * perM, floor.widthM() * perM, Svg.Pen.LINE);
    offenders();
    floor.barriers().forEach(this::barrier);
    floor.sources().forEach(source -> labels.take(at(source.positionM()), RADIUS));
    floor.microphones().forEach(microphone -> labels.take(at(microphone.positionM()), 3));
    floor.microphones().forEach(this::aim);
    for (int i = 0; i < floor.sources().size(); i++) {
      source(floor.sources().get(i), i + 1);
    }
    for (int i = 0; i < floor.microphones().size(); i++) {
      letter(floor.microphones().get(i), new PlanTable.Letter(i).text());
    }
    ScaleBar.draw(svg, new Svg.At(LEFT + floor.lengthM() * perM - 4, bottom + 22), perM);
    double y = legend(bottom + 22);
    return svg.document(PlanTable.draw(svg, answer, y + 26) + 16);
  }

  private Svg.At at(Coordinates place) {
    return at(place.x(), place.y());
  }

  private Svg.At at(double xM, double yM) {
    return new Svg.At(LEFT + xM * perM, TOP + (floor.widthM() - yM) * perM);
  }

  /** A point of the page, so far off another in a direction of the floor. */
  private static Svg.At off(Svg.At at, double azimuthDeg, double elevationDeg, double reach) {
    Direction to = new Direction(azimuthDeg, elevationDeg);
    return new Svg.At(at.x() + reach * to.x(), at.y() - reach * to.y());
  }

  private void source(SourceOnFloor source, int number) {
    Svg.At at = at(source.positionM());
    svg.line(at, off(at, source.facingAzimuthDeg(), 0, RADIUS + 8), Svg.Pen.LINE);
    svg.circle(at, RADIUS, Svg.Pen.WHITE);
    Svg.At place = hidden(at) ? labels.place(at, 7, Math.PI / 2) : at;
    svg.text(
        new Svg.At(place.x(), place.y() + 4),
        Svg.Anchor.MIDDLE,
        number > 99 ? 8.5 : 11,
        String.valueOf(number));
  }

  /** Whether a microphone covers the number of a source at this point. */
  private boolean hidden(Svg.At source) {
    return floor.microphones().stream()
        .map(microphone -> at(microphone.positionM()))
        .anyMatch(at -> Math.hypot(at.x() - source.x(), at.y() - source.y()) < RADIUS);
  }

  private void aim(MicrophoneOnFloor microphone) {
    Svg.At at = at(microphone.positionM());
    Svg.At to = off(at, microphone.azimuthDeg(), microphone.elevationDeg(), AIM);
    svg.line(at, to, Svg.Pen.LINE);
    labels.take(to, 3);
    if (Math.abs(microphone.elevationDeg()) <= LEVEL_DEG) {
      microphone
          .nullDeg()
          .ifPresent(
              deg -> {
                nullRay(at, microphone.azimuthDeg() + deg);
                nullRay(at, microphone.azimuthDeg() - deg);
              });
    }
  }

  private void letter(MicrophoneOnFloor microphone, String letter) {
    Svg.At at = at(microphone.positionM());
    svg.circle(at, 2.6, Svg.Pen.BLACK);
    double away = Math.toRadians(90 + microphone.azimuthDeg());
    Svg.At place = labels.place(at, 8, Math.atan2(Math.sin(away), -Math.cos(away)));
    svg.line(at, place, Svg.Pen.THIN);
    svg.box(new Svg.At(place.x() - 8, place.y() - 8), 16, 16, Svg.Pen.WHITE);
    svg.text(
        new Svg.At(place.x(), place.y() + 4),
        Svg.Anchor.MIDDLE,
        letter.length() > 1 ? 8.5 : 11,
        letter);
  }

  private void nullRay(Svg.At at, double azimuthDeg) {
    Svg.At to = off(at, azimuthDeg, 0, NULL);
    svg.line(at, to, new Svg.Pen(0.9, "3 2", "none"));
    labels.take(to, 2);
  }

  private void barrier(BarrierOnFloor barrier) {
    Svg.At middle = at(barrier.place().xM(), barrier.place().yM());
    double half = barrier.widthM() * perM / 2;
    double along = barrier.place().facingAzimuthDeg() + 90;
    svg.line(off(middle, along, 0, half), off(middle, along, 0, -half), new Svg.Pen(5, "", "none"));
  }

  /** The worst neighbours of the microphones that are worst off. */
  private void offenders() {
    worstOff()
        .forEach(
            i ->
                place(answer.microphones().get(i).offenders().get(0).source())
                    .ifPresent(
                        from ->
                            svg.line(
                                from,
                                at(floor.microphones().get(i).positionM()),
                                new Svg.Pen(1.1, "1.5 4", "none"))));
  }

  private List<Integer> worstOff() {
    return IntStream.range(0, answer.microphones().size())
        .filter(i -> answer.microphones().get(i).isolationDb().isPresent())
        .boxed()
        .sorted(
            Comparator.comparingDouble(
                i -> answer.microphones().get(i).isolationDb().getAsDouble()))
        .limit(MOST_OFFENDERS)
        .toList();
  }

  private Optional<Svg.At> place(String source) {
    return floor.sources().stream()
        .filter(one -> one.id().equals(source))
        .findFirst()
        .map(one -> at(one.positionM()));
  }

  private double legend(double top) {
    svg.text(
        new Svg.At(LEFT, top),
        Svg.Anchor.START,
        11,
        "Circle: source, ticked where it faces. Square: microphone, a line where it aims, dashes at"
            + " its nulls where it looks level.");
    svg.text(
        new Svg.At(LEFT, top + 16),
        Svg.Anchor.START,
        11,
        "Bar: barrier. Dotted: from the worst neighbour to each of the "
            + Math.min(MOST_OFFENDERS, worstOff().size())
            + " microphones that are worst off.");
    return top + 16;
  }

  private static String words(BleedAnswer answer) {
    StringBuilder words = new StringBuilder();
    words.append(answer.floor().sources().size()).append(" sources, ");
    words.append(answer.floor().microphones().size()).append(" microphones, ");
    words.append(answer.floor().barriers().size()).append(" barriers.");
    for (HearingMicrophone microphone : answer.microphones()) {
      words.append(' ').append(microphone.id()).append(": ").append(microphone.because());
      words.append('.');
    }
    return words.toString();
  }
}
