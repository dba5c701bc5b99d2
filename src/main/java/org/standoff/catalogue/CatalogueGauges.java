package org.standoff.catalogue;

import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.quarkus.arc.All;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.List;

/** Counts what the catalogue has, for those who watch the service. */
@ApplicationScoped
public class CatalogueGauges {

  private final CurrentCatalogue current;

  CatalogueGauges(CurrentCatalogue current) {
    this.current = current;
  }

  void register(
      @Observes StartupEvent start, MeterRegistry registry, @All List<CatalogueKind<?>> kinds) {
    Gauge.builder("catalogue.faulty.packs", current, CatalogueGauges::faultyPacks)
        .description("Packs whose files as they are now can't be used")
        .register(registry);
    for (CatalogueKind<?> kind : kinds) {
      Gauge.builder("catalogue.items", current, now -> now.get().items(kind.type()).size())
          .description("Items of the packs in use")
          .tag("kind", kind.name())
          .register(registry);
    }
  }

  private static double faultyPacks(CurrentCatalogue current) {
    return current.get().packs().stream().filter(PackStatus::isFaulty).count();
  }
}
