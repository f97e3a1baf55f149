package strickle.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import strickle.book.Book;
import strickle.book.Mix;
import strickle.book.Order;
import strickle.book.Person;
import strickle.book.Piece;
import strickle.book.Window;
import strickle.cure.Pace;
import strickle.cure.RoomPace;
import strickle.mix.Recipe;
import strickle.shop.Calendar;
import strickle.shop.Clock;
import strickle.shop.Due;
import strickle.shop.Family;
import strickle.shop.FixedLot;
import strickle.shop.Kind;
import strickle.shop.Resource;
import strickle.shop.Shop;

/** Compiles a book into a shop: pieces become kinds, mixes families, people workers. */
final class Compiler {

  private static final int HOUR = 60;

  /** Grams are counted in billionths, so that sums of masses are exact. */
  private static final double PARTS_OF_A_GRAM = 1e9;

  /**
   * What rounding each casting's mass to a billionth can add up to in a lot of a thousand; with the
   * rounding itself no more than {@link Feasibility#TOLERANCE_GRAMS}.
   */
  private static final long SLACK = 500;

  private final Book book;
  private final StudioTime time;
  private final int horizonMinutes;
  private final Map<String, Recipe> recipes;
  private final List<Piece> pieces;
  private final Map<String, Integer> mixIndex = new HashMap<>();
  private final Chains chains;

  private Compiler(Book book, StudioTime time, int horizonMinutes, Collection<Piece> made) {
    this.book = book;
    this.time = time;
    this.horizonMinutes = horizonMinutes;
    this.recipes = StudioShop.recipes(book);
    this.pieces = List.copyOf(made);
    for (Mix mix : book.mixes()) {
      mixIndex.put(mix.id(), mixIndex.size());
    }
    this.chains = new Chains(book);
  }

  /** The shop of everything a book's orders need, with the pinned lots in the order given. */
  static StudioShop compile(
      Book book, StudioTime time, int horizonMinutes, Needs needs, List<PinnedLot> pins) {
    List<Piece> made =
        book.pieces().stream().filter(piece -> needs.castings(piece.id()) > 0).toList();
    Compiler compiler = new Compiler(book, time, horizonMinutes, made);
    List<Integer> jobs = made.stream().map(piece -> needs.castings(piece.id())).toList();
    return compiler.shop(jobs, compiler.dues(needs), Needs.serving(book), pins);
  }

  /** The shop of one casting of every piece of a book, whatever is ordered and pinned. */
  static StudioShop oneOfEach(Book book, StudioTime time, int horizonMinutes) {
    Compiler compiler = new Compiler(book, time, horizonMinutes, book.pieces());
    List<Integer> jobs = book.pieces().stream().map(piece -> 1).toList();
    return compiler.shop(jobs, List.of(), List.of(), List.of());
  }

  /** The shop of the pinned lots given, in that order, and nothing else. */
  static StudioShop onlyPinned(
      Book book, StudioTime time, int horizonMinutes, List<PinnedLot> pins) {
    Compiler compiler = new Compiler(book, time, horizonMinutes, book.pieces());
    List<Integer> jobs =
        book.pieces().stream()
            .map(piece -> pins.stream().mapToInt(pin -> pin.castingsOf(piece.id())).sum())
            .toList();
    return compiler.shop(jobs, List.of(), List.of(), pins);
  }

  private StudioShop shop(
      List<Integer> jobs, List<Due> dues, List<Order> orders, List<PinnedLot> pins) {
    List<String> ids = pieces.stream().map(Piece::id).toList();
    List<Calendar> workers =
        book.people().stream().map(one -> Hours.calendar(one, time, horizonMinutes)).toList();
    List<Kind> kinds =
        IntStream.range(0, pieces.size()).mapToObj(i -> kind(pieces.get(i), jobs.get(i))).toList();
    Shop shop =
        new Shop(
            horizonMinutes,
            HOUR,
            workers,
            List.of(Clock.wall(), roomClock()),
            resources(),
            book.mixes().stream().map(this::family).toList(),
            kinds,
            List.of(),
            dues,
            pins.stream().map(pin -> fixed(book, time, ids, pin)).toList());
    List<List<Integer>> fixedPins = pins.stream().map(PinnedLot::places).toList();
    return new StudioShop(book, time, pieces, orders, recipes, shop, fixedPins, weightScale(book));
  }

  /** Forms first, then stations, in the order of the book. */
  private List<Resource> resources() {
    List<Resource> resources = new ArrayList<>();
    book.forms().forEach(form -> resources.add(new Resource(form.name(), form.count())));
    book.stations().forEach(one -> resources.add(new Resource(one.name(), one.places())));
    return resources;
  }

  private Family family(Mix mix) {
    long grams = billionths(book.studio().batchLimitGrams()) + SLACK;
    return new Family(
        mix.name(),
        mix.mixMinutes() + mix.washMinutes(),
        mix.washMinutes(),
        List.of((long) mix.workingMinutes(), grams),
        longestWindow());
  }

  /** The longest window that comes again every week, or else the longest there is. */
  private int longestWindow() {
    return book.people().stream()
        .flatMap(person -> person.hours().values().stream())
        .flatMap(List::stream)
        .mapToInt(Window::minutes)
        .max()
        .orElse(Integer.MAX_VALUE);
  }

  private Kind kind(Piece piece, int jobs) {
    long pour = book.mould(piece.mould()).pourMinutes();
    long grams = billionths(StudioShop.gramsEach(book, piece, recipes));
    return new Kind(
        piece.name(),
        mixIndex.get(piece.mix()),
        jobs,
        List.of(pour, grams),
        chains.of(piece),
        Chains.minutesOfAtLeast(piece.finalDryHours()));
  }

  /** The clock that curing runs on. */
  private Clock roomClock() {
    List<Integer> starts = new ArrayList<>(List.of(0));
    List<Double> rates = new ArrayList<>(List.of(1.0));
    for (Pace pace : RoomPace.of(book.studio().climate(), time.zone()).paces()) {
      long minute = Math.max(0, time.minute(pace.from()));
      if (minute <= starts.get(starts.size() - 1)) {
        rates.set(rates.size() - 1, pace.factor());
      } else if (minute < horizonMinutes) {
        starts.add((int) minute);
        rates.add(pace.factor());
      }
    }
    return Clock.of(
        starts.stream().mapToInt(Integer::intValue).toArray(),
        rates.stream().mapToDouble(Double::doubleValue).toArray());
  }

  private List<Due> dues(Needs needs) {
    List<String> ids = pieces.stream().map(Piece::id).toList();
    BigDecimal scale = BigDecimal.valueOf(weightScale(book));
    List<Due> dues = new ArrayList<>();
    for (Order order : Needs.serving(book)) {
      List<Due.Need> asked =
          needs.of(order.id()).entrySet().stream()
              .map(need -> new Due.Need(ids.indexOf(need.getKey()), need.getValue()))
              .toList();
      int at = (int) Math.max(-1_000_000_000L, Math.min(1_000_000_000L, time.minute(order.due())));
      long weight = order.weight().multiply(scale).longValueExact();
      dues.add(new Due(order.id(), at, weight, asked));
    }
    return dues;
  }

  /**
   * A pinned lot as a settled one.
   *
   * @param ids the piece of each kind
   */
  static FixedLot fixed(Book book, StudioTime time, List<String> ids, PinnedLot pin) {
    List<FixedLot.Part> parts =
        pin.castings().entrySet().stream()
            .map(part -> new FixedLot.Part(ids.indexOf(part.getKey()), part.getValue()))
            .toList();
    int worker = book.people().stream().map(Person::id).toList().indexOf(pin.person());
    return new FixedLot(worker, (int) time.minute(pin.start()), parts);
  }

  /** The power of ten that makes every order's weight whole. */
  static long weightScale(Book book) {
    int decimals =
        book.orders().stream()
            .mapToInt(order -> order.weight().stripTrailingZeros().scale())
            .max()
            .orElse(0);
    return BigDecimal.TEN.pow(Math.max(0, decimals)).longValueExact();
  }

  private static long billionths(double grams) {
    return Math.round(grams * PARTS_OF_A_GRAM);
  }
}
