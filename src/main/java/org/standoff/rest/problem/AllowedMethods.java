package org.standoff.rest.problem;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.spi.Bean;
import jakarta.enterprise.inject.spi.BeanManager;
import jakarta.ws.rs.HttpMethod;
import jakarta.ws.rs.Path;
import java.lang.annotation.Annotation;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * Which methods a path offers. RFC 9110, 15.5.6 wants them in every 405, and the framework leaves
 * them out.
 */
@ApplicationScoped
class AllowedMethods {

  private record Offer(Pattern path, String method) {}

  private final List<Offer> offers = new ArrayList<>();

  AllowedMethods(BeanManager beans) {
    for (Bean<?> bean : beans.getBeans(Object.class, Any.Literal.INSTANCE)) {
      Path root = bean.getBeanClass().getAnnotation(Path.class);
      if (root != null) {
        for (Method method : bean.getBeanClass().getMethods()) {
          offer(root, method);
        }
      }
    }
  }

  /** The methods of a path, parted by commas; OPTIONS is offered wherever anything is. */
  String at(String path) {
    Set<String> methods = new TreeSet<>(Set.of("OPTIONS"));
    for (Offer offer : offers) {
      if (offer.path().matcher(path).matches()) {
        methods.add(offer.method());
        if (offer.method().equals("GET")) {
          methods.add("HEAD");
        }
      }
    }
    return String.join(", ", methods);
  }

  /** Whether something is offered at a path, but not this. */
  boolean refuses(String path, String method) {
    Set<String> offered = Set.of(at(path).split(", "));
    return offered.size() > 1 && !offered.contains(method);
  }

  private void offer(Path root, Method method) {
    for (Annotation annotation : method.getAnnotations()) {
      HttpMethod http = annotation.annotationType().getAnnotation(HttpMethod.class);
      if (http != null) {
        Path own = method.getAnnotation(Path.class);
        String template = "/" + root.value() + "/" + (own == null ? "" : own.value());
        offers.add(new Offer(pattern(template), http.value()));
      }
    }
  }

  private static Pattern pattern(String template) {
    String plain = template.replaceAll("/+", "/").replaceAll("(.)/$", "$1");
    return Pattern.compile(
        plain.replaceAll("\\{[^}:]+:\\s*([^}]+)}", "($1)").replaceAll("\\{[^}]+}", "[^/]+") + "/?");
  }
}
