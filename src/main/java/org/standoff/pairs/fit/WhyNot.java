package org.standoff.pairs.fit;

import java.util.Locale;
import org.standoff.acoustics.PatternName;
import org.standoff.pairs.Channel;
import org.standoff.pairs.PairParameters;

/** Why a layout can't do what was wished, with the number that fails. */
public sealed interface WhyNot {
  String layoutId();

  /** Short name, lower case with hyphens, stable for programs. */
  String code();

  /** One sentence for people. */
  String detail();

  /**
   * Too few alike microphones in a pattern of the layout.
   *
   * @param needed how many must be alike
   */
  record NoMicrophones(String layoutId, int needed) implements WhyNot {
    @Override
    public String code() {
      return "no-microphones";
    }

    @Override
    public String detail() {
      return "nothing at hand makes it: %d alike in one of its patterns are needed"
          .formatted(needed);
    }
  }

  /** The bar is shorter than the layout's least spacing. */
  record BarTooShort(String layoutId, double leastSpacingM, double barMostM) implements WhyNot {
    @Override
    public String code() {
      return "bar-too-short";
    }

    @Override
    public String detail() {
      return said("it needs %.2f m between capsules; the bar has %.2f m", leastSpacingM, barMostM);
    }
  }

  /** All players stand behind the pair. */
  record AllBehind(String layoutId, int players) implements WhyNot {
    @Override
    public String code() {
      return "all-behind";
    }

    @Override
    public String detail() {
      return "all %d players stand behind the pair".formatted(players);
    }
  }

  /**
   * No measures within the limits fill the share.
   *
   * @param reachedPct nearest that was reached
   * @param nearest with which measures
   */
  record SpanOutOfReach(
      String layoutId,
      PatternName pattern,
      double reachedPct,
      double wishedPct,
      PairParameters nearest,
      double distanceM)
      implements WhyNot {
    @Override
    public String code() {
      return "span-out-of-reach";
    }

    @Override
    public String detail() {
      return said(
          "with %s capsules the players fill %.1f %% of the base, not the %.1f %% wished",
          pattern.id(), reachedPct, wishedPct);
    }
  }

  /** A player loses too much in mono. */
  record MonoLoss(
      String layoutId,
      PatternName pattern,
      String playerId,
      String octave,
      double lossDb,
      double allowedDb)
      implements WhyNot {
    @Override
    public String code() {
      return "mono-loss";
    }

    @Override
    public String detail() {
      return said(
          "%s loses %.1f dB in mono at %s, more than the %.1f dB allowed",
          playerId, lossDb, octave, allowedDb);
    }
  }

  /** More or less room than wished, at every distance that is allowed. */
  record RoomOutOfRange(
      String layoutId, PatternName pattern, double nearestDb, double leastDb, double mostDb)
      implements WhyNot {
    @Override
    public String code() {
      return "room-out-of-range";
    }

    @Override
    public String detail() {
      return said(
          "direct over reverberant comes to %.1f dB, not between %.1f and %.1f dB",
          nearestDb, leastDb, mostDb);
    }
  }

  /** A capsule would have to be where a player is. */
  record PlayerOnCapsule(String layoutId, Channel channel, double distanceM) implements WhyNot {
    @Override
    public String code() {
      return "player-on-capsule";
    }

    @Override
    public String detail() {
      return said("the %s capsule would be %.3f m from a player", channel.id(), distanceM);
    }
  }

  private static String said(String format, Object... figures) {
    return String.format(Locale.ROOT, format, figures);
  }
}
