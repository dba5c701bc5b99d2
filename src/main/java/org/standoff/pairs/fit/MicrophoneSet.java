package org.standoff.pairs.fit;

import java.util.List;

/**
 * Microphones that together make a layout.
 *
 * @param microphoneIds models, one a body
 * @param matched true when all that must be alike are of a matched group, or only one must
 */
public record MicrophoneSet(List<String> microphoneIds, boolean matched) {
  public MicrophoneSet {
    microphoneIds = List.copyOf(microphoneIds);
  }
}
