package org.standoff.launch;

import java.io.PrintStream;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/**
 * The command {@code token}: prints a bearer token and starts nothing. Exit code 0, or 2 where the
 * options are wrong or the keys can't be had.
 */
final class TokenCommand {

  static final String NAME = "token";

  private static final int WRONG = 2;

  private TokenCommand() {}

  static int run(List<String> options, PrintStream out, PrintStream err) {
    if (options.contains("--help")) {
      out.println(TokenOptions.USAGE);
      return 0;
    }
    try {
      TokenOptions asked = TokenOptions.of(options);
      StartSettings settings = StartSettings.read();
      TokenMint mint =
          new TokenMint(
              TokenKeys.in(settings.dataFolder()).privateKey(),
              settings.issuer(),
              settings.audience());
      out.println(
          mint.token(
              asked.subject(),
              asked.role(),
              asked.house(),
              Instant.now(),
              Duration.ofHours(asked.hours())));
      return 0;
    } catch (TokenOptions.Wrong | KeysUnavailable told) {
      err.println(told.getMessage());
      return WRONG;
    }
  }
}
