package strickle.plan.why;

import java.util.List;
import strickle.book.Order;

/** How runs, tasks, people and things are called in a reason for one order. */
final class Names {

  private static final List<String> ORDINALS = List.of("a second ", "a third ", "a fourth ");

  private final Floor floor;
  private final Serving serving;
  private final Order order;

  Names(Floor floor, Serving serving, Order order) {
    this.floor = floor;
    this.serving = serving;
    this.order = order;
  }

  /** A run with its piece and what it is for: {@code L2-1 (deep planter, for O-98)}. */
  String run(Course course) {
    return course.run() + " " + what(course);
  }

  private String what(Course course) {
    List<String> orders = serving.servedBy(course);
    String piece = course.piece().name();
    if (orders.isEmpty()) {
      return "(" + piece + ")";
    }
    boolean own = orders.size() == 1 && orders.get(0).equals(order.id());
    String more = orders.size() > 2 ? " and others" : "";
    String named = list(orders.subList(0, Math.min(2, orders.size())));
    return "(" + piece + ", for " + (own ? "the same order" : named + more) + ")";
  }

  /** Several runs, two with all that is to be said, more by their ids. */
  String runs(List<Course> courses) {
    return courses.size() <= 2
        ? list(courses.stream().map(this::run).toList())
        : list(courses.stream().map(Course::run).toList());
  }

  /** A stage of a run: {@code the pour}, {@code the demoulding}, or the step's name in quotes. */
  static String task(Course course, int stage) {
    return switch (stage) {
      case Chain.POUR -> "the pour";
      case Chain.DEMOULD -> "the demoulding";
      default -> "“" + course.chain().stages().get(stage).name() + "”";
    };
  }

  String errand(Errand errand) {
    Course course = errand.course();
    String of = errand.stage() == Chain.POUR ? course.lot() : course.run();
    return task(course, errand.stage()) + " of " + of + " " + what(course);
  }

  String person(String id) {
    return floor.book().person(id).name();
  }

  String thing(Thing thing) {
    return thing.isForm()
        ? floor.book().form(thing.id()).name()
        : floor.book().station(thing.id()).name();
  }

  /** Units of a form that are waited for: {@code the mid tub}, {@code a tray}, {@code 3 of …}. */
  String wanted(Thing thing, int units) {
    int count = floor.usage(thing).count();
    if (units == 1) {
      return (count == 1 ? "the " : article(thing(thing))) + thing(thing);
    }
    return units + " of the form “" + thing(thing) + "”";
  }

  /** So many more: {@code a second mid tub}, {@code 4 more places at the drying rack}. */
  String more(Thing thing, int units) {
    if (!thing.isForm()) {
      return units + " more place" + (units == 1 ? "" : "s") + " at the " + thing(thing);
    }
    int have = floor.usage(thing).count();
    if (units > 1) {
      return units + " more of the form “" + thing(thing) + "”";
    }
    return (have <= ORDINALS.size() ? ORDINALS.get(have - 1) : "one more ") + thing(thing);
  }

  private static String article(String noun) {
    return "aeiouAEIOU".indexOf(noun.charAt(0)) >= 0 ? "an " : "a ";
  }

  /** A list as it is spoken: {@code A, B and C}. */
  static String list(List<String> parts) {
    int last = parts.size() - 1;
    return last < 1
        ? String.join("", parts)
        : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
  }
}
