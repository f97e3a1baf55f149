package strickle.plan.why;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.Draft;
import strickle.book.Form;
import strickle.book.FormUse;
import strickle.book.Line;
import strickle.book.Mould;
import strickle.book.Order;
import strickle.book.Person;
import strickle.book.Piece;
import strickle.book.Pin;
import strickle.book.SampleBook;
import strickle.book.Station;
import strickle.book.Step;
import strickle.book.Studio;

/**
 * Sample books altered by chance: one person or two, few forms or more, a large rack or a tiny one,
 * short most-waits, a second piece, orders due too early, stock, a pin. The same number always
 * gives the same book; some of them cannot be planned at all.
 */
final class AlteredStudios {

  private static final LocalDateTime MONDAY = LocalDateTime.parse("2027-04-05T00:00");

  private final Random chance;

  private AlteredStudios(long number) {
    this.chance = new Random(number);
  }

  static Book book(long number) {
    return new AlteredStudios(number).book();
  }

  private Book book() {
    Draft draft =
        Draft.of(SampleBook.example())
            .studio(studio())
            .people(people())
            .stations(new Station("rack", "drying rack", oneOf(2, 3, 6, 24)))
            .forms(form(SampleBook.tubA()), form(SampleBook.tubB()))
            .moulds(mould(SampleBook.planterDeep()), bowl())
            .pieces(piece(SampleBook.planterSlate()), piece(saucer()))
            .orders(orders());
    return draft.pins(pins()).book();
  }

  private Studio studio() {
    return chance.nextBoolean()
        ? SampleBook.studio()
        : Altered.of(SampleBook.studio(), "climate", List.of());
  }

  private Person[] people() {
    Person ben =
        SampleBook.person(
            "ben", List.of(SampleBook.hours(14, 18)), DayOfWeek.TUESDAY, DayOfWeek.WEDNESDAY);
    return chance.nextBoolean()
        ? new Person[] {SampleBook.ana()}
        : new Person[] {SampleBook.ana(), ben};
  }

  private Form form(Form form) {
    return Altered.of(form, "count", oneOf(1, 1, 2, 3));
  }

  private Mould mould(Mould mould) {
    Mould altered = Altered.of(mould, "setHours", (double) oneOf(4, 20, 30));
    OptionalDouble most =
        chance.nextBoolean() ? OptionalDouble.of(oneOf(44, 72, 120)) : OptionalDouble.empty();
    altered = Altered.of(altered, "demouldMinutes", oneOf(8, 60));
    return Altered.of(altered, "setAtMostHours", most);
  }

  /** A second mould, of one of the two tubs. */
  private Mould bowl() {
    Mould bowl = Altered.of(mould(SampleBook.planterDeep()), "id", "bowl");
    bowl = Altered.of(bowl, "core", Optional.empty());
    return Altered.of(bowl, "forms", List.of(new FormUse("tub-b", 1)));
  }

  private Piece saucer() {
    Piece saucer = Altered.of(SampleBook.planterSlate(), "id", "saucer");
    saucer = Altered.of(saucer, "name", "saucer, slate");
    saucer = Altered.of(saucer, "mould", "bowl");
    return Altered.of(saucer, "route", chance.nextBoolean() ? List.of() : saucer.route());
  }

  private Piece piece(Piece piece) {
    Piece altered = Altered.of(piece, "onHand", oneOf(0, 0, 1, 3));
    altered = Altered.of(altered, "goodPercent", (double) oneOf(50, 92, 100));
    List<Step> route = new ArrayList<>();
    for (Step step : altered.route()) {
      int each = oneOf(step.minutesEach(), step.minutesEach(), 90, 200);
      route.add(Altered.of(step, "minutesEach", each));
    }
    return Altered.of(altered, "route", route);
  }

  private Order[] orders() {
    Order[] orders = new Order[oneOf(1, 2, 3, 4)];
    for (int i = 0; i < orders.length; i++) {
      List<Line> lines = new ArrayList<>();
      lines.add(new Line(oneOf("planter-slate", "saucer"), oneOf(1, 2, 4), Optional.empty()));
      if (chance.nextInt(3) == 0) {
        lines.add(new Line(oneOf("planter-slate", "saucer"), oneOf(1, 2), Optional.empty()));
      }
      LocalDateTime due = MONDAY.plusHours(12).plusDays(oneOf(-1, 3, 6, 8, 9, 11, 14));
      BigDecimal weight = BigDecimal.valueOf(oneOf(0, 1, 3));
      orders[i] = new Order("O-" + (i + 1), "someone", "stock", due, weight, lines);
    }
    return orders;
  }

  private Pin[] pins() {
    Pin pin = new Pin(Pin.POUR, "saucer", 1, MONDAY.plusDays(1).plusHours(9), "ana");
    return chance.nextInt(4) == 0 ? new Pin[] {pin} : new Pin[0];
  }

  @SafeVarargs
  private <T> T oneOf(T... choices) {
    return choices[chance.nextInt(choices.length)];
  }
}
