package org.standoff.rest.security;

import io.quarkus.security.UnauthorizedException;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.enterprise.context.RequestScoped;
import java.security.Principal;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.eclipse.microprofile.jwt.JsonWebToken;
import org.jspecify.annotations.Nullable;
import org.standoff.kit.Caller;
import org.standoff.kit.Role;
import org.standoff.rest.problem.UnusableToken;

/** Who sent the request that is being answered. */
@RequestScoped
public class CurrentCaller {

  /** Claim that names the house of a publisher. */
  public static final String HOUSE_CLAIM = "house";

  /** It becomes the name of a desk, which stands in tables and answers. */
  private static final int LONGEST_SUBJECT = 100;

  private final SecurityIdentity identity;
  private boolean askedFor;

  CurrentCaller(SecurityIdentity identity) {
    this.identity = identity;
  }

  /**
   * The caller, where there must be one.
   *
   * @throws UnauthorizedException if no token came
   * @throws UnusableToken if it names nobody
   */
  public Caller get() {
    return ifAny().orElseThrow(UnauthorizedException::new);
  }

  /** The caller, where anybody may ask but some are told more. */
  public Optional<Caller> ifAny() {
    askedFor = true;
    Principal principal = identity.getPrincipal();
    return identity.isAnonymous() || !(principal instanceof JsonWebToken)
        ? Optional.empty()
        : Optional.of(caller((JsonWebToken) principal));
  }

  /** Whether the answer depends on who asks. */
  public boolean wasAskedFor() {
    return askedFor;
  }

  private static Caller caller(JsonWebToken token) {
    String subject = token.getSubject();
    if (subject == null || subject.isBlank() || subject.length() > LONGEST_SUBJECT) {
      throw new UnusableToken(LONGEST_SUBJECT);
    }
    Set<Role> roles = EnumSet.noneOf(Role.class);
    token.getGroups().forEach(word -> Role.ofSpelling(word).ifPresent(roles::add));
    return new Caller(subject, roles, house(token.getClaim(HOUSE_CLAIM)));
  }

  /** An issuer of one's own may send anything under that name. */
  private static Optional<String> house(@Nullable Object claim) {
    return claim instanceof String house ? Optional.of(house) : Optional.empty();
  }
}
