package org.standoff.catalogue;

import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * One item of the catalogue.
 *
 * @param <T> the record that its file describes
 * @param id its name
 * @param value what the core calculates with
 * @param content the file as it stands, in the names and units of the file
 * @param revision digest of the file: the same content has the same revision everywhere
 */
public record Item<T>(ItemId id, T value, ObjectNode content, String revision) {

  /** The name for people. */
  public String title() {
    return content.path("title").asText();
  }

  /** A copy, because the snapshot is shared by all requests. */
  @Override
  public ObjectNode content() {
    return content.deepCopy();
  }

  /** The file as a reader asks for it. */
  public Sheet sheet() {
    return new Sheet(content);
  }
}
