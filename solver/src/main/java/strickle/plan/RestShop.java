package strickle.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import strickle.book.Book;
import strickle.book.Order;
import strickle.book.Piece;
import strickle.shop.Activity;
import strickle.shop.Calendar;
import strickle.shop.Due;
import strickle.shop.FixedLot;
import strickle.shop.Hold;
import strickle.shop.Kind;
import strickle.shop.Resource;
import strickle.shop.Shop;

/**
 * The shop of the rest of a plan: what stays is settled, everybody's hours begin now, and what is
 * broken is lost. A run of which nothing is left is of a kind of its own, which ends sooner and
 * nobody waits for.
 */
final class RestShop {

  private static final long LONGEST_MINUTES = 1_000_000_000L;

  private final Standing standing;
  private final Owed owed;
  private final StudioShop one;
  private final List<Calendar> hours;
  private final Optional<Arrivals> arrivals;

  /**
   * A shop as things stand.
   *
   * @param horizonMinutes how far to look ahead
   */
  RestShop(Standing standing, Owed owed, int horizonMinutes) {
    this.standing = standing;
    this.owed = owed;
    this.one = Compiler.oneOfEach(standing.book(), standing.time(), horizonMinutes);
    this.hours = one.shop().workers().stream().map(this::fromNow).toList();
    this.arrivals =
        standing.present().orderingFrom().map(at -> Arrivals.ofRest(standing, owed, at));
  }

  /** Everybody's calendar from now on. */
  List<Calendar> hours() {
    return hours;
  }

  /** The shop of one casting of everything. */
  StudioShop oneOfEach() {
    return one;
  }

  private Calendar fromNow(Calendar calendar) {
    int[] windows =
        IntStream.range(0, calendar.windows())
            .filter(i -> calendar.closes(i) > standing.now())
            .toArray();
    return Calendar.of(
        IntStream.of(windows).map(i -> Math.max(standing.now(), calendar.opens(i))).toArray(),
        IntStream.of(windows).map(calendar::closes).toArray());
  }

  /**
   * The shop in which these lots stay.
   *
   * @param notBefore whether what does not stay of them may start no earlier than it was planned
   */
  StudioShop with(List<KeptLot> kept, boolean notBefore) {
    List<Kind> kinds = new ArrayList<>();
    List<Piece> pieces = new ArrayList<>(one.pieces());
    for (int i = 0; i < pieces.size(); i++) {
      Piece piece = pieces.get(i);
      Kind kind = with(one.shop().kinds().get(i), owed.castings(piece));
      kinds.add(arrivals.map(some -> some.on(kind, piece)).orElse(kind));
    }
    List<FixedLot> fixed = new ArrayList<>();
    for (KeptLot lot : kept) {
      fixed.add(fixed(lot, notBefore, kinds, pieces));
    }
    return studio(pieces, kinds, resources(), dues(owed.needs()), fixed);
  }

  private StudioShop studio(
      List<Piece> pieces,
      List<Kind> kinds,
      List<Resource> resources,
      List<Due> dues,
      List<FixedLot> fixed) {
    Shop shop =
        new Shop(
            one.shop().horizonMinutes(),
            one.shop().lateUnitMinutes(),
            hours,
            one.shop().clocks(),
            resources,
            one.shop().families(),
            kinds,
            List.of(),
            dues,
            fixed);
    List<List<Integer>> nothing = fixed.stream().map(lot -> List.<Integer>of()).toList();
    return new StudioShop(
        standing.book(),
        standing.time(),
        pieces,
        Needs.serving(standing.book()),
        one.recipes(),
        shop,
        nothing,
        Compiler.weightScale(standing.book()));
  }

  private static Kind with(Kind kind, int jobs) {
    return new Kind(
        kind.name(), kind.family(), jobs, kind.amounts(), kind.chain(), kind.tailMinutes());
  }

  private List<Resource> resources() {
    List<Resource> resources = new ArrayList<>(one.shop().resources());
    Map<String, Integer> place = new HashMap<>();
    standing.book().forms().forEach(form -> place.put(form.id(), place.size()));
    for (History.Broken broken : standing.broken()) {
      int at = place.get(broken.form());
      Resource form = resources.get(at);
      List<Resource.Lost> lost = new ArrayList<>(form.lost());
      int from = standing.minute(broken.from());
      int to = broken.to().map(standing::minute).orElse(Integer.MAX_VALUE);
      if (from < to) {
        lost.add(new Resource.Lost(from, broken.units().size(), to));
      }
      resources.set(at, new Resource(form.name(), form.capacity(), lost));
    }
    return resources;
  }

  /**
   * The shop of nothing but what is still to be poured, as if nothing were under way; units that
   * are broken for good are not there.
   */
  StudioShop toPour() {
    List<Kind> kinds = new ArrayList<>();
    for (int i = 0; i < one.pieces().size(); i++) {
      int jobs = owed.toPour().get(one.pieces().get(i).id());
      kinds.add(with(one.shop().kinds().get(i), jobs));
    }
    List<Resource> whole =
        resources().stream().map(form -> new Resource(form.name(), form.left())).toList();
    return studio(one.pieces(), kinds, whole, dues(owed.needsToPour()), List.of());
  }

  private List<Due> dues(List<List<Due.Need>> needs) {
    Book book = standing.book();
    BigDecimal scale = BigDecimal.valueOf(Compiler.weightScale(book));
    List<Due> dues = new ArrayList<>();
    for (Order order : Needs.serving(book)) {
      long due = standing.time().minute(order.due());
      int at = (int) Math.clamp(due, -LONGEST_MINUTES, LONGEST_MINUTES);
      long weight = order.weight().multiply(scale).longValueExact();
      dues.add(new Due(order.id(), at, weight, needs.get(dues.size())));
    }
    return dues;
  }

  private FixedLot fixed(KeptLot kept, boolean notBefore, List<Kind> kinds, List<Piece> pieces) {
    List<FixedLot.Part> parts = new ArrayList<>();
    for (Run run : kept.lot().runs()) {
      int kind = kind(run, kept.rest(run), kinds, pieces);
      List<FixedLot.Place> rest = kept.rest(run).stream().map(this::place).toList();
      List<Integer> bounds = notBefore ? bounds(run, rest, kinds.get(kind)) : List.of();
      parts.add(new FixedLot.Part(kind, run.castings(), rest, bounds, worth(run)));
    }
    FixedLot.Place pour = place(kept.pour());
    OptionalInt end = OptionalInt.of(pour.end());
    return new FixedLot(pour.worker(), pour.start(), end, parts, kept.begun());
  }

  private double worth(Run run) {
    Piece piece = standing.book().piece(run.piece());
    if (run.scrapped() == 0) {
      return run.castings();
    }
    double worth = standing.goods().of(run) / standing.goods().each(piece);
    return Math.min(run.castings(), worth);
  }

  private List<Integer> bounds(Run run, List<FixedLot.Place> rest, Kind kind) {
    Tasks tasks = new Tasks(standing.present());
    List<Integer> bounds = new ArrayList<>();
    for (int before = rest.size() + 1; before < kind.chain().size(); before++) {
      bounds.add(
          tasks.get(Tasks.after(run.id(), before)).map(standing::start).orElse(standing.now()));
    }
    return bounds;
  }

  private FixedLot.Place place(Task task) {
    int worker =
        standing.book().people().stream()
            .map(person -> person.id())
            .toList()
            .indexOf(task.person());
    return new FixedLot.Place(worker, standing.start(task), standing.end(task));
  }

  /** The kind of a run: that of its piece, or one of its own when nothing is left of it. */
  private int kind(Run run, List<Task> rest, List<Kind> kinds, List<Piece> pieces) {
    Piece piece = standing.book().piece(run.piece());
    int usual = standing.book().pieces().indexOf(piece);
    if (!Goods.isLost(standing.book(), run)) {
      return usual;
    }
    Kind kind = kinds.get(usual);
    int size = 1 + Math.max(1, rest.size());
    List<Activity> chain =
        IntStream.range(0, size).mapToObj(i -> cut(kind.chain().get(i), size)).toList();
    kinds.add(new Kind(kind.name(), kind.family(), run.castings(), kind.amounts(), chain, 0));
    pieces.add(piece);
    return kinds.size() - 1;
  }

  /** An activity of a chain that ends sooner: what would be held longer is given back then. */
  private static Activity cut(Activity activity, int size) {
    List<Hold> holds =
        activity.holds().stream()
            .map(
                hold ->
                    hold.last() < size && hold.until() != Hold.Until.DONE
                        ? hold
                        : new Hold(hold.resource(), hold.unitsEach(), size - 1, Hold.Until.END))
            .toList();
    return new Activity(
        activity.name(),
        activity.fixedMinutes(),
        activity.eachMinutes(),
        activity.workers(),
        activity.pauses(),
        activity.before(),
        holds,
        activity.notBefore());
  }
}
