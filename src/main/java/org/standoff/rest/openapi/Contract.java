package org.standoff.rest.openapi;

import org.eclipse.microprofile.openapi.annotations.Components;
import org.eclipse.microprofile.openapi.annotations.OpenAPIDefinition;
import org.eclipse.microprofile.openapi.annotations.info.Info;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.standoff.rest.problem.Problem;

/** What belongs to the whole API description and to no single resource. */
@OpenAPIDefinition(
    // title and version are settings; the annotation wants them filled
    info = @Info(title = "Standoff", version = "1"),
    components = @Components(schemas = @Schema(name = "Problem", implementation = Problem.class)))
interface Contract {

  /** The one way to say who asks (RFC 6750), as application.yaml names and tells it. */
  String BEARER = "bearer";
}
