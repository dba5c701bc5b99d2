package org.standoff.chain;

import java.util.List;

/**
 * One output of a microphone body; a mid-side body has two.
 *
 * @param id {@code main}, {@code mid}, {@code side}
 * @param patterns what it can be switched to, at least one
 */
public record MicrophoneOutput(String id, List<PatternFigures> patterns) {
  public MicrophoneOutput {
    patterns = List.copyOf(patterns);
  }
}
