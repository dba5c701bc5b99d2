package org.standoff.pairs;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Point3;

/**
 * What an assistant with tape and protractor needs to put a pair up, and to prove that it stands
 * right.
 *
 * @param capsules each capsule's place and aim
 * @param betweenCapsules tape measures from capsule to capsule
 * @param toMarks tape measures from capsules to told places, in the order of their names
 */
public record SettingOut(
    List<CapsuleMark> capsules, List<TapeMeasure> betweenCapsules, List<TapeMeasure> toMarks) {
  /**
   * A capsule on the floor plan; its height is z of {@code place}.
   *
   * @param place in the room
   * @param aim in the room
   * @param fromBarDeg protractor angle between the axis and the bar, measured from the bar's end on
   *     the side to which the axis turns: 90 straight ahead, 35 for a pair of 110°
   * @param fromMiddleDeg angle between the axis and the pair's middle axis, positive to the left
   */
  public record CapsuleMark(
      Channel channel, Point3 place, Direction aim, double fromBarDeg, double fromMiddleDeg) {}

  /**
   * A length to check with the tape.
   *
   * @param from a channel's name
   * @param to a channel's name, or a mark's
   */
  public record TapeMeasure(String from, String to, double lengthM) {}

  /**
   * @param marks places in the room by name, as players
   */
  public static SettingOut of(Pair pair, Map<String, Point3> marks) {
    List<CapsuleMark> capsules = pair.capsules().stream().map(one -> mark(pair, one)).toList();
    List<TapeMeasure> between = new ArrayList<>();
    List<TapeMeasure> toMarks = new ArrayList<>();
    for (int at = 0; at < capsules.size(); at++) {
      CapsuleMark from = capsules.get(at);
      for (CapsuleMark to : capsules.subList(at + 1, capsules.size())) {
        between.add(tape(from, to.channel().id(), to.place()));
      }
      new TreeMap<>(marks).forEach((name, place) -> toMarks.add(tape(from, name, place)));
    }
    return new SettingOut(capsules, List.copyOf(between), List.copyOf(toMarks));
  }

  private static CapsuleMark mark(Pair pair, Capsule capsule) {
    Direction aim = capsule.aim();
    double fromBarDeg = Math.toDegrees(Math.acos(Math.min(Math.abs(aim.x()), 1)));
    return new CapsuleMark(
        capsule.channel(),
        pair.place().toRoom(capsule.position()),
        pair.place().toRoom(aim),
        fromBarDeg,
        aim.azimuthDeg());
  }

  private static TapeMeasure tape(CapsuleMark from, String to, Point3 place) {
    return new TapeMeasure(from.channel().id(), to, from.place().distanceToM(place));
  }
}
