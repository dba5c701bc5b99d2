package org.standoff.rest.http;

import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ResourceInfo;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import org.eclipse.microprofile.openapi.annotations.enums.ParameterIn;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.standoff.catalogue.NearMiss;
import org.standoff.rest.problem.Fault;
import org.standoff.rest.problem.FaultCode;
import org.standoff.rest.problem.InvalidRequest;

/**
 * Refuses query parameters that the operation doesn't know: a misspelt one must not pass silently.
 */
public class KnownParameters {

  /** What is read, and refused, elsewhere. */
  private static final Set<String> PAGING = Set.of(PageRequest.SIZE, PageRequest.TOKEN);

  private final Map<Method, Set<String>> known = new ConcurrentHashMap<>();

  @ServerRequestFilter
  public void refuseUnknown(ContainerRequestContext request, ResourceInfo resource) {
    Map<String, List<String>> given = request.getUriInfo().getQueryParameters();
    Method method = resource.getResourceMethod();
    if (given.isEmpty() || method == null || method.isAnnotationPresent(ReadsQuery.class)) {
      return;
    }
    Set<String> names = known.computeIfAbsent(method, KnownParameters::declared);
    List<Fault> faults = new ArrayList<>();
    for (Map.Entry<String, List<String>> parameter : given.entrySet()) {
      String name = parameter.getKey();
      if (!names.contains(name)) {
        faults.add(fault(name, names));
      } else if (!PAGING.contains(name) && parameter.getValue().contains("")) {
        // the framework hands it over as if it were not there
        faults.add(Fault.ofParameter(name, FaultCode.MISSING, "It has no value.").found(""));
      }
    }
    if (!faults.isEmpty()) {
      throw new InvalidRequest(faults);
    }
  }

  private static Fault fault(String name, Set<String> names) {
    return Fault.ofParameter(
            name, FaultCode.UNKNOWN_NAME, "There is no query parameter of this name here.")
        .found(name)
        .allowed(names.isEmpty() ? "none" : String.join(", ", names))
        .suggestion(NearMiss.of(name, names).orElse(null));
  }

  private static Set<String> declared(Method method) {
    Set<String> names = new TreeSet<>();
    for (Parameter parameter : method.getAnnotationsByType(Parameter.class)) {
      if (parameter.in() == ParameterIn.QUERY) {
        names.add(parameter.name());
      }
    }
    Arrays.stream(method.getParameters())
        .map(parameter -> parameter.getAnnotation(QueryParam.class))
        .filter(annotation -> annotation != null)
        .forEach(annotation -> names.add(annotation.value()));
    return names;
  }
}
