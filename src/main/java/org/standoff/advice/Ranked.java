package org.standoff.advice;

/**
 * A microphone with its settings and its place among the others.
 *
 * @param rank from 1; equals share a rank
 * @param score points of all preferences, or, where everything clips, the least guarded headroom in
 *     dB; compare only with others of the same answer
 * @param assessment the settings, assessed
 */
public record Ranked(int rank, double score, Assessment assessment) {

  /** How well it serves. */
  public Verdict verdict(HouseStyle style) {
    return verdict(assessment, style);
  }

  /** How well settings serve in a house of that style. */
  public static Verdict verdict(Assessment assessment, HouseStyle style) {
    if (assessment.levels().clips()) {
      return Verdict.CLIPS;
    }
    return assessment.levels().guarded().leastDb() < style.wantedHeadroomDb() - Verdict.SLACK_DB
        ? Verdict.THIN
        : Verdict.FITS;
  }

  /** How well settings serve. */
  public enum Verdict {
    /** Leaves the wanted headroom at the guarded percentile. */
    FITS("fits"),
    /** Does not clip there, but leaves less than wanted. */
    THIN("thin"),
    /** Clips at the guarded percentile. */
    CLIPS("clips");

    private static final double SLACK_DB = 1e-9;

    private final String id;

    Verdict(String id) {
      this.id = id;
    }

    /** The word used in answers. */
    public String id() {
      return id;
    }
  }
}
