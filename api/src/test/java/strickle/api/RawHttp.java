package strickle.api;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketException;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Speaks to a service byte by byte, as no well-behaved client would. */
final class RawHttp {

  private static final int PATIENCE_MILLIS = 20_000;
  private static final int CHUNK = 16 * 1024;

  private RawHttp() {}

  /**
   * Sends bytes and reads until the service has answered once.
   *
   * @return all that came back; empty when the connection was closed without an answer
   */
  static String ask(int port, String request) {
    return ask(port, request.getBytes(StandardCharsets.ISO_8859_1));
  }

  /** The same with any bytes. */
  static String ask(int port, byte[] request) {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
      socket.setSoTimeout(PATIENCE_MILLIS);
      try {
        socket.getOutputStream().write(request);
        socket.getOutputStream().flush();
      } catch (SocketException closedEarly) {
        // It may have answered all the same.
      }
      return answer(socket.getInputStream());
    } catch (IOException failed) {
      return "";
    }
  }

  /** The status of an answer; 0 for none. */
  static int status(String answer) {
    return answer.matches("(?s)HTTP/1\\.[01] [0-9]{3}.*")
        ? Integer.parseInt(answer.substring(9, 12))
        : 0;
  }

  /** The body of an answer. */
  static String body(String answer) {
    int end = answer.indexOf("\r\n\r\n");
    return end < 0 ? "" : answer.substring(end + 4);
  }

  private static String answer(InputStream in) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    byte[] some = new byte[CHUNK];
    int wanted = Integer.MAX_VALUE;
    try {
      for (int read = in.read(some); read >= 0; read = in.read(some)) {
        bytes.write(some, 0, read);
        if (wanted == Integer.MAX_VALUE) {
          wanted = length(bytes.toString(StandardCharsets.ISO_8859_1));
        }
        if (bytes.size() >= wanted) {
          break;
        }
      }
    } catch (SocketTimeoutException | SocketException over) {
      // What has come is the answer.
    }
    return bytes.toString(StandardCharsets.ISO_8859_1);
  }

  /** How many bytes an answer has in all; the most there are while nobody can know. */
  private static int length(String begun) {
    int end = begun.indexOf("\r\n\r\n");
    if (end < 0) {
      return Integer.MAX_VALUE;
    }
    String head = begun.substring(0, end).toLowerCase(Locale.ROOT);
    int at = head.indexOf("content-length: ");
    if (at < 0) {
      return head.matches("http/1.[01] (204|304) .*(?s).*") ? end + 4 : Integer.MAX_VALUE;
    }
    String length = head.substring(at + "content-length: ".length()).split("\r\n", 2)[0];
    return end + 4 + Integer.parseInt(length.strip());
  }
}
