package org.standoff.rest.openapi;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.standoff.catalogue.ItemId;

/**
 * Describes members that refer to an item of the catalogue: an id, or the item itself in the form
 * of its file. In the code they are trees, because the kind's own schema checks them.
 */
@OpenApiFilter(stages = OpenApiFilter.RunStage.BUILD, priority = ItemReferences.FIRST)
public class ItemReferences implements OASFilter {

  /** Before the parameters of GETs are made from the members. */
  static final int FIRST = 100;

  static final String ID = "ItemId";

  private static final String SCHEMAS = "#/components/schemas/";
  private static final String TREE = "JsonNode";
  private static final String TREE_TYPE = "JsonNodeType";

  /** Kind of item by the name of the member. */
  private static final Map<String, String> KINDS =
      new TreeMap<>(
          Map.ofEntries(
              Map.entry("source", "source"),
              Map.entry("microphone", "microphone"),
              Map.entry("microphones", "microphone"),
              Map.entry("preamp", "preamp"),
              Map.entry("room", "room"),
              Map.entry("style", "style"),
              Map.entry("pair", "pair"),
              Map.entry("pairs", "pair"),
              Map.entry("barrier", "barrier"),
              Map.entry("material", "barrier"),
              Map.entry("ensemble", "ensemble"),
              Map.entry("models", "listening-model"),
              Map.entry("criterion", "listening-model")));

  @Override
  public void filterOpenAPI(OpenAPI description) {
    if (description.getComponents() == null
        || description.getComponents().getSchemas() == null
        || !description.getComponents().getSchemas().containsKey(TREE)) {
      return;
    }
    Map<String, Schema> schemas = new TreeMap<>(description.getComponents().getSchemas());
    schemas.remove(TREE);
    schemas.remove(TREE_TYPE);
    schemas.values().forEach(ItemReferences::replaceIn);
    schemas.put(ID, id());
    KINDS.values().stream()
        .distinct()
        .forEach(
            kind -> {
              schemas.put(name(kind, "Sheet"), sheet(kind));
              schemas.put(name(kind, "Reference"), reference(kind));
            });
    description.getComponents().setSchemas(schemas);
  }

  private static void replaceIn(Schema schema) {
    if (schema.getProperties() == null) {
      return;
    }
    schema
        .getProperties()
        .forEach(
            (name, member) -> {
              if (isTree(member)) {
                schema.addProperty(
                    name,
                    OASFactory.createSchema()
                        .ref(SCHEMAS + name(kind(name), "Reference"))
                        .description(member.getDescription())
                        .examples(member.getExamples()));
              } else if (member.getItems() != null && isTree(member.getItems())) {
                member.setItems(
                    OASFactory.createSchema().ref(SCHEMAS + name(kind(name), "Reference")));
              }
            });
  }

  private static boolean isTree(Schema schema) {
    return (SCHEMAS + TREE).equals(schema.getRef());
  }

  private static String kind(String member) {
    String kind = KINDS.get(member);
    if (kind == null) {
      throw new IllegalStateException("say in ItemReferences what " + member + " refers to");
    }
    return kind;
  }

  private static Schema id() {
    return OASFactory.createSchema()
        .addType(Schema.SchemaType.STRING)
        .description("Id of an item: the name of its pack, a slash, the name of its file")
        .pattern("^[a-z0-9]+(-[a-z0-9]+)*/[a-z0-9]+(-[a-z0-9]+)*$")
        .maxLength(ItemId.LONGEST)
        .examples(List.of("core/ldc-multi-1"));
  }

  private static Schema sheet(String kind) {
    String address = "/schemas/" + kind + ".json";
    return OASFactory.createSchema()
        .addType(Schema.SchemaType.OBJECT)
        .description(
            "Item of the kind %s in the form of its catalogue file; the schema at %s says what is in it"
                .formatted(kind, address))
        .externalDocs(
            OASFactory.createExternalDocumentation()
                .url(address)
                .description("JSON Schema of " + kind + " files"));
  }

  private static Schema reference(String kind) {
    return OASFactory.createSchema()
        .description("Item of the kind %s: its id, or the item itself".formatted(kind))
        .oneOf(
            List.of(
                OASFactory.createSchema().ref(SCHEMAS + ID),
                OASFactory.createSchema().ref(SCHEMAS + name(kind, "Sheet"))));
  }

  /** {@code listening-model} and {@code Sheet} are ListeningModelSheet. */
  private static String name(String kind, String suffix) {
    StringBuilder name = new StringBuilder();
    for (String word : kind.split("-")) {
      name.append(Character.toUpperCase(word.charAt(0))).append(word.substring(1));
    }
    return name + suffix;
  }
}
