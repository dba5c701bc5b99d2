package org.standoff.launch;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static java.nio.file.StandardOpenOption.CREATE_NEW;
import static java.nio.file.StandardOpenOption.WRITE;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.interfaces.RSAPrivateCrtKey;
import java.security.spec.PKCS8EncodedKeySpec;
import java.security.spec.RSAPublicKeySpec;
import java.util.Base64;
import java.util.Set;

/**
 * The key pair with which the service signs and checks tokens of its own, for those who have no
 * issuer. It is made once, in the data folder, and only its owner can read it. Whoever deletes the
 * folder voids every token.
 */
public final class TokenKeys {

  /** Enough until after 2030 by NIST SP 800-57, part 1, table 2 (128 bits of strength). */
  private static final int KEY_BITS = 3072;

  private static final String ALGORITHM = "RSA";
  private static final String FOLDER = "keys";
  private static final String PRIVATE = "token-private.pem";
  private static final String PUBLIC = "token-public.pem";
  private static final Base64.Encoder LINES = Base64.getMimeEncoder(64, new byte[] {'\n'});

  private final PrivateKey privateKey;
  private final Path publicKeyFile;

  private TokenKeys(PrivateKey privateKey, Path publicKeyFile) {
    this.privateKey = privateKey;
    this.publicKeyFile = publicKeyFile;
  }

  /**
   * Takes the pair that is in the data folder, or makes one.
   *
   * @throws KeysUnavailable if it can't be read or made
   */
  public static TokenKeys in(Path dataFolder) {
    Path folder = dataFolder.resolve(FOLDER).toAbsolutePath();
    try {
      Files.createDirectories(dataFolder);
      if (!Files.isDirectory(folder)) {
        makeFolder(folder);
      }
      // a first start and a first token may come at the same time
      try (FileChannel lock =
              FileChannel.open(
                  folder.resolve("keys.lock"), Set.of(StandardOpenOption.CREATE, WRITE), owner());
          var held = lock.lock()) {
        return readOrMake(folder);
      }
    } catch (IOException | GeneralSecurityException | IllegalArgumentException failure) {
      throw new KeysUnavailable(folder, failure);
    }
  }

  public PrivateKey privateKey() {
    return privateKey;
  }

  /** The file, in PEM, that tokens are checked with. */
  public Path publicKeyFile() {
    return publicKeyFile;
  }

  private static TokenKeys readOrMake(Path folder) throws IOException, GeneralSecurityException {
    Path privateFile = folder.resolve(PRIVATE);
    Path publicFile = folder.resolve(PUBLIC);
    if (!Files.exists(privateFile)) {
      KeyPairGenerator generator = KeyPairGenerator.getInstance(ALGORITHM);
      generator.initialize(KEY_BITS);
      KeyPair pair = generator.generateKeyPair();
      write(privateFile, pem("PRIVATE KEY", pair.getPrivate().getEncoded()));
    }
    PrivateKey privateKey = read(privateFile);
    // from the private one each time, so that the two can't part
    String publicText = pem("PUBLIC KEY", publicOf(privateKey).getEncoded());
    if (!Files.exists(publicFile) || !Files.readString(publicFile, US_ASCII).equals(publicText)) {
      write(publicFile, publicText);
    }
    return new TokenKeys(privateKey, publicFile);
  }

  private static PrivateKey read(Path file) throws IOException, GeneralSecurityException {
    String base64 =
        Files.readString(file, US_ASCII).replaceAll("-----[A-Z ]+-----", "").replaceAll("\\s", "");
    return KeyFactory.getInstance(ALGORITHM)
        .generatePrivate(new PKCS8EncodedKeySpec(Base64.getDecoder().decode(base64)));
  }

  private static PublicKey publicOf(PrivateKey key) throws GeneralSecurityException {
    if (key instanceof RSAPrivateCrtKey rsa) {
      return KeyFactory.getInstance(ALGORITHM)
          .generatePublic(new RSAPublicKeySpec(rsa.getModulus(), rsa.getPublicExponent()));
    }
    throw new GeneralSecurityException("The private key does not tell its public half");
  }

  private static String pem(String kind, byte[] key) {
    return "-----BEGIN %1$s-----\n%2$s\n-----END %1$s-----\n"
        .formatted(kind, LINES.encodeToString(key));
  }

  /** Whole or not at all, and never readable by others, not even for a moment. */
  private static void write(Path file, String text) throws IOException {
    Path draft = file.resolveSibling(file.getFileName() + ".new");
    Files.deleteIfExists(draft);
    try (FileChannel out = FileChannel.open(draft, Set.of(CREATE_NEW, WRITE), owner())) {
      ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(US_ASCII));
      while (bytes.hasRemaining()) {
        out.write(bytes);
      }
      out.force(true);
    }
    Files.move(draft, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }

  private static void makeFolder(Path folder) throws IOException {
    Files.createDirectory(folder, permissions("rwx------"));
  }

  private static FileAttribute<?>[] owner() {
    return permissions("rw-------");
  }

  /** None where the system knows no such permissions. */
  private static FileAttribute<?>[] permissions(String text) {
    return FileSystems.getDefault().supportedFileAttributeViews().contains("posix")
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(text))
        }
        : new FileAttribute<?>[0];
  }
}
