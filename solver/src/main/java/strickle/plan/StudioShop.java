package strickle.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import strickle.book.Book;
import strickle.book.Mix;
import strickle.book.Order;
import strickle.book.Piece;
import strickle.mix.CastingMass;
import strickle.mix.Recipe;
import strickle.shop.Shop;

/**
 * A book compiled into a shop, with what is needed to read a schedule back: the kind of each index
 * is a piece, the worker a person, the due date an order.
 *
 * @param book the book
 * @param time the minute line
 * @param pieces the piece of each kind
 * @param orders the order of each due date
 * @param recipes the recipe of each mix, by id
 * @param shop the shop
 * @param fixedPins for each settled lot of the shop the pins it comes from, as places in the book
 * @param weightScale by what the orders' weights were multiplied to make them whole
 */
record StudioShop(
    Book book,
    StudioTime time,
    List<Piece> pieces,
    List<Order> orders,
    Map<String, Recipe> recipes,
    Shop shop,
    List<List<Integer>> fixedPins,
    long weightScale) {

  /** Recipes of all mixes of a book, by id. */
  static Map<String, Recipe> recipes(Book book) {
    Map<String, Recipe> recipes = new HashMap<>();
    for (Mix mix : book.mixes()) {
      recipes.put(mix.id(), Recipe.of(mix, book::material));
    }
    return recipes;
  }

  /** Grams of wet mix for one casting of a piece. */
  static double gramsEach(Book book, Piece piece, Map<String, Recipe> recipes) {
    return CastingMass.wetGrams(book.mould(piece.mould()), recipes.get(piece.mix()));
  }

  double gramsEach(Piece piece) {
    return gramsEach(book, piece, recipes);
  }

  /** The same studio with another shop. */
  StudioShop with(Shop other) {
    return new StudioShop(book, time, pieces, orders, recipes, other, fixedPins, weightScale);
  }
}
