package org.standoff.rest.security;

import io.quarkus.security.UnauthorizedException;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.enterprise.context.RequestScoped;
import java.security.Principal;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.eclipse.microprofile.jwt.JsonWebToken;
import org.standoff.kit.Caller;
import org.standoff.kit.Role;

/** Who sent the request that is being answered. */
@RequestScoped
public class CurrentCaller {

  /** Claim that names the house of a publisher. */
  public static final String HOUSE_CLAIM = "house";

  private final SecurityIdentity identity;

  CurrentCaller(SecurityIdentity identity) {
    this.identity = identity;
  }

  /**
   * The caller, where there must be one.
   *
   * @throws UnauthorizedException if no token came
   */
  public Caller get() {
    return ifAny().orElseThrow(UnauthorizedException::new);
  }

  /** The caller, where anybody may ask but some are told more. */
  public Optional<Caller> ifAny() {
    Principal principal = identity.getPrincipal();
    return identity.isAnonymous() || !(principal instanceof JsonWebToken)
        ? Optional.empty()
        : Optional.of(caller((JsonWebToken) principal));
  }

  private static Caller caller(JsonWebToken token) {
    Set<Role> roles = EnumSet.noneOf(Role.class);
    token.getGroups().forEach(word -> Role.ofSpelling(word).ifPresent(roles::add));
    return new Caller(token.getSubject(), roles, token.claim(HOUSE_CLAIM));
  }
}
