package strickle.plan.audit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import strickle.book.Line;
import strickle.book.Piece;
import strickle.plan.OrderOutcome;

/** Rule 10: what is owed is cast, no more and no less, and a late order says why it is late. */
final class CompletenessRule implements Rule {

  private static final double TOLERANCE_PIECES = 1e-9;

  @Override
  public int number() {
    return 10;
  }

  @Override
  public void read(Facts facts, Findings findings) {
    Map<String, Long> owed =
        facts.book().orders().stream()
            .flatMap(order -> order.lines().stream())
            .collect(Collectors.groupingBy(Line::piece, Collectors.summingLong(Line::quantity)));
    for (Piece piece : facts.book().pieces()) {
      List<Course> courses =
          facts.courses().stream()
              .filter(course -> course.piece().id().equals(piece.id()))
              .toList();
      castings(facts, piece, owed.getOrDefault(piece.id(), 0L), courses, findings);
    }
    reasons(facts, findings);
  }

  private static void castings(
      Facts facts, Piece piece, long owed, List<Course> courses, Findings findings) {
    OptionalDouble cover = facts.plan().coverPercent();
    if (cover.isPresent()) {
      cover(facts, piece, owed, courses, findings);
      return;
    }
    double poured = courses.stream().filter(Course::isPoured).mapToDouble(Course::goodPieces).sum();
    long toCome = toCome(courses);
    long needed = needed(facts, piece, owed, poured);
    findings.unless(
        toCome == needed,
        "piece " + piece.id(),
        "is cast " + toCome + " times; the orders need " + needed);
  }

  /** Castings that are not poured yet. */
  private static long toCome(List<Course> courses) {
    return courses.stream()
        .filter(course -> !course.isPoured())
        .mapToLong(course -> course.run().castings())
        .sum();
  }

  /** With a cover: enough to be that sure, and no longer enough with one casting less. */
  private static void cover(
      Facts facts, Piece piece, long owed, List<Course> courses, Findings findings) {
    double percent = facts.plan().coverPercent().orElseThrow();
    int cavities = facts.book().mould(piece.mould()).cavities();
    long wanted = owed - piece.onHand();
    long castings = toCome(courses);
    long left = courses.stream().mapToLong(Course::piecesLeft).sum();
    String how = " for the orders to be covered in " + Say.number(percent) + " of 100 cases";
    String where = "piece " + piece.id();
    findings.unless(
        Sure.covers(piece, 1, left, wanted, percent),
        where,
        "is cast " + castings + " times, too few" + how);
    findings.unless(
        castings == 0 || !Sure.covers(piece, 1, left - cavities, wanted, percent),
        where,
        "is cast " + castings + " times, more than it takes" + how);
  }

  /** Castings still to be poured beside so many good pieces to be expected of what is poured. */
  private static long needed(Facts facts, Piece piece, long owed, double poured) {
    double goodOfACasting =
        facts.book().mould(piece.mould()).cavities() * piece.goodPercent() / 100;
    double demand = Math.max(0, owed - piece.onHand());
    double castings = Math.ceil((demand - poured) / goodOfACasting - TOLERANCE_PIECES);
    return (long) Math.max(0, castings);
  }

  private static void reasons(Facts facts, Findings findings) {
    Map<String, Service> services =
        facts.services().stream()
            .collect(Collectors.toMap(service -> service.order().id(), service -> service));
    for (OrderOutcome outcome : facts.plan().orders()) {
      Optional<Service> service = Optional.ofNullable(services.get(outcome.order()));
      // An order that cannot be served or does not exist is taken at its word.
      boolean late =
          service
              .filter(served -> served.ready().isPresent())
              .map(Service::isLate)
              .orElse(outcome.lateMinutes() > 0);
      reason(outcome, late, findings);
    }
  }

  private static void reason(OrderOutcome outcome, boolean late, Findings findings) {
    boolean says = outcome.because().stream().anyMatch(reason -> !reason.isBlank());
    String where = "order " + outcome.order();
    findings.unless(says || !late, where, "is late and does not say why");
    findings.unless(
        late || outcome.because().isEmpty(), where, "says why it is late, but it is not");
  }
}
