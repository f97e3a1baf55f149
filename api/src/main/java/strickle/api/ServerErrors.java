package strickle.api;

import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;

/** Tells what the HTTP server itself refuses in the same shape as every other refusal. */
final class ServerErrors extends ErrorHandler {

  @Override
  public boolean errorPageForMethod(String method) {
    return true;
  }

  @Override
  protected void generateResponse(
      Request request,
      Response response,
      int code,
      String message,
      Throwable cause,
      Callback callback) {
    Gate.write(response, problem(code), callback);
  }

  private static Problem problem(int code) {
    if (code >= Status.BUG && code != Status.TROUBLE) {
      return Problem.of(Status.BUG, "A fault of the program", "The program has a fault.");
    }
    return Problem.of(code, HttpStatus.getMessage(code), "The request cannot be read as HTTP.");
  }
}
