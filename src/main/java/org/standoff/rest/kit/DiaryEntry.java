package org.standoff.rest.kit;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.standoff.kit.hold.Diary;
import org.standoff.kit.hold.HoldState;

/**
 * One promise of a unit.
 *
 * @param busyFrom from when it is busy
 * @param busyTo until when
 * @param state how the hold stands
 * @param outAt when it was handed over
 * @param inAt when it was back
 * @param hold whose it is, for those who may see it
 */
@Schema(name = "DiaryEntry", description = "One promise of a unit")
@JsonInclude(JsonInclude.Include.NON_NULL)
public record DiaryEntry(
    @Schema(description = "From when it is busy") Instant busyFrom,
    @Schema(description = "Until when: its return and the house's turn-round") Instant busyTo,
    @Schema(description = "How the hold stands") HoldState state,
    @Schema(description = "When the unit was handed over; absent before") @Nullable Instant outAt,
    @Schema(description = "When it was back; absent before") @Nullable Instant inAt,
    @Schema(description = "Whose it is then; for the desk, the house and an admin only")
        @Nullable Holder hold) {

  /** Of one length, so that the order of the texts is that of the moments. */
  private static final DateTimeFormatter KEY =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSSSSS'Z'").withZone(ZoneOffset.UTC);

  /** The hold behind a promise. */
  @Schema(name = "Holder", description = "The hold behind a promise")
  public record Holder(
      @Schema(description = "Its id") String id,
      @Schema(description = "The desk that holds") String desk,
      @Schema(description = "The desk's own name for it") String reference,
      @Schema(description = "When the units are collected") Instant from,
      @Schema(description = "When they come back") Instant to) {

    static Holder of(Diary.Holder holder) {
      return new Holder(
          holder.id().toString(),
          holder.desk(),
          holder.reference(),
          holder.period().from(),
          holder.period().to());
    }
  }

  static DiaryEntry of(Diary.Entry entry) {
    return new DiaryEntry(
        entry.busy().from(),
        entry.busy().to(),
        entry.state(),
        entry.outAt().orElse(null),
        entry.inAt().orElse(null),
        entry.hold().map(Holder::of).orElse(null));
  }

  /** Its place in the diary. */
  @JsonIgnore
  String key() {
    return KEY.format(busyFrom);
  }
}
