package org.standoff.contract.generated;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.http.Header;
import org.apache.http.client.methods.CloseableHttpResponse;
import org.apache.http.client.methods.RequestBuilder;
import org.apache.http.entity.ByteArrayEntity;
import org.apache.http.impl.client.CloseableHttpClient;
import org.apache.http.impl.client.HttpClientBuilder;
import org.apache.http.util.EntityUtils;

/**
 * Sends calls to the running service byte for byte, by the client that REST-assured rests on: its
 * own layer costs more than most answers do.
 */
final class OverHttp implements Service, AutoCloseable {
  private static final int AT_ONCE = 8;

  private final String host;
  private final CloseableHttpClient client =
      HttpClientBuilder.create()
          .disableRedirectHandling()
          .disableContentCompression()
          .disableCookieManagement()
          .disableAutomaticRetries()
          .disableAuthCaching()
          .setMaxConnPerRoute(AT_ONCE)
          .setMaxConnTotal(AT_ONCE)
          .build();

  OverHttp(String host) {
    this.host = host;
  }

  @Override
  public Reply send(Call call) {
    RequestBuilder request = RequestBuilder.create(call.method()).setUri(host + call.target());
    call.headers().forEach(request::addHeader);
    if (call.body() != null) {
      request.setEntity(new ByteArrayEntity(call.body()));
    }
    try (CloseableHttpResponse response = client.execute(request.build())) {
      Map<String, String> headers = new HashMap<>();
      for (Header header : response.getAllHeaders()) {
        headers.put(header.getName(), header.getValue());
      }
      byte[] body =
          response.getEntity() == null
              ? new byte[0]
              : EntityUtils.toByteArray(response.getEntity());
      return new Reply(response.getStatusLine().getStatusCode(), headers, body);
    } catch (IOException broken) {
      throw new UncheckedIOException(call.curl(host), broken);
    }
  }

  @Override
  public void close() throws IOException {
    client.close();
  }
}
