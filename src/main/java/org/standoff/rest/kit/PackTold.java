package org.standoff.rest.kit;

import static java.nio.charset.StandardCharsets.UTF_8;

import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.standoff.rest.json.JsonSetup;
import org.standoff.rest.json.TakesBack;

/**
 * The files of a pack.
 *
 * @param files texts by their path in the pack
 */
@TakesBack(HousePackView.class)
@Schema(name = "PackTold", description = "The files of a catalogue pack")
public record PackTold(
    @Schema(
            description =
                "Texts of the files by their path in the pack: pack.yaml, and one for each item,"
                    + " such as microphones/ldc-multi-1.yaml",
            minProperties = 1)
        @NotNull
        @NotEmpty
        @Size(max = PackTold.MOST_FILES)
        Map<@Size(max = 200) String, @NotNull @Size(max = JsonSetup.LONGEST_TEXT) String> files) {

  static final int MOST_FILES = 2_000;

  /** The files with what is no text in UTF-8, half a surrogate pair, made visible. */
  Map<String, String> texts() {
    Map<String, String> texts = new TreeMap<>();
    files.forEach((path, text) -> texts.put(wellFormed(path), wellFormed(text)));
    return texts;
  }

  private static String wellFormed(String text) {
    return new String(text.getBytes(UTF_8), UTF_8);
  }
}
