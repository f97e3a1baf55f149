package strickle.plan;

import java.util.List;
import java.util.Map;

/**
 * A lot of the present plan, or a pinned one, of which the beginning stays.
 *
 * @param lot the lot; its runs with what is lost of them
 * @param pour its pour
 * @param rest for each run, by id, the tasks after the pour that stay, in order
 * @param begun whether the pour has at least begun
 */
record KeptLot(Lot lot, Task pour, Map<String, List<Task>> rest, boolean begun) {

  List<Task> rest(Run run) {
    return rest.get(run.id());
  }
}
