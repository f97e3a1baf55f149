package strickle.api;

import java.net.InetSocketAddress;
import java.net.SocketAddress;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.io.Connection;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.eclipse.jetty.util.thread.Scheduler;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Counts who comes and goes, and sends away who only stands in the door ({@link Places}). */
final class Doorkeeper extends Handler.Wrapper {

  private static final Logger LOG = LoggerFactory.getLogger(Doorkeeper.class);
  private static final Duration LOOK = Duration.ofMillis(500);

  private final Places places;
  private Optional<Scheduler.Task> look = Optional.empty();

  private Doorkeeper(Places places) {
    this.places = places;
  }

  /**
   * A doorkeeper by where the service listens: behind something in front all connections come from
   * there, as on this machine all come from here.
   */
  static Doorkeeper of(Listening listening) {
    boolean direct = !listening.isLoopback() && !listening.behindTls();
    return new Doorkeeper(new Places(direct ? Places.MOST_OF_ONE : Places.MOST));
  }

  @Override
  protected void doStart() throws Exception {
    super.doStart();
    for (Connector connector : getServer().getConnectors()) {
      connector.addEventListener(new Coming());
    }
    lookLater();
  }

  @Override
  protected void doStop() throws Exception {
    stopLooking();
    super.doStop();
  }

  private synchronized void stopLooking() {
    look.ifPresent(Scheduler.Task::cancel);
    look = Optional.empty();
  }

  private synchronized void lookLater() {
    Scheduler scheduler = getServer().getScheduler();
    look = Optional.of(scheduler.schedule(this::look, LOOK.toMillis(), TimeUnit.MILLISECONDS));
  }

  // A head that trickles in byte by byte never looks idle to the server itself.
  private void look() {
    try {
      places.overdue(System.nanoTime()).forEach(Doorkeeper::sendAway);
    } finally {
      if (isRunning()) {
        lookLater();
      }
    }
  }

  private static void sendAway(Connection connection) {
    connection.getEndPoint().close();
  }

  @Override
  public boolean handle(Request request, Response response, Callback callback) throws Exception {
    Connection connection = request.getConnectionMetaData().getConnection();
    long number = places.begin(connection, System.nanoTime());
    Request.addCompletionListener(
        request, failure -> places.end(connection, number, System.nanoTime()));
    if (!hasBody(request.getHeaders())) {
      places.whole(connection, number);
    }
    Runnable atLast = () -> places.whole(connection, number);
    return super.handle(new Watched(request, atLast), response, callback);
  }

  private static boolean hasBody(HttpFields headers) {
    return headers.contains(HttpHeader.TRANSFER_ENCODING)
        || headers.getLongField(HttpHeader.CONTENT_LENGTH) > 0;
  }

  private static String network(Connection connection) {
    SocketAddress address = connection.getEndPoint().getRemoteSocketAddress();
    return address instanceof InetSocketAddress internet && internet.getAddress() != null
        ? Network.of(internet.getAddress().getHostAddress())
        : "";
  }

  /** Hears of connections that come and go. */
  private final class Coming implements Connection.Listener {

    @Override
    public void onOpened(Connection connection) {
      places
          .enter(connection, network(connection), System.nanoTime())
          .ifPresent(
              leaving -> {
                LOG.warn("a connection had to leave for another");
                sendAway(leaving);
              });
    }

    @Override
    public void onClosed(Connection connection) {
      places.leave(connection);
    }
  }

  /** A request that says when its last byte has been read. */
  private static final class Watched extends Request.Wrapper {

    private final Runnable atLast;

    Watched(Request request, Runnable atLast) {
      super(request);
      this.atLast = atLast;
    }

    @Override
    public Content.Chunk read() {
      Content.Chunk chunk = super.read();
      if (chunk != null && chunk.isLast()) {
        atLast.run();
      }
      return chunk;
    }
  }
}
