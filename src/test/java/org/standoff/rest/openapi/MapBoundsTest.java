package org.standoff.rest.openapi;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.jboss.jandex.Index;
import org.junit.jupiter.api.Test;

class MapBoundsTest {

  @org.eclipse.microprofile.openapi.annotations.media.Schema(name = "Told")
  record Files(
      @NotNull @Size(max = 7) Map<@Size(max = 5) String, @NotNull String> ownFiles,
      Map<String, String> others,
      @Size(max = 3) List<String> names) {}

  @Test
  void aMapIsToldWithTheBoundsThatCheckIt() throws IOException {
    Schema files = described("own_files");
    assertThat(files.getMaxProperties()).isEqualTo(7);
    assertThat(files.getPropertyNames().getMaxLength()).isEqualTo(5);
  }

  @Test
  void whatIsNoMapOrHasNoBoundsIsToldWithoutThem() throws IOException {
    for (String name : List.of("others", "names")) {
      Schema member = described(name);
      assertThat(member.getMaxProperties()).as(name).isNull();
      assertThat(member.getPropertyNames()).as(name).isNull();
    }
  }

  private static Schema described(String member) throws IOException {
    Schema record = OASFactory.createSchema();
    List.of("own_files", "others", "names")
        .forEach(name -> record.addProperty(name, OASFactory.createSchema()));
    OpenAPI description =
        OASFactory.createOpenAPI()
            .components(OASFactory.createComponents().addSchema("Told", record));
    new MapBounds(Index.of(Files.class)).filterOpenAPI(description);
    return record.getProperties().get(member);
  }
}
