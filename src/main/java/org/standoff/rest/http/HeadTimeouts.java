package org.standoff.rest.http;

import io.netty.bootstrap.ChannelInitializerExtension;
import io.netty.channel.Channel;
import io.smallrye.config.SmallRyeConfig;
import java.time.Duration;
import org.eclipse.microprofile.config.ConfigProvider;

/**
 * Gives every connection its {@link HeadTimeout}. Netty finds this class as a service, where {@code
 * io.netty.bootstrap.extensions} is {@code serviceload}; nothing of the framework sees a connection
 * before the first head is whole.
 */
public final class HeadTimeouts extends ChannelInitializerExtension {

  private final Duration within;

  /** For Netty. */
  public HeadTimeouts() {
    this.within =
        ConfigProvider.getConfig()
            .unwrap(SmallRyeConfig.class)
            .getConfigMapping(LimitSettings.class)
            .headWithin();
  }

  @Override
  public void postInitializeServerChildChannel(Channel connection) {
    connection.pipeline().addFirst(HeadTimeout.NAME, new HeadTimeout(within));
  }
}
