package strickle.safety;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import strickle.book.Book;
import strickle.book.Material;
import strickle.book.Mix;
import strickle.book.Part;
import strickle.book.Piece;
import strickle.book.UsUnits;
import strickle.plan.Lot;
import strickle.plan.Plan;
import strickle.plan.Run;

/** Which cautions a studio or a plan calls for, each once, with the acts they belong to. */
public final class Cautions {

  /** A load is told of when it is this near to what may be lifted from the floor, or over it. */
  static final double NEAR = 0.8;

  private static final double NEAR_ONE = 0.095;

  /** So many that are not over it are told of; those over it all are. */
  private static final int MOST_LOADS = 5;

  private final Book book;
  private final Collection<Piece> pieces;
  private final List<Doing> doings;
  private final List<Shown> shown = new ArrayList<>();

  private Cautions(Book book, Collection<Piece> pieces) {
    this.book = book;
    this.pieces = pieces;
    this.doings =
        pieces.stream().flatMap(piece -> Course.of(book, piece, "").doings().stream()).toList();
  }

  /** All that a studio's pieces call for; lifting where a load is heavy. */
  public static List<Shown> of(Book book) {
    return new Cautions(book, book.pieces()).all(Loads.of(book));
  }

  /** What the tasks of a plan of this book call for; lifting where a load is heavy. */
  public static List<Shown> of(Book book, Plan plan) {
    Set<Piece> pieces = new LinkedHashSet<>();
    for (Lot lot : plan.lots()) {
      lot.runs().stream().map(Run::piece).map(book::piece).forEach(pieces::add);
    }
    return new Cautions(book, pieces).all(Loads.of(book, plan, pieces));
  }

  private List<Shown> all(List<Load> loads) {
    add(Caution.WET_CEMENT, pieces.stream().map(piece -> mix(piece).name()).map("pour "::concat));
    add(Caution.DRY_DUST, powders().map(Material::name).map("weigh "::concat));
    add(Caution.SANDING, steps(Doing::dusty));
    add(Caution.LIFTING, heavy(loads));
    add(Caution.COATS, steps(Doing::handlesCoats));
    add(Caution.VENTILATION, steps(Doing::handlesCoats));
    add(Caution.FOOD, pieces.stream().map(Piece::name).filter(Foods::isForFood));
    add(Caution.CHROMATE, dry().filter(Cautions::isCement).map(Material::name));
    return shown;
  }

  /** The loads that are near what may be lifted or over it, in words. */
  static Stream<String> heavy(List<Load> loads) {
    List<Load> near = loads.stream().filter(load -> index(load) >= NEAR).toList();
    long over = near.stream().filter(load -> index(load) > 1).count();
    long told = Math.max(over, MOST_LOADS);
    Stream<String> words = near.stream().limit(told).map(Cautions::words);
    return near.size() > told
        ? Stream.concat(words, Stream.of((near.size() - told) + " more near the limit"))
        : words;
  }

  private void add(Caution caution, Stream<String> where) {
    List<String> once = where.distinct().toList();
    if (!once.isEmpty()) {
      shown.add(new Shown(caution, once));
    }
  }

  private Mix mix(Piece piece) {
    return book.mix(piece.mix());
  }

  private Stream<Material> dry() {
    return pieces.stream()
        .flatMap(piece -> mix(piece).dry().stream())
        .map(Part::material)
        .distinct()
        .map(book::material);
  }

  // What a dose is of may be liquid; a pigment is a powder unless its name says otherwise.
  private Stream<Material> powders() {
    Stream<Material> doses =
        pieces.stream()
            .flatMap(piece -> mix(piece).pigment().stream())
            .map(dose -> book.material(dose.material()))
            .filter(dose -> Vocabulary.wordsOf(dose.kind()).contains("pigment"))
            .filter(dose -> !Vocabulary.names(dose.name(), Vocabulary.LIQUID));
    return Stream.concat(dry(), doses).distinct();
  }

  private Stream<String> steps(Predicate<Doing> what) {
    return doings.stream().filter(what).map(doing -> doing.step().step());
  }

  // A binder that says nothing of its cement may be all cement.
  private static boolean isCement(Material material) {
    return material.cementPercent().isPresent()
        ? material.cementPercent().getAsDouble() > 0
        : Vocabulary.names(material.kind(), Vocabulary.BINDERS);
  }

  private static String words(Load load) {
    return String.format(
        Locale.ROOT,
        "%s, %.1f kg (%.1f lb), %s",
        load.what(),
        load.grams() / 1000,
        pounds(load),
        times(index(load)));
  }

  // Near 1 one decimal would hide on which side it is.
  private static String times(double index) {
    boolean near = Math.abs(index - 1) < NEAR_ONE;
    return String.format(Locale.ROOT, near ? "%.2f" : "%.1f", index)
        + " x the limit from the floor"
        + (index > 1 && near ? ", over it" : "");
  }

  private static double index(Load load) {
    return Lift.fromTheFloor().index(load.grams() / 1000);
  }

  private static double pounds(Load load) {
    return load.grams() / UsUnits.GRAMS_PER_POUND;
  }
}
