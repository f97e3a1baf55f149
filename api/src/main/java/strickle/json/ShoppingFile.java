package strickle.json;

import strickle.supply.ShoppingList;

/** Writes what to buy for a plan ({@code strickle-shopping/1}). */
public final class ShoppingFile {

  private static final FileFormat FORMAT = new FileFormat("strickle-shopping/1", "a shopping list");

  private ShoppingFile() {}

  /** Writes a shopping list, with a newline at the end. */
  public static String write(ShoppingList list) {
    return FORMAT.text(RecordWriter.object(list));
  }
}
