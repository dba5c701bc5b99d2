package org.standoff.rest.http;

/** An answer whose entity tag says more than that these are its bytes. */
public sealed interface Named permits Tagged, FormOfState {

  /** What is sent. */
  Object body();

  /**
   * The tag that is sent.
   *
   * @param bytes of the body
   * @param coded whether the caller takes a compressed answer, which is another representation
   */
  String tagOf(byte[] bytes, String mediaType, boolean coded);

  /** The answer itself, whether it is named or not. */
  static Object bodyOf(Object answer) {
    return answer instanceof Named named ? named.body() : answer;
  }
}
