package org.standoff.launch;

import io.smallrye.config.SmallRyeConfig;
import io.smallrye.config.SmallRyeConfigBuilder;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What has to be known before the framework starts, read from the same places that it reads: system
 * properties, environment, {@code config/application.yaml} and the shipped {@code
 * application.yaml}.
 *
 * @param jdbcUrl the PostgreSQL server that was given, if one was
 * @param tokenKeys where the keys of an issuer of tokens are, if one was given
 * @param issuer whose tokens are taken
 * @param audience for whom the tokens that are taken were made
 * @param dataFolder where the service keeps what it makes itself: data of the embedded server, keys
 */
record StartSettings(
    Optional<String> jdbcUrl,
    Optional<String> tokenKeys,
    String issuer,
    String audience,
    Path dataFolder) {

  static final String JDBC_URL = "quarkus.datasource.jdbc.url";
  static final String TOKEN_KEYS = "standoff.tokens.keys";
  static final String ISSUER = "standoff.tokens.issuer";
  static final String AUDIENCE = "standoff.tokens.audience";
  static final String DATA_FOLDER = "standoff.data.folder";

  static StartSettings read() {
    SmallRyeConfig config =
        new SmallRyeConfigBuilder()
            .addDefaultInterceptors()
            .addDefaultSources()
            .addDiscoveredSources()
            .build();
    return new StartSettings(
        config.getOptionalValue(JDBC_URL, String.class),
        config.getOptionalValue(TOKEN_KEYS, String.class),
        config.getValue(ISSUER, String.class),
        config.getValue(AUDIENCE, String.class),
        Path.of(config.getValue(DATA_FOLDER, String.class)));
  }
}
