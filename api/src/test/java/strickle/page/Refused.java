package strickle.page;

import com.microsoft.playwright.Route;

/** An answer by which the service refuses, as RFC 9457 has it. */
final class Refused {

  private Refused() {}

  /** One with these words for a person. */
  static Route.FulfillOptions with(String words) {
    return new Route.FulfillOptions()
        .setStatus(400)
        .setContentType("application/problem+json")
        .setBody("{\"title\": \"Refused\", \"status\": 400, \"detail\": \"" + words + "\"}");
  }
}
