package org.standoff.rest.http;

import org.jspecify.annotations.Nullable;

/** An answer that is one page of a list. */
public interface Paged {

  /** What to send for the next page; null at the end. */
  @Nullable String nextPageToken();
}
