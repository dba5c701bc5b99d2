package org.standoff.rest;

import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.NotNull;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.io.InputStream;
import java.util.List;
import java.util.stream.IntStream;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.standoff.rest.http.CacheFor;
import org.standoff.rest.http.Page;
import org.standoff.rest.http.PageRequest;
import org.standoff.rest.http.ReadsQuery;
import org.standoff.rest.http.Retiring;
import org.standoff.rest.json.Batch;
import org.standoff.rest.json.RequestReader;
import org.standoff.rest.problem.RequestId;

/** A resource that exists in tests only and does what every resource may do. */
@Path("/probe")
@Produces(MediaType.APPLICATION_JSON)
public class ProbeResource {

  /** A request. */
  public record Question(@NotNull @Max(9) Integer count, Double gainDb) {}

  /** An answer. */
  public record Answer(int count, double gainDb) {}

  private final RequestReader reader;
  private final Batch batch;

  ProbeResource(RequestReader reader, Batch batch) {
    this.reader = reader;
    this.batch = batch;
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(hidden = true)
  public Answer post(InputStream body) {
    return answer(reader.read(body, Question.class));
  }

  @POST
  @Consumes(Batch.MEDIA_TYPE)
  @Produces(Batch.MEDIA_TYPE)
  @Operation(hidden = true)
  public byte[] batch(InputStream body, @Context RoutingContext request) {
    return batch.answer(
        body, line -> answer(reader.read(line, Question.class)), RequestId.of(request));
  }

  @GET
  @ReadsQuery(Question.class)
  @Operation(hidden = true)
  public Answer get(@Context UriInfo uri) {
    return answer(reader.readQuery(uri.getQueryParameters(), Question.class));
  }

  @GET
  @Path("/items")
  @CacheFor(seconds = 60)
  @Operation(hidden = true)
  public Page<String> items(
      @Context UriInfo uri,
      @QueryParam("prefix") String prefix,
      @QueryParam("page_size") String size,
      @QueryParam("page_token") String token) {
    List<String> items = IntStream.range(100, 350).mapToObj(i -> "item-" + i).toList();
    return PageRequest.of(uri).of(items, item -> item);
  }

  @GET
  @Path("/number")
  @Operation(hidden = true)
  public String number(@QueryParam("count") int count) {
    return String.valueOf(count);
  }

  @GET
  @Path("/retiring")
  @Deprecated
  @Retiring(since = "2027-01-31", until = "2028-01-31", instead = "/probe/items")
  @Operation(hidden = true)
  public String retiring() {
    return "soon gone";
  }

  @GET
  @Path("/failure")
  @Operation(hidden = true)
  public String failure() {
    throw new IllegalStateException("secret of the house");
  }

  void failBeforeAnyResource(@Observes Router router) {
    router
        .get("/probe-route")
        .handler(request -> request.fail(new IllegalStateException("secret")));
  }

  private static Answer answer(Question question) {
    return new Answer(question.count(), question.gainDb() == null ? 0 : question.gainDb());
  }
}
