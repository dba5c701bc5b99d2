package org.standoff.rest.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.deser.DeserializationProblemHandler;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Passes over the members that only the service sets where a request {@link TakesBack} an answer;
 * every other unknown member stays a fault. A request that says it is another thing than the one at
 * its address was not meant for it.
 */
final class ReadOnlyMembers extends DeserializationProblemHandler {

  private static final PropertyNamingStrategies.SnakeCaseStrategy NAMES =
      new PropertyNamingStrategies.SnakeCaseStrategy();

  private static final ClassValue<Set<String>> TAKEN_BACK =
      new ClassValue<>() {
        @Override
        protected Set<String> computeValue(Class<?> request) {
          @Nullable TakesBack answer = request.getAnnotation(TakesBack.class);
          return answer == null
              ? Set.of()
              : Arrays.stream(answer.value().getRecordComponents())
                  .map(member -> NAMES.translate(member.getName()))
                  .collect(Collectors.toUnmodifiableSet());
        }
      };

  private final Map<String, String> addressed;

  /**
   * @param addressed what the address tells, by the member that tells the same
   */
  ReadOnlyMembers(Map<String, String> addressed) {
    this.addressed = Map.copyOf(addressed);
  }

  @Override
  public boolean handleUnknownProperty(
      DeserializationContext context,
      JsonParser in,
      JsonDeserializer<?> deserializer,
      Object recordOrClass,
      String name)
      throws IOException {
    Class<?> request = recordOrClass instanceof Class<?> type ? type : recordOrClass.getClass();
    if (!TAKEN_BACK.get(request).contains(name)) {
      return false;
    }
    JsonNode given = context.readTree(in);
    @Nullable String own = addressed.get(name);
    if (own != null && !given.isNull() && !given.equals(TextNode.valueOf(own))) {
      throw new OtherThanAddressed(in, request, name, own);
    }
    return true;
  }
}
