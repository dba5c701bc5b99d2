package org.standoff.rest.http;

/** An answer whose entity tag says more than that these are its bytes. */
public sealed interface Named permits Tagged, FormOfState {

  /** What is sent. */
  Object body();

  /**
   * The tag of the answer as it is, before any coding.
   *
   * @param bytes of the body
   */
  String tagOf(byte[] bytes, String mediaType);

  /** The answer itself, whether it is named or not. */
  static Object bodyOf(Object answer) {
    return answer instanceof Named named ? named.body() : answer;
  }
}
