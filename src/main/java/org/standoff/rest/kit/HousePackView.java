package org.standoff.rest.kit;

import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.standoff.kit.pack.HousePack;
import org.standoff.rest.http.Tagged;

/**
 * A catalogue pack that a house publishes.
 *
 * @param house whose it is
 * @param id its name
 * @param revision counts its changes
 * @param etag the entity tag of the pack
 * @param files texts by their path in the pack
 */
@Schema(name = "HousePack", description = "A catalogue pack that a house publishes")
public record HousePackView(
    @Schema(description = "Id of the house whose it is") String house,
    @Schema(description = "Its name; /v1/packs tells how it stands in the catalogue") String id,
    @Schema(description = "Counts its changes") long revision,
    @Schema(description = "Its entity tag, to be sent as If-Match with a change") String etag,
    @Schema(description = "Texts of the files by their path in the pack")
        Map<String, String> files) {

  static Tagged tagged(HousePack pack) {
    String tag = tag(pack.id(), pack.revision());
    return new Tagged(
        tag, new HousePackView(pack.house(), pack.id(), pack.revision(), tag, pack.files()));
  }

  static String tag(String pack, long revision) {
    return "\"pack/" + pack + "-" + revision + "\"";
  }
}
