package strickle.demo;

import static strickle.demo.Entries.channel;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.joda.money.CurrencyUnit;
import strickle.book.Book;
import strickle.book.Channel;
import strickle.book.Climate;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Form;
import strickle.book.Line;
import strickle.book.Mould;
import strickle.book.Person;
import strickle.book.Piece;
import strickle.book.Station;
import strickle.book.Studio;

/**
 * Makes studio books of any size that are valid and can be met, for tests and measurements: the
 * same castings and seed give the same book on every machine.
 */
public final class Generator {

  /** The most castings a generated book can need. */
  public static final int MOST_CASTINGS = 2000;

  private static final LocalDate START = LocalDate.parse("2027-03-01");

  /** Every one of them changes its clocks within six weeks of the start. */
  private static final List<Place> PLACES =
      List.of(
          new Place("America/New_York", "USD"),
          new Place("America/Vancouver", "CAD"),
          new Place("Europe/Vienna", "EUR"),
          new Place("Europe/Lisbon", "EUR"),
          new Place("Australia/Hobart", "AUD"),
          new Place("Pacific/Auckland", "NZD"));

  /** Nothing poured is heavier, in kg per cubic metre. */
  private static final double HEAVIEST = 2600;

  private final Dice dice;
  private final int castings;

  private Generator(Dice dice, int castings) {
    this.dice = dice;
    this.castings = castings;
  }

  private record Place(String zone, String currency) {}

  /**
   * A book that needs exactly so many castings, from one mould to twelve and one person to three;
   * its plans begin at {@link #start}. Some ten to thirty in a hundred of its orders are due early.
   *
   * @param castings 1 to {@value #MOST_CASTINGS}
   * @param seed any number
   * @throws Faulty when the castings are out of range
   */
  public static Book book(int castings, long seed) {
    if (castings < 1 || castings > MOST_CASTINGS) {
      String right = "a whole number from 1 to " + MOST_CASTINGS;
      throw new Faulty(List.of(new Fault("castings", Integer.toString(castings), right)));
    }
    return new Generator(new Dice(seed), castings).book("Studio " + castings + "-" + seed);
  }

  /** The moment plans of a generated book begin: midnight of Monday 2027-03-01 where it is. */
  public static OffsetDateTime start(Book book) {
    return START.atStartOfDay(book.studio().timeZone()).toOffsetDateTime();
  }

  private Book book(String name) {
    List<Person> people = GeneratedPeople.draw(dice, castings, START);
    Waits waits = new Waits(dice, people, START);
    GeneratedForms.Drawn shaped = GeneratedForms.draw(dice, waits, castings);
    List<Mould> moulds = shaped.moulds();
    GeneratedMixes mixes = new GeneratedMixes(dice);
    var materials = mixes.materials();
    var itsMixes = mixes.mixes(moulds);
    List<Station> stations = stations();
    List<Piece> pieces =
        new GeneratedPieces(dice, waits, people, stations, itsMixes).pieces(moulds);
    GeneratedOrders.Drawn asked = orders(people, shaped.forms(), moulds, pieces);
    return new Book(
        studio(name, moulds),
        people,
        stations,
        shaped.forms(),
        moulds,
        materials,
        itsMixes,
        pieces,
        asked.orders(),
        channels(),
        asked.fairs(),
        List.of());
  }

  private GeneratedOrders.Drawn orders(
      List<Person> people, List<Form> forms, List<Mould> moulds, List<Piece> pieces) {
    Wanted wanted = new Wanted(dice, moulds);
    List<Line> lines = wanted.lines(wanted.pieces(pieces, castings));
    Workload workload = new Workload(people, forms, moulds, pieces);
    return GeneratedOrders.draw(dice, START, workload, pieces, lines);
  }

  private Studio studio(String name, List<Mould> moulds) {
    Place place = dice.oneOf(PLACES);
    return new Studio(
        name,
        CurrencyUnit.of(place.currency()),
        ZoneId.of(place.zone()),
        Entries.amount(Integer.toString(dice.from(15, 35))),
        Entries.amount(Integer.toString(dice.from(100, 800))),
        Entries.amount(Integer.toString(dice.from(40, 160))),
        Math.ceil(heaviestGrams(moulds) * dice.tenths(11, 45)),
        climate());
  }

  private static double heaviestGrams(List<Mould> moulds) {
    return moulds.stream()
        .mapToDouble(m -> m.volumeMl().orElseThrow() * (1 + m.wastePercent() / 100))
        .map(ml -> ml * HEAVIEST / 1000)
        .max()
        .orElseThrow();
  }

  /** Some weeks of weather in most books, none in the others. */
  private List<Climate> climate() {
    int weeks = dice.chance(75) ? dice.from(1, 8) : 0;
    List<Climate> climate = new ArrayList<>();
    for (int week = 0; week < weeks; week++) {
      var from = START.plusWeeks(week).atTime(dice.from(0, 23), 0);
      double temperature = dice.tenths(Waits.COLDEST_C * 10, 260);
      climate.add(new Climate(from, temperature, OptionalDouble.of(dice.from(35, 85))));
    }
    return climate;
  }

  /** Places for the largest single casting at least, and more the more there is to rest. */
  private List<Station> stations() {
    List<Station> stations = new ArrayList<>();
    for (String name : List.of("rack", "shelf").subList(0, dice.from(0, 2))) {
      int places = 12 + dice.from(0, 24) + castings * dice.from(8, 16) / 10;
      stations.add(new Station(name, name, places));
    }
    return stations;
  }

  private static List<Channel> channels() {
    return List.of(
        channel("own-table", "own table", "0", "0", "0"),
        channel("card", "own table, by card", "2.5", "0.20", "0"),
        channel("shop-shelf", "shop shelf", "0", "0", "50"));
  }
}
