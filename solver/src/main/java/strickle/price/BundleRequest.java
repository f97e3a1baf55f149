package strickle.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import strickle.book.Fault;
import strickle.book.Faulty;

/**
 * Several pieces sold together at one price.
 *
 * @param items what is in the bundle, at least one, each piece once
 * @param price the list price of all together, above 0
 */
public record BundleRequest(List<Item> items, BigDecimal price) {

  private static final int MOST = 1000;

  /**
   * So many of a piece.
   *
   * @param piece the piece's id
   * @param quantity 1 to 1000
   */
  public record Item(String piece, int quantity) {}

  /**
   * Refuses an empty bundle and quantities and prices out of range.
   *
   * @throws Faulty with the paths {@code .items} and {@code .price}
   */
  public BundleRequest {
    items = List.copyOf(items);
    List<Fault> faults = new ArrayList<>();
    if (items.isEmpty()) {
      faults.add(new Fault(".items", "nothing", "at least one piece"));
    }
    Set<String> seen = new HashSet<>();
    for (Item item : items) {
      if (item.quantity() < 1 || item.quantity() > MOST) {
        String found = item.quantity() + " of \"" + item.piece() + '"';
        faults.add(new Fault(".items", found, "1 to 1000 of a piece"));
      }
      if (!seen.add(item.piece())) {
        faults.add(new Fault(".items", '"' + item.piece() + "\" twice", "each piece once"));
      }
    }
    PriceRequest.checkPrice(".price", price, faults);
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
  }

  /**
   * Items as a person writes them: "dish=2,cup=4"; a piece alone is one of it.
   *
   * @throws Faulty with the path {@code .items} for each part that says nothing
   */
  public static List<Item> items(String text) {
    List<Item> items = new ArrayList<>();
    List<Fault> faults = new ArrayList<>();
    for (String part : text.split(",", -1)) {
      int mark = part.indexOf('=');
      String piece = mark < 0 ? part.strip() : part.substring(0, mark).strip();
      String number = mark < 0 ? "1" : part.substring(mark + 1).strip();
      if (piece.isEmpty() || !number.matches("[0-9]{1,4}")) {
        String right = "pieces with how many of each, such as dish=2,cup=4";
        faults.add(new Fault(".items", '"' + part + '"', right));
      } else {
        items.add(new Item(piece, Integer.parseInt(number)));
      }
    }
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
    return items;
  }
}
