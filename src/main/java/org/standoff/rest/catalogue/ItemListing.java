package org.standoff.rest.catalogue;

import com.fasterxml.jackson.databind.JsonNode;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.standoff.catalogue.Catalogue;
import org.standoff.catalogue.CatalogueKind;
import org.standoff.catalogue.CurrentCatalogue;
import org.standoff.catalogue.Item;
import org.standoff.catalogue.ItemId;
import org.standoff.rest.http.EntityTags;
import org.standoff.rest.http.Page;
import org.standoff.rest.http.PageRequest;
import org.standoff.rest.http.Tagged;
import org.standoff.rest.json.RequestReader;
import org.standoff.rest.media.CsvTable;
import org.standoff.rest.problem.Fault;
import org.standoff.rest.problem.FaultCode;
import org.standoff.rest.problem.InvalidRequest;
import org.standoff.rest.problem.ProblemType;

/** Lists the items of any kind and shows single ones. */
@ApplicationScoped
public class ItemListing {

  private static final Set<String> PAGING = Set.of(PageRequest.SIZE, PageRequest.TOKEN);

  private final CurrentCatalogue current;
  private final RequestReader reader;
  private final String engineVersion;

  ItemListing(
      CurrentCatalogue current,
      RequestReader reader,
      @ConfigProperty(name = "quarkus.application.version") String engineVersion) {
    this.current = current;
    this.reader = reader;
    this.engineVersion = engineVersion;
  }

  /** A page of the items that the query keeps, in its order. */
  <T> Page<ItemRow> page(
      CatalogueKind<T> kind, Class<? extends ItemQuery<? super T>> query, UriInfo uri) {
    PageRequest page = PageRequest.of(uri);
    ItemQuery<? super T> wanted = reader.readQuery(uri.getQueryParameters(), query, PAGING);
    Page<Placed> placed = page.of(placed(kind, wanted), Placed::place);
    return new Page<>(placed.items().stream().map(Placed::row).toList(), placed.nextPageToken());
  }

  /** A row, and where in the list it stands. */
  private record Placed(String place, ItemRow row) {}

  /** All items that the query keeps, as a table. */
  <T> String csv(CatalogueKind<T> kind, Class<? extends ItemQuery<? super T>> query, UriInfo uri) {
    List<ItemRow> rows =
        placed(kind, reader.readQuery(uri.getQueryParameters(), query)).stream()
            .map(Placed::row)
            .toList();
    Set<String> figures = new LinkedHashSet<>();
    rows.forEach(row -> figures.addAll(row.figures().keySet()));
    List<String> columns = new ArrayList<>(List.of("id", "title"));
    columns.addAll(figures);
    CsvTable table = new CsvTable(columns);
    for (ItemRow row : rows) {
      List<Object> cells = new ArrayList<>(List.of(row.id(), row.title()));
      figures.forEach(name -> cells.add(cell(row.figures().get(name))));
      table.row(cells);
    }
    return table.text();
  }

  /** One item. */
  <T> Tagged item(CatalogueKind<T> kind, String pack, String item) {
    Catalogue catalogue = current.get();
    String id = pack + "/" + item;
    Item<T> found =
        ItemId.parse(id)
            .flatMap(parsed -> catalogue.find(kind.type(), parsed))
            .orElseThrow(() -> unknown(kind, id, catalogue));
    Map<String, JsonNode> content = new LinkedHashMap<>();
    found.content().properties().forEach(e -> content.put(e.getKey(), e.getValue()));
    String tag = tag(found);
    return new Tagged(tag, new CatalogueItem(id, found.revision(), tag, kind.name(), content));
  }

  private <T> List<Placed> placed(CatalogueKind<T> kind, ItemQuery<? super T> query) {
    return current.get().items(kind.type()).stream()
        .filter(item -> query.pack() == null || item.id().pack().equals(query.pack()))
        .filter(item -> query.q() == null || holds(item, query.q()))
        .filter(item -> query.keeps(item.value()))
        .map(
            item ->
                new Placed(
                    query.placeOf(item),
                    new ItemRow(
                        item.id().toString(), item.title(), tag(item), kind.summary(item.value()))))
        // as texts, as pages are cut: of packs, `a` comes before `a-b`, of ids `a-b/x` before `a/x`
        .sorted(Comparator.comparing(Placed::place))
        .toList();
  }

  private static boolean holds(Item<?> item, String words) {
    String notes = item.sheet().optionalText("notes").orElse("");
    String text = (item.id() + " " + item.title() + " " + notes).toLowerCase(Locale.ROOT);
    for (String word : words.toLowerCase(Locale.ROOT).strip().split("\\s+")) {
      if (!text.contains(word)) {
        return false;
      }
    }
    return true;
  }

  /** An item's answer depends on its file and on nothing else but the program. */
  private String tag(Item<?> item) {
    String name = item.id() + " " + item.revision() + " " + engineVersion;
    return EntityTags.of(name.getBytes(StandardCharsets.UTF_8), MediaType.APPLICATION_JSON);
  }

  private static Object cell(Object figure) {
    return figure instanceof List<?> list
        ? String.join(" ", list.stream().map(String::valueOf).toList())
        : figure;
  }

  private static InvalidRequest unknown(CatalogueKind<?> kind, String id, Catalogue catalogue) {
    return new InvalidRequest(
        ProblemType.NOT_FOUND,
        List.of(
            Fault.ofParameter(
                    "item",
                    FaultCode.UNKNOWN_ITEM,
                    "The catalogue has no " + kind.name() + " of this id.")
                .found(id)
                .allowed("an id from /v1/" + kind.folder())
                .suggestion(catalogue.suggest(kind.type(), id).orElse(null))));
  }
}
