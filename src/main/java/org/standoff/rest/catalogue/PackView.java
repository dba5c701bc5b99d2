package org.standoff.rest.catalogue;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.standoff.catalogue.Finding;
import org.standoff.catalogue.Pack;
import org.standoff.catalogue.PackStatus;

/**
 * A pack and how it stands.
 *
 * @param id its name
 * @param status {@code ok}, or {@code faulty} where its files as they are now can't be used
 * @param inUse whether a version of it is in use
 * @param title the name for people
 * @param version what its publisher calls this state of it
 * @param licence under which it may be used
 * @param publisher who answers for it
 * @param uses packs whose items it refers to
 * @param revision digest over the files of the version in use
 * @param counts number of items by kind
 * @param findings all that should be known about its files as they are now
 * @param lastGoodLoad when the version in use was loaded
 */
@Schema(name = "Pack", description = "A pack and how it stands")
@JsonInclude(JsonInclude.Include.NON_NULL)
public record PackView(
    @Schema(description = "Its name", examples = "core") String id,
    @Schema(
            description = "ok, or faulty where its files as they are now can't be used",
            enumeration = {"ok", "faulty"})
        String status,
    @Schema(description = "Whether a version of it is in use: the last good one where it is faulty")
        boolean inUse,
    @Schema(description = "The name for people") String title,
    @Schema(description = "What its publisher calls this state of it") String version,
    @Schema(description = "SPDX expression of its licence") String licence,
    @Schema(description = "Who answers for it") String publisher,
    @Schema(description = "Packs whose items it refers to") List<String> uses,
    @Schema(description = "Digest over the files of the version in use") String revision,
    @Schema(description = "Number of items by kind") Map<String, Integer> counts,
    @Schema(description = "All that should be known about its files as they are now")
        List<FindingView> findings,
    @Schema(description = "When the version in use was loaded by this instance")
        Instant lastGoodLoad) {

  /**
   * Something that the pack's author should know.
   *
   * @param severity fault: the pack can't be used; warning: figures contradict; note: left aside
   * @param file path from the folder of packs
   * @param line line of the file, from 1
   * @param pointer JSON pointer into the file
   * @param found what stands there
   * @param expected what should stand there
   */
  @Schema(name = "PackFinding", description = "Something that the pack's author should know")
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record FindingView(
      @Schema(
              description =
                  "fault: the pack can't be used; warning: figures contradict each other; note:"
                      + " something was left aside")
          Finding.Severity severity,
      @Schema(description = "Path from the folder of packs") String file,
      @Schema(description = "Line of the file, from 1; absent where none can be named")
          Integer line,
      @Schema(description = "JSON pointer (RFC 6901) into the file; empty for all of it")
          String pointer,
      @Schema(description = "What stands there, cut after 80 characters") String found,
      @Schema(description = "What should stand there") String expected) {

    static FindingView of(Finding finding) {
      return new FindingView(
          finding.severity(),
          finding.file(),
          finding.line() == 0 ? null : finding.line(),
          finding.pointer(),
          finding.found(),
          finding.expected());
    }
  }

  static PackView of(PackStatus status) {
    Pack live = status.live().orElse(null);
    return new PackView(
        status.id(),
        status.isFaulty() ? "faulty" : "ok",
        live != null,
        live == null ? null : live.title(),
        live == null ? null : live.version(),
        live == null ? null : live.licence(),
        live == null ? null : live.publisher(),
        live == null ? null : live.uses(),
        live == null ? null : live.revision(),
        live == null ? null : live.counts(),
        status.findings().stream().map(FindingView::of).toList(),
        status.lastGoodLoad().orElse(null));
  }

  /** What the same files give on every instance: all but the time. */
  PackView withoutTime() {
    return new PackView(
        id, status, inUse, title, version, licence, publisher, uses, revision, counts, findings,
        null);
  }
}
