package org.standoff.floor;

/**
 * Why a floor can't be computed as told.
 *
 * @param code stable code
 * @param subject id of the source, microphone or barrier
 * @param detail one sentence for people, with the figures
 * @param found what stands there, with its figures
 * @param allowed what may stand there, with its figures
 */
public record FloorFault(
    String code, String subject, String detail, String found, String allowed) {}
