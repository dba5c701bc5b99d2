package org.standoff.rest.openapi;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.parameters.Parameter;
import org.jboss.jandex.AnnotationInstance;
import org.jboss.jandex.AnnotationTarget;
import org.jboss.jandex.DotName;
import org.jboss.jandex.IndexView;
import org.jboss.jandex.MethodInfo;

/**
 * An example of a query, taken apart into the values of its parameters.
 *
 * @param name of the example
 * @param values of each parameter
 */
record QuerySamples(String name, Map<String, List<String>> values) {

  private static final DotName EXAMPLE = DotName.createSimple(QueryExample.class.getName());

  static List<QuerySamples> of(MethodInfo method, IndexView index) {
    List<QuerySamples> all = new ArrayList<>();
    for (AnnotationInstance example : index.getAnnotationsWithRepeatable(EXAMPLE, index)) {
      AnnotationTarget target = example.target();
      if (target.kind() == AnnotationTarget.Kind.METHOD && target.asMethod().equals(method)) {
        all.add(of(example.value("name").asString(), example.value("query").asString()));
      }
    }
    return all;
  }

  private static QuerySamples of(String name, String query) {
    Map<String, List<String>> values = new LinkedHashMap<>();
    for (String pair : query.split("&")) {
      String[] parts = pair.split("=", 2);
      values.computeIfAbsent(parts[0], ignored -> new ArrayList<>()).add(parts[1]);
    }
    return new QuerySamples(name, values);
  }

  /** Shows every value at its parameter. */
  void show(Operation get) {
    values.forEach(
        (name, texts) ->
            parameter(get, name)
                .addExample(
                    name(), OASFactory.createExample().value(value(texts, parameter(get, name)))));
  }

  private Parameter parameter(Operation get, String wanted) {
    return get.getParameters().stream()
        .filter(parameter -> parameter.getName().equals(wanted))
        .findFirst()
        .orElseThrow(
            () -> new IllegalStateException("example " + name + " has no parameter " + wanted));
  }

  private static Object value(List<String> texts, Parameter parameter) {
    Schema schema = parameter.getSchema();
    if (isOf(schema, Schema.SchemaType.ARRAY)) {
      return texts.stream().map(text -> value(text, schema.getItems())).toList();
    }
    return value(texts.get(0), schema);
  }

  private static Object value(String text, Schema schema) {
    if (isOf(schema, Schema.SchemaType.NUMBER) || isOf(schema, Schema.SchemaType.INTEGER)) {
      return new BigDecimal(text);
    }
    return isOf(schema, Schema.SchemaType.BOOLEAN) ? Boolean.valueOf(text) : text;
  }

  private static boolean isOf(Schema schema, Schema.SchemaType type) {
    return schema != null && schema.getType() != null && schema.getType().contains(type);
  }
}
