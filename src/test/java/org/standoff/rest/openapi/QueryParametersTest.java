package org.standoff.rest.openapi;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.parameters.Parameter;
import org.jboss.jandex.Index;
import org.junit.jupiter.api.Test;
import org.standoff.rest.http.ReadsQuery;

class QueryParametersTest {

  record Question(String source, Preamp preamp) {}

  record Preamp(Double gainDb) {}

  @Path("/questions")
  static final class Twins {

    @GET
    @Path("/one")
    @ReadsQuery(Question.class)
    @QueryExample(name = "loud", query = "source=core/snare&preamp.gain_db=12")
    @org.eclipse.microprofile.openapi.annotations.Operation(hidden = true)
    public String ask() {
      return "";
    }
  }

  @Test
  void membersOfTheRecordAreParametersOfItsGet() throws IOException {
    OpenAPI description = description();
    new QueryParameters(
            Index.of(Question.class, Twins.class, QueryExample.class, QueryExamples.class))
        .filterOpenAPI(description);
    assertThat(description.getPaths().getPathItem("/questions/one").getGET().getParameters())
        .extracting(Parameter::getName, Parameter::getIn, Parameter::getRequired)
        .containsExactly(
            tuple("source", Parameter.In.QUERY, true),
            tuple("preamp.gain_db", Parameter.In.QUERY, false));
  }

  @Test
  void anExampleShowsItsValuesAtTheirParameters() throws IOException {
    OpenAPI description = description();
    new QueryParameters(
            Index.of(Question.class, Twins.class, QueryExample.class, QueryExamples.class))
        .filterOpenAPI(description);
    assertThat(description.getPaths().getPathItem("/questions/one").getGET().getParameters())
        .extracting(parameter -> parameter.getExamples().get("loud").getValue())
        .containsExactly("core/snare", new BigDecimal("12"));
  }

  private static OpenAPI description() {
    Schema text = OASFactory.createSchema().description("which");
    Schema preamp =
        OASFactory.createSchema()
            .addProperty("gain_db", OASFactory.createSchema().addType(Schema.SchemaType.NUMBER));
    preamp.setRequired(List.of("gain_db"));
    Schema question =
        OASFactory.createSchema()
            .addProperty("source", text)
            .addProperty("preamp", OASFactory.createSchema().ref("#/components/schemas/Preamp"));
    question.setRequired(List.of("source"));
    Operation get = OASFactory.createOperation();
    return OASFactory.createOpenAPI()
        .components(
            OASFactory.createComponents()
                .addSchema("Question", question)
                .addSchema("Preamp", preamp))
        .paths(
            OASFactory.createPaths()
                .addPathItem("/questions/one", OASFactory.createPathItem().GET(get)));
  }
}
