package strickle.json;

import strickle.plan.Task;

/** What has happened to a plan, as a maker notes it: just as it was planned. */
public final class Noted {

  private Noted() {}

  /** A pour that went as planned, as JSON. */
  public static String poured(Task pour) {
    return "{\"kind\": \"poured\", \"lot\": \""
        + pour.lot()
        + "\", \"person\": \""
        + pour.person()
        + "\", \"start\": \""
        + pour.start().toLocalDateTime()
        + "\", \"end\": \""
        + pour.end().toLocalDateTime()
        + "\"}";
  }
}
