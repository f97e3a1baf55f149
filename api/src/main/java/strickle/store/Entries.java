package strickle.store;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strickle.json.BookPart;

/** All that a studio holds at one moment; never changes. */
public final class Entries {

  /** Nothing. */
  public static final Entries NONE = new Entries(Map.of());

  private static final Comparator<Entry> IN_ORDER =
      Comparator.comparing(Entry::collection)
          .thenComparingLong(Entry::position)
          .thenComparing(Entry::id);

  private record Name(String collection, String id) {}

  private final Map<Name, Entry> byName;

  private Entries(Map<Name, Entry> byName) {
    this.byName = byName;
  }

  /** These things; of two with one name the later one holds. */
  public static Entries of(Iterable<Entry> things) {
    Map<Name, Entry> byName = new LinkedHashMap<>();
    things.forEach(thing -> byName.put(name(thing), thing));
    return new Entries(byName);
  }

  /** These parts, placed in their order. */
  public static Entries ofParts(List<BookPart> parts) {
    List<Entry> things = new ArrayList<>(parts.size());
    parts.forEach(
        part -> things.add(new Entry(part.collection(), part.id(), things.size(), part.body())));
    return of(things);
  }

  /** The thing of this name. */
  public Optional<Entry> find(String collection, String id) {
    return Optional.ofNullable(byName.get(new Name(collection, id)));
  }

  /** The things of a collection in their order. */
  public List<Entry> list(String collection) {
    return byName.values().stream()
        .filter(thing -> thing.collection().equals(collection))
        .sorted(IN_ORDER)
        .toList();
  }

  /** Everything: collection by collection, each in its order. */
  public List<Entry> all() {
    return byName.values().stream().sorted(IN_ORDER).toList();
  }

  /** Everything as parts. */
  public List<BookPart> parts() {
    return all().stream()
        .map(thing -> new BookPart(thing.collection(), thing.id(), thing.body()))
        .toList();
  }

  /** The same with a thing's body set; a new thing comes last in its collection. */
  public Entries with(String collection, String id, String body) {
    long position = find(collection, id).map(Entry::position).orElseGet(() -> after(collection));
    return with(new Entry(collection, id, position, body));
  }

  private Entries with(Entry thing) {
    Map<Name, Entry> changed = new LinkedHashMap<>(byName);
    changed.put(name(thing), thing);
    return new Entries(changed);
  }

  /** The same without a thing. */
  public Entries without(String collection, String id) {
    Map<Name, Entry> changed = new LinkedHashMap<>(byName);
    changed.remove(new Name(collection, id));
    return new Entries(changed);
  }

  /** The same with some collections replaced by what these parts hold of them, in their order. */
  public Entries replacing(List<String> collections, List<BookPart> parts) {
    Map<Name, Entry> changed = new LinkedHashMap<>(byName);
    changed.keySet().removeIf(name -> collections.contains(name.collection()));
    for (String collection : collections) {
      placed(collection, parts).forEach(thing -> changed.put(name(thing), thing));
    }
    return new Entries(changed);
  }

  // A thing keeps its place as long as the order allows, so that what did not change is not
  // changed.
  private List<Entry> placed(String collection, List<BookPart> parts) {
    List<Entry> placed = new ArrayList<>();
    long next = 0;
    for (BookPart part : parts) {
      if (part.collection().equals(collection)) {
        long kept = find(collection, part.id()).map(Entry::position).orElse(next);
        placed.add(new Entry(collection, part.id(), Math.max(kept, next), part.body()));
        next = Math.max(kept, next) + 1;
      }
    }
    return placed;
  }

  /** The same with differences put in. */
  public Entries with(List<Difference> differences) {
    Map<Name, Entry> changed = new LinkedHashMap<>(byName);
    for (Difference difference : differences) {
      Name name = new Name(difference.collection(), difference.id());
      difference
          .after()
          .ifPresentOrElse(thing -> changed.put(name, thing), () -> changed.remove(name));
    }
    return new Entries(changed);
  }

  /** What differs from here to there, in the order of there, then what is gone. */
  public List<Difference> differences(Entries there) {
    List<Difference> differences = new ArrayList<>();
    for (Entry after : there.all()) {
      Optional<Entry> before = find(after.collection(), after.id());
      if (!before.equals(Optional.of(after))) {
        differences.add(new Difference(before, Optional.of(after)));
      }
    }
    for (Entry before : all()) {
      if (there.find(before.collection(), before.id()).isEmpty()) {
        differences.add(new Difference(Optional.of(before), Optional.empty()));
      }
    }
    return differences;
  }

  private long after(String collection) {
    return byName.values().stream()
        .filter(thing -> thing.collection().equals(collection))
        .mapToLong(thing -> thing.position() + 1)
        .max()
        .orElse(0);
  }

  private static Name name(Entry thing) {
    return new Name(thing.collection(), thing.id());
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Entries entries && byName.equals(entries.byName);
  }

  @Override
  public int hashCode() {
    return byName.hashCode();
  }

  @Override
  public String toString() {
    return all().toString();
  }
}
