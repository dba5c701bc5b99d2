package org.standoff.rest.openapi;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.PathItem;
import org.jboss.jandex.AnnotationInstance;
import org.jboss.jandex.AnnotationTarget;
import org.jboss.jandex.AnnotationValue;
import org.jboss.jandex.DotName;
import org.jboss.jandex.IndexView;
import org.jboss.jandex.MethodInfo;

/** Finds the methods of resources, and the operations of the description that they stand for. */
final class ResourceMethods {

  private static final DotName PATH = DotName.createSimple("jakarta.ws.rs.Path");
  private static final DotName PRODUCES = DotName.createSimple("jakarta.ws.rs.Produces");
  private static final Map<DotName, PathItem.HttpMethod> VERBS =
      Map.of(
          DotName.createSimple("jakarta.ws.rs.GET"), PathItem.HttpMethod.GET,
          DotName.createSimple("jakarta.ws.rs.POST"), PathItem.HttpMethod.POST,
          DotName.createSimple("jakarta.ws.rs.PUT"), PathItem.HttpMethod.PUT,
          DotName.createSimple("jakarta.ws.rs.DELETE"), PathItem.HttpMethod.DELETE);

  private ResourceMethods() {}

  /** A method of a resource. */
  record Found(MethodInfo method, PathItem.HttpMethod verb) {

    /** Its path with that of its class. */
    String path() {
      String whole =
          "/"
              + text(method.declaringClass().declaredAnnotation(PATH))
              + "/"
              + text(method.annotation(PATH));
      String single = whole.replaceAll("/+", "/");
      return single.length() > 1 && single.endsWith("/")
          ? single.substring(0, single.length() - 1)
          : single;
    }

    /** The media types that the method itself names. */
    List<String> produces() {
      AnnotationInstance produces = method.annotation(PRODUCES);
      return produces == null ? List.of() : List.of(produces.value().asStringArray());
    }

    /** The operation of the description at its path and verb; null where there is none. */
    Operation operation(OpenAPI description) {
      PathItem item =
          description.getPaths() == null ? null : description.getPaths().getPathItem(path());
      return item == null ? null : item.getOperations().get(verb);
    }
  }

  /**
   * Each of them once, in the order of their names; an index of several parts may hold one twice.
   */
  static List<Found> of(IndexView index) {
    Map<String, Found> found = new TreeMap<>();
    VERBS.forEach(
        (annotation, verb) -> {
          for (AnnotationInstance at : index.getAnnotations(annotation)) {
            if (at.target().kind() == AnnotationTarget.Kind.METHOD) {
              MethodInfo method = at.target().asMethod();
              found.put(method.declaringClass().name() + " " + method, new Found(method, verb));
            }
          }
        });
    return List.copyOf(found.values());
  }

  private static String text(AnnotationInstance annotation) {
    AnnotationValue value = annotation == null ? null : annotation.value();
    return value == null ? "" : value.asString();
  }
}
