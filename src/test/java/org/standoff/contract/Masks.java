package org.standoff.contract;

/** Puts a word in the place of what differs from build to build or from request to request. */
final class Masks {
  private Masks() {}

  static String apply(String text) {
    return text.replaceAll(
            "\"(catalogue_revision|revision)\" ?: ?\"[^\"]+\"", "\"$1\": \"(revision)\"")
        .replaceAll("\"engine_version\" ?: ?\"[^\"]+\"", "\"engine_version\": \"(version)\"")
        .replaceAll("\"etag\" ?: ?\"(\\\\\"|[^\"])+\"", "\"etag\": \"(etag)\"")
        .replaceAll("urn:uuid:[0-9a-f-]{36}", "urn:uuid:(request)")
        .replaceAll("\\d{4}-\\d{2}-\\d{2}T[0-9:.]+Z", "(date)");
  }
}
