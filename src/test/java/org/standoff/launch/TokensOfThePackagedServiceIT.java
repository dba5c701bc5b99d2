package org.standoff.launch;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.math.BigInteger;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.interfaces.RSAPublicKey;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standoff.fixture.HandmadeToken;
import org.standoff.fixture.PackagedService;

/**
 * Tokens of the packaged service: its own, from the command, and those of an issuer of one's own.
 */
class TokensOfThePackagedServiceIT {

  private static final String ISSUER = "https://issuer.example/realm";
  private static final String AUDIENCE = "kit";
  private static final String KEY_ID = "key-of-june";
  private static final String TERMS =
      """
      { "title": "A house", "zone": "Europe/Vienna", "currency": "EUR" }
      """;

  @TempDir static Path folder;

  private static EmbeddedDatabase database;
  private static HttpServer issuer;
  private static KeyPair issuersPair;
  private static volatile boolean issuerAnswers;
  private static PackagedService own;
  private static PackagedService following;

  @BeforeAll
  static void startAll() throws Exception {
    database = EmbeddedDatabase.forgetful(0);
    KeyPairGenerator generator = KeyPairGenerator.getInstance("RSA");
    generator.initialize(2048);
    issuersPair = generator.generateKeyPair();
    issuer = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    issuer.createContext(
        "/keys",
        exchange -> {
          byte[] keys = keySet((RSAPublicKey) issuersPair.getPublic()).getBytes(UTF_8);
          exchange.getResponseHeaders().set("Content-Type", "application/jwk-set+json");
          exchange.sendResponseHeaders(issuerAnswers ? 200 : 500, keys.length);
          exchange.getResponseBody().write(keys);
          exchange.close();
        });
    issuer.start();
    own = PackagedService.start(folder.resolve("own"), settings("QUARKUS_LOG_LEVEL", "DEBUG"));
    following =
        PackagedService.start(
            folder.resolve("following"),
            settings(
                "STANDOFF_TOKENS_KEYS",
                "http://127.0.0.1:" + issuer.getAddress().getPort() + "/keys",
                "STANDOFF_TOKENS_ISSUER",
                ISSUER,
                "STANDOFF_TOKENS_AUDIENCE",
                AUDIENCE,
                "STANDOFF_TOKENS_NEEDED_TO_READ",
                "true"));
  }

  @AfterAll
  static void stopAll() throws IOException {
    own.close();
    following.close();
    issuer.stop(0);
    database.close();
  }

  @Test
  void theCommandPrintsATokenAndNothingElseAndTheServiceTakesIt() throws Exception {
    String house = "h-" + UUID.randomUUID();
    Ended ended = command("--role", "publisher", "--house", house);
    assertThat(ended.err()).isEmpty();
    assertThat(ended.exitCode()).isZero();
    assertThat(ended.out()).matches("[\\w-]+\\.[\\w-]+\\.[\\w-]+\\R");
    String token = ended.out().strip();
    assertThat(own.put("/v1/houses/" + house, token, TERMS).statusCode()).isEqualTo(201);
    assertThat(own.put("/v1/houses/another", token, TERMS).statusCode()).isEqualTo(403);
    assertThat(following.put("/v1/houses/" + house, token, TERMS).statusCode())
        .as("the key of one data folder is not that of another")
        .isNotIn(200, 201);
  }

  @Test
  void whatTheCommandRefusesGoesToTheOtherStream() throws Exception {
    Ended ended = command("--role", "booker");
    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.out()).isEmpty();
    assertThat(ended.err()).contains("--subject", "Usage:");
  }

  @Test
  void noTokenIsInTheLogHoweverMuchIsLogged() throws Exception {
    String good = own.token("admin", Optional.empty(), "admin");
    List<String> sent =
        List.of(
            good,
            HandmadeToken.good().claim("exp", 1_700_000_000).signed(issuersPair.getPrivate()),
            HandmadeToken.good().signed(issuersPair.getPrivate()),
            HandmadeToken.good().header("alg", "none").unsigned());
    for (String token : sent) {
      own.put("/v1/houses/h-" + UUID.randomUUID(), token, TERMS);
      own.get("/v1/houses", token);
    }
    String log = Files.readString(folder.resolve("own").resolve("service.log"));
    assertThat(log).contains(" DEBUG ");
    for (String token : sent) {
      List<String> parts = new ArrayList<>(List.of(token));
      parts.addAll(Arrays.stream(token.split("\\.")).filter(part -> part.length() > 60).toList());
      assertThat(log).doesNotContain(parts);
    }
  }

  @Test
  void anIssuerOfOnesOwnIsFollowedOnceItsKeysCanBeHad() throws Exception {
    String house = "/v1/houses/h-" + UUID.randomUUID();
    HandmadeToken told =
        HandmadeToken.good().header("kid", KEY_ID).claim("iss", ISSUER).claim("aud", AUDIENCE);
    String token = told.signed(issuersPair.getPrivate());

    issuerAnswers = false;
    HttpResponse<String> waiting = following.put(house, token, TERMS);
    assertThat(waiting.statusCode()).as(waiting.body()).isEqualTo(503);
    assertThat(waiting.headers().firstValue("Retry-After")).isPresent();

    issuerAnswers = true;
    HttpResponse<String> made = following.put(house, token, TERMS);
    assertThat(made.statusCode()).as(made.body()).isEqualTo(201);
    assertThat(following.get("/v1/microphones", token).statusCode()).isEqualTo(200);

    for (String forged :
        List.of(
            own.token("admin", Optional.empty(), "admin"),
            told.header("kid", "key-of-july").signed(issuersPair.getPrivate()),
            HandmadeToken.good().header("kid", KEY_ID).signed(issuersPair.getPrivate()))) {
      HttpResponse<String> refused = following.put(house, forged, TERMS);
      assertThat(refused.statusCode()).as(refused.body()).isEqualTo(401);
    }
  }

  @Test
  void whereReadersMustBeKnownWhatExplainsTheServiceStaysOpen() throws Exception {
    assertThat(unknown(following, "/v1/microphones")).isEqualTo(401);
    assertThat(unknown(following, "/v1/houses")).isEqualTo(401);
    assertThat(unknown(following, StartNotice.TRY_PATH)).isEqualTo(401);
    for (String open : List.of("/", "/openapi", "/problems/not-found", "/q/health/ready")) {
      assertThat(unknown(following, open)).as(open).isEqualTo(200);
    }
    assertThat(unknown(own, StartNotice.TRY_PATH)).isEqualTo(200);
  }

  private static int unknown(PackagedService service, String path) throws Exception {
    return HttpClient.newHttpClient()
        .send(
            HttpRequest.newBuilder(service.at(path)).build(),
            HttpResponse.BodyHandlers.discarding())
        .statusCode();
  }

  private record Ended(int exitCode, String out, String err) {}

  private static Ended command(String... options) throws Exception {
    List<String> words =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-jar",
                Path.of("target", "quarkus-app", "quarkus-run.jar").toString(),
                "token"));
    words.addAll(List.of(options));
    Path errors = folder.resolve("command.err");
    ProcessBuilder program = new ProcessBuilder(words).redirectError(errors.toFile());
    program.environment().put("STANDOFF_DATA_FOLDER", folder.resolve("own").toString());
    Process running = program.start();
    String out = new String(running.getInputStream().readAllBytes(), UTF_8);
    int exitCode = running.waitFor();
    return new Ended(exitCode, out, Files.readString(errors));
  }

  private static Map<String, String> settings(String... more) {
    Map<String, String> settings = new HashMap<>();
    EmbeddedDatabase.settings(database.port())
        .forEach(
            (name, value) -> settings.put(name.toUpperCase(Locale.ROOT).replace('.', '_'), value));
    for (int at = 0; at < more.length; at += 2) {
      settings.put(more[at], more[at + 1]);
    }
    return settings;
  }

  /** RFC 7517, 5. */
  private static String keySet(RSAPublicKey key) {
    return """
        { "keys": [ { "kty": "RSA", "use": "sig", "alg": "RS256", "kid": "%s", "n": "%s", "e": "%s" } ] }
        """
        .formatted(KEY_ID, unsigned(key.getModulus()), unsigned(key.getPublicExponent()));
  }

  private static String unsigned(BigInteger number) {
    byte[] bytes = number.toByteArray();
    int from = bytes[0] == 0 ? 1 : 0;
    return Base64.getUrlEncoder()
        .withoutPadding()
        .encodeToString(Arrays.copyOfRange(bytes, from, bytes.length));
  }
}
