package org.standoff.catalogue.load;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.arc.All;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.standoff.catalogue.CatalogueKind;
import org.standoff.catalogue.ItemId;
import org.standoff.catalogue.Sheet;
import org.standoff.catalogue.SheetFault;

/**
 * Reads items that stand in no file, in the form of their files: through the same schema and the
 * same reader.
 */
@ApplicationScoped
public class InlineSheets {
  private final Map<Class<?>, Way> ways = new HashMap<>();

  private record Way(CatalogueKind<?> kind, SchemaCheck schema) {}

  /**
   * A fault of such an item.
   *
   * @param pointer where in the item, as a JSON pointer
   * @param found what stood there
   * @param expected what may stand there
   */
  public record Fault(String pointer, String found, String expected) {}

  InlineSheets(@All List<CatalogueKind<?>> kinds) {
    for (CatalogueKind<?> kind : kinds) {
      SchemaCheck schema = SchemaCheck.of(kind.schemaResource(), kind.getClass().getClassLoader());
      ways.put(kind.type(), new Way(kind, schema));
    }
  }

  /** The word for one item of a type: {@code microphone}. */
  public String kindName(Class<?> type) {
    return way(type).kind().name();
  }

  /**
   * Reads an item.
   *
   * @param type the record that its kind describes
   * @param id what it is called meanwhile
   * @param content the item
   * @param faults where every fault goes; the result is empty where there was one
   */
  public <T> Optional<T> read(Class<T> type, ItemId id, JsonNode content, Consumer<Fault> faults) {
    Way way = way(type);
    List<ReadFault> found = way.schema().faults(content, new Lines(content, new int[0]));
    found.forEach(f -> faults.accept(new Fault(f.pointer(), f.found(), f.expected())));
    if (!found.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(type.cast(way.kind().read(id, new Sheet(content))));
    } catch (IllegalArgumentException refused) {
      String pointer = refused instanceof SheetFault located ? located.pointer() : "";
      faults.accept(
          new Fault(
              pointer, "figures that contradict each other", String.valueOf(refused.getMessage())));
      return Optional.empty();
    }
  }

  private Way way(Class<?> type) {
    Way way = ways.get(type);
    if (way == null) {
      throw new IllegalArgumentException("no kind describes " + type.getSimpleName());
    }
    return way;
  }
}
