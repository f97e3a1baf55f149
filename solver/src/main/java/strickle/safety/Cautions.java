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
import strickle.plan.Lot;
import strickle.plan.Plan;
import strickle.plan.Run;

/** Which cautions a studio or a plan calls for, each once, with the acts they belong to. */
public final class Cautions {

  /** A load is told of when it is this near to what may be lifted from the floor, or over it. */
  static final double NEAR = 0.8;

  /** More of them say nothing new. */
  private static final int MOST_LOADS = 5;

  private static final Set<String> LIQUID = Set.of("liquid", "paste", "slurry", "dispersion");
  private static final Set<String> FOOD =
      Set.of(
          "bowl", "cup", "mug", "plate", "platter", "dish", "tray", "spoon", "board", "saucer",
          "jar", "bottle", "coaster", "trivet", "beaker", "goblet", "pitcher", "shaker");

  private final Book book;
  private final Collection<Piece> pieces;
  private final List<Shown> shown = new ArrayList<>();

  private Cautions(Book book, Collection<Piece> pieces) {
    this.book = book;
    this.pieces = pieces;
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
    add(Caution.SANDING, steps(doing -> doing.does(Act.SAND) && !doing.wet()));
    add(Caution.LIFTING, heavy(loads).map(Cautions::words));
    add(Caution.COATS, steps(Cautions::coats));
    add(Caution.VENTILATION, steps(Cautions::coats));
    add(Caution.FOOD, pieces.stream().map(Piece::name).filter(Cautions::isForFood));
    add(Caution.CHROMATE, dry().filter(Cautions::isCement).map(Material::name));
    return shown;
  }

  private static Stream<Load> heavy(List<Load> loads) {
    return loads.stream().filter(load -> index(load) >= NEAR).limit(MOST_LOADS);
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
            .filter(dose -> words(dose.kind()).anyMatch("pigment"::equals))
            .filter(dose -> words(dose.name()).noneMatch(LIQUID::contains));
    return Stream.concat(dry(), doses).distinct();
  }

  private Stream<String> steps(Predicate<Doing> what) {
    return pieces.stream()
        .flatMap(piece -> Course.of(book, piece, "").doings().stream())
        .filter(what)
        .map(doing -> doing.step().step());
  }

  private static boolean coats(Doing doing) {
    return doing.coats() || doing.does(Act.GLUE);
  }

  // A binder that says nothing of its cement may be all cement.
  private static boolean isCement(Material material) {
    return material.cementPercent().isPresent()
        ? material.cementPercent().getAsDouble() > 0
        : words(material.kind()).anyMatch(Set.of("binder", "cement")::contains);
  }

  private static boolean isForFood(String name) {
    return words(name).anyMatch(FOOD::contains);
  }

  private static Stream<String> words(String text) {
    return Stream.of(text.toLowerCase(Locale.ROOT).split("[^\\p{L}]+", -1));
  }

  private static String words(Load load) {
    return String.format(
        Locale.ROOT,
        "%s, %.1f kg (%.1f lb), %.1f x the limit from the floor",
        load.what(),
        load.grams() / 1000,
        pounds(load),
        index(load));
  }

  private static double index(Load load) {
    return Lift.fromTheFloor().index(load.grams() / 1000);
  }

  private static double pounds(Load load) {
    return load.grams() / 453.59237;
  }
}
