package org.standoff.launch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.interfaces.RSAPrivateKey;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TokenKeysTest {

  @TempDir Path data;

  @Test
  void onlyTheOwnerCanReadThem() throws IOException {
    assumeThat(data.getFileSystem().supportedFileAttributeViews()).contains("posix");
    Path publicFile = TokenKeys.in(data).publicKeyFile();
    assertThat(permissions(publicFile.getParent())).isEqualTo("rwx------");
    try (Stream<Path> files = Files.list(publicFile.getParent())) {
      assertThat(files)
          .isNotEmpty()
          .allSatisfy(f -> assertThat(permissions(f)).isEqualTo("rw-------"));
    }
  }

  @Test
  void theyAreMadeOnceForAllWhoShareTheFolder() throws IOException {
    TokenKeys first = TokenKeys.in(data);
    FileTime made = FileTime.from(Instant.parse("2026-01-01T00:00:00Z"));
    Files.setLastModifiedTime(first.publicKeyFile(), made);
    TokenKeys second = TokenKeys.in(data);
    assertThat(second.privateKey()).isEqualTo(first.privateKey());
    assertThat(second.publicKeyFile()).isEqualTo(first.publicKeyFile());
    assertThat(Files.getLastModifiedTime(second.publicKeyFile()))
        .as("what stands is not written again, so the folder may be read only")
        .isEqualTo(made);
  }

  @Test
  void theyAreLongEnough() {
    assertThat(((RSAPrivateKey) TokenKeys.in(data).privateKey()).getModulus().bitLength())
        .isEqualTo(3072);
  }

  @Test
  void anotherFolderHasOthers() {
    assertThat(TokenKeys.in(data.resolve("a")).privateKey())
        .isNotEqualTo(TokenKeys.in(data.resolve("b")).privateKey());
  }

  @Test
  void aPublicHalfThatWasLostOrSwappedIsMadeAnew() throws IOException {
    Path file = TokenKeys.in(data).publicKeyFile();
    String right = Files.readString(file);
    for (String wrong : List.of("", right.replace('A', 'B'))) {
      Files.writeString(file, wrong);
      assertThat(TokenKeys.in(data).publicKeyFile()).hasContent(right);
    }
    Files.delete(file);
    assertThat(TokenKeys.in(data).publicKeyFile()).hasContent(right);
  }

  @Test
  void aPrivateKeyThatCannotBeReadIsToldAndKept() throws IOException {
    Path file = TokenKeys.in(data).publicKeyFile().resolveSibling("token-private.pem");
    Files.writeString(file, "no key");
    assertThatThrownBy(() -> TokenKeys.in(data))
        .isInstanceOf(KeysUnavailable.class)
        .hasMessageContaining("STANDOFF_TOKENS_KEYS")
        .hasMessageNotContaining("no key");
    assertThat(file).hasContent("no key");
  }

  private static String permissions(Path file) {
    try {
      return PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
    } catch (IOException failure) {
      throw new IllegalStateException(failure);
    }
  }
}
