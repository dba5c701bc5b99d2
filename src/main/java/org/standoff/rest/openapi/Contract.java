package org.standoff.rest.openapi;

import org.eclipse.microprofile.openapi.annotations.Components;
import org.eclipse.microprofile.openapi.annotations.OpenAPIDefinition;
import org.eclipse.microprofile.openapi.annotations.enums.SecuritySchemeType;
import org.eclipse.microprofile.openapi.annotations.info.Info;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.security.SecurityScheme;
import org.standoff.rest.problem.Problem;

/** What belongs to the whole API description and to no single resource. */
@OpenAPIDefinition(
    // title and version are settings; the annotation wants them filled
    info = @Info(title = "Standoff", version = "1"),
    components =
        @Components(
            schemas = @Schema(name = "Problem", implementation = Problem.class),
            securitySchemes =
                @SecurityScheme(
                    securitySchemeName = Contract.BEARER,
                    description =
                        "A JSON Web Token (RFC 7519) of the issuer that this service trusts, with the"
                            + " roles publisher, booker or admin in groups, a publisher's house in"
                            + " house, and a booker's desk as its subject",
                    type = SecuritySchemeType.HTTP,
                    scheme = "bearer",
                    bearerFormat = "JWT")))
interface Contract {

  /** The one way to say who asks (RFC 6750). */
  String BEARER = "bearer";
}
