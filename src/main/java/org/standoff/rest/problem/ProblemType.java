package org.standoff.rest.problem;

import java.net.URI;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The kinds of problem that a caller can branch on. A name once published keeps its meaning. */
public enum ProblemType {
  INVALID_REQUEST(
      400,
      "The request has faults",
      "Members, parameters or values are missing, unknown, of the wrong type or out of range.",
      "Correct every entry of 'errors'; each names the place, what was found and what is allowed.",
      ProblemMember.FAULT_COUNT,
      ProblemMember.MINIMUM,
      ProblemMember.EXCLUSIVE_MINIMUM,
      ProblemMember.MAXIMUM,
      ProblemMember.EXCLUSIVE_MAXIMUM),
  MALFORMED_BODY(
      400,
      "The body can't be read",
      "The body is not one well-formed JSON value within the limits of this service.",
      "Mend the JSON at the line and column given. NaN, Infinity and doubled members are refused.",
      ProblemMember.MAX_LEVELS,
      ProblemMember.MAX_TEXT_CHARACTERS,
      ProblemMember.MAX_NUMBER_CHARACTERS),
  UNAUTHENTICATED(
      401,
      "A valid token is wanted",
      "This needs to know who asks, and the request has no token, or none that holds here.",
      "Send 'Authorization: Bearer …' with a token of this service's issuer that has not expired.",
      ProblemMember.MAX_SUBJECT_CHARACTERS),
  FORBIDDEN(
      403,
      "The token does not allow this",
      "The token is valid, but its roles, or the house that it names, do not cover this.",
      "Use a token of the role that /openapi names for this operation, for the house concerned."),
  NOT_FOUND(
      404,
      "There is nothing here",
      "No resource answers at this path, or the item that it names is not in the catalogue.",
      "Look the path up in /openapi, and the item in its list below /v1."),
  METHOD_NOT_ALLOWED(
      405,
      "This method is not offered here",
      "The path exists, but not for this method.",
      "Use one of the methods in the 'Allow' header."),
  NOT_ACCEPTABLE(
      406,
      "None of the accepted media types is on offer",
      "The resource has no representation that the 'Accept' header allows.",
      "Ask for application/json, or for a media type that /openapi lists for this operation."),
  TOO_SLOW(
      408,
      "The request comes in too slowly",
      "The head or the body of the request was not whole in the time that this service waits.",
      "Send the request again, in one go.",
      ProblemMember.HEAD_WITHIN_S,
      ProblemMember.BODY_WITHIN_S),
  CLASH(
      409,
      "This clashes with how things stand",
      "The request is sound, but what it asks cannot be done while things are as they are.",
      "Read what stands in the way, change it or the request, and ask again.",
      ProblemMember.SHORTFALL_COUNT,
      ProblemMember.RETRY_AFTER_S,
      ProblemMember.HOLD,
      ProblemMember.UNTIL),
  STALE(
      412,
      "It has changed meanwhile",
      "The change supposes a state, by 'If-Match' or 'If-None-Match', that is not the present one.",
      "Read it again, look whether the change is still right, and send it with the present 'ETag'.",
      ProblemMember.CURRENT_ETAG),
  TOO_LARGE(
      413,
      "The body is too large",
      "The body exceeds the limit of this service.",
      "Split the request; a batch may be sent in several parts.",
      ProblemMember.MAX_BODY_BYTES),
  ADDRESS_TOO_LONG(
      414,
      "The address is too long",
      "The first line of the request, which has the address, exceeds the limit of this service.",
      "Send the same by POST, where the operation has it: a body may be longer than an address.",
      ProblemMember.MAX_REQUEST_LINE_BYTES),
  UNSUPPORTED_MEDIA_TYPE(
      415,
      "The body has a media type that is not read here",
      "The 'Content-Type' of the body is none that this operation reads.",
      "Send application/json, or a media type that /openapi lists for this operation."),
  RULE_BROKEN(
      422,
      "The request breaks a rule of the trade",
      "The request is well-formed, but what it asks contradicts itself or the catalogue.",
      "Correct every entry of 'errors'; each names the rule and the figures that break it.",
      ProblemMember.FAULT_COUNT),
  TOO_COSTLY(
      422,
      "This would take too long to compute",
      "The CPU time that the question is estimated to take, before anything is computed, is more"
          + " than the request has left; 'cost' tells both. The lines of a batch share it.",
      "Ask for less: a lower order, fewer microphones, sources, places or patterns, no octaves; or"
          + " send the lines of a batch that were not answered in another one."),
  PRECONDITION_WANTED(
      428,
      "Say which state this changes",
      "A change of what exists must name the state that it was made for.",
      "Read it, and send its 'ETag' as 'If-Match' with the change."),
  HEADERS_TOO_LARGE(
      431,
      "The headers are too large",
      "The headers of the request together exceed the limit of this service.",
      "Send fewer or shorter headers; the longest is a token or a cookie as a rule.",
      ProblemMember.MAX_HEADERS_BYTES),
  TOO_MANY(
      429,
      "Too many requests",
      "More was asked in a short time than this service grants one caller.",
      "Wait the number of seconds in 'Retry-After', then go on more slowly.",
      ProblemMember.LIMIT_REQUESTS,
      ProblemMember.WINDOW_S,
      ProblemMember.VIOLATED_POLICIES,
      ProblemMember.RETRY_AFTER_S),
  INTERNAL(
      500,
      "A fault of ours",
      "The service failed in a way that it should not.",
      "Report the 'instance' of the problem; the log holds the rest. A retry may or may not help."),
  UNAVAILABLE(
      503,
      "A part that this needs is not there now",
      "The service is starting, stopping, or has lost its database. Calculations go on.",
      "Try again after the number of seconds in 'Retry-After'.",
      ProblemMember.RETRY_AFTER_S),
  OVERLOADED(
      503,
      "Too much is asked at once",
      "The service works on as many requests as it can answer in good time, and takes no more.",
      "Try again after the number of seconds in 'Retry-After'; nothing was done.",
      ProblemMember.MAX_CONCURRENT_REQUESTS,
      ProblemMember.RETRY_AFTER_S);

  private static final String FOLDER = "/problems/";

  private final int status;
  private final String title;
  private final String meaning;
  private final String remedy;
  private final List<ProblemMember> members;

  ProblemType(int status, String title, String meaning, String remedy, ProblemMember... members) {
    this.status = status;
    this.title = title;
    this.meaning = meaning;
    this.remedy = remedy;
    this.members = List.of(members);
  }

  public int status() {
    return status;
  }

  public String title() {
    return title;
  }

  public String meaning() {
    return meaning;
  }

  public String remedy() {
    return remedy;
  }

  /** What it may tell besides the members that every problem has. */
  public List<ProblemMember> members() {
    return members;
  }

  /** The name in the address of the page that explains it. */
  public String slug() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public URI uri() {
    return URI.create(FOLDER + slug());
  }

  public static Optional<ProblemType> named(String slug) {
    return Arrays.stream(values()).filter(type -> type.slug().equals(slug)).findFirst();
  }

  /** The type that stands for a status which the framework chose. */
  public static ProblemType ofStatus(int status) {
    return Arrays.stream(values())
        .filter(type -> type.status == status)
        .findFirst()
        .orElse(status >= 500 ? INTERNAL : INVALID_REQUEST);
  }
}
