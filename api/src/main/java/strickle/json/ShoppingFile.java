package strickle.json;

import strickle.json.contract.Shape;
import strickle.supply.ShoppingList;

/** Writes what to buy for a plan ({@code strickle-shopping/1}). */
public final class ShoppingFile {

  private static final FileFormat FORMAT = new FileFormat("strickle-shopping/1", "a shopping list");

  /** What it looks like. */
  public static final Shape SHAPE = new Shape.Of(ShoppingList.class, FORMAT.name());

  private ShoppingFile() {}

  /** Writes a shopping list, with a newline at the end. */
  public static String write(ShoppingList list) {
    return FORMAT.text(RecordWriter.object(list));
  }
}
