package org.standoff.catalogue;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.microprofile.health.HealthCheck;
import org.eclipse.microprofile.health.HealthCheckResponse;
import org.eclipse.microprofile.health.Readiness;

/**
 * Ready with the first pack that could be loaded. Faults that come later are shown and take no
 * instance out of service: the last good version answers.
 */
@Readiness
@ApplicationScoped
public class CatalogueHealth implements HealthCheck {

  private final CurrentCatalogue current;

  CatalogueHealth(CurrentCatalogue current) {
    this.current = current;
  }

  @Override
  public HealthCheckResponse call() {
    Catalogue catalogue = current.get();
    List<PackStatus> faulty = catalogue.packs().stream().filter(PackStatus::isFaulty).toList();
    return HealthCheckResponse.named("catalogue")
        .status(catalogue.hasPackInUse())
        .withData("revision", catalogue.revision())
        .withData("packs", catalogue.packs().size())
        .withData("faulty_packs", faulty.size())
        .withData("faulty", faulty.stream().map(PackStatus::id).collect(Collectors.joining(", ")))
        .withData("unread_folders", unread(catalogue))
        .build();
  }

  /** Places of packs that can't be looked at. */
  private static String unread(Catalogue catalogue) {
    return catalogue.findings().stream()
        .filter(Finding::isFault)
        .map(Finding::file)
        .collect(Collectors.joining(", "));
  }
}
