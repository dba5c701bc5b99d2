package org.standoff.shipped;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The shipped packs as they stand in the repository. */
public final class ShippedCatalogue {
  public static final Path ROOT = Path.of("catalogue");
  public static final Path SCHEMAS = ROOT.resolve("schema");

  /** Folder of a pack to the kind that stands in it: one kind a schema, pack.yaml apart. */
  public static final Map<String, String> KINDS =
      list(SCHEMAS)
          .map(file -> file.getFileName().toString().replace(".json", ""))
          .filter(kind -> !kind.equals("pack"))
          .collect(Collectors.toMap(ShippedCatalogue::folderOf, Function.identity()));

  private static final YAMLMapper YAML =
      YAMLMapper.builder().enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION).build();
  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
  private static final List<ShippedFile> PACKS =
      foldersIn(ROOT)
          .filter(folder -> !folder.equals(SCHEMAS))
          .map(ShippedCatalogue::pack)
          .toList();
  private static final List<ShippedFile> ITEMS =
      PACKS.stream().flatMap(ShippedCatalogue::itemsOf).toList();

  private ShippedCatalogue() {}

  /** The pack files, {@code pack.yaml}. */
  public static List<ShippedFile> packs() {
    return PACKS;
  }

  public static List<ShippedFile> items() {
    return ITEMS;
  }

  public static List<ShippedFile> ofKind(String kind) {
    return ITEMS.stream().filter(file -> file.kind().equals(kind)).toList();
  }

  public static ShippedFile find(String kind, String id) {
    return ofKind(kind).stream()
        .filter(file -> file.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + kind + " " + id + " is shipped"));
  }

  public static JsonNode schemaNode(String kind) {
    try {
      return new ObjectMapper().readTree(SCHEMAS.resolve(kind + ".json").toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static Schema schema(String kind) {
    return REGISTRY.getSchema(schemaNode(kind));
  }

  public static JsonNode yaml(String text) {
    try {
      return YAML.readTree(text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static String text(Path path) {
    try {
      return Files.readString(path);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static ShippedFile pack(Path folder) {
    Path file = folder.resolve("pack.yaml");
    String name = folder.getFileName().toString();
    return new ShippedFile(file, name, "pack", name, yaml(text(file)));
  }

  private static Stream<ShippedFile> itemsOf(ShippedFile pack) {
    return foldersIn(pack.path().getParent())
        .flatMap(folder -> list(folder).map(file -> item(pack.pack(), folder, file)));
  }

  private static ShippedFile item(String pack, Path folder, Path file) {
    String kind = KINDS.get(folder.getFileName().toString());
    if (kind == null) {
      throw new AssertionError(folder + " belongs to no kind: add its schema, or rename it");
    }
    String name = file.getFileName().toString().replaceFirst("\\.yaml$", "");
    return new ShippedFile(file, pack, kind, pack + "/" + name, yaml(text(file)));
  }

  private static String folderOf(String kind) {
    return kind + (kind.endsWith("x") ? "es" : "s");
  }

  private static Stream<Path> foldersIn(Path folder) {
    return list(folder).filter(Files::isDirectory);
  }

  private static Stream<Path> list(Path folder) {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.sorted().toList().stream();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
