package org.standoff.rest.http;

import io.netty.bootstrap.ChannelInitializerExtension;
import io.netty.channel.Channel;
import io.netty.channel.ChannelPipeline;
import io.quarkus.runtime.configuration.MemorySize;
import io.smallrye.config.SmallRyeConfig;
import org.eclipse.microprofile.config.ConfigProvider;

/**
 * Gives every connection its {@link HeadTimeout} and its {@link HeadRefusal}. Netty finds this
 * class as a service, where {@code io.netty.bootstrap.extensions} is {@code serviceload}; nothing
 * of the framework sees a connection before the first head is whole.
 */
public final class HeadGuards extends ChannelInitializerExtension {

  private final HeadLimits limits;

  /** For Netty. */
  public HeadGuards() {
    SmallRyeConfig config = ConfigProvider.getConfig().unwrap(SmallRyeConfig.class);
    this.limits =
        new HeadLimits(
            config.getConfigMapping(LimitSettings.class).headWithin(),
            config.getValue("quarkus.http.limits.max-initial-line-length", Long.class),
            config.getValue("quarkus.http.limits.max-header-size", MemorySize.class).asLongValue());
  }

  @Override
  public void postInitializeServerChildChannel(Channel connection) {
    ChannelPipeline pipeline = connection.pipeline();
    pipeline.addFirst(HeadTimeout.NAME, new HeadTimeout(limits.within()));
    pipeline.addFirst(HeadRefusal.NAME, new HeadRefusal(limits));
  }
}
