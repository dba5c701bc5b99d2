package org.standoff.floor;

import java.util.List;
import org.standoff.acoustics.LateField;
import org.standoff.acoustics.Level;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Room;

/** What a room does to sound power, worked out once for all sources. */
final class RoomField {
  final Room room;
  final List<Images.Image> images;
  final double speedMPerS;

  /** Energy attenuation of the air per metre, per octave. */
  final double[] airPerM = new double[Octave.COUNT];

  /** (1 − ᾱ)^k per order and octave: what is left after k reflections. */
  final double[][] reflected;

  /** 4(1 − ᾱ)^(n+1)/A per octave. */
  final double[] latePerPower = new double[Octave.COUNT];

  RoomField(Room room, int order) {
    this.room = room;
    images = Images.upTo(order);
    speedMPerS = room.air().speedOfSoundMPerS();
    reflected = new double[order + 1][Octave.COUNT];
    for (Octave octave : Octave.all()) {
      int i = octave.ordinal();
      double area = room.absorptionAreaM2(octave, false);
      airPerM[i] = room.air().energyAttenuationPerM(octave.midHz());
      latePerPower[i] = Level.powerRatio(LateField.levelDb(0, area, room.surfaceM2(), order));
      double left = Math.max(1 - room.meanAbsorption(octave), 0);
      reflected[0][i] = 1;
      for (int k = 1; k <= order; k++) {
        reflected[k][i] = reflected[k - 1][i] * left;
      }
    }
  }
}
