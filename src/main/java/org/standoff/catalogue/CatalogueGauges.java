package org.standoff.catalogue;

import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.MultiGauge;
import io.micrometer.core.instrument.Tags;
import io.quarkus.arc.All;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.List;

/** Counts what the catalogue has, for those who watch the service. */
@ApplicationScoped
public class CatalogueGauges {

  private final CurrentCatalogue current;
  private final MultiGauge revision;

  CatalogueGauges(CurrentCatalogue current, MeterRegistry registry) {
    this.current = current;
    this.revision =
        MultiGauge.builder("catalogue.revision")
            .description("1 for the revision in use")
            .register(registry);
  }

  /** The revision stands in a label: a metric is a number. */
  private void tellRevision(Catalogue catalogue) {
    revision.register(
        List.of(MultiGauge.Row.of(Tags.of("revision", catalogue.revision()), 1)), true);
  }

  void follow(@Observes Catalogue changed) {
    tellRevision(changed);
  }

  void register(
      @Observes StartupEvent start, MeterRegistry registry, @All List<CatalogueKind<?>> kinds) {
    Gauge.builder("catalogue.faulty.packs", current, CatalogueGauges::faultyPacks)
        .description("Packs whose files as they are now can't be used")
        .register(registry);
    tellRevision(current.get());
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
