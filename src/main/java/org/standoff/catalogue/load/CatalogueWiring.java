package org.standoff.catalogue.load;

import io.quarkus.arc.All;
import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.time.InstantSource;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.jboss.logging.Logger;
import org.standoff.catalogue.Catalogue;
import org.standoff.catalogue.CatalogueKind;
import org.standoff.catalogue.Finding;
import org.standoff.catalogue.PackSource;
import org.standoff.catalogue.PackStatus;

/** Gives the service its catalogue, loaded before anybody can ask for it, and keeps it current. */
@ApplicationScoped
public class CatalogueWiring {

  private static final Logger LOG = Logger.getLogger(CatalogueWiring.class);

  /** More would bury the rest of the log; all of them stand at the pack's address. */
  private static final int MOST_FINDINGS_LOGGED = 20;

  private final ScheduledExecutorService worker =
      Executors.newSingleThreadScheduledExecutor(
          task -> {
            Thread thread = new Thread(task, "catalogue-watch");
            thread.setDaemon(true);
            return thread;
          });

  private final Event<Catalogue> changed;

  /**
   * @param changed tells who wants to know of every new snapshot after the first
   */
  CatalogueWiring(Event<Catalogue> changed) {
    this.changed = changed;
  }

  @Produces
  @Singleton
  LiveCatalogue live(
      @All List<CatalogueKind<?>> kinds, @All List<PackSource> more, CatalogueSettings settings) {
    LiveCatalogue live =
        new LiveCatalogue(kinds, CatalogueSources.of(settings, more), InstantSource.system());
    tell(live.reload());
    return live;
  }

  void begin(@Observes StartupEvent start, LiveCatalogue live, CatalogueSettings settings) {
    CatalogueWatch watch = new CatalogueWatch(live);
    long periodMs = settings.lookEvery().toMillis();
    worker.scheduleWithFixedDelay(
        () -> look(watch, live), periodMs, periodMs, TimeUnit.MILLISECONDS);
  }

  void end(@Observes ShutdownEvent stop) {
    worker.shutdownNow();
  }

  private void look(CatalogueWatch watch, LiveCatalogue live) {
    try {
      if (watch.look()) {
        tell(live.get());
        changed.fire(live.get());
      }
    } catch (RuntimeException unexpected) {
      // an exception would end the watch for good
      LOG.error("Looking at the catalogue failed; it stays as it is", unexpected);
    }
  }

  private static void tell(Catalogue catalogue) {
    LOG.infof("Catalogue %s: %d packs", catalogue.revision(), catalogue.packs().size());
    catalogue.findings().forEach(finding -> LOG.warn(finding));
    for (PackStatus pack : catalogue.packs()) {
      List<Finding> findings = pack.findings();
      findings.stream().limit(MOST_FINDINGS_LOGGED).forEach(finding -> LOG.warn(finding));
      if (pack.isFaulty()) {
        LOG.warnf(
            "Pack %s has faults; %s",
            pack.id(),
            pack.live().isPresent() ? "its last good version stays in use" : "it is not in use");
      }
    }
  }
}
