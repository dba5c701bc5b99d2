package org.standoff.answers;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * What a calculation would cost that is too dear, beside what there is.
 *
 * @param estimatedCpuMs CPU time that it would take
 * @param leftCpuMs CPU time that is left to the request
 * @param mostCpuMs CPU time that a whole request may take
 */
@Schema(description = "What a calculation would cost that is too dear, beside what there is")
public record CpuCost(
    @Schema(description = "CPU time of one core that it would take by estimate, in ms")
        long estimatedCpuMs,
    @Schema(description = "CPU time that earlier lines of the batch have left, in ms")
        long leftCpuMs,
    @Schema(description = "CPU time that a request, or all lines of a batch, may take, in ms")
        long mostCpuMs) {}
