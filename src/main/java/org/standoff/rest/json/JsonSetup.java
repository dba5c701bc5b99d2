package org.standoff.rest.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.AnnotationIntrospector;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.cfg.CoercionAction;
import com.fasterxml.jackson.databind.cfg.CoercionInputShape;
import com.fasterxml.jackson.databind.type.LogicalType;
import io.quarkus.jackson.ObjectMapperCustomizer;
import jakarta.inject.Singleton;
import org.standoff.catalogue.load.YamlFile;

/** The one way in which this service reads and writes JSON. */
@Singleton
public class JsonSetup implements ObjectMapperCustomizer {

  static final int DEEPEST = 32;

  /** A file of a pack may come as a text; shorter limits stand at the members. */
  public static final int LONGEST_TEXT = YamlFile.MOST_BYTES;

  static final int LONGEST_NUMBER = 64;

  /** What is read as a moment: RFC 3339, to the nanosecond at most. */
  public static final String MOMENT =
      "\\d{4}-\\d{2}-\\d{2}[Tt]\\d{2}:\\d{2}:\\d{2}(\\.\\d{1,9})?([Zz]|[+-]\\d{2}:\\d{2})";

  /** After the framework's own, so that its modules do not take the place of our serializers. */
  @Override
  public int priority() {
    return MINIMUM_PRIORITY;
  }

  @Override
  public void customize(ObjectMapper mapper) {
    mapper
        .getFactory()
        .setStreamReadConstraints(
            StreamReadConstraints.builder()
                .maxNestingDepth(DEEPEST)
                .maxStringLength(LONGEST_TEXT)
                .maxNumberLength(LONGEST_NUMBER)
                .build());
    mapper.getFactory().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION.mappedFeature());
    mapper.setPropertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE);
    mapper.setSerializationInclusion(JsonInclude.Include.NON_ABSENT);
    mapper.setAnnotationIntrospector(
        AnnotationIntrospector.pair(
            mapper.getSerializationConfig().getAnnotationIntrospector(), new EnumSpelling()));
    mapper.registerModule(new AnswerModule());
    mapper.registerModule(new RequestModule());
    mapper.disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS);
    // a reference that is null is left out, like every other member
    mapper.configOverride(JsonNode.class).setSetterInfo(JsonSetter.Value.forValueNulls(Nulls.SKIP));
    mapper.enable(
        DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES,
        DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES,
        DeserializationFeature.FAIL_ON_TRAILING_TOKENS,
        DeserializationFeature.FAIL_ON_NUMBERS_FOR_ENUMS);
    mapper.disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT);
    mapper.setConfig(
        mapper.getDeserializationConfig().without(MapperFeature.ALLOW_COERCION_OF_SCALARS));
    mapper
        .coercionConfigFor(LogicalType.Textual)
        .setCoercion(CoercionInputShape.Integer, CoercionAction.Fail)
        .setCoercion(CoercionInputShape.Float, CoercionAction.Fail)
        .setCoercion(CoercionInputShape.Boolean, CoercionAction.Fail);
  }
}
