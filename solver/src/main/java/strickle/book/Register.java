package strickle.book;

import java.util.AbstractList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.RandomAccess;
import java.util.Set;
import java.util.function.Function;

/**
 * An unmodifiable list that also finds its items by id at once. It lets a book be a plain record of
 * lists and still answer by id: a record can hold no index beside its components, so the components
 * hold their own.
 */
final class Register<T> extends AbstractList<T> implements RandomAccess {

  // Looking for the nearest of thousands of ids takes time; nobody reads thousands of faults.
  private static final int MOST_HINTS = 200;

  private final String what;
  private final List<T> items;
  private final Map<String, Integer> places;

  /**
   * Lists the items; of two with the same id the first is found.
   *
   * @param what what one item is called, such as "person"
   */
  Register(String what, List<T> items, Function<T, String> id) {
    this.what = what;
    this.items = List.copyOf(items);
    this.places = HashMap.newHashMap(items.size());
    for (int i = 0; i < this.items.size(); i++) {
      places.putIfAbsent(id.apply(this.items.get(i)), i);
    }
  }

  /** The register that a book keeps behind one of its lists. */
  static <T> Register<T> of(List<T> list) {
    return (Register<T>) list;
  }

  Optional<T> find(String id) {
    return Optional.ofNullable(places.get(id)).map(items::get);
  }

  /** Where in the list the item with this id stands; it must be there. */
  int placeOf(String id) {
    return places.get(id);
  }

  /**
   * The item with this id.
   *
   * @throws IllegalArgumentException when there is none, naming the id and the nearest there is
   */
  T item(String id) {
    return find(id)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "no " + what + " " + Show.text(id) + " in the book" + hint(id)));
  }

  private String hint(String id) {
    return id == null ? "" : Nearest.hint(id, ids());
  }

  /** Notes a fault unless there is an item with this id; the first 200 name the nearest. */
  void mustHave(Check check, String path, String id) {
    if (!places.containsKey(id)) {
      String right = places.isEmpty() ? ", but the book has none" : " in the book";
      String hint = check.count() < MOST_HINTS ? hint(id) : "";
      check.fault(path, Show.text(id), "the id of a " + what + right + hint);
    }
  }

  private Set<String> ids() {
    return places.keySet();
  }

  @Override
  public T get(int index) {
    return items.get(index);
  }

  @Override
  public int size() {
    return items.size();
  }
}
