package org.standoff.rest.openapi;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Properties;

/** What the description tells by name and no code says: a file of properties on the class path. */
final class PropertiesFile {

  private PropertiesFile() {}

  static Properties read(String resource) {
    try (InputStream in = PropertiesFile.class.getResourceAsStream(resource)) {
      Properties properties = new Properties();
      properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
      return properties;
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
