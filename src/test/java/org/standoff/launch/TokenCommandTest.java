package org.standoff.launch;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.Signature;
import java.security.interfaces.RSAPrivateCrtKey;
import java.security.spec.RSAPublicKeySpec;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TokenCommandTest {

  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path data;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @BeforeEach
  void putTheDataAside() {
    System.setProperty(StartSettings.DATA_FOLDER, data.toString());
  }

  @AfterEach
  void takeItBack() {
    System.clearProperty(StartSettings.DATA_FOLDER);
  }

  @Test
  void itPrintsATokenAndNothingElse() throws IOException, GeneralSecurityException {
    assertThat(run("--role publisher --house ostrel-hire")).isZero();
    assertThat(err.toString(UTF_8)).isEmpty();
    assertThat(out.toString(UTF_8)).matches("[\\w-]+\\.[\\w-]+\\.[\\w-]+\\R");
    JsonNode claims = claims();
    assertThat(claims.path("iss").asText()).isEqualTo("standoff");
    assertThat(claims.path("aud").toString()).contains("standoff");
    assertThat(claims.path("sub").asText()).isEqualTo("ostrel-hire");
    assertThat(claims.path("house").asText()).isEqualTo("ostrel-hire");
    assertThat(claims.path("groups").toString()).isEqualTo("[\"publisher\"]");
    assertThat(claims.path("exp").asLong() - claims.path("iat").asLong()).isEqualTo(24 * 3600);
    assertThat(isSignedByTheKeyInTheFolder()).isTrue();
  }

  @Test
  void itHoldsForAsLongAsItIsAsked() throws IOException {
    long before = Instant.now().getEpochSecond();
    assertThat(run("--role booker --subject quay-desk --hours 2")).isZero();
    JsonNode claims = claims();
    assertThat(claims.path("sub").asText()).isEqualTo("quay-desk");
    assertThat(claims.has("house")).isFalse();
    assertThat(claims.path("iat").asLong()).isGreaterThanOrEqualTo(before);
    assertThat(claims.path("exp").asLong() - claims.path("iat").asLong()).isEqualTo(2 * 3600);
  }

  @Test
  void anAdminNeedsNoName() throws IOException {
    assertThat(run("--role admin")).isZero();
    assertThat(claims().path("sub").asText()).isEqualTo("admin");
  }

  @Test
  void helpTellsTheOptions() {
    assertThat(run("--help")).isZero();
    assertThat(out.toString(UTF_8)).contains("--role", "--house", "--subject", "--hours");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "--role",
        "--role owner",
        "--role publisher",
        "--role publisher --house ../etc",
        "--role publisher --house Ostrel",
        "--role booker",
        "--role booker --house ostrel-hire --subject desk",
        "--role booker --subject a/b",
        "--role admin --house ostrel-hire",
        "--role admin --hours 0",
        "--role admin --hours -1",
        "--role admin --hours 8785",
        "--role admin --hours 1.5",
        "--role admin --hours 99999999999",
        "--role admin --role admin",
        "--role admin --days 3",
        "--role admin extra"
      })
  void whatCannotBeMetIsToldOnTheOtherStream(String options) {
    assertThat(run(options)).isEqualTo(2);
    assertThat(out.toString(UTF_8)).isEmpty();
    assertThat(err.toString(UTF_8)).startsWith("token: ").contains("Usage:");
  }

  @Test
  void aFolderThatCannotBeUsedIsTold() {
    System.setProperty(StartSettings.DATA_FOLDER, "/dev/null/data");
    assertThat(run("--role admin")).isEqualTo(2);
    assertThat(out.toString(UTF_8)).isEmpty();
    assertThat(err.toString(UTF_8)).contains("STANDOFF_DATA_FOLDER");
  }

  private int run(String options) {
    List<String> words = options.isEmpty() ? List.of() : List.of(options.split(" "));
    return TokenCommand.run(
        words, new PrintStream(out, true, UTF_8), new PrintStream(err, true, UTF_8));
  }

  private JsonNode claims() throws IOException {
    return JSON.readTree(Base64.getUrlDecoder().decode(part(1)));
  }

  private boolean isSignedByTheKeyInTheFolder() throws GeneralSecurityException {
    RSAPrivateCrtKey key = (RSAPrivateCrtKey) TokenKeys.in(data).privateKey();
    Signature signature = Signature.getInstance("SHA256withRSA");
    signature.initVerify(
        KeyFactory.getInstance("RSA")
            .generatePublic(new RSAPublicKeySpec(key.getModulus(), key.getPublicExponent())));
    signature.update((part(0) + "." + part(1)).getBytes(UTF_8));
    return signature.verify(Base64.getUrlDecoder().decode(part(2)));
  }

  private String part(int which) {
    return out.toString(UTF_8).strip().split("\\.")[which];
  }
}
