package strickle.api;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * Requests that make sense one after the other, and what becomes of them when some are left out,
 * told twice, swapped or spoilt. TAG stands for the ETag and PLACE for the Location of an answer
 * before, ID for the id in one.
 */
final class FuzzSequence {

  /**
   * One request.
   *
   * @param template the path as the contract writes it
   * @param path the same with ids
   * @param headers whole lines
   */
  record Step(String method, String template, String path, String headers, String body) {

    private static Step of(String method, String template, String path, String body) {
      String headers = method.equals("GET") ? "" : "If-Match: *\r\n";
      return new Step(method, template, path, headers, body);
    }

    private Step with(String header) {
      return new Step(method, template, path, header + "\r\n", body);
    }
  }

  private static final String TAG = "If-Match: TAG";

  private FuzzSequence() {}

  /** The life of a thing of a list, with undo and redo. */
  static List<Step> ofThing(String list, String id, String body) {
    String root = "/api/" + list;
    String one = root + "/{id}";
    String place = root + "/" + id;
    return List.of(
        Step.of("POST", root, root, body).with("Idempotency-Key: s-" + id),
        Step.of("GET", one, place, ""),
        Step.of("PUT", one, place, body).with(TAG),
        Step.of("GET", "/api/journal", "/api/journal", ""),
        Step.of("POST", "/api/undo", "/api/undo", ""),
        Step.of("POST", "/api/undo", "/api/undo", ""),
        Step.of("POST", "/api/redo", "/api/redo", ""),
        Step.of("GET", one, place, ""),
        Step.of("DELETE", one, place, "").with(TAG));
  }

  /** A snapshot that is gone back to, and the studio out and in again. */
  static List<Step> ofKeeping(String file) {
    return List.of(
        Step.of("POST", "/api/snapshots", "/api/snapshots", "{\"why\": \"before\"}"),
        Step.of("GET", "/api/snapshots/{id}", "/api/snapshots/ID", ""),
        Step.of("POST", "/api/snapshots/{id}/restore", "/api/snapshots/ID/restore", ""),
        Step.of("GET", "/api/export", "/api/export", ""),
        Step.of("PUT", "/api/export", "/api/export", file).with(TAG),
        Step.of("POST", "/api/undo", "/api/undo", ""),
        Step.of("DELETE", "/api/snapshots/{id}", "/api/snapshots/ID", ""));
  }

  /** A plan from its asking to its use, with something that happened to it. */
  static List<Step> ofPlan(String asked) {
    String one = "/api/plans/{id}";
    String away =
        "{\"kind\": \"away\", \"person\": \"maren\", \"from\": \"2027-03-10T11:00\","
            + " \"to\": \"2027-03-11T00:00\"}";
    return List.of(
        Step.of("POST", "/api/plans", "/api/plans", asked),
        Step.of("GET", one, "/api/plans/ID", ""),
        Step.of("POST", one + "/stop", "/api/plans/ID/stop", ""),
        Step.of("GET", one + "/result", "/api/plans/ID/result", ""),
        Step.of("POST", one + "/accept", "/api/plans/ID/accept", ""),
        Step.of("GET", "/api/plan-in-use", "/api/plan-in-use", ""),
        Step.of("POST", "/api/progress", "/api/progress", away),
        Step.of("POST", "/api/undo", "/api/undo", ""),
        Step.of("DELETE", one, "/api/plans/ID", ""));
  }

  /** The same with something wrong in most of them. */
  static List<Step> spoilt(List<Step> right, FuzzWords words, Random random) {
    List<Step> steps = new ArrayList<>(right);
    int at = random.nextInt(steps.size());
    switch (random.nextInt(6)) {
      case 0 -> steps.remove(at);
      case 1 -> steps.add(at, steps.get(at));
      case 2 -> Collections.swap(steps, at, random.nextInt(steps.size()));
      case 3 -> steps.set(at, withBody(steps.get(at), words.spoilt(steps.get(at).body())));
      case 4 -> steps.set(at, withHeaders(steps.get(at), words.headers()));
      default -> Collections.shuffle(steps.subList(0, 1 + random.nextInt(steps.size())), random);
    }
    return steps;
  }

  private static Step withBody(Step step, String body) {
    return new Step(step.method(), step.template(), step.path(), step.headers(), body);
  }

  private static Step withHeaders(Step step, String headers) {
    return new Step(step.method(), step.template(), step.path(), headers, step.body());
  }
}
