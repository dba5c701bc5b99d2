package org.standoff.rest.security;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;

import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.io.IOException;
import java.nio.file.Files;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.interfaces.RSAPublicKey;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.HandmadeToken;
import org.standoff.fixture.Tokens;
import org.standoff.launch.StartNotice;

/** Tokens that are not taken, why, and what is not said of them. */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class RefusedTokenTest {

  private static final String CHANGED =
      "The token was changed after it was signed, or signed with another key than the issuer's.";
  private static final String ALGORITHM =
      "The token is not signed, or by an algorithm that is not taken here.";
  private static final String NONE =
      "What was sent as a token is none: a bearer token has three parts and is signed.";
  private static final String NOBODY =
      "The token does not say whose it is: its subject is missing, or empty, or has more than 100"
          + " characters.";

  /** What was sent, and what is said to it. */
  private record Refused(String token, String reason) {}

  /** Each is wrong in one thing; the same token without that is taken. */
  private static Map<String, Refused> refused() throws IOException, GeneralSecurityException {
    long now = Instant.now().getEpochSecond();
    KeyPair own = ownPair();
    String good = HandmadeToken.good().signed(Tokens.keys().privateKey());
    byte[] publicText = Files.readAllBytes(Tokens.keys().publicKeyFile());
    byte[] publicBytes =
        Base64.getMimeDecoder()
            .decode(new String(publicText, "US-ASCII").replaceAll("-----[A-Z ]+-----", ""));
    Map<String, Refused> all = new LinkedHashMap<>();
    all.put(
        "expired",
        signed(
            HandmadeToken.good().claim("iat", now - 7200).claim("exp", now - 3600),
            "The token has expired."));
    all.put(
        "not yet in force",
        signed(HandmadeToken.good().claim("nbf", now + 3600), "The token does not hold yet."));
    all.put(
        "for ever",
        signed(HandmadeToken.good().without("exp"), "The token does not say when it expires."));
    all.put(
        "of another issuer",
        signed(
            HandmadeToken.good().claim("iss", "https://issuer.example"),
            "The token is from an issuer that is not trusted here."));
    all.put(
        "of no issuer", signed(HandmadeToken.good().without("iss"), "The token names no issuer."));
    all.put(
        "for another service",
        signed(
            HandmadeToken.good().claim("aud", "another"),
            "The token was made for another service."));
    all.put(
        "for no service",
        signed(
            HandmadeToken.good().without("aud"),
            "The token does not say for which service it is."));
    all.put("of nobody", signed(HandmadeToken.good().without("sub"), NOBODY));
    all.put(
        "of a name without end",
        signed(HandmadeToken.good().claim("sub", "a".repeat(101)), NOBODY));
    all.put(
        "signed by somebody else",
        new Refused(HandmadeToken.good().signed(own.getPrivate()), CHANGED));
    all.put(
        "signed by somebody else, with the key inside",
        new Refused(
            HandmadeToken.good()
                .header("jwk", jwk((RSAPublicKey) own.getPublic()))
                .signed(own.getPrivate()),
            CHANGED));
    all.put(
        "promoted after it was signed",
        new Refused(HandmadeToken.good().claim("sub", "birch").under(good), CHANGED));
    all.put(
        "unsigned", new Refused(HandmadeToken.good().header("alg", "none").unsigned(), ALGORITHM));
    all.put("cut off", new Refused(good.substring(0, good.lastIndexOf('.') + 1), CHANGED));
    all.put(
        "signed with the text of the public key as a secret",
        new Refused(
            HandmadeToken.good().header("alg", "HS256").signedWithSecret(publicText), ALGORITHM));
    all.put(
        "signed with the bytes of the public key as a secret",
        new Refused(
            HandmadeToken.good().header("alg", "HS256").signedWithSecret(publicBytes), ALGORITHM));
    all.put("three words", new Refused("abc.def.ghi", NONE));
    all.put("one word", new Refused("letmein", NONE));
    return all;
  }

  private static Refused signed(HandmadeToken token, String reason) {
    return new Refused(token.signed(Tokens.keys().privateKey()), reason);
  }

  @Test
  void theTokenThatTheOthersAreMadeFromIsTaken() {
    ask(HandmadeToken.good().signed(Tokens.keys().privateKey())).then().statusCode(200);
  }

  @TestFactory
  List<DynamicTest> aTokenIsRefusedIfItIs() throws Exception {
    List<DynamicTest> tests = new ArrayList<>();
    refused()
        .forEach(
            (what, sent) -> tests.add(DynamicTest.dynamicTest(what, () -> assertRefused(sent))));
    return tests;
  }

  private static void assertRefused(Refused sent) {
    Response answer = ask(sent.token());
    answer
        .then()
        .statusCode(401)
        .contentType("application/problem+json")
        .body("code", equalTo("UNAUTHENTICATED"))
        .body("detail", equalTo(sent.reason()));
    assertThat(answer.header("WWW-Authenticate"))
        .isEqualTo(
            "Bearer realm=\"standoff\", error=\"invalid_token\", error_description=\""
                + sent.reason()
                + "\"");
    assertThat(answer.asString() + answer.headers())
        .as("an answer repeats nothing of a token")
        .doesNotContain(parts(sent.token()));
  }

  @Test
  void whatIsNoBearerTokenIsAsNone() {
    for (String credentials : List.of("Basic YWxkZXI6YmlyY2g=", "Bearer", "Bearer ")) {
      Response answer = given().header("Authorization", credentials).get("/guarded/somebody");
      answer.then().statusCode(401).contentType("application/problem+json");
      assertThat(answer.header("WWW-Authenticate")).as(credentials).startsWith("Bearer realm=");
    }
  }

  @Test
  void whoNeedsNoTokenMayHaveABadOne() throws Exception {
    for (Refused sent : refused().values()) {
      given().auth().oauth2(sent.token()).get(StartNotice.TRY_PATH).then().statusCode(200);
    }
  }

  @Test
  void claimsOfAnotherKindGrantNothing() {
    ask(HandmadeToken.good()
            .claim("groups", List.of("administrator", "ADMIN", " admin"))
            .claim("house", List.of("alder"))
            .signed(Tokens.keys().privateKey()))
        .then()
        .statusCode(200)
        .body("roles.size()", equalTo(0))
        .body("house", equalTo(null));
  }

  @Test
  void noTokenIsWrittenToTheLog() throws Exception {
    StringBuilder log = new StringBuilder();
    Handler all = collecting(log);
    Logger root = Logger.getLogger("");
    root.addHandler(all);
    List<String> sent = new ArrayList<>(List.of(Tokens.admin(), Tokens.publisher("alder")));
    refused().values().forEach(one -> sent.add(one.token()));
    try {
      Logger.getLogger("org.standoff.test").info("listening");
      for (String token : sent) {
        ask(token);
        given().auth().oauth2(token).put("/guarded/birch");
        given().auth().oauth2(token).get("/guarded/nowhere/at/all");
      }
    } finally {
      root.removeHandler(all);
    }
    assertThat(log.toString()).contains("listening");
    for (String token : sent) {
      assertThat(log.toString()).doesNotContain(parts(token));
    }
  }

  /** The whole, and each part that no other token has. */
  private static List<String> parts(String token) {
    List<String> parts = new ArrayList<>(List.of(token));
    for (String part : token.split("\\.")) {
      if (part.length() > 30) {
        parts.add(part);
      }
    }
    return parts;
  }

  private static Response ask(String token) {
    return given().header("Authorization", "Bearer " + token).get("/guarded/somebody");
  }

  private static KeyPair ownPair() throws GeneralSecurityException {
    KeyPairGenerator generator = KeyPairGenerator.getInstance("RSA");
    generator.initialize(2048);
    return generator.generateKeyPair();
  }

  private static Map<String, String> jwk(RSAPublicKey key) {
    Base64.Encoder base64 = Base64.getUrlEncoder().withoutPadding();
    return Map.of(
        "kty", "RSA",
        "n", base64.encodeToString(key.getModulus().toByteArray()),
        "e", base64.encodeToString(key.getPublicExponent().toByteArray()));
  }

  private static Handler collecting(StringBuilder log) {
    Handler handler =
        new Handler() {
          @Override
          public synchronized void publish(LogRecord written) {
            log.append(written.getMessage()).append('\n');
            if (written.getParameters() != null) {
              for (Object parameter : written.getParameters()) {
                log.append(parameter).append('\n');
              }
            }
            for (Throwable at = written.getThrown(); at != null; at = at.getCause()) {
              log.append(at).append('\n');
            }
          }

          @Override
          public void flush() {}

          @Override
          public void close() {}
        };
    handler.setLevel(Level.ALL);
    return handler;
  }
}
