package strickle.plan.why;

import java.util.List;

/** Says what would free an order. */
final class ReliefWords {

  private final Names names;
  private final Moments moments;
  private final int due;

  ReliefWords(Names names, Moments moments, int due) {
    this.names = names;
    this.moments = moments;
    this.due = due;
  }

  /** What single changes, or several together, come to. */
  String say(List<Freeing.Freed> ways) {
    Freeing.Freed first = ways.get(0);
    boolean inTime = first.ready() <= due;
    if (ways.size() > 1) {
      List<String> each = ways.stream().map(way -> reliefs(way.reliefs())).toList();
      return String.join(", or ", each) + ", would free it";
    }
    String together = first.reliefs().size() > 1 ? " together" : "";
    return reliefs(first.reliefs())
        + together
        + (inTime
            ? " would free it: it could be ready " + moments.say(first.ready())
            : " would bring it forward to " + moments.say(first.ready()) + late(first.ready()));
  }

  /** How late a moment still is; nothing when it is in time. */
  String late(int ready) {
    return ready > due ? ", still " + Moments.lasting(ready - due) + " late" : "";
  }

  /** What comes of laying the order's runs out again with nothing new. */
  String sayAgain(Freeing.Freed freed, List<Course> companions) {
    String how =
        companions.isEmpty()
            ? "nothing new is needed: laid out again, with all others as they are,"
            : "poured apart from " + names.runs(companions);
    return how + " it could be ready " + moments.say(freed.ready()) + late(freed.ready());
  }

  private String reliefs(List<Relief> reliefs) {
    return Names.list(reliefs.stream().map(this::relief).toList());
  }

  private String relief(Relief relief) {
    return switch (relief) {
      case Relief.More more ->
          Names.list(
              more.units().entrySet().stream()
                  .map(one -> names.more(one.getKey(), one.getValue()))
                  .toList());
      case Relief.Hours hours ->
          "hours for "
              + names.person(hours.person())
              + " "
              + moments.between(hours.from(), hours.to());
      case Relief.Helper helper ->
          "another pair of hands for "
              + helper.task()
              + " "
              + moments.between(helper.from(), helper.to());
      case Relief.Warmth warmth -> "a room never cooler than 20 °C";
      case Relief.Unpinned unpinned -> "a pour that is not pinned";
    };
  }
}
