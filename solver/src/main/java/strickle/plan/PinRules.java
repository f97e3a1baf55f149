package strickle.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.FormUse;
import strickle.book.Mix;
import strickle.book.Mould;
import strickle.book.Piece;
import strickle.book.Pin;
import strickle.book.RestsOn;
import strickle.mix.Recipe;

/** Finds the pins that cannot be kept, each with the reason, before anything is planned. */
final class PinRules {

  private final Book book;
  private final StudioTime time;
  private final Needs needs;
  private final List<PinnedLot> lots;
  private final List<Fault> faults = new ArrayList<>();

  private PinRules(Book book, StudioTime time, Needs needs) {
    this.book = book;
    this.time = time;
    this.needs = needs;
    this.lots = PinnedLot.of(book);
  }

  /** Every pin that cannot be kept in a plan of what is needed from minute 0 of {@code time}. */
  static List<Fault> faults(Book book, StudioTime time, Needs needs) {
    PinRules rules = new PinRules(book, time, needs);
    rules.noMoreThanNeeded();
    rules.lots.forEach(rules::lot);
    rules.noTwoAtOnce();
    return rules.faults;
  }

  /** The fault of a pinned lot that passes every rule here and still finds no room. */
  static Fault noRoom(PinnedLot lot) {
    return fault(
        lot.places().get(0),
        ".start",
        lot.start().toString(),
        "a start that leaves time to take the pieces out of the mould before the most-wait is over,"
            + " and its forms free until then");
  }

  private void noMoreThanNeeded() {
    Map<String, Integer> pinned = new HashMap<>();
    for (int place = 0; place < book.pins().size(); place++) {
      Pin pin = book.pins().get(place);
      int sum = pinned.merge(pin.piece(), pin.castings(), Integer::sum);
      int needed = needs.castings(pin.piece());
      must(
          sum <= needed,
          place,
          ".castings",
          sum + " castings of \"" + pin.piece() + "\" pinned so far",
          "at most " + needed + ", all that the orders still need");
    }
  }

  private void lot(PinnedLot lot) {
    int first = lot.places().get(0);
    must(
        time.minute(lot.start()) >= 0,
        first,
        ".start",
        lot.start().toString(),
        time.local(0) + " or later, when the plan begins");
    boolean oneMix = oneMix(lot);
    boolean onePinAPiece = onePinAPiece(lot);
    lot.places().forEach(this::stationsSuffice);
    if (oneMix && onePinAPiece) {
      inHours(lot, first);
      inOneLot(lot, first);
      formsSuffice(lot, first);
    }
  }

  private boolean oneMix(PinnedLot lot) {
    String mix = mixOf(book.pins().get(lot.places().get(0)).piece());
    boolean all = true;
    for (int place : lot.places()) {
      String piece = book.pins().get(place).piece();
      all &=
          must(
              mixOf(piece).equals(mix),
              place,
              ".piece",
              "\"" + piece + "\" of mix \"" + mixOf(piece) + "\"",
              "a piece of mix \"" + mix + "\", which this person pours at that moment");
    }
    return all;
  }

  private boolean onePinAPiece(PinnedLot lot) {
    Set<String> seen = new HashSet<>();
    boolean all = true;
    for (int place : lot.places()) {
      String piece = book.pins().get(place).piece();
      all &=
          must(
              seen.add(piece),
              place,
              ".piece",
              "\"" + piece + "\" pinned twice at the same moment",
              "one pin with all its castings");
    }
    return all;
  }

  private void inHours(PinnedLot lot, int first) {
    long start = time.minute(lot.start());
    long end = start + minutes(lot);
    boolean open =
        book.person(lot.person()).hoursOn(lot.start().toLocalDate()).stream()
            .anyMatch(
                window -> {
                  var midnight = lot.start().toLocalDate().atStartOfDay();
                  return time.minute(midnight.plusMinutes(window.startMinute())) <= start
                      && end <= time.minute(midnight.plusMinutes(window.endMinute()));
                });
    must(
        open,
        first,
        ".start",
        lot.start() + " for a pour of " + (end - start) + " minutes",
        "a pour inside one of the hours of \""
            + lot.person()
            + "\" that day "
            + book.person(lot.person()).hoursOn(lot.start().toLocalDate()));
  }

  private void inOneLot(PinnedLot lot, int first) {
    Mix mix = book.mix(mixOf(book.pins().get(first).piece()));
    Recipe recipe = Recipe.of(mix, book::material);
    Map<String, Recipe> recipes = Map.of(mix.id(), recipe);
    int pouring = 0;
    double grams = 0;
    for (Map.Entry<String, Integer> part : lot.castings().entrySet()) {
      Piece piece = book.piece(part.getKey());
      pouring += part.getValue() * book.mould(piece.mould()).pourMinutes();
      grams += part.getValue() * StudioShop.gramsEach(book, piece, recipes);
    }
    must(
        pouring <= mix.workingMinutes(),
        first,
        ".castings",
        pouring + " minutes to pour them",
        "at most " + mix.workingMinutes() + ", as long as the mix can be worked");
    must(
        grams <= book.studio().batchLimitGrams() + Feasibility.TOLERANCE_GRAMS,
        first,
        ".castings",
        Feasibility.grams(grams) + " g of wet mix",
        "at most " + Feasibility.grams(book.studio().batchLimitGrams()) + " g, the batch limit");
  }

  private void stationsSuffice(int place) {
    Pin pin = book.pins().get(place);
    Piece piece = book.piece(pin.piece());
    int pieces = pin.castings() * book.mould(piece.mould()).cavities();
    for (int i = 0; i < piece.route().size(); i++) {
      Optional<RestsOn> rests = piece.route().get(i).restsOn();
      if (rests.isPresent()) {
        String station = rests.get().station();
        int needed = pieces * rests.get().placesEach();
        int most = book.station(station).places();
        must(
            needed <= most,
            place,
            ".castings",
            needed + " places of station \"" + station + "\" for step " + (i + 1),
            "at most " + most + ", all there are");
      }
    }
  }

  private void formsSuffice(PinnedLot lot, int first) {
    Map<String, Integer> taken = new LinkedHashMap<>();
    for (Map.Entry<String, Integer> part : lot.castings().entrySet()) {
      Mould mould = book.mould(book.piece(part.getKey()).mould());
      for (FormUse use : mould.forms()) {
        taken.merge(use.form(), use.count() * part.getValue(), Integer::sum);
      }
    }
    taken.forEach(
        (form, count) ->
            must(
                count <= book.form(form).count(),
                first,
                ".castings",
                count + " of form \"" + form + "\" at once",
                "at most " + book.form(form).count() + ", all there are"));
  }

  private void noTwoAtOnce() {
    for (int i = 0; i < lots.size(); i++) {
      for (int j = 0; j < i; j++) {
        PinnedLot earlier = lots.get(j);
        PinnedLot later = lots.get(i);
        boolean free =
            !earlier.person().equals(later.person())
                || time.minute(earlier.start()) + minutes(earlier) <= time.minute(later.start());
        must(
            free,
            later.places().get(0),
            ".start",
            later.start().toString(),
            "a start when the pour pinned at " + earlier.start() + " is over");
      }
    }
  }

  private int minutes(PinnedLot lot) {
    Mix mix = book.mix(mixOf(book.pins().get(lot.places().get(0)).piece()));
    int minutes = mix.mixMinutes() + mix.washMinutes();
    for (Map.Entry<String, Integer> part : lot.castings().entrySet()) {
      Mould mould = book.mould(book.piece(part.getKey()).mould());
      minutes += part.getValue() * (mould.prepMinutes() + mould.pourMinutes());
    }
    return minutes;
  }

  private String mixOf(String piece) {
    return book.piece(piece).mix();
  }

  private boolean must(boolean holds, int place, String field, String found, String right) {
    if (!holds) {
      faults.add(fault(place, field, found, right));
    }
    return holds;
  }

  private static Fault fault(int place, String field, String found, String right) {
    return new Fault("$.pins[" + place + "]" + field, found, right);
  }
}
