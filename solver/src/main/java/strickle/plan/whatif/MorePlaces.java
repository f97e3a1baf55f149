package strickle.plan.whatif;

import java.util.List;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Station;

/**
 * More places of a station.
 *
 * @param station the station's id
 * @param places how many more, 1 to 99999
 */
public record MorePlaces(String station, int places) implements Change {

  private static final int MOST = 100_000;

  /**
   * Refuses no places.
   *
   * @throws strickle.book.Faulty when there are fewer than 1 or more than 99999
   */
  public MorePlaces {
    Say.must(
        Say.unless(1 <= places && places < MOST, places + " more", "1 to " + (MOST - 1) + " more"));
  }

  @Override
  public String text() {
    return "places:" + station + "+" + places;
  }

  @Override
  public String words(Book book) {
    String name = book.station(station).name();
    return places == 1 ? "one more place at the " + name : places + " more places at the " + name;
  }

  @Override
  public List<Fault> faults(Book book) {
    List<String> known = book.stations().stream().map(Station::id).toList();
    List<Fault> missing = Say.missing("station", station, known);
    if (!missing.isEmpty()) {
      return missing;
    }
    int there = book.station(station).places();
    return Say.unless(
        there + places <= MOST,
        places + " more beside the " + there + " there are",
        "at most " + MOST + " in all");
  }

  @Override
  public Book on(Book book) {
    Say.must(faults(book));
    Station old = book.station(station);
    return Rebuilt.with(book, new Station(old.id(), old.name(), old.places() + places));
  }

  @Override
  public Cost cost(Book book) {
    return Cost.notKnown("what more places take");
  }
}
