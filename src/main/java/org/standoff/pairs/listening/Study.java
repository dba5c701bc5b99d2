package org.standoff.pairs.listening;

import java.util.OptionalDouble;

/**
 * The study that a listening model rests on.
 *
 * @param id {@code pack/item}, or {@code inline}
 * @param title the name for people
 * @param citation who published the figures, where and when
 * @param note what the figures hold for, and what they don't
 * @param meantUpToPct how far off the middle its figures are meant, in per cent; empty when to the
 *     side
 */
public record Study(
    String id, String title, String citation, String note, OptionalDouble meantUpToPct) {}
