package org.standoff.shipped;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Laws over every file of the shipped packs. */
class FilesTest {

  @TestFactory
  Stream<DynamicTest> everyFileKeepsToItsSchema() {
    Map<String, Schema> schemas =
        all()
            .map(ShippedFile::kind)
            .distinct()
            .collect(Collectors.toMap(Function.identity(), ShippedCatalogue::schema));
    return all()
        .map(
            file ->
                dynamicTest(
                    file.toString(),
                    () ->
                        assertThat(schemas.get(file.kind()).validate(file.content()))
                            .as("%s: correct the file at each place named", file)
                            .extracting(Error::toString)
                            .isEmpty()));
  }

  @Test
  void everyFileNamesItsSchemaForEditors() {
    List<String> strays =
        all()
            .filter(
                file ->
                    !ShippedCatalogue.text(file.path())
                        .startsWith("# yaml-language-server: $schema=" + wayToSchema(file) + "\n"))
            .map(file -> file + ": begin with $schema=" + wayToSchema(file))
            .toList();
    assertThat(strays).isEmpty();
  }

  @Test
  void everyFileIsAYamlFileWithAPlainName() {
    assertThat(ShippedCatalogue.items())
        .as("an item is <lower-case-name>.yaml: rename these")
        .allMatch(file -> file.path().toString().endsWith(".yaml"))
        .allMatch(file -> file.id().matches("[a-z0-9]+(-[a-z0-9]+)*/[a-z0-9]+(-[a-z0-9]+)*"));
  }

  @Test
  void aPackIsCalledLikeItsFolder() {
    assertThat(ShippedCatalogue.packs())
        .as("make id in pack.yaml the folder's name")
        .isNotEmpty()
        .allMatch(pack -> pack.at("/id").textValue().equals(pack.pack()));
  }

  @Test
  void noFileUsesTabsOrTrailingBlanks() {
    assertThat(all())
        .as("replace tabs by spaces and cut what trails")
        .noneMatch(
            file ->
                ShippedCatalogue.text(file.path())
                    .lines()
                    .anyMatch(line -> line.contains("\t") || line.endsWith(" ")));
  }

  private static String wayToSchema(ShippedFile file) {
    String up = file.kind().equals("pack") ? "../" : "../../";
    return up + "schema/" + file.kind() + ".json";
  }

  private static Stream<ShippedFile> all() {
    return Stream.concat(ShippedCatalogue.packs().stream(), ShippedCatalogue.items().stream());
  }
}
