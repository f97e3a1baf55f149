package strickle.plan.why;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import strickle.book.Order;

/** Puts the reasons of one late order into sentences, few of them and in order of time. */
final class Explanation {

  private static final int MOST_LINES = 7;

  /** So many sentences say where the longest hold comes from. */
  private static final int MOST_LINKS = 4;

  /** Less than a quarter of an hour changes nothing, unless the order is late by less. */
  private static final int WORTHWHILE_MINUTES = 15;

  /** A sentence and the minute it speaks of. */
  private record Line(int at, String text) {}

  private final Floor floor;
  private final Moments moments;
  private final Order order;
  private final Serving.Service service;
  private final Names names;
  private final int due;
  private final int worthwhile;

  Explanation(Floor floor, Serving serving, Order order) {
    this.floor = floor;
    this.moments = floor.moments();
    this.order = order;
    this.service = serving.of(order.id());
    this.names = new Names(floor, serving, order);
    this.due = moments.minute(order.due());
    this.worthwhile = Math.min(WORTHWHILE_MINUTES, service.ready() - due);
  }

  List<String> lines() {
    return service.last().map(this::ofRun).orElseGet(this::ofStock);
  }

  private List<String> ofStock() {
    return List.of(
        order.id()
            + " is served from stock "
            + moments.say(0)
            + ", when the plan begins, "
            + Moments.lasting(-due)
            + " after it is due",
        "nothing is earlier than the plan's beginning; a later date is all that helps");
  }

  private List<String> ofRun(Course course) {
    Alone alone = new Alone(floor, course);
    List<String> lines = new ArrayList<>();
    lines.add(headline(course));
    beginning(course, alone).ifPresent(lines::add);
    elders().ifPresent(lines::add);
    List<String> way = way(alone);
    List<Line> chain = new ArrayList<>(waits(course).stream().toList());
    chain.addAll(holds(course, MOST_LINES - way.size() - lines.size() - chain.size()));
    chain.sort(Comparator.comparingInt(Line::at));
    chain.forEach(line -> lines.add(line.text()));
    lines.addAll(way);
    return List.copyOf(lines);
  }

  /** An order whose lateness counts for nothing is not worth a change of the studio. */
  private List<String> way(Alone alone) {
    return counts()
        ? new Way(floor, service, names, worthwhile).say(alone)
        : List.of(
            "its weight is 0, so its being late counts for nothing and nothing is done for it");
  }

  private boolean counts() {
    return order.weight().signum() > 0;
  }

  /** What the last sentences offer; nothing for an order from stock or without weight. */
  List<Remedy> remedies() {
    if (service.last().isEmpty() || !counts()) {
      return List.of();
    }
    CuresOf cures = new CuresOf(floor);
    return new Way(floor, service, names, worthwhile)
        .offered().stream().flatMap(way -> cures.remedy(order.id(), way)).toList();
  }

  private String headline(Course course) {
    return course.piece().name()
        + " ("
        + course.run()
        + ") is ready "
        + moments.say(course.ready())
        + ", "
        + Moments.lasting(course.ready() - due)
        + " after "
        + order.id()
        + " is due";
  }

  /** Told when the time from the plan's beginning was too short from the first. */
  private Optional<String> beginning(Course course, Alone alone) {
    int begins = moments.begins();
    String when = begins > 0 ? "when it was laid out anew" : "when the plan begins";
    if (due < begins) {
      return Optional.of(
          order.id()
              + " was due "
              + moments.say(due)
              + (begins > 0 ? ", before it was laid out anew " : ", before the plan begins ")
              + moments.say(begins));
    }
    if (course.done() > 0) {
      return Optional.of(begun(course));
    }
    boolean tooShort = alone.ready().orElse(0) > due;
    return tooShort
        ? Optional.of(
            "nothing starts before "
                + moments.say(begins)
                + ", "
                + when
                + "; that leaves "
                + Moments.lasting(due - begins)
                + " until it is due")
        : Optional.empty();
  }

  private String begun(Course course) {
    Placed last = course.task(course.done() - 1);
    return "so far "
        + (course.done() == 1
            ? "it is poured"
            : course.chain().stages().get(course.done() - 1).name() + " was the last done")
        + ", by "
        + floor.book().person(last.person()).name()
        + " "
        + moments.between(last.start(), last.end());
  }

  private Optional<String> elders() {
    List<Order> elders = service.elders();
    if (elders.isEmpty() || service.ready() - service.first() < worthwhile) {
      return Optional.empty();
    }
    boolean before = elders.stream().allMatch(one -> one.due().isBefore(order.due()));
    List<String> ids = elders.stream().map(Order::id).toList();
    String named = ids.size() > 3 ? ids.size() + " orders" : Names.list(ids);
    return Optional.of(
        "the earlier pieces go to "
            + named
            + (before ? ", due before" : ", due before or at the same time"));
  }

  private Optional<Line> waits(Course course) {
    return new WaitWords(floor, course).say().map(text -> new Line(course.task(0).end(), text));
  }

  /** The most telling holds, and what the longest of them comes from. */
  private List<Line> holds(Course course, int most) {
    List<Hold> telling =
        Telling.of(floor, course, worthwhile).byWeight().stream()
            .filter(hold -> !isBeforeOpening(hold, course))
            .toList();
    if (telling.isEmpty()) {
      return List.of();
    }
    List<Line> links = links(course, telling.get(0), most - 1);
    List<Line> lines = new ArrayList<>();
    for (Hold hold : telling.stream().limit(most - links.size()).toList()) {
      lines.add(new Line(hold.until(), words(course).say(hold)));
    }
    lines.addAll(links);
    return lines;
  }

  /** What the longest of the holds comes from in the end. */
  private List<Line> links(Course course, Hold hold, int most) {
    List<Links.Link> links = Links.behind(floor, course, hold, worthwhile);
    return new LinkWords(names, moments, this::words)
        .say(hold, links, Math.min(most, MOST_LINKS)).stream()
            .map(text -> new Line(hold.until(), text))
            .toList();
  }

  /** Closed hours from the plan's beginning on, when something else held the pour after them. */
  private boolean isBeforeOpening(Hold hold, Course course) {
    return hold instanceof Hold.Closed
        && hold.from() == moments.begins()
        && hold.until() < course.task(Chain.POUR).start();
  }

  private HoldWords words(Course course) {
    return new HoldWords(names, moments, course, floor.without(course)::usage);
  }
}
