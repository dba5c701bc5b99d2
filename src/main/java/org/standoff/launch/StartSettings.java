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
 * @param dataFolder where the embedded server keeps its data if none was given
 */
record StartSettings(Optional<String> jdbcUrl, Path dataFolder) {

  static final String JDBC_URL = "quarkus.datasource.jdbc.url";
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
        Path.of(config.getValue(DATA_FOLDER, String.class)));
  }
}
