package strickle.plan.why;

import java.util.List;

/** Says what would free an order. */
final class ReliefWords {

  private final Names names;
  private final Moments moments;
  private final Course course;
  private final int due;

  ReliefWords(Names names, Moments moments, Course course, int due) {
    this.names = names;
    this.moments = moments;
    this.course = course;
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

  private String late(int ready) {
    return ", still " + Moments.lasting(ready - due) + " late";
  }

  /** What comes of laying the order's runs out again with nothing new. */
  String sayAgain(Freeing.Freed freed, List<Course> companions) {
    String how =
        companions.isEmpty()
            ? "nothing new is needed: laid out again, with all others as they are,"
            : "poured apart from " + names.runs(companions);
    String still = freed.ready() <= due ? "" : late(freed.ready());
    return how + " it could be ready " + moments.say(freed.ready()) + still;
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
              + Names.task(course, helper.stage())
              + " "
              + moments.between(helper.from(), helper.to());
      case Relief.Warmth warmth -> "a room kept at 20 °C";
      case Relief.Unpinned unpinned -> "a pour that is not pinned";
    };
  }
}
