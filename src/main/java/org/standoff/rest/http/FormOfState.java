package org.standoff.rest.http;

/**
 * An answer that is one of several forms of a state: another media type, or as much as another
 * caller may see. Each form has a tag of its own, and a change that names any of them names the
 * state.
 *
 * @param state the tag of the state, strong, with its quotes
 * @param body what is sent
 */
public record FormOfState(String state, Object body) implements Named {

  @Override
  public String tagOf(byte[] bytes, String mediaType) {
    return EntityTags.ofForm(state, bytes, mediaType);
  }
}
