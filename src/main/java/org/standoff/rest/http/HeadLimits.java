package org.standoff.rest.http;

import java.time.Duration;

/**
 * What the head of a request has to keep.
 *
 * @param within how long it may take from its first byte
 * @param requestLineBytes how long its first line may be
 * @param headersBytes how long all its headers together may be
 */
record HeadLimits(Duration within, long requestLineBytes, long headersBytes) {}
