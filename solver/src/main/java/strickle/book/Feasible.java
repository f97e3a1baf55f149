package strickle.book;

import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What in a book can never be made, as far as the book alone shows it: a book with such a fault can
 * still be priced, but not planned. All moulds and pieces are looked at, ordered or not.
 *
 * <p>Two more such faults need arithmetic that lives elsewhere: a casting heavier than the batch
 * limit, and a most-wait that no opening hours can meet.
 */
public final class Feasible {

  private final Book book;
  private final List<Fault> faults = new ArrayList<>();

  private Feasible(Book book) {
    this.book = book;
  }

  /**
   * Every such fault, each with its path in the book, the value found and what would make it
   * possible; in the order people, moulds, pieces. Opening hours are compared by the clock, as on a
   * day without a clock change.
   *
   * @return an empty list when nothing stands against planning the book
   */
  public static List<Fault> faults(Book book) {
    Feasible feasible = new Feasible(book);
    Optional<Opening> longest = feasible.longestOpening();
    feasible.someoneHasHours(longest);
    for (int i = 0; i < book.moulds().size(); i++) {
      feasible.formsSuffice("$.moulds[" + i + "]", book.moulds().get(i));
    }
    for (int i = 0; i < book.pieces().size(); i++) {
      feasible.piece("$.pieces[" + i + "]", book.pieces().get(i), longest);
    }
    return List.copyOf(feasible.faults);
  }

  /** One opening window of one person, and the day it is on. */
  private record Opening(Person person, String day, Window window) {

    @Override
    public String toString() {
      return person.name() + ", " + day + " " + window;
    }
  }

  private Optional<Opening> longestOpening() {
    // max() keeps the last of equals; reduce keeps the first, which reads better in a fault.
    Comparator<Opening> byLength = Comparator.comparingInt(opening -> opening.window().minutes());
    return book.people().stream()
        .flatMap(Feasible::openings)
        .reduce((a, b) -> byLength.compare(a, b) >= 0 ? a : b);
  }

  private static Stream<Opening> openings(Person person) {
    Stream<Opening> weekly =
        person.hours().entrySet().stream()
            .flatMap(
                day ->
                    openings(
                        person,
                        day.getKey().getDisplayName(TextStyle.FULL, Locale.ENGLISH),
                        day.getValue()));
    Stream<Opening> special =
        person.exceptions().stream()
            .flatMap(day -> openings(person, day.date().toString(), day.hours()));
    return Stream.concat(weekly, special);
  }

  private static Stream<Opening> openings(Person person, String day, List<Window> windows) {
    return windows.stream().map(window -> new Opening(person, day, window));
  }

  private void someoneHasHours(Optional<Opening> longest) {
    must(
        longest.isPresent() || book.pieces().isEmpty(),
        "$.people",
        book.people().isEmpty() ? "nobody" : "nobody with opening hours",
        "at least one person with hours like {\"MON\": [\"09:00-12:00\"]}, because there are"
            + " pieces to make");
  }

  private void formsSuffice(String path, Mould mould) {
    Map<String, Integer> taken = new HashMap<>();
    for (int i = 0; i < mould.forms().size(); i++) {
      FormUse use = mould.forms().get(i);
      int needed = taken.merge(use.form(), use.count(), Integer::sum);
      int owned = book.form(use.form()).count();
      // Told where the sum first passes what there is, and not again further down.
      must(
          needed <= owned || needed - use.count() > owned,
          path + ".forms[" + i + "].count",
          needed + " of form " + Show.text(use.form()) + " for one casting",
          "at most " + owned + ", which is all there are; get more of the form or need fewer");
    }
  }

  private void piece(String path, Piece piece, Optional<Opening> longest) {
    Mould mould = book.mould(piece.mould());
    Mix mix = book.mix(piece.mix());
    longest.ifPresent(opening -> pourFits(path, mould, mix, opening));
    mixStaysWorkable(path, mould, mix);
    for (int i = 0; i < piece.route().size(); i++) {
      String at = path + ".route[" + i + "]";
      Step step = piece.route().get(i);
      if (longest.isPresent()) {
        someoneMayDo(at, step);
      }
      step.restsOn().ifPresent(rests -> stationHolds(at, rests, mould));
    }
  }

  private void pourFits(String path, Mould mould, Mix mix, Opening longest) {
    int minutes = mould.prepMinutes() + mix.mixMinutes() + mould.pourMinutes() + mix.washMinutes();
    int most = longest.window().minutes();
    must(
        minutes <= most,
        path + ".mould",
        "a pour of %d minutes for one casting (prep %d, mix %d, pour %d, wash %d)"
            .formatted(
                minutes,
                mould.prepMinutes(),
                mix.mixMinutes(),
                mould.pourMinutes(),
                mix.washMinutes()),
        "at most "
            + most
            + " minutes, the longest hours without a break ("
            + longest
            + "); open"
            + " longer at a stretch or shorten the pour");
  }

  private void mixStaysWorkable(String path, Mould mould, Mix mix) {
    must(
        mould.pourMinutes() <= mix.workingMinutes(),
        path + ".mix",
        "%s, workable for %d minutes, in a mould that takes %d minutes to pour"
            .formatted(Show.text(mix.id()), mix.workingMinutes(), mould.pourMinutes()),
        "a mix workable for at least %d minutes, or a mould poured within %d"
            .formatted(mould.pourMinutes(), mix.workingMinutes()));
  }

  private void someoneMayDo(String path, Step step) {
    List<Person> named = step.by().stream().map(book::person).toList();
    must(
        named.isEmpty() || named.stream().anyMatch(Person::hasHours),
        path + ".by",
        "only "
            + String.join(" and ", step.by().stream().map(Show::text).toList())
            + ", without any opening hours",
        "somebody with opening hours, or nobody named, so that anyone may do it");
  }

  private void stationHolds(String path, RestsOn rests, Mould mould) {
    Station station = book.station(rests.station());
    int needed = mould.cavities() * rests.placesEach();
    must(
        needed <= station.places(),
        path + ".restsOn",
        "%d places for one casting (pieces %d, places for each %d)"
            .formatted(needed, mould.cavities(), rests.placesEach()),
        "at most %d, the places of station %s; make more places or take fewer"
            .formatted(station.places(), Show.text(station.id())));
  }

  private void must(boolean holds, String path, String found, String right) {
    if (!holds) {
      faults.add(new Fault(path, found, right));
    }
  }
}
