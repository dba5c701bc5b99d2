package org.standoff.kit.hold;

/** What can be done with a hold once it is made. */
public enum HoldStep {
  /** The desk makes a tentative hold certain. */
  CONFIRM,
  /** The desk gives it up; of one that is out, what nobody collected. */
  RELEASE,
  /** The desk moves its end to a later time. */
  EXTEND,
  /** A house hands its units over. */
  CHECK_OUT,
  /** A house has its units back. */
  CHECK_IN
}
