package org.standoff.kit.hold;

import org.standoff.kit.Model;

/**
 * One line of what a desk wants.
 *
 * @param house that lends it
 * @param microphone id of the catalogue item
 * @param quantity how many units; at least 1
 * @param matched whether they must be one whole matched group of just that many
 */
public record WantedLine(String house, String microphone, int quantity, boolean matched) {

  public Model model() {
    return new Model(house, microphone);
  }
}
