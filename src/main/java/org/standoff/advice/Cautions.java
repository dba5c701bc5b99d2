package org.standoff.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.standoff.acoustics.AirJet;
import org.standoff.chain.Microphone;
import org.standoff.chain.Powering;
import org.standoff.chain.Transducer;
import org.standoff.floor.EuActionValue;
import org.standoff.floor.ExposureRule;

/**
 * The cautions that belong to an answer. Practice in them is common practice; the hearing rules are
 * published (NIOSH 98-126; Directive 2003/10/EC).
 */
public final class Cautions {
  private static final double HOURS_OF_A_DAY = 24;

  private static final String LOCAL =
      "local regulations, the venue's competent person and the makers' instructions";

  /** What stands higher than this stands above people's heads (common practice). */
  private static final double OVER_HEADS_M = 2;

  private Cautions() {}

  /** Cautions about the place, whatever microphone stands there. */
  public static List<Caution> ofPlace(Question question, Arrival arrival) {
    List<Caution> cautions = new ArrayList<>();
    double levelDba = arrival.longTermDba();
    double peakDb = arrival.peak().high();
    if (levelDba > ExposureRule.NIOSH_REL.criterionDba()
        || peakDb > EuActionValue.LOWER_ACTION.peak().db()) {
      cautions.add(hearing(levelDba, peakDb));
    }
    if (question.placement().overhead()) {
      cautions.add(overhead());
    }
    return cautions;
  }

  /** Cautions about a microphone on the line of the question. */
  public static List<Caution> ofMicrophone(Question question, Microphone microphone) {
    List<Caution> cautions = new ArrayList<>();
    if (suffersFromPhantom(microphone)) {
      cautions.add(phantom(microphone));
    } else if (microphone.powering().need() == Powering.Need.P48
        && question.preamp().phantomBankSize() > 1) {
      cautions.add(
          new Caution(
              "phantom-bank",
              "medium",
              "line",
              "phantom is switched for several inputs at once",
              String.format(
                  Locale.ROOT,
                  "this preamp switches %d inputs together",
                  question.preamp().phantomBankSize()),
              "keep passive ribbons and unbalanced gear out of the bank; mute monitors before"
                  + " switching",
              LOCAL));
    }
    if (microphone.transducer().ribbon() && question.placement().airJet() != AirJet.NONE) {
      cautions.add(
          new Caution(
              "air-jet",
              "medium",
              microphone.id(),
              "moving air stretches or tears a ribbon",
              "air moves here (" + question.placement().airJet().id() + ")",
              "off the axis of the jet, a windshield, covered while it is moved, no breath tests",
              LOCAL));
    }
    return cautions;
  }

  /** Cautions about a microphone on whatever line it will hang. */
  public static List<Caution> ofPowering(Microphone microphone) {
    return suffersFromPhantom(microphone) ? List.of(phantom(microphone)) : List.of();
  }

  private static boolean suffersFromPhantom(Microphone microphone) {
    return microphone.powering().need() == Powering.Need.NONE_AND_NEVER
        || microphone.transducer() == Transducer.PASSIVE_RIBBON;
  }

  private static Caution phantom(Microphone microphone) {
    return new Caution(
        "phantom-on-passive-ribbon",
        "high",
        microphone.id(),
        "phantom on a miswired, unbalanced or patched line can destroy a passive ribbon",
        "a correctly wired balanced line carries the same voltage on both legs; a fault does not",
        "phantom off in the whole bank, wait ten seconds or more, then patch; mute monitors first;"
            + " never through a jackfield that shorts pins on insertion",
        LOCAL);
  }

  /**
   * Cautions about a stand.
   *
   * @param heightM of the microphones above the floor
   */
  public static List<Caution> ofStand(double heightM) {
    return heightM > OVER_HEADS_M ? List.of(overhead()) : List.of();
  }

  private static Caution overhead() {
    return new Caution(
        "overhead-stand",
        "high",
        "place",
        "a microphone above people can fall, and its stand can tip",
        "a boom's moment grows with its reach and with the mass at its end",
        "a wheeled or wide base, a leg under the boom, a counterweight and a sandbag on the"
            + " far foot, a safety cord on whatever hangs above people, never over a seated"
            + " player without weight",
        "the stand maker's rating, a competent rigger and local rules");
  }

  private static Caution hearing(double levelDba, double peakDb) {
    return new Caution(
        "hearing-at-the-source",
        peakDb > EuActionValue.LOWER_ACTION.peak().db() ? "high" : "medium",
        "place",
        "an ear at the microphone's place is at risk",
        String.format(
            Locale.ROOT,
            "about %.0f dB(A) while it plays and peaks of up to %.0f dB are predicted there%s; a"
                + " prediction is not a measurement",
            levelDba,
            peakDb,
            allowedTime(ExposureRule.NIOSH_REL.allowedHours(levelDba))),
        "find the place from the control room, ask for half level first, nobody's head at the"
            + " source, hearing protection",
        "local regulations and a competent person with a sound level meter or dosimeter");
  }

  /** The time of a full day's dose; nothing where the day itself is shorter and peaks rule. */
  private static String allowedTime(double hours) {
    if (hours > HOURS_OF_A_DAY) {
      return "";
    }
    double minutes = hours * 60;
    String time =
        hours >= 1
            ? String.format(Locale.ROOT, "%.1f h", hours)
            : minutes >= 1
                ? String.format(Locale.ROOT, "%.0f min", minutes)
                : String.format(Locale.ROOT, "%.0f s", minutes * 60);
    return ": " + time + " of it is a full day by the NIOSH recommended limit";
  }
}
