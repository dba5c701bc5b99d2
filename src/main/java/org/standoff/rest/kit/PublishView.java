package org.standoff.rest.kit;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.standoff.kit.stock.PublishReport;
import org.standoff.rest.http.Tagged;

/**
 * What publishing a whole kit changes.
 *
 * @param house whose kit it is
 * @param dryRun whether it was only looked at
 * @param added units that were not there
 * @param changed units that were there and are told otherwise
 * @param retired units that were there and are not told any more, or told as retired
 * @param unchanged units that stay as they were
 * @param revision counts the changes of the house's units
 * @param etag the entity tag of the whole kit
 */
@Schema(name = "PublishReport", description = "What publishing a whole kit changes")
public record PublishView(
    @Schema(description = "Id of the house whose kit it is") String house,
    @Schema(description = "Whether it was only looked at, and nothing was changed") boolean dryRun,
    @Schema(description = "Units that were not there") SomeUnits added,
    @Schema(description = "Units that were there and are told otherwise now") SomeUnits changed,
    @Schema(description = "Units that were there and are not told any more, or told as retired")
        SomeUnits retired,
    @Schema(description = "Units that stay as they were") SomeUnits unchanged,
    @Schema(
            description =
                "Counts the changes of the house's units; the same as before where nothing changed")
        long revision,
    @Schema(description = "Entity tag of the whole kit, to be sent as If-Match the next time")
        String etag) {

  /**
   * Some units.
   *
   * @param count of them
   * @param serials of the first of them, in order
   */
  @Schema(name = "SomeUnits", description = "How many units, and which they are")
  public record SomeUnits(
      @Schema(description = "How many there are") long count,
      @Schema(description = "Serial numbers, in order; the first 200 of them")
          List<String> serials) {

    static SomeUnits of(PublishReport.Serials serials) {
      return new SomeUnits(serials.count(), serials.first());
    }
  }

  static Tagged tagged(String house, PublishReport report) {
    String tag = tag(house, report.revision());
    return new Tagged(
        tag,
        new PublishView(
            house,
            report.dryRun(),
            SomeUnits.of(report.added()),
            SomeUnits.of(report.changed()),
            SomeUnits.of(report.retired()),
            SomeUnits.of(report.unchanged()),
            report.revision(),
            tag));
  }

  /** Of the whole kit of a house. */
  static String tag(String house, long revision) {
    return "\"" + house + "/units-" + revision + "\"";
  }
}
