package org.standoff.launch;

import io.smallrye.jwt.build.Jwt;
import io.smallrye.jwt.build.JwtClaimsBuilder;
import java.security.PrivateKey;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * Makes bearer tokens (RFC 7519) with the service's own key.
 *
 * @param key signs
 * @param issuer goes into {@code iss}
 * @param audience goes into {@code aud}
 */
public record TokenMint(PrivateKey key, String issuer, String audience) {

  /**
   * A signed token.
   *
   * @param subject who bears it
   * @param role goes into {@code groups}
   * @param house of a publisher
   * @param from when it begins to hold
   * @param life for how long it holds
   */
  public String token(
      String subject, String role, Optional<String> house, Instant from, Duration life) {
    JwtClaimsBuilder claims =
        Jwt.issuer(issuer)
            .audience(audience)
            .subject(subject)
            .groups(role)
            .issuedAt(from)
            .expiresAt(from.plus(life));
    house.ifPresent(id -> claims.claim("house", id));
    return claims.sign(key);
  }

  @Override
  public String toString() {
    return "TokenMint of " + issuer;
  }
}
