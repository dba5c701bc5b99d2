package org.standoff.rest.problem;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.net.URI;
import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Explains each kind of problem at the address that its {@code type} names. */
@Path("/problems/{name}")
@Tag(name = "service")
public class ProblemPages {

  /**
   * What one kind of problem is.
   *
   * @param type address of this explanation
   * @param code the kind of problem, for programs
   * @param title the kind of problem
   * @param status the HTTP status that it comes with
   * @param meaning when it is told
   * @param remedy what to do about it
   * @param members what it may tell besides the members that every problem has
   */
  public record Explanation(
      @Schema(format = "uri-reference") URI type,
      String code,
      String title,
      int status,
      String meaning,
      String remedy,
      List<Member> members) {

    /** The explanation of a kind. */
    public static Explanation of(ProblemType type) {
      return new Explanation(
          type.uri(),
          type.name(),
          type.title(),
          type.status(),
          type.meaning(),
          type.remedy(),
          type.members().stream().map(Member::of).toList());
    }
  }

  /**
   * A member that not every problem has.
   *
   * @param pointer where it stands in the problem, as a JSON pointer with '-' for any entry
   * @param meaning what it tells
   */
  @Schema(name = "ProblemMember")
  public record Member(String pointer, String meaning) {

    static Member of(ProblemMember member) {
      return new Member(
          (member.isOfOneFault() ? "/errors/-/" : "/") + member.word(), member.meaning());
    }
  }

  @GET
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(
      operationId = "explainProblem",
      summary = "What a kind of problem means and what to do about it",
      description = "Stands at the address in the type of every problem, as JSON and as a page.")
  public Explanation explain(
      @Parameter(description = "Last part of the problem's type", example = "invalid-request")
          @PathParam("name")
          String name) {
    return Explanation.of(ProblemType.named(name).orElseThrow(NotFoundException::new));
  }

  @GET
  @Produces(MediaType.TEXT_HTML)
  @Operation(hidden = true)
  public String page(@PathParam("name") String name) {
    Explanation about = explain(name);
    return """
        <!doctype html>
        <html lang="en">
        <head><meta charset="utf-8"><title>%s</title></head>
        <body>
        <h1>%s</h1>
        <p>Status %d, code <code>%s</code></p>
        <p>%s</p>
        <p>%s</p>
        %s</body>
        </html>
        """
        .formatted(
            about.title(),
            about.title(),
            about.status(),
            about.code(),
            about.meaning(),
            about.remedy(),
            list(about.members()));
  }

  private static String list(List<Member> members) {
    return members.isEmpty()
        ? ""
        : members.stream()
            .map(
                member ->
                    "<dt><code>%s</code></dt><dd>%s</dd>\n"
                        .formatted(member.pointer(), member.meaning()))
            .collect(Collectors.joining("", "<dl>\n", "</dl>\n"));
  }
}
