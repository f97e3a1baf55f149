package strickle.price.fair;

import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import strickle.book.Book;
import strickle.book.Fair;
import strickle.book.Material;
import strickle.book.Mix;
import strickle.book.Piece;
import strickle.plan.Arrival;
import strickle.plan.InTime;
import strickle.plan.MaterialUse;
import strickle.price.fair.Programme.Level;
import strickle.price.fair.Programme.Limit;
import strickle.price.fair.Programme.Side;

/**
 * What a studio has for a fair, as the limits of a programme: turns of forms, minutes of people,
 * lots by batch limit and working time, materials that come in time and money for them. Orders due
 * by the opening take their part of everything first. Each limit is one that no plan can exceed, so
 * no build that can be ready is worth more than the programme's best.
 */
final class Means {

  /** A fraction of a piece below this is rounding. */
  private static final double TOLERANCE = 1e-9;

  private final Book book;
  private final Fair fair;
  private final FairRequest request;
  private final List<Ware> wares;
  private final Map<String, Integer> caps;
  private final InTime inTime;
  private final Taking taking;
  private final List<Piece> pieces = new ArrayList<>();

  /** The limits: minutes, then forms, then grams and minutes of each mix, materials, money. */
  private final List<String> forms;

  private final List<String> mixes;
  private final List<Material> materials;

  /**
   * Reads a book.
   *
   * @param book one without the fair's own orders
   * @param caps pieces of which no more than so many are to be brought
   */
  Means(Book book, Fair fair, FairRequest request, List<Ware> wares, Map<String, Integer> caps) {
    this.book = book;
    this.fair = fair;
    this.request = request;
    this.wares = List.copyOf(wares);
    this.caps = Map.copyOf(caps);
    this.taking = new Taking(book);
    Map<String, Integer> most = new HashMap<>();
    wares.forEach(ware -> most.put(ware.piece(), ware.unlimited()));
    this.inTime = InTime.of(FairOrders.with(book, fair, most), request.from(), fair.opens());
    for (Piece piece : book.pieces()) {
      if (base(piece) > 0 || ware(piece).isPresent()) {
        pieces.add(piece);
      }
    }
    this.forms = List.copyOf(formsInUse());
    this.mixes = pieces.stream().map(Piece::mix).distinct().toList();
    this.materials = limitedMaterials();
  }

  /** The programme; one item for each of {@link #items}. */
  Programme programme() {
    List<Limit> limits = new ArrayList<>();
    limits.add(new Limit(Math.max((double) inTime.openMinutes(), base(0) + baseLots())));
    for (int i = 0; i < forms.size(); i++) {
      double turns = (double) book.form(forms.get(i)).count() * inTime.turns(forms.get(i));
      limits.add(new Limit(Math.max(turns, base(1 + i))));
    }
    mixes.forEach(mix -> limits.addAll(List.of(new Limit(0), new Limit(0))));
    for (int i = 0; i < materials.size(); i++) {
      limits.add(new Limit(stock(materials.get(i), firstMaterial() + i)));
    }
    request.budget().ifPresent(money -> limits.add(new Limit(money.doubleValue() + basePacks())));
    return new Programme(pieces.stream().map(this::levels).toList(), sides(), limits);
  }

  /** Ids of the pieces that the items of the programme are. */
  List<String> items() {
    return pieces.stream().map(Piece::id).toList();
  }

  /** Ids of the forms whose limits stand after that of the minutes, in order. */
  List<String> forms() {
    return forms;
  }

  /** The place of the limit of money, when there is one. */
  OptionalInt moneyLimit() {
    return request.budget().isPresent()
        ? OptionalInt.of(firstMaterial() + materials.size())
        : OptionalInt.empty();
  }

  /**
   * What the fewest packs cost that a choice needs bought, those of {@link #basePacks} included.
   */
  double leastPacks(Programme.Chosen chosen) {
    double money = 0;
    for (int i = 0; i < materials.size(); i++) {
      int limit = firstMaterial() + i;
      double needed = chosen.levels().stream().mapToDouble(one -> one.uses().get(limit)).sum();
      money += packs(materials.get(i), needed) * materials.get(i).pack().price().doubleValue();
    }
    return money;
  }

  /** What the packs that orders due by the opening need anyway cost. */
  double basePacks() {
    double money = 0;
    for (int i = 0; i < materials.size(); i++) {
      money += basePacks(i) * materials.get(i).pack().price().doubleValue();
    }
    return money;
  }

  /** Minutes of the lots that orders due by the opening need anyway. */
  private double baseLots() {
    double minutes = 0;
    for (int i = 0; i < mixes.size(); i++) {
      Mix mix = book.mix(mixes.get(i));
      double byGrams = base(1 + forms.size() + 2 * i) / book.studio().batchLimitGrams();
      double byMinutes = base(2 + forms.size() + 2 * i) / mix.workingMinutes();
      minutes += Math.max(byGrams, byMinutes) * (mix.mixMinutes() + mix.washMinutes());
    }
    return minutes;
  }

  private double basePacks(int material) {
    return packs(materials.get(material), base(firstMaterial() + material));
  }

  private static double packs(Material material, double needed) {
    double missing = needed - material.onHand().doubleValue();
    return Math.max(0, Math.ceil(missing / material.pack().quantity().doubleValue() - TOLERANCE));
  }

  private int firstMaterial() {
    return 1 + forms.size() + 2 * mixes.size();
  }

  private double stock(Material material, int limit) {
    double stock = material.onHand().doubleValue();
    return comesInTime(material) ? stock : Math.max(stock, base(limit));
  }

  private boolean comesInTime(Material material) {
    ZoneId zone = book.studio().timeZone();
    OffsetDateTime there = Arrival.of(material, request.orderingFrom(), zone);
    return there.toInstant().isBefore(opens().toInstant());
  }

  private OffsetDateTime opens() {
    return fair.opens().atZone(book.studio().timeZone()).toOffsetDateTime();
  }

  /** Those that matter: all when money does, else those that cannot come in time. */
  private List<Material> limitedMaterials() {
    Set<String> used = new LinkedHashSet<>();
    for (Piece piece : pieces) {
      used.addAll(MaterialUse.ofCastings(book, piece, 1).keySet());
      used.addAll(MaterialUse.ofPacking(piece, 1).keySet());
    }
    return used.stream()
        .map(book::material)
        .filter(one -> request.budget().isPresent() || !comesInTime(one))
        .toList();
  }

  private Set<String> formsInUse() {
    Set<String> used = new LinkedHashSet<>();
    for (Piece piece : pieces) {
      book.mould(piece.mould()).forms().forEach(use -> used.add(use.form()));
    }
    return used;
  }

  private Optional<Ware> ware(Piece piece) {
    return wares.stream().filter(ware -> ware.piece().equals(piece.id())).findFirst();
  }

  private long asked(Piece piece) {
    return Wares.askedBefore(book, fair, piece.id());
  }

  /** Castings that orders due by the opening need. */
  private int base(Piece piece) {
    double missing = Math.max(0, asked(piece) - piece.onHand());
    return (int) Math.ceil(missing / taking.goodEach(piece) - TOLERANCE);
  }

  /** What those castings alone take of a limit. */
  private double base(int limit) {
    return pieces.stream().mapToDouble(piece -> uses(piece, base(piece), 0).get(limit)).sum();
  }

  private List<Level> levels(Piece piece) {
    List<Level> levels = new ArrayList<>();
    int base = base(piece);
    int last = Math.max(base, inTime.castings(piece.id()));
    int before = -1;
    for (int castings = base; castings <= last; castings++) {
      int pieces = brought(piece, castings);
      if (pieces > before) {
        double worth = ware(piece).map(ware -> ware.worthOf(pieces)).orElse(0.0);
        levels.add(new Level(castings, pieces, worth, uses(piece, castings, pieces)));
        before = pieces;
      }
    }
    return levels;
  }

  /** Pieces that so many castings let be brought, as far as bringing them is worth something. */
  private int brought(Piece piece, int castings) {
    double there = taking.goodEach(piece) * castings + piece.onHand() - asked(piece);
    int cap = caps.getOrDefault(piece.id(), Integer.MAX_VALUE);
    int wanted = ware(piece).map(Ware::unlimited).orElse(0);
    return Math.max(0, Math.min(Math.min(wanted, cap), (int) Math.floor(there + TOLERANCE)));
  }

  private List<Double> uses(Piece piece, int castings, int brought) {
    List<Double> uses = new ArrayList<>();
    uses.add(taking.minutes(piece, castings, inTime.run(piece.id())));
    for (String form : forms) {
      uses.add((double) castings * taking.units(piece, form));
    }
    for (String mix : mixes) {
      boolean own = piece.mix().equals(mix) && castings > 0;
      uses.add(own ? castings * taking.grams(piece) : 0);
      uses.add(own ? (double) castings * book.mould(piece.mould()).pourMinutes() : 0);
    }
    Map<String, Double> used = taking.materials(piece, castings, asked(piece) + brought);
    materials.forEach(material -> uses.add(used.getOrDefault(material.id(), 0.0)));
    request.budget().ifPresent(money -> uses.add(0.0));
    return uses;
  }

  /** A column of lots for each mix, and one of packs for each material that can be bought. */
  private List<Side> sides() {
    List<Side> sides = new ArrayList<>();
    for (int i = 0; i < mixes.size(); i++) {
      Mix mix = book.mix(mixes.get(i));
      List<Double> uses = nothing();
      uses.set(0, (double) mix.mixMinutes() + mix.washMinutes());
      uses.set(1 + forms.size() + 2 * i, -book.studio().batchLimitGrams());
      uses.set(2 + forms.size() + 2 * i, -(double) mix.workingMinutes());
      sides.add(new Side(false, uses));
    }
    for (int i = 0; i < materials.size(); i++) {
      Material material = materials.get(i);
      if (comesInTime(material)) {
        sides.add(packs(material, firstMaterial() + i));
      }
    }
    return sides;
  }

  private Side packs(Material material, int limit) {
    List<Double> uses = nothing();
    uses.set(limit, -material.pack().quantity().doubleValue());
    moneyLimit().ifPresent(at -> uses.set(at, material.pack().price().doubleValue()));
    return new Side(true, uses);
  }

  private List<Double> nothing() {
    List<Double> uses = new ArrayList<>();
    for (int i = 0; i < firstMaterial() + materials.size(); i++) {
      uses.add(0.0);
    }
    request.budget().ifPresent(money -> uses.add(0.0));
    return uses;
  }
}
