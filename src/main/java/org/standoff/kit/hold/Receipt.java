package org.standoff.kit.hold;

import java.util.UUID;

/**
 * What was answered to a request that may come again.
 *
 * @param hold the hold that it made
 * @param answer the answer, the same each time
 */
public record Receipt(UUID hold, String answer) {}
